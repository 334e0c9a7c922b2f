import type { CylinderClamp } from '../../../design/index.ts';
import { ChoiceField, NumberField } from '../parts/index.ts';
import { HardwareField } from './catalog-fields.tsx';
import type { FittingView } from './fitting-view.ts';
import styles from './fittings.module.css';
import { KIND_WORDS } from './kind-words.ts';
import { LYING_CHOICES } from './lying-choices.ts';
import { useChangeFitting } from './use-change-fitting.ts';

const Form: FittingView<CylinderClamp>['Form'] = ({ opening, fitting }) => {
  const change = useChangeFitting<CylinderClamp>(opening);
  return (
    <div className={styles.fields}>
      <HardwareField
        label="Clamp"
        value={fitting.clamp}
        kinds={['clamp', 'cradle']}
        none="choose one"
        onChange={(clamp) => clamp !== null && change('change the clamp', { clamp })}
      />
      <NumberField
        label="Clamps"
        value={fitting.clamps}
        min={1}
        max={4}
        onCommit={(clamps) => change('change the number of clamps', { clamps: Math.round(clamps) })}
      />
      <ChoiceField
        label="Cylinder lies"
        value={fitting.lies}
        choices={LYING_CHOICES}
        onCommit={(lies) => change('change how the cylinder lies', { lies })}
      />
    </div>
  );
};

export const cylinderClampView: FittingView<CylinderClamp> = { ...KIND_WORDS['cylinder-clamp'], Form };
