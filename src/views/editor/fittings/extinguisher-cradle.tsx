import type { ExtinguisherCradle } from '../../../design/index.ts';
import { ChoiceField } from '../parts/index.ts';
import { HardwareField } from './catalog-fields.tsx';
import type { FittingView } from './fitting-view.ts';
import styles from './fittings.module.css';
import { KIND_WORDS } from './kind-words.ts';
import { useChangeFitting } from './use-change-fitting.ts';

const MOUNTINGS = [
  { value: 'back', label: 'on the back' },
  { value: 'left', label: 'on the left side' },
  { value: 'right', label: 'on the right side' },
] as const;

const Form: FittingView<ExtinguisherCradle>['Form'] = ({ opening, fitting }) => {
  const change = useChangeFitting<ExtinguisherCradle>(opening);
  return (
    <div className={styles.fields}>
      <HardwareField
        label="Cradle"
        value={fitting.cradle}
        kinds={['cradle']}
        none="choose one"
        onChange={(cradle) => cradle !== null && change('change the cradle', { cradle })}
      />
      <ChoiceField
        label="Mounted"
        value={fitting.mounting}
        choices={MOUNTINGS}
        onCommit={(mounting) => change('change the mounting', { mounting })}
      />
    </div>
  );
};

export const extinguisherCradleView: FittingView<ExtinguisherCradle> = { ...KIND_WORDS['extinguisher-cradle'], Form };
