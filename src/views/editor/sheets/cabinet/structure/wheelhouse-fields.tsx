import { WHEELHOUSE_SIDES, type Wheelhouse } from '../../../../../design/index.ts';
import { ChoiceField, LengthField } from '../../../parts/index.ts';
import { useUnits } from '../../../state/use-units.ts';
import styles from '../settings/settings.module.css';
import { SIDE_WORDS } from './structure-words.ts';

const SIDES = WHEELHOUSE_SIDES.map((value) => ({ value, label: SIDE_WORDS[value] }));

interface WheelhouseFieldsProps {
  readonly wheelhouse: Wheelhouse;
  readonly onChange: (wheelhouse: Wheelhouse) => void;
}

/** The clear room that a carcass leaves for a wheelhouse, measured from its outside. */
export const WheelhouseFields = ({ wheelhouse, onChange }: WheelhouseFieldsProps) => {
  const units = useUnits();
  const { side, fromMm, lengthMm, inMm, upMm } = wheelhouse;
  const lengths = [
    {
      label: side === 'back' ? 'Begins, from the left' : 'Begins, from the face',
      mm: fromMm,
      least: 0,
      to: (mm: number): Wheelhouse => ({ ...wheelhouse, fromMm: mm }),
    },
    { label: 'Long', mm: lengthMm, least: 1, to: (mm: number): Wheelhouse => ({ ...wheelhouse, lengthMm: mm }) },
    { label: 'Reaches in', mm: inMm, least: 1, to: (mm: number): Wheelhouse => ({ ...wheelhouse, inMm: mm }) },
    { label: 'High', mm: upMm, least: 1, to: (mm: number): Wheelhouse => ({ ...wheelhouse, upMm: mm }) },
  ];
  return (
    <div className={styles.fields}>
      <ChoiceField
        label="Lies at the"
        value={side}
        choices={SIDES}
        onCommit={(next) => onChange({ ...wheelhouse, side: next })}
      />
      {lengths.map(({ label, mm, least, to }) => (
        <LengthField
          key={label}
          label={label}
          valueMm={mm}
          units={units}
          min={least}
          onCommit={(next) => onChange(to(next))}
        />
      ))}
    </div>
  );
};
