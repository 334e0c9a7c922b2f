import { type Carcass, changeCarcass, type Stand } from '../../../../../design/index.ts';
import { MaterialField } from '../../../fittings/index.ts';
import { ChoiceField, LengthField, NumberField } from '../../../parts/index.ts';
import { useUnits } from '../../../state/use-units.ts';
import styles from '../settings/settings.module.css';
import { useCabinet } from '../use-cabinet.ts';

const KINDS = [
  { value: 'none', label: 'its own bottom' },
  { value: 'riser', label: 'a riser of runners' },
  { value: 'sub-floor', label: 'a sub-floor of sheet' },
] as const;

/** Of ordinary make: high enough for a hand or a drain under it; three runners carry a common bottom. */
const FRESH: { readonly [K in Stand['kind']]: (carcass: Carcass) => Stand } = {
  none: () => ({ kind: 'none' }),
  riser: () => ({ kind: 'riser', heightMm: 100, runners: 3 }),
  'sub-floor': ({ material }) => ({ kind: 'sub-floor', material }),
};

/** What a carcass stands on; its outside height stays the same. */
export const StandFields = ({ carcass }: { readonly carcass: Carcass }) => {
  const { editor } = useCabinet();
  const units = useUnits();
  const { stand } = carcass;
  const change = (next: Stand): void =>
    editor.getState().edit('change what a carcass stands on', (now) => changeCarcass(now, carcass.id, { stand: next }));
  return (
    <div className={styles.fields}>
      <ChoiceField
        label="Stands on"
        value={stand.kind}
        choices={KINDS}
        onCommit={(kind) => change(FRESH[kind](carcass))}
      />
      {stand.kind === 'riser' ? (
        <>
          <LengthField
            label="Riser height"
            valueMm={stand.heightMm}
            units={units}
            min={1}
            max={carcass.size.height}
            onCommit={(heightMm) => change({ ...stand, heightMm })}
          />
          <NumberField
            label="Runners"
            value={stand.runners}
            whole
            min={2}
            max={12}
            step={1}
            onCommit={(runners) => change({ ...stand, runners })}
          />
        </>
      ) : null}
      {stand.kind === 'sub-floor' ? (
        <MaterialField
          label="Sub-floor of"
          value={stand.material}
          onChange={(material) => change({ ...stand, material })}
        />
      ) : null}
    </div>
  );
};
