import type { LengthUnits } from '../../../../base/index.ts';
import { formatMass } from '../../../../base/index.ts';
import { Figure } from '../../parts/index.ts';
import styles from './inspect.module.css';

interface LoadGaugeProps {
  readonly label: string;
  readonly kg: number;
  /** Null where nobody has read the label. */
  readonly ratingKg: number | null;
  readonly units: LengthUnits;
}

/** The tape runs a quarter past the rating, so that an overload still stands on it. */
const PAST_RATING = 1.25;
const TICKS = 20;
const FOOT = 19;

const percent = (share: number): string => `${(Math.max(0, Math.min(1, share)) * 100).toFixed(2)}%`;

/** A load on a piece of tape with its rating as the long tick. */
export const LoadGauge = ({ label, kg, ratingKg, units }: LoadGaugeProps) => {
  const over = ratingKg !== null && kg > ratingKg;
  const full = (ratingKg ?? kg) * PAST_RATING || 1;
  const left = ratingKg === null ? 'no rating yet' : `${formatMass(ratingKg - kg, units)} left`;
  const end = percent(kg / full);
  return (
    <div className={styles.gauge}>
      <span>
        {label} <Figure>{formatMass(kg, units)}</Figure>
      </span>
      <span className={styles.left} style={over ? { color: 'var(--stop)', fontWeight: 600 } : undefined}>
        {left}
      </span>
      <svg role="img" aria-label={`${label}: ${formatMass(kg, units)}, ${left}`}>
        <g stroke="var(--line-2)">
          {Array.from({ length: TICKS + 1 }, (_, i) => percent(i / TICKS)).map((at, i) => (
            <line key={at} x1={at} x2={at} y1={FOOT} y2={FOOT - (i % 4 === 0 ? 7 : 4)} />
          ))}
          <line x1="0" x2="100%" y1={FOOT} y2={FOOT} />
        </g>
        <rect x="0" y={9} width={end} height={5} fill={over ? 'var(--stop)' : 'var(--ink)'} />
        {over ? (
          <svg x={end} overflow="visible" aria-hidden="true">
            <rect x={-4} y={7} width={9} height={9} fill="var(--stop)" />
          </svg>
        ) : null}
        {ratingKg === null ? null : (
          <line
            x1={percent(ratingKg / full)}
            x2={percent(ratingKg / full)}
            y1={3}
            y2={FOOT}
            stroke="var(--ink)"
            strokeWidth={1.8}
          />
        )}
      </svg>
    </div>
  );
};
