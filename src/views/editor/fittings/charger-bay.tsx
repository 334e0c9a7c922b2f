import type { ChargerBay } from '../../../design/index.ts';
import { LengthField } from '../parts/index.ts';
import { useUnits } from '../state/use-units.ts';
import { HardwareField } from './catalog-fields.tsx';
import { ChargerRows } from './charger-rows.tsx';
import type { FittingView } from './fitting-view.ts';
import styles from './fittings.module.css';
import { KIND_WORDS } from './kind-words.ts';
import { useChangeFitting } from './use-change-fitting.ts';

const Form: FittingView<ChargerBay>['Form'] = ({ opening, fitting }) => {
  const change = useChangeFitting<ChargerBay>(opening);
  const units = useUnits();
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
