import type { MapSlot } from '../../../design/index.ts';
import { ChoiceField, LengthField, NumberField } from '../parts/index.ts';
import { useUnits } from '../state/use-units.ts';
import { MaterialField } from './catalog-fields.tsx';
import type { FittingView } from './fitting-view.ts';
import styles from './fittings.module.css';
import { KIND_WORDS } from './kind-words.ts';
import { useChangeFitting } from './use-change-fitting.ts';

const LIE = [
  { value: 'upright', label: 'upright, side by side' },
  { value: 'flat', label: 'flat, one above the other' },
] as const;

const Form: FittingView<MapSlot>['Form'] = ({ opening, fitting }) => {
  const change = useChangeFitting<MapSlot>(opening);
  const units = useUnits();
  return (
    <div className={styles.fields}>
      <NumberField
        label="Slots"
        value={fitting.slots}
        min={1}
        max={12}
        onCommit={(slots) => change('change the number of slots', { slots: Math.round(slots) })}
      />
      <ChoiceField
        label="Things stand"
        value={fitting.lie}
        choices={LIE}
        onCommit={(lie) => change('change how the slots lie', { lie })}
      />
      <LengthField
        label="Lip along the front"
        valueMm={fitting.lipHeightMm}
        units={units}
        min={0}
        onCommit={(lipHeightMm) => change('change the lip', { lipHeightMm })}
      />
      <MaterialField
        label="Dividers"
        value={fitting.material}
        onChange={(material) => change('change the dividers', { material })}
      />
    </div>
  );
};

export const mapSlotView: FittingView<MapSlot> = { ...KIND_WORDS['map-slot'], Form };
