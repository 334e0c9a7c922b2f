import { useState } from 'react';
import type { Device } from '../../../catalog/index.ts';
import { type ChargerBay, changeFitting, freshIds } from '../../../design/index.ts';
import { Button, ChoiceField } from '../parts/index.ts';
import { useBench } from '../state/bench.ts';
import { useEditorParts } from '../state/use-editor.ts';
import { deviceChoices } from './choices.ts';
import { changedDevice, withDevice, withoutDevice } from './device-rows.ts';
import type { FittingFormProps } from './fitting-view.ts';
import styles from './fittings.module.css';
import { useChangeFitting } from './use-change-fitting.ts';

/** What stands on a floor: no cut-out in a plate, and no fan, which goes on a wall. */
const standsFree = (device: Device | undefined): boolean =>
  device !== undefined && device.cutout.shape === 'none' && device.kind !== 'fan';

/** The chargers of a bay, row by row from the back. */
export const ChargerRows = ({ opening, fitting }: FittingFormProps<ChargerBay>) => {
  const { catalog } = useBench();
  const change = useChangeFitting<ChargerBay>(opening);
  const { selection, edit } = useEditorParts((editor) => ({ selection: editor.selection, edit: editor.edit }));
  const [adding, setAdding] = useState('');
  const { rows } = fitting;
  const chargers = (present: string | null) =>
    deviceChoices(catalog, present).filter(({ value }) => value === present || standsFree(catalog.devices.get(value)));
  const add = (device: string, row: number): void =>
    edit('add a charger', (design) => {
      const id = freshIds(design)('device');
      return changeFitting(design, opening, (draft) => {
        if (draft.kind === 'charger-bay') Object.assign(draft, { rows: withDevice(rows, row, { id, device }) });
      });
    });
  return (
    <div className={styles.rows}>
      {rows.map((row, r) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: rows are known by their place from the back
        <fieldset key={r} className={styles.row}>
          <legend>{r === 0 ? 'Row at the back' : `Row ${r + 1} from the back`}</legend>
          {row.map(({ id, device }) => (
            <div key={id} className={styles.device} data-selected={selection.some((one) => one.startsWith(id))}>
              <ChoiceField
                label={`Charger in row ${r + 1}`}
                bare
                value={device}
                choices={chargers(device)}
                onCommit={(next) => change('change a charger', { rows: changedDevice(rows, id, next) })}
              />
              <Button
                small
                look="quiet"
                aria-label="Take it out"
                title="Take it out"
                onClick={() => change('take a charger out', { rows: withoutDevice(rows, id) })}
              >
                ✕
              </Button>
            </div>
          ))}
        </fieldset>
      ))}
      <div className={styles.add}>
        <ChoiceField
          label="Add a charger"
          value={adding}
          choices={[{ value: '', label: 'choose…' }, ...chargers(null)]}
          onCommit={setAdding}
        />
        <Button disabled={adding === ''} onClick={() => add(adding, Math.max(0, rows.length - 1))}>
          to the front row
        </Button>
        <Button disabled={adding === ''} onClick={() => add(adding, rows.length)}>
          as a new row
        </Button>
      </div>
    </div>
  );
};
