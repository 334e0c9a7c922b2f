import { sayFitProblem } from '../../../../../says/index.ts';
import { SeverityMark } from '../../../parts/index.ts';
import { useUnits } from '../../../state/use-units.ts';
import { useCabinet } from '../use-cabinet.ts';
import { CarcassSettings } from './carcass-settings.tsx';
import { GearSettings } from './gear-settings.tsx';
import { OpeningSettings } from './opening-settings.tsx';
import { nodeNames, problemsOf } from './problems.ts';
import styles from './settings.module.css';

/** What could not be solved at what is selected, in words. */
const Problems = () => {
  const { design, fitOut, chosen } = useCabinet();
  const units = useUnits();
  const problems = problemsOf(design, fitOut, chosen);
  if (problems.length === 0) return null;
  const names = nodeNames(design);
  return (
    <ul className={styles.problems}>
      {problems.map((problem) => (
        <li key={`${problem.code} ${problem.at} ${problem.axis}`}>
          <SeverityMark severity="stop" />
          <span>{sayFitProblem(problem, units, names)}.</span>
        </li>
      ))}
    </ul>
  );
};

/** The few settings that matter for what is selected, with what it came to beside them. */
export const Settings = () => {
  const { chosen } = useCabinet();
  const { gear, opening, carcass } = chosen;
  return (
    <section className={styles.settings}>
      {gear ? (
        <GearSettings key={gear.id} gear={gear} />
      ) : opening ? (
        <OpeningSettings key={opening.id} opening={opening} />
      ) : carcass ? (
        <CarcassSettings key={carcass.id} carcass={carcass} />
      ) : null}
      <Problems />
    </section>
  );
};
