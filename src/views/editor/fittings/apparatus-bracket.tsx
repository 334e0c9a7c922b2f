import type { ApparatusBracket } from '../../../design/index.ts';
import { CheckField, ChoiceField, LengthField } from '../parts/index.ts';
import { useUnits } from '../state/use-units.ts';
import { HardwareField } from './catalog-fields.tsx';
import type { FittingView } from './fitting-view.ts';
import styles from './fittings.module.css';
import { KIND_WORDS } from './kind-words.ts';
import { useChangeFitting } from './use-change-fitting.ts';

const MOUNTINGS = [
  { value: 'back', label: 'on the back' },
  { value: 'floor', label: 'on the floor' },
] as const;

const Form: FittingView<ApparatusBracket>['Form'] = ({ opening, fitting }) => {
  const change = useChangeFitting<ApparatusBracket>(opening);
  const units = useUnits();
  return (
    <div className={styles.fields}>
      <HardwareField
        label="Bracket"
        value={fitting.bracket}
        kinds={['cradle', 'clamp']}
        none="choose one"
        onChange={(bracket) => bracket !== null && change('change the bracket', { bracket })}
      />
      <ChoiceField
        label="Mounted"
        value={fitting.mounting}
        choices={MOUNTINGS}
        onCommit={(mounting) => change('change the mounting', { mounting })}
      />
      <HardwareField
        label="Strap over the set"
        value={fitting.strap}
        kinds={['strap']}
        none="none"
        onChange={(strap) => change('change the strap', { strap })}
      />
      <HardwareField
        label="Positive lock"
        value={fitting.lock}
        kinds={['latch']}
        none="none"
        onChange={(lock) => change('change the lock', { lock })}
      />
      <CheckField
        label="Room for the next larger cylinder"
        checked={fitting.nextSizeUp}
        onCommit={(nextSizeUp) => change('change what cylinder is allowed for', { nextSizeUp })}
      />
      <LengthField
        label="Set comes straight out by"
        valueMm={fitting.releaseStrokeMm}
        units={units}
        min={1}
        hint={fitting.releaseStrokeMm === null ? 'Empty takes the house rule. That way is checked clear.' : undefined}
        onCommit={(releaseStrokeMm) => change('change the stroke', { releaseStrokeMm })}
        onClear={() => change('change the stroke', { releaseStrokeMm: null })}
      />
    </div>
  );
};

export const apparatusBracketView: FittingView<ApparatusBracket> = { ...KIND_WORDS['apparatus-bracket'], Form };
