import type { Solid } from '../../../../design/index.ts';
import { Button, LengthField } from '../../parts/index.ts';
import { useUnits } from '../../state/use-units.ts';
import styles from '../sheet.module.css';

type Point = Extract<Solid, { shape: 'box' }>['min'];

const AXIS_NAMES = ['forward', 'left', 'up'] as const;

interface PointFieldsProps {
  readonly label: string;
  readonly at: Point;
  readonly onCommit: (at: Point) => void;
}

/** The three coordinates of a point: forward of the sill, to the left of the middle, up from the floor. */
export const PointFields = ({ label, at, onCommit }: PointFieldsProps) => {
  const units = useUnits();
  return AXIS_NAMES.map((axis, i) => (
    <LengthField
      key={axis}
      label={`${label}, ${axis}`}
      valueMm={at[i] ?? 0}
      units={units}
      onCommit={(mm) => onCommit([i === 0 ? mm : at[0], i === 1 ? mm : at[1], i === 2 ? mm : at[2]])}
    />
  ));
};

type OutlinePoints = readonly (readonly [number, number])[];

interface OutlineFieldsProps {
  readonly label: string;
  /** What the two numbers of a point are. */
  readonly axes: readonly [string, string];
  readonly points: OutlinePoints;
  readonly least: number;
  readonly onCommit: (points: OutlinePoints) => void;
}

const halfway = (points: OutlinePoints, after: number): readonly [number, number] => {
  const here = points[after] ?? [0, 0];
  const next = points[after + 1] ?? points[0] ?? here;
  return [Math.round((here[0] + next[0]) / 2), Math.round((here[1] + next[1]) / 2)];
};

/** The corners of an outline, two figures a corner. */
export const OutlineFields = ({ label, axes, points, least, onCommit }: OutlineFieldsProps) => {
  const units = useUnits();
  return (
    <div className={styles.group}>
      <span className={`${styles.soft} ${styles.small}`}>
        {label}: {axes[0]}, {axes[1]}
      </span>
      {points.map((point, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a corner is known by its place in the list
        <div key={i} style={{ display: 'grid', gridTemplateColumns: '1.6em 1fr 1fr auto auto', gap: 6 }}>
          <span className={styles.soft} style={{ alignSelf: 'center' }}>
            {i + 1}
          </span>
          {axes.map((axis, a) => (
            <LengthField
              key={axis}
              bare
              label={`${label}, corner ${i + 1}, ${axis}`}
              valueMm={point[a] ?? 0}
              units={units}
              onCommit={(mm) =>
                onCommit(points.map((one, k) => (k === i ? (a === 0 ? [mm, one[1]] : [one[0], mm]) : one)))
              }
            />
          ))}
          <Button
            look="quiet"
            small
            aria-label={`Add a corner after ${i + 1}`}
            onClick={() => onCommit(points.toSpliced(i + 1, 0, halfway(points, i)))}
          >
            +
          </Button>
          <Button
            look="quiet"
            small
            aria-label={`Remove corner ${i + 1}`}
            disabled={points.length <= least}
            onClick={() => onCommit(points.toSpliced(i, 1))}
          >
            −
          </Button>
        </div>
      ))}
    </div>
  );
};

interface SolidFieldsProps {
  readonly solid: Solid;
  readonly onCommit: (solid: Solid) => void;
  /** What the two ends of a round bar are called. */
  readonly ends?: readonly [from: string, to: string];
}

const ENDS = ['One end', 'Other end'] as const;

const BoxFields = ({
  solid,
  onCommit,
}: {
  readonly solid: Extract<Solid, { shape: 'box' }>;
  readonly onCommit: SolidFieldsProps['onCommit'];
}) => (
  <>
    <PointFields label="Low corner" at={solid.min} onCommit={(min) => onCommit({ ...solid, min })} />
    <PointFields label="High corner" at={solid.max} onCommit={(max) => onCommit({ ...solid, max })} />
  </>
);

/** Where a solid of the survey stands and how big it is. */
export const SolidFields = ({ solid, onCommit, ends = ENDS }: SolidFieldsProps) => {
  const units = useUnits();
  if (solid.shape === 'box')
    return (
      <div className={styles.fields}>
        <BoxFields solid={solid} onCommit={onCommit} />
      </div>
    );
  if (solid.shape === 'capsule')
    return (
      <div className={styles.fields}>
        <PointFields label={ends[0]} at={solid.from} onCommit={(from) => onCommit({ ...solid, from })} />
        <PointFields label={ends[1]} at={solid.to} onCommit={(to) => onCommit({ ...solid, to })} />
        <LengthField
          label="Radius"
          valueMm={solid.radiusMm}
          units={units}
          min={0.5}
          onCommit={(radiusMm) => onCommit({ ...solid, radiusMm })}
        />
      </div>
    );
  return (
    <div className={styles.group}>
      <div className={styles.fields}>
        <LengthField
          label="From, left"
          valueMm={solid.fromY}
          units={units}
          onCommit={(fromY) => onCommit({ ...solid, fromY })}
        />
        <LengthField
          label="To, left"
          valueMm={solid.toY}
          units={units}
          onCommit={(toY) => onCommit({ ...solid, toY })}
        />
      </div>
      <OutlineFields
        label="Side outline"
        axes={['forward', 'up']}
        points={solid.outline}
        least={3}
        onCommit={(outline) => onCommit({ ...solid, outline: outline.map(([x, z]) => [x, z] as const) })}
      />
    </div>
  );
};

export const SOLID_STARTS: readonly { readonly label: string; readonly solid: Solid }[] = [
  { label: 'a box', solid: { shape: 'box', min: [100, -50, 0], max: [200, 50, 100] } },
  { label: 'a round bar', solid: { shape: 'capsule', from: [100, 500, 300], to: [100, 500, 700], radiusMm: 15 } },
  {
    label: 'a side outline',
    solid: {
      shape: 'side-prism',
      outline: [
        [1500, 0],
        [1500, 600],
        [1300, 600],
      ],
      fromY: -600,
      toY: 600,
    },
  },
];

export const SOLID_WORDS: Readonly<Record<Solid['shape'], string>> = {
  box: 'box',
  capsule: 'round bar',
  'side-prism': 'side outline',
};
