import { NEEDS, type Need } from '../../../../catalog/index.ts';
import { changeGear, type Gear, removeGear } from '../../../../design/index.ts';
import { Button, ChoiceField, LengthField, MassField, TextField, ToggleChip } from '../../parts/index.ts';
import { useEditor } from '../../state/use-editor.ts';
import { useUnits } from '../../state/use-units.ts';
import sheet from '../sheet.module.css';
import styles from './gear.module.css';

const SIDES = ['Length', 'Width', 'Height'] as const;

const MASS_FROM: readonly { readonly value: Gear['massFrom']; readonly label: string }[] = [
  { value: 'measured', label: 'measured' },
  { value: 'catalogue', label: 'the catalogue' },
  { value: 'estimated', label: 'an estimate' },
];

const STANCES = [
  { value: 'upright', label: 'upright' },
  { value: 'on-side', label: 'on its side' },
  { value: 'on-back', label: 'on its back' },
] as const;

const TURNS = ['0', '90', '180', '270'] as const;

const Place = ({ gear }: { readonly gear: Gear }) => {
  const edit = useEditor((editor) => editor.edit);
  const units = useUnits();
  const { place } = gear;
  if (!place) return null;
  const change = (label: string, part: Partial<NonNullable<Gear['place']>>): void =>
    edit(label, (design) => changeGear(design, gear.id, { place: { ...place, ...part } }));
  return (
    <div className={sheet.fields}>
      <ChoiceField
        label="Lies"
        value={place.stance}
        choices={STANCES}
        onCommit={(stance) => change(`lay ${gear.name} otherwise`, { stance })}
      />
      <ChoiceField
        label="Turned by"
        value={TURNS.find((turn) => Number(turn) === place.turnDeg) ?? '0'}
        choices={TURNS.map((turn) => ({ value: turn, label: `${turn}°` }))}
        onCommit={(turn) =>
          change(`turn ${gear.name}`, { turnDeg: turn === '90' ? 90 : turn === '180' ? 180 : turn === '270' ? 270 : 0 })
        }
      />
      {(['From the left', 'From the face', 'Up'] as const).map((label, i) => (
        <LengthField
          key={label}
          label={label}
          valueMm={place.at[i] ?? 0}
          units={units}
          min={0}
          onCommit={(mm) =>
            change(`move ${gear.name}`, {
              at: [i === 0 ? mm : place.at[0], i === 1 ? mm : place.at[1], i === 2 ? mm : place.at[2]],
            })
          }
        />
      ))}
    </div>
  );
};

/** Everything about one piece of gear, under its row. */
export const GearDetail = ({ gear }: { readonly gear: Gear }) => {
  const edit = useEditor((editor) => editor.edit);
  const units = useUnits();
  const change = (label: string, part: Partial<Omit<Gear, 'id'>>): void =>
    edit(label, (design) => changeGear(design, gear.id, part));
  const toggle = (need: Need): void =>
    change(`change how ${gear.name} is kept`, {
      needs: gear.needs.includes(need) ? gear.needs.filter((one) => one !== need) : [...gear.needs, need],
    });
  return (
    <div className={styles.detail}>
      <div className={sheet.fields}>
        <TextField
          label="Name"
          required
          value={gear.name}
          onCommit={(name) => change('name a piece of gear', { name })}
        />
        {SIDES.map((label, i) => (
          <LengthField
            key={label}
            label={label}
            valueMm={gear.sizeMm[i] ?? 0}
            units={units}
            min={1}
            onCommit={(mm) =>
              change(`change the size of ${gear.name}`, {
                sizeMm: [i === 0 ? mm : gear.sizeMm[0], i === 1 ? mm : gear.sizeMm[1], i === 2 ? mm : gear.sizeMm[2]],
              })
            }
          />
        ))}
        <MassField
          label="Mass"
          valueKg={gear.massKg}
          units={units}
          onCommit={(massKg) => change(`weigh ${gear.name}`, { massKg, massFrom: 'measured', massSigmaKg: 0 })}
        />
        <ChoiceField
          label="Mass from"
          value={gear.massFrom}
          choices={MASS_FROM}
          onCommit={(massFrom) => change('say where a mass is from', { massFrom })}
        />
        <TextField
          label="Who reaches for it"
          value={gear.user}
          onCommit={(user) => change(`say who reaches for ${gear.name}`, { user })}
        />
      </div>
      <fieldset className={styles.needs} style={{ border: 0, padding: 0, margin: 0 }}>
        <legend className={`${sheet.soft} ${sheet.small}`}>How it must be kept</legend>
        {NEEDS.map((need) => (
          <ToggleChip key={need} pressed={gear.needs.includes(need)} onClick={() => toggle(need)}>
            {need.replace(/-/g, ' ')}
          </ToggleChip>
        ))}
      </fieldset>
      <Place gear={gear} />
      <div>
        <Button small onClick={() => edit(`remove ${gear.name}`, (design) => removeGear(design, gear.id))}>
          Remove from the list
        </Button>
      </div>
    </div>
  );
};
