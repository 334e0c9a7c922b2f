import type { Severity } from '../../../inspection/index.ts';

const SHAPES: Readonly<Record<Severity, string>> = {
  stop: 'M2 2h8v8h-8z',
  caution: 'M6 1.2 11.2 10.6H.8z',
  note: 'M6 1.8a4.2 4.2 0 1 0 0 8.4a4.2 4.2 0 1 0 0-8.4z',
};

interface SeverityMarkProps {
  readonly severity: Severity;
  /** Writes the word beside the shape; otherwise it is only heard. */
  readonly word?: boolean;
  readonly size?: number;
}

/** A finding's severity by shape, word and colour: a square stops, a triangle cautions, a disc notes. */
export const SeverityMark = ({ severity, word = false, size = 12 }: SeverityMarkProps) => (
  <span style={{ display: 'inline-flex', alignItems: 'center', gap: 5, color: `var(--${severity})` }}>
    <svg
      width={size}
      height={size}
      viewBox="0 0 12 12"
      role={word ? 'presentation' : 'img'}
      aria-label={word ? undefined : severity}
    >
      <path d={SHAPES[severity]} fill="currentColor" />
    </svg>
    {word ? <span>{severity}</span> : null}
  </span>
);
