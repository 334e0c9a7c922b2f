import type { Drawer } from '../../../design/index.ts';
import { ChoiceField, LengthField } from '../parts/index.ts';
import { useUnits } from '../state/use-units.ts';
import { HardwareField, MaterialField } from './catalog-fields.tsx';
import type { FittingView } from './fitting-view.ts';
import styles from './fittings.module.css';
import { KIND_WORDS } from './kind-words.ts';
import { SlideField } from './slide-fields.tsx';
import { useChangeFitting } from './use-change-fitting.ts';

const CORNERS = [
  { value: 'rabbet', label: 'rabbets in the sides' },
  { value: 'butt', label: 'butted and screwed' },
] as const;

const BOTTOMS = [
  { value: 'groove', label: 'in a groove all round' },
  { value: 'below', label: 'screwed on from below' },
] as const;

const LOCKS = [
  { value: 'none', label: 'do not' },
  { value: 'shut', label: 'shut' },
  { value: 'out', label: 'all the way out' },
  { value: 'both', label: 'shut and all the way out' },
] as const;

const FRONTS = [
  { value: 'inset', label: 'inset' },
  { value: 'overlay', label: 'overlay' },
] as const;

const Form: FittingView<Drawer>['Form'] = ({ opening, fitting }) => {
  const change = useChangeFitting<Drawer>(opening);
  const units = useUnits();
  return (
    <div className={styles.fields}>
      <ChoiceField
        label="Front"
        value={fitting.front}
        choices={FRONTS}
        onCommit={(front) => change('change the front', { front })}
      />
      <HardwareField
        label="Hold closed"
        value={fitting.latch}
        kinds={['latch']}
        none="slides only"
        onChange={(latch) => change('change the latch', { latch })}
      />
      <HardwareField
        label="Stops behind it"
        value={fitting.backStop}
        kinds={['bracket']}
        none="the back panel alone"
        onChange={(backStop) => change('change the back stops', { backStop })}
      />
      <HardwareField
        label="Pull"
        value={fitting.pull}
        kinds={['pull']}
        none="none, the latch pulls"
        onChange={(pull) => change('change the pull', { pull })}
      />
      <LengthField
        label="Box height"
        valueMm={fitting.boxHeightMm}
        units={units}
        min={1}
        hint={fitting.boxHeightMm === null ? 'As high as the opening lets it.' : undefined}
        onCommit={(boxHeightMm) => change('change the box height', { boxHeightMm })}
        onClear={() => change('change the box height', { boxHeightMm: null })}
      />
      <MaterialField
        label="Box"
        value={fitting.boxMaterial}
        onChange={(boxMaterial) => change('change the box material', { boxMaterial })}
      />
      <MaterialField
        label="Bottom"
        value={fitting.bottomMaterial}
        onChange={(bottomMaterial) => change('change the bottom', { bottomMaterial })}
      />
      <ChoiceField
        label="Corners of the box"
        value={fitting.boxJoint}
        choices={CORNERS}
        onCommit={(boxJoint) => change('change the corners of the box', { boxJoint })}
      />
      <ChoiceField
        label="Bottom set"
        value={fitting.bottomJoint}
        choices={BOTTOMS}
        onCommit={(bottomJoint) => change('change how the bottom is set', { bottomJoint })}
      />
      <ChoiceField
        label="Slides lock"
        value={fitting.slideLocks}
        choices={LOCKS}
        onCommit={(slideLocks) => change('change where the slides lock', { slideLocks })}
      />
      <SlideField
        opening={opening}
        slide={fitting.slide}
        mounts={['side']}
        onChange={(slide) => change('change the slide', { slide, slideLengthMm: null })}
        length={{
          mm: fitting.slideLengthMm,
          onChange: (slideLengthMm) => change('change the length of the slide', { slideLengthMm }),
        }}
      />
    </div>
  );
};

export const drawerView: FittingView<Drawer> = { ...KIND_WORDS.drawer, Form };
