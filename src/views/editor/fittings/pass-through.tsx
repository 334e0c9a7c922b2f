import type { PassThrough } from '../../../design/index.ts';
import { ChoiceField, LengthField } from '../parts/index.ts';
import { useUnits } from '../state/use-units.ts';
import { HardwareField, MaterialField } from './catalog-fields.tsx';
import type { FittingView } from './fitting-view.ts';
import styles from './fittings.module.css';
import { KIND_WORDS } from './kind-words.ts';
import { useChangeFitting } from './use-change-fitting.ts';

const SIDES = [
  { value: 'left', label: 'the left side' },
  { value: 'right', label: 'the right side' },
  { value: 'back', label: 'the back' },
] as const;

const Form: FittingView<PassThrough>['Form'] = ({ opening, fitting }) => {
  const change = useChangeFitting<PassThrough>(opening);
  const units = useUnits();
  return (
    <div className={styles.fields}>
      <ChoiceField
        label="Through"
        value={fitting.through}
        choices={SIDES}
        onCommit={(through) => change('change the side of the hole', { through })}
      />
      <LengthField
        label="Clear width"
        valueMm={fitting.widthMm}
        units={units}
        min={1}
        onCommit={(widthMm) => change('change the width of the hole', { widthMm })}
      />
      <LengthField
        label="Clear height"
        valueMm={fitting.heightMm}
        units={units}
        min={1}
        onCommit={(heightMm) => change('change the height of the hole', { heightMm })}
      />
      <LengthField
        label="Reaches beyond by"
        valueMm={fitting.beyondMm}
        units={units}
        min={0}
        hint="This much of the next room belongs to the gear."
        onCommit={(beyondMm) => change('change how far gear reaches', { beyondMm })}
      />
      <MaterialField
        label="Frame"
        value={fitting.frameMaterial}
        onChange={(frameMaterial) => change('change the frame', { frameMaterial })}
      />
      <HardwareField
        label="Edge trim"
        value={fitting.edgeTrim}
        kinds={['trim']}
        none="choose one"
        onChange={(edgeTrim) => edgeTrim !== null && change('change the edge trim', { edgeTrim })}
      />
      <HardwareField
        label="Held by"
        value={fitting.restraint}
        kinds={['strap', 'net']}
        none="nothing"
        onChange={(restraint) => change('change what holds the gear', { restraint })}
      />
    </div>
  );
};

export const passThroughView: FittingView<PassThrough> = { ...KIND_WORDS['pass-through'], Form };
