import type { Trim } from '../../../design/index.ts';
import { LengthField, NumberField } from '../parts/index.ts';
import { useUnits } from '../state/use-units.ts';
import { HardwareField, MaterialField } from './catalog-fields.tsx';
import type { FittingView } from './fitting-view.ts';
import styles from './fittings.module.css';
import { KIND_WORDS } from './kind-words.ts';
import { useChangeFitting } from './use-change-fitting.ts';

const Form: FittingView<Trim>['Form'] = ({ opening, fitting }) => {
  const change = useChangeFitting<Trim>(opening);
  const units = useUnits();
  return (
    <div className={styles.fields}>
      <NumberField
        label="Drinks"
        value={fitting.cups}
        min={0}
        max={6}
        onCommit={(cups) => change('change the number of drinks', { cups: Math.round(cups) })}
      />
      <LengthField
        label="Hole across"
        valueMm={fitting.cupDiameterMm}
        units={units}
        min={1}
        onCommit={(cupDiameterMm) => change('change the holes for drinks', { cupDiameterMm })}
      />
      <LengthField
        label="Ledge above the floor"
        valueMm={fitting.ledgeUpMm}
        units={units}
        min={1}
        onCommit={(ledgeUpMm) => change('move the ledge', { ledgeUpMm })}
      />
      <LengthField
        label="Slot for boards"
        valueMm={fitting.slotMm}
        units={units}
        min={0}
        onCommit={(slotMm) => change('change the slot', { slotMm })}
      />
      <HardwareField
        label="Clip in the slot"
        value={fitting.clip}
        kinds={['clip']}
        none="none"
        onChange={(clip) => change('change the clip', { clip })}
      />
      <MaterialField
        label="Sheet"
        value={fitting.material}
        onChange={(material) => change('change the sheet of the ledge', { material })}
      />
    </div>
  );
};

export const trimView: FittingView<Trim> = { ...KIND_WORDS.trim, Form };
