import type { AxisPlace, Carcass, NodeId } from '../../../../../design/index.ts';
import { ChoiceField, LengthField } from '../../../parts/index.ts';
import { useUnits } from '../../../state/use-units.ts';
import { carcassWords } from '../names.ts';
import { useCabinet } from '../use-cabinet.ts';
import { lowCorner } from './low-corner.ts';
import styles from './settings.module.css';

type Axis = 'x' | 'y' | 'z';

interface AxisWords {
  readonly at: string;
  /** On the side of greater coordinates of another carcass, and on the other side. */
  readonly plus: string;
  readonly minus: string;
}

/** x forward, y left, z up. */
const WORDS: Readonly<Record<Axis, AxisWords>> = {
  x: { at: 'forward of the sill', plus: 'in front of', minus: 'behind' },
  y: { at: 'right side, left of the centre line', plus: 'left of', minus: 'right of' },
  z: { at: 'above the floor', plus: 'on top of', minus: 'under' },
};

const TITLES: Readonly<Record<Axis, string>> = { x: 'Along the vehicle', y: 'Across the vehicle', z: 'Height' };

const AT = 'at';

/** What a choice says, as one text: `at`, or the side and the carcass. */
const keyOf = (place: AxisPlace): string => (place.rule === 'at' ? AT : `${place.side} ${place.carcass}`);

interface AxisFieldsProps {
  readonly carcass: Carcass;
  readonly axis: Axis;
  readonly onChange: (axis: Axis, place: AxisPlace) => void;
}

const AxisFields = ({ carcass, axis, onChange }: AxisFieldsProps) => {
  const { design, fitOut } = useCabinet();
  const units = useUnits();
  const place = carcass.place[axis];
  const words = WORDS[axis];
  const others = design.cabinet.carcasses.filter((other) => other.id !== carcass.id);
  const choices = [
    { value: AT, label: `measured: ${words.at}` },
    ...others.flatMap((other) =>
      (['plus', 'minus'] as const).map((side) => ({
        value: `${side} ${other.id}`,
        label: `${words[side]} ${carcassWords(other)}`,
      })),
    ),
  ];
  const low = lowCorner(fitOut, carcass.id)?.[axis === 'x' ? 0 : axis === 'y' ? 1 : 2] ?? 0;
  const choose = (key: string): void => {
    if (key === AT) onChange(axis, { rule: 'at', mm: low });
    const [side, id] = key.split(' ');
    const other = others.find((one) => one.id === id);
    if (other)
      onChange(axis, {
        rule: 'beside',
        carcass: other.id as NodeId,
        side: side === 'plus' ? 'plus' : 'minus',
        gapMm: 0,
      });
  };
  return (
    <>
      <ChoiceField label={TITLES[axis]} value={keyOf(place)} choices={choices} onCommit={choose} />
      {place.rule === 'at' ? (
        <LengthField
          label="By"
          valueMm={place.mm}
          units={units}
          onCommit={(mm) => onChange(axis, { rule: 'at', mm })}
        />
      ) : (
        <LengthField
          label="Gap"
          valueMm={place.gapMm}
          units={units}
          min={0}
          onCommit={(gapMm) => onChange(axis, { ...place, gapMm })}
        />
      )}
    </>
  );
};

interface PlaceFieldsProps {
  readonly carcass: Carcass;
  readonly onChange: (axis: Axis, place: AxisPlace) => void;
}

/** Where a carcass stands, axis by axis: measured, or beside another one. */
export const PlaceFields = ({ carcass, onChange }: PlaceFieldsProps) => (
  <div className={styles.pairs}>
    {(['x', 'y', 'z'] as const).map((axis) => (
      <AxisFields key={axis} carcass={carcass} axis={axis} onChange={onChange} />
    ))}
  </div>
);
