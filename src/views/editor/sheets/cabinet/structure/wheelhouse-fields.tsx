import { WHEELHOUSE_SIDES, type Wheelhouse } from '../../../../../design/index.ts';
import { askFor, type WheelhouseAsk } from '../../../../../inspection/index.ts';
import { sayWheelhouse } from '../../../../../says/index.ts';
import { Button, ChoiceField, LengthField } from '../../../parts/index.ts';
import { useUnits } from '../../../state/use-units.ts';
import styles from '../settings/settings.module.css';
import { SIDE_WORDS } from './structure-words.ts';

const SIDES = WHEELHOUSE_SIDES.map((value) => ({ value, label: SIDE_WORDS[value] }));

interface WheelhouseFieldsProps {
  readonly wheelhouse: Wheelhouse;
  /** What the wheelhouses of the survey ask of this carcass. */
  readonly asks: readonly WheelhouseAsk[];
  readonly onChange: (wheelhouse: Wheelhouse) => void;
}

/** The clear room that a carcass leaves for a wheelhouse, measured from its outside. */
export const WheelhouseFields = ({ wheelhouse, asks, onChange }: WheelhouseFieldsProps) => {
  const units = useUnits();
  const { side, fromMm, lengthMm, inMm, upMm } = wheelhouse;
  // The one that it is for, or the only one that there is.
  const ask = askFor(wheelhouse, asks) ?? (asks.length === 1 ? (asks[0] ?? null) : null);
  const said = ask && sayWheelhouse(wheelhouse, ask, units);
  const lengths = [
    {
      key: 'fromMm' as const,
      label: side === 'back' ? 'Begins, from the left' : 'Begins, from the face',
      mm: fromMm,
      least: 0,
      to: (mm: number): Wheelhouse => ({ ...wheelhouse, fromMm: mm }),
    },
    {
      key: 'lengthMm' as const,
      label: 'Long',
      mm: lengthMm,
      least: 1,
      to: (mm: number): Wheelhouse => ({ ...wheelhouse, lengthMm: mm }),
    },
    {
      key: 'inMm' as const,
      label: 'Reaches in',
      mm: inMm,
      least: 1,
      to: (mm: number): Wheelhouse => ({ ...wheelhouse, inMm: mm }),
    },
    {
      key: 'upMm' as const,
      label: 'High',
      mm: upMm,
      least: 1,
      to: (mm: number): Wheelhouse => ({ ...wheelhouse, upMm: mm }),
    },
  ];
  return (
    <div className={styles.settings}>
      <div className={styles.fields}>
        <ChoiceField
          label="Lies at the"
          value={side}
          choices={SIDES}
          onCommit={(next) => onChange({ ...wheelhouse, side: next })}
        />
        {lengths.map(({ key, label, mm, least, to }) => (
          <LengthField
            key={label}
            label={label}
            valueMm={mm}
            units={units}
            min={least}
            hint={said?.asks[key]}
            onCommit={(next) => onChange(to(next))}
          />
        ))}
      </div>
      {said && ask ? (
        <>
          <p className={styles.least}>
            <span data-short={said.short}>{said.typed}</span> {said.why}
          </p>
          <div>
            <Button small onClick={() => onChange({ ...ask.cut, id: wheelhouse.id })}>
              Take it from the survey
            </Button>
          </div>
        </>
      ) : (
        <p className={styles.hint}>The survey has no wheelhouse that comes into the carcass here.</p>
      )}
    </div>
  );
};
