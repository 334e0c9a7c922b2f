import type { LoadingCaseResult } from '../../../../inspection/index.ts';
import { Heading } from '../../parts/index.ts';
import { useEditor } from '../../state/use-editor.ts';
import { useNames } from '../../state/use-names.ts';
import { useUnits } from '../../state/use-units.ts';
import sheet from '../sheet.module.css';
import { BalancePicture } from './balance-picture.tsx';
import styles from './inspect.module.css';
import { LoadGauge } from './load-gauge.tsx';

/** Loads and balance in every loading case. */
export const Loads = ({ cases }: { readonly cases: readonly LoadingCaseResult[] }) => {
  const units = useUnits();
  const names = useNames();
  const ratings = useEditor((editor) => editor.history.design.vehicle.ratings);
  if (cases.length === 0)
    return (
      <>
        <Heading level={3} title="Weight" />
        <p className={sheet.soft}>
          Axle loads need the weigh slip, the wheelbase and the place of the sill behind the rear axle: Survey, Vehicle.
        </p>
      </>
    );
  return (
    <>
      <Heading level={3} title="Weight" aside="in each loading case; the long tick is the rating" />
      <div className={styles.cases}>
        {cases.map((one, i) => (
          <div key={one.id} className={styles.case}>
            <span>
              <span className={styles.dot}>{i + 1}</span> {names.nameOf(one.id)}
            </span>
            <LoadGauge label="Gross" kg={one.totalKg} ratingKg={ratings.grossKg} units={units} />
            <LoadGauge label="Front" kg={one.frontKg} ratingKg={ratings.frontAxleKg} units={units} />
            <LoadGauge label="Rear" kg={one.rearKg} ratingKg={ratings.rearAxleKg} units={units} />
          </div>
        ))}
      </div>
      <BalancePicture cases={cases} />
    </>
  );
};
