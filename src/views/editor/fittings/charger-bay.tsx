import { type ChargerBay, changeFitting, freshIds } from '../../../design/index.ts';
import { ChoiceField, LengthField } from '../parts/index.ts';
import { useBench } from '../state/bench.ts';
import { useEditor } from '../state/use-editor.ts';
import { useUnits } from '../state/use-units.ts';
import { HardwareField } from './catalog-fields.tsx';
import { ChargerRows } from './charger-rows.tsx';
import { deviceChoices, NO_CHOICE } from './choices.ts';
import type { FittingView } from './fitting-view.ts';
import styles from './fittings.module.css';
import { KIND_WORDS } from './kind-words.ts';
import { useChangeFitting } from './use-change-fitting.ts';

const Form: FittingView<ChargerBay>['Form'] = ({ opening, fitting }) => {
  const change = useChangeFitting<ChargerBay>(opening);
  const units = useUnits();
  const { catalog } = useBench();
  const edit = useEditor((editor) => editor.edit);
  const fans = deviceChoices(catalog, fitting.fan?.device ?? null).filter(
    ({ value }) => value === fitting.fan?.device || catalog.devices.get(value)?.kind === 'fan',
  );
  const setFan = (device: string): void =>
    edit('change the fan', (design) => {
      const fan = device === NO_CHOICE ? null : { id: fitting.fan?.id ?? freshIds(design)('device'), device };
      return changeFitting(design, opening, (draft) => {
        if (draft.kind === 'charger-bay') draft.fan = fan;
      });
    });
  return (
    <>
      <div className={styles.fields}>
        <HardwareField
          label="Vents in the back"
          value={fitting.vent}
          kinds={['vent']}
          none="none, the bay stays open"
          onChange={(vent) => change('change the vents', { vent })}
        />
        <ChoiceField
          label="Fan high in the back"
          value={fitting.fan?.device ?? NO_CHOICE}
          choices={[{ value: NO_CHOICE, label: 'none, vents alone' }, ...fans]}
          onCommit={setFan}
        />
        <LengthField
          label="Room above the chargers"
          valueMm={fitting.aboveMm}
          units={units}
          min={0}
          onCommit={(aboveMm) => change('change the room above', { aboveMm })}
        />
      </div>
      <ChargerRows opening={opening} fitting={fitting} />
    </>
  );
};

export const chargerBayView: FittingView<ChargerBay> = { ...KIND_WORDS['charger-bay'], Form };
