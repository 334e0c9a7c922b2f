import type { Anchor } from '../../../../../design/index.ts';
import { HardwareField } from '../../../fittings/index.ts';
import { CheckField, ChoiceField, LengthField } from '../../../parts/index.ts';
import { useUnits } from '../../../state/use-units.ts';
import styles from '../settings/settings.module.css';

type Floor = Extract<Anchor, { readonly on: 'floor' }>;
type Wall = Extract<Anchor, { readonly on: 'wall' }>;

interface FromFieldProps<E extends string> {
  readonly label: string;
  readonly value: { readonly from: E; readonly mm: number };
  readonly ends: readonly { readonly value: E; readonly label: string }[];
  readonly onChange: (value: { readonly from: E; readonly mm: number }) => void;
}

/** A length and the end that it is taped from. */
const FromField = <E extends string>({ label, value, ends, onChange }: FromFieldProps<E>) => {
  const units = useUnits();
  return (
    <>
      <LengthField
        label={label}
        valueMm={value.mm}
        units={units}
        min={0}
        onCommit={(mm) => onChange({ ...value, mm })}
      />
      <ChoiceField
        label={`${label}, from`}
        value={value.from}
        choices={ends}
        onCommit={(from) => onChange({ ...value, from })}
      />
    </>
  );
};

const ACROSS = [
  { value: 'left', label: 'the left' },
  { value: 'right', label: 'the right' },
] as const;
const DEEP = [
  { value: 'face', label: 'the open face' },
  { value: 'back', label: 'the back' },
] as const;
const ALONG = [
  { value: 'start', label: 'the face, or the left of a back' },
  { value: 'end', label: 'the far end' },
] as const;
const UP = [
  { value: 'bottom', label: 'the bottom' },
  { value: 'top', label: 'the top' },
] as const;
const SIDES = [
  { value: 'left', label: 'left side' },
  { value: 'right', label: 'right side' },
  { value: 'back', label: 'back' },
] as const;

interface AnchorFieldsProps<A extends Anchor> {
  readonly anchor: A;
  readonly onChange: (anchor: Anchor) => void;
}

const FloorFields = ({ anchor, onChange }: AnchorFieldsProps<Floor>) => (
  <>
    <FromField
      label="Across"
      value={anchor.across}
      ends={ACROSS}
      onChange={(across) => onChange({ ...anchor, across })}
    />
    <FromField label="Deep" value={anchor.deep} ends={DEEP} onChange={(deep) => onChange({ ...anchor, deep })} />
    <CheckField
      label="Head let into the floor"
      checked={anchor.letIn}
      onCommit={(letIn) => onChange({ ...anchor, letIn })}
    />
  </>
);

const WallFields = ({ anchor, onChange }: AnchorFieldsProps<Wall>) => (
  <>
    <ChoiceField
      label="Through the"
      value={anchor.side}
      choices={SIDES}
      onCommit={(side) => onChange({ ...anchor, side })}
    />
    <FromField label="Along" value={anchor.along} ends={ALONG} onChange={(along) => onChange({ ...anchor, along })} />
    <FromField label="Up" value={anchor.up} ends={UP} onChange={(up) => onChange({ ...anchor, up })} />
    <HardwareField
      label="Bracket to the wall"
      value={anchor.bracket}
      kinds={['bracket']}
      none="choose one"
      onChange={(bracket) => bracket !== null && onChange({ ...anchor, bracket })}
    />
  </>
);

/** Everything that one anchor says. */
export const AnchorFields = ({ anchor, onChange }: AnchorFieldsProps<Anchor>) => (
  <div className={styles.fields}>
    {anchor.on === 'floor' ? (
      <FloorFields anchor={anchor} onChange={onChange} />
    ) : (
      <WallFields anchor={anchor} onChange={onChange} />
    )}
    <HardwareField
      label="Bolt"
      value={anchor.bolt}
      kinds={['bolt']}
      none="choose one"
      onChange={(bolt) => bolt !== null && onChange({ ...anchor, bolt })}
    />
    <HardwareField
      label="Under the head"
      value={anchor.washer}
      kinds={['plate']}
      none="the bare head"
      onChange={(washer) => onChange({ ...anchor, washer })}
    />
    <HardwareField
      label="In the vehicle's sheet"
      value={anchor.insert}
      kinds={['insert']}
      none="through to a nut"
      onChange={(insert) => onChange({ ...anchor, insert })}
    />
    <HardwareField
      label="Behind the sheet"
      value={anchor.plate}
      kinds={['plate']}
      none="nothing"
      onChange={(plate) => onChange({ ...anchor, plate })}
    />
    <CheckField
      label="Plate bonded to the sheet"
      checked={anchor.plateBonded}
      disabled={anchor.plate === null}
      onCommit={(plateBonded) => onChange({ ...anchor, plateBonded })}
    />
  </div>
);
