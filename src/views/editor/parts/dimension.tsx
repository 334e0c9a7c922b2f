import { formatLength, type LengthUnits, type Vec2 } from '../../../base/index.ts';
import styles from './drawing-board.module.css';

interface DimensionProps {
  /** Two points in the axes of the drawing, y up. */
  readonly from: Vec2;
  readonly to: Vec2;
  /** How far the line stands off to the left of the way from one to the other, in mm; negative to the right. */
  readonly offset: number;
  /** mm that stand for one line of text on screen. */
  readonly text: number;
  readonly units: LengthUnits;
  readonly colour?: string;
}

/** A measured distance with its own line, end strokes and figure, as a person would pencil it. */
export const Dimension = ({ from, to, offset, text, units, colour = 'var(--ink-2)' }: DimensionProps) => {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const size = Math.hypot(dx, dy);
  if (size === 0) return null;
  const [nx, ny] = [-dy / size, dx / size];
  const at = ([x, y]: Vec2): Vec2 => [x + nx * offset, y + ny * offset];
  const [a, b] = [at(from), at(to)];
  const tick = text * 0.32;
  const upright = Math.abs(dy) > Math.abs(dx);
  const stroke = ([x, y]: Vec2): string => `M${x - nx * tick} ${-(y - ny * tick)}L${x + nx * tick} ${-(y + ny * tick)}`;
  const middle: Vec2 = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
  return (
    <g>
      <path
        d={`M${a[0]} ${-a[1]}L${b[0]} ${-b[1]}${stroke(a)}${stroke(b)}`}
        fill="none"
        stroke={colour}
        vectorEffect="non-scaling-stroke"
      />
      <text
        className={styles.figure}
        x={middle[0] + (upright ? text * 0.5 : 0)}
        y={-middle[1] + (upright ? text * 0.35 : text * 0.35)}
        fontSize={text * 1.1}
        strokeWidth={text * 0.7}
        textAnchor={upright ? 'start' : 'middle'}
      >
        {formatLength(size, units)}
      </text>
    </g>
  );
};
