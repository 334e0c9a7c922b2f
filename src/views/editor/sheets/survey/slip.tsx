import { changeVehicle, type WeighSlip } from '../../../../design/index.ts';
import { Button, Heading, MassField, TextField } from '../../parts/index.ts';
import { useEditorParts } from '../../state/use-editor.ts';
import { useUnits } from '../../state/use-units.ts';
import styles from '../sheet.module.css';

const EMPTY_SLIP: WeighSlip = { frontKg: 0, rearKg: 0, leftKg: null, rightKg: null, note: '' };

const SIDES: readonly { readonly key: 'leftKg' | 'rightKg'; readonly label: string }[] = [
  { key: 'leftKg', label: 'Left wheels' },
  { key: 'rightKg', label: 'Right wheels' },
];

/** The weigh slip: axle weights as received, empty of people. */
export const Slip = () => {
  const { slip, edit } = useEditorParts((editor) => ({
    slip: editor.history.design.vehicle.slip,
    edit: editor.edit,
  }));
  const units = useUnits();
  const set = (label: string, next: WeighSlip | null): void => edit(label, (now) => changeVehicle(now, { slip: next }));
  if (!slip)
    return (
      <>
        <Heading level={3} title="Weigh slip" aside="the vehicle as received, nobody aboard" />
        <div className={styles.bar}>
          <span className={styles.soft}>No slip yet. Without one, axle loads cannot be predicted.</span>
          <Button onClick={() => set('enter a weigh slip', EMPTY_SLIP)}>Enter the slip</Button>
        </div>
      </>
    );
  const change = (part: Partial<WeighSlip>): void => set('change the weigh slip', { ...slip, ...part });
  return (
    <>
      <Heading
        level={3}
        title="Weigh slip"
        aside="the vehicle as received, nobody aboard"
        actions={
          <Button small onClick={() => set('remove the weigh slip', null)}>
            Remove
          </Button>
        }
      />
      <div className={styles.fields}>
        <MassField
          label="Front axle"
          valueKg={slip.frontKg}
          units={units}
          decimals={0}
          onCommit={(frontKg) => change({ frontKg })}
        />
        <MassField
          label="Rear axle"
          valueKg={slip.rearKg}
          units={units}
          decimals={0}
          onCommit={(rearKg) => change({ rearKg })}
        />
        {SIDES.map(({ key, label }) => (
          <MassField
            key={key}
            label={label}
            valueKg={slip[key]}
            units={units}
            decimals={0}
            onCommit={(kg) => change({ [key]: kg })}
            onClear={() => change({ [key]: null })}
          />
        ))}
        <div className={styles.wide}>
          <TextField label="Note" value={slip.note} onCommit={(note) => change({ note })} />
        </div>
      </div>
    </>
  );
};
