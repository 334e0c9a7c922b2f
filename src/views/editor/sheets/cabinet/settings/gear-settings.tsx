import { type Gear, type GearPlace, placeGear } from '../../../../../design/index.ts';
import { ChoiceField, LengthField } from '../../../parts/index.ts';
import { useUnits } from '../../../state/use-units.ts';
import { openingWords } from '../names.ts';
import { useCabinet } from '../use-cabinet.ts';
import styles from './settings.module.css';

const STANCES: readonly { readonly value: GearPlace['stance']; readonly label: string }[] = [
  { value: 'upright', label: 'upright' },
  { value: 'on-side', label: 'on its side' },
  { value: 'on-back', label: 'on its back' },
];

const TURNS: Readonly<Record<string, GearPlace['turnDeg']>> = { '0': 0, '90': 90, '180': 180, '270': 270 };

const AXES = ['From the left', 'From the face', 'Above the floor'] as const;

/** How one piece of gear stands. What it is and what it needs is kept on the gear sheet. */
export const GearSettings = ({ gear }: { readonly gear: Gear }) => {
  const { editor, chosen } = useCabinet();
  const units = useUnits();
  const { place } = gear;
  const change = (label: string, part: Partial<GearPlace>): void => {
    if (place) editor.getState().edit(label, (now) => placeGear(now, gear.id, { ...place, ...part }));
  };
  return (
    <>
      {place ? (
        <div className={styles.fields}>
          <ChoiceField
            label="Lies"
            value={place.stance}
            choices={STANCES}
            onCommit={(stance) => change(`lay ${gear.name} otherwise`, { stance })}
          />
          <ChoiceField
            label="Turned by"
            value={String(place.turnDeg)}
            choices={Object.keys(TURNS).map((turn) => ({ value: turn, label: `${turn}°` }))}
            onCommit={(turn) => change(`turn ${gear.name}`, { turnDeg: TURNS[turn] ?? 0 })}
          />
          {AXES.map((label, axis) => (
            <LengthField
              key={label}
              label={label}
              valueMm={place.at[axis] ?? 0}
              units={units}
              min={0}
              onCommit={(mm) => {
                const [x, y, z] = place.at;
                change(`move ${gear.name}`, { at: axis === 0 ? [mm, y, z] : axis === 1 ? [x, mm, z] : [x, y, mm] });
              }}
            />
          ))}
          {chosen.opening ? <p className={styles.hint}>In {openingWords(chosen.opening)}.</p> : null}
        </div>
      ) : (
        <p className={styles.hint}>Stands nowhere yet. Drag it from the list into an opening of the face map.</p>
      )}
    </>
  );
};
