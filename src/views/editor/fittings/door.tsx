import type { Door } from '../../../design/index.ts';
import { ChoiceField, NumberField } from '../parts/index.ts';
import { HardwareField, MaterialField } from './catalog-fields.tsx';
import type { FittingView } from './fitting-view.ts';
import styles from './fittings.module.css';
import { KIND_WORDS } from './kind-words.ts';
import { useChangeFitting } from './use-change-fitting.ts';

const HUNG = [
  { value: 'left', label: 'at the left' },
  { value: 'right', label: 'at the right' },
  { value: 'top', label: 'at the top' },
  { value: 'bottom', label: 'at the bottom' },
  { value: 'roll', label: 'roll shutter' },
] as const;

const FRONTS = [
  { value: 'inset', label: 'inset' },
  { value: 'overlay', label: 'overlay' },
] as const;

const LeafFields: FittingView<Door>['Form'] = ({ opening, fitting }) => {
  const change = useChangeFitting<Door>(opening);
  return (
    <>
      <ChoiceField
        label="Front"
        value={fitting.front}
        choices={FRONTS}
        onCommit={(front) => change('change the front', { front })}
      />
      <NumberField
        label="Opens by"
        value={fitting.opensDeg}
        unit="°"
        min={1}
        max={180}
        onCommit={(opensDeg) => change('change how far the door opens', { opensDeg })}
      />
      <HardwareField
        label="Hinge"
        value={fitting.hinge}
        kinds={['hinge']}
        none="choose one"
        onChange={(hinge) => hinge !== null && change('change the hinge', { hinge })}
      />
      <HardwareField
        label="Hold open"
        value={fitting.stay}
        kinds={['gas-spring', 'strap']}
        none="nothing"
        onChange={(stay) => change('change what holds the door open', { stay })}
      />
    </>
  );
};

const Form: FittingView<Door>['Form'] = ({ opening, fitting }) => {
  const change = useChangeFitting<Door>(opening);
  return (
    <div className={styles.fields}>
      <ChoiceField
        label="Hung"
        value={fitting.hung}
        choices={HUNG}
        onCommit={(hung) => change('change how the door is hung', { hung })}
      />
      <MaterialField
        label={fitting.hung === 'roll' ? 'Slats' : 'Door'}
        value={fitting.material}
        onChange={(material) => change('change the door material', { material })}
      />
      <HardwareField
        label="Hold closed"
        value={fitting.latch}
        kinds={['latch']}
        none="nothing"
        onChange={(latch) => change('change the latch', { latch })}
      />
      <HardwareField
        label="Lock"
        value={fitting.lock}
        kinds={['latch']}
        none="does not lock"
        onChange={(lock) => change('change the lock', { lock })}
      />
      {fitting.hung === 'roll' ? null : <LeafFields opening={opening} fitting={fitting} />}
    </div>
  );
};

export const doorView: FittingView<Door> = { ...KIND_WORDS.door, Form };
