import type { ToolClamp } from '../../../design/index.ts';
import { ChoiceField, NumberField } from '../parts/index.ts';
import { HardwareField } from './catalog-fields.tsx';
import type { FittingView } from './fitting-view.ts';
import styles from './fittings.module.css';
import { KIND_WORDS } from './kind-words.ts';
import { LYING_CHOICES } from './lying-choices.ts';
import { useChangeFitting } from './use-change-fitting.ts';

const Form: FittingView<ToolClamp>['Form'] = ({ opening, fitting }) => {
  const change = useChangeFitting<ToolClamp>(opening);
  return (
    <div className={styles.fields}>
      <HardwareField
        label="Clamp"
        value={fitting.clamp}
        kinds={['clamp']}
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
        label="Tool lies"
        value={fitting.lies}
        choices={LYING_CHOICES}
        onCommit={(lies) => change('change how the tool lies', { lies })}
      />
      <HardwareField
        label="Over its edge"
        value={fitting.headCover}
        kinds={['clamp']}
        none="nothing"
        onChange={(headCover) => change('change what covers the edge', { headCover })}
      />
    </div>
  );
};

export const toolClampView: FittingView<ToolClamp> = { ...KIND_WORDS['tool-clamp'], Form };
