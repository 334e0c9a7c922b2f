import { changeVehicle, freshIds, type OwnCase } from '../../../../design/index.ts';
import { Button, CheckField, Heading, LengthField, MassField, NumberField, TextField } from '../../parts/index.ts';
import { useEditorParts } from '../../state/use-editor.ts';
import { useUnits } from '../../state/use-units.ts';
import sheet from '../sheet.module.css';

type Extra = OwnCase['extras'][number];
const PLACE = ['Forward', 'Left', 'Up'] as const;
const PERCENT = 100;

const ExtraFields = ({
  extra,
  onChange,
  onRemove,
}: {
  readonly extra: Extra;
  readonly onChange: (part: Partial<Extra>) => void;
  readonly onRemove: () => void;
}) => {
  const units = useUnits();
  return (
    <div className={sheet.fields}>
      <TextField label="Also aboard" value={extra.name} onCommit={(name) => onChange({ name })} />
      <MassField label="Mass" valueKg={extra.kg} units={units} decimals={0} onCommit={(kg) => onChange({ kg })} />
      {PLACE.map((label, axis) => (
        <LengthField
          key={label}
          label={label}
          valueMm={extra.at[axis] ?? 0}
          units={units}
          onCommit={(mm) =>
            onChange({
              at: [axis === 0 ? mm : extra.at[0], axis === 1 ? mm : extra.at[1], axis === 2 ? mm : extra.at[2]],
            })
          }
        />
      ))}
      <div style={{ alignSelf: 'end' }}>
        <Button look="quiet" aria-label={`Remove ${extra.name}`} onClick={onRemove}>
          Remove
        </Button>
      </div>
    </div>
  );
};

const CaseFields = ({ own }: { readonly own: OwnCase }) => {
  const { vehicle, edit } = useEditorParts((editor) => ({ vehicle: editor.history.design.vehicle, edit: editor.edit }));
  const set = (label: string, change: (cases: readonly OwnCase[]) => readonly OwnCase[]): void =>
    edit(label, (now) => changeVehicle(now, { ownCases: change(now.vehicle.ownCases) }));
  const change = (part: Partial<OwnCase>): void =>
    set('change a loading case', (cases) => cases.map((one) => (one.id === own.id ? { ...one, ...part } : one)));
  const changeExtra = (at: number, part: Partial<Extra>): void =>
    change({ extras: own.extras.map((extra, i) => (i === at ? { ...extra, ...part } : extra)) });
  return (
    <>
      <div className={sheet.fields}>
        <TextField label="Loading case" value={own.name} onCommit={(name) => name !== '' && change({ name })} />
        <NumberField
          label="Tank"
          value={own.fuelShare === null ? null : Math.round(own.fuelShare * PERCENT)}
          unit="%"
          min={0}
          max={PERCENT}
          onCommit={(percent) => change({ fuelShare: percent / PERCENT })}
          onClear={() => change({ fuelShare: null })}
        />
        <CheckField
          label="Drawers and trays out"
          checked={own.traysOut}
          onCommit={(traysOut) => change({ traysOut })}
        />
        {vehicle.seats.map(({ id, name }) => (
          <CheckField
            key={id}
            label={`${name === '' ? id : name} aboard`}
            checked={own.seats.includes(id)}
            onCommit={(on) => change({ seats: on ? [...own.seats, id] : own.seats.filter((seat) => seat !== id) })}
          />
        ))}
      </div>
      {own.extras.map((extra, i) => (
        <ExtraFields
          // biome-ignore lint/suspicious/noArrayIndexKey: extras have no name of their own that stays
          key={i}
          extra={extra}
          onChange={(part) => changeExtra(i, part)}
          onRemove={() => change({ extras: own.extras.filter((_, at) => at !== i) })}
        />
      ))}
      <div className={sheet.bar}>
        <Button
          small
          onClick={() => change({ extras: [...own.extras, { name: 'load', kg: 50, sigmaKg: 0, at: [500, 0, 100] }] })}
        >
          Add something aboard
        </Button>
        <Button
          small
          look="quiet"
          onClick={() => set('remove a loading case', (cases) => cases.filter(({ id }) => id !== own.id))}
        >
          Remove {own.name}
        </Button>
      </div>
    </>
  );
};

/** The shop's own loading cases, judged like the usual ones. */
export const OwnCases = () => {
  const { vehicle, edit } = useEditorParts((editor) => ({ vehicle: editor.history.design.vehicle, edit: editor.edit }));
  const add = (): void =>
    edit('add a loading case', (now) => {
      const own: OwnCase = {
        id: freshIds(now)('case'),
        name: `own case ${now.vehicle.ownCases.length + 1}`,
        seats: now.vehicle.seats.map(({ id }) => id),
        fuelShare: null,
        traysOut: false,
        extras: [],
      };
      return changeVehicle(now, { ownCases: [...now.vehicle.ownCases, own] });
    });
  return (
    <>
      <Heading
        level={3}
        title="Loading cases of your own"
        aside="judged like the usual ones; an empty tank field leaves it as it was weighed"
        actions={
          <Button small onClick={add}>
            Add a loading case
          </Button>
        }
      />
      {vehicle.ownCases.map((own) => (
        <CaseFields key={own.id} own={own} />
      ))}
    </>
  );
};
