import { formatLength, type LengthUnits, type Vec2 } from '../../../../../base/index.ts';
import type { ComparedStation, ScanDifference, Section } from '../../../../../envelope/index.ts';
import { DrawingBoard } from '../../../parts/index.ts';
import { useUnits } from '../../../state/use-units.ts';
import styles from './scan.module.css';

const path = (points: readonly Vec2[]): string => points.map(([y, z]) => `${-y},${-z}`).join(' ');

/** Positive lengths carry a plus: there is more room than was taped. */
export const signedLength = (mm: number, units: LengthUnits): string => {
  const text = formatLength(mm, units);
  return mm > 0 && /[1-9]/.test(text) ? `+${text}` : text;
};

/** The greatest difference of each stretch of this length (mm) gets its number. */
const STRETCH = 180;
/** Smaller differences are not worth a number. */
const LEAST_MM = 2;

const numbered = (places: readonly ScanDifference[]): readonly ScanDifference[] => {
  const sorted = places
    .filter(({ offMm }) => Math.abs(offMm) >= LEAST_MM)
    .toSorted((a, b) => Math.abs(b.offMm) - Math.abs(a.offMm));
  const kept: ScanDifference[] = [];
  for (const place of sorted)
    if (kept.every(({ at }) => Math.hypot(at[0] - place.at[0], at[1] - place.at[1]) > STRETCH)) kept.push(place);
  return kept;
};

interface Props {
  readonly section: Section;
  readonly compared: ComparedStation;
}

/** One section from the rear: the tape in ink, the scan as a dashed line, differences between them by colour and number. */
export const ScanDifferenceDrawing = ({ section, compared: { difference, lines } }: Props) => {
  const units = useUnits();
  const ys = section.ring.map((point) => -point[0]);
  const zs = section.ring.map((point) => point[1]);
  return (
    <DrawingBoard
      label="The taped section and the scan, seen from the rear"
      from={[Math.min(...ys), Math.min(...zs)]}
      to={[Math.max(...ys), Math.max(...zs)]}
      margin={[50, 34, 50, 34]}
      tallest={330}
    >
      {(text) => (
        <>
          <polygon
            points={path(section.ring)}
            fill="var(--field)"
            stroke="var(--ink)"
            strokeWidth={1.6}
            vectorEffect="non-scaling-stroke"
          />
          {lines.map(({ points, closed }, i) => (
            <polyline
              // biome-ignore lint/suspicious/noArrayIndexKey: cut lines have no name but their order
              key={i}
              points={path(closed && points[0] ? [...points, points[0]] : points)}
              fill="none"
              stroke="var(--ink-2)"
              strokeDasharray="5 3"
              vectorEffect="non-scaling-stroke"
            />
          ))}
          {difference.places
            .filter(({ offMm }) => Math.abs(offMm) >= LEAST_MM)
            .map(({ at, to, offMm }) => (
              <line
                key={`${at[0]} ${at[1]}`}
                className={offMm > 0 ? styles.more : styles.less}
                x1={-at[0]}
                y1={-at[1]}
                x2={-to[0]}
                y2={-to[1]}
                strokeWidth={3}
                vectorEffect="non-scaling-stroke"
              />
            ))}
          {numbered(difference.places).map(({ at, offMm }) => (
            <text
              key={`${at[0]} ${at[1]}`}
              className={styles.figure}
              x={-at[0] * 1.02}
              y={-at[1]}
              dy={text * (at[1] > Math.max(...zs) / 2 ? -0.5 : 1.2)}
              fontSize={text}
              strokeWidth={text * 0.5}
              textAnchor={at[0] > 0 ? 'end' : 'start'}
            >
              {signedLength(offMm, units)}
            </text>
          ))}
        </>
      )}
    </DrawingBoard>
  );
};
