import { memo } from 'react';
import type { Measured, Severity } from '../../../inspection/index.ts';
import { tapePlace } from './margin-facts.ts';
import styles from './margin-strip.module.css';

const TICKS = 24;
/** Where the ticks stand, so that the marker has room above them. */
const FOOT = 17.5;

/** As long as on a tape: whole, half, eighth. */
const tickHeight = (i: number): number => (i % 8 === 0 ? 6.5 : i % 4 === 0 ? 5 : 3);

const percent = (share: number): string => `${(share * 100).toFixed(2)}%`;

const MARKERS: Readonly<Record<Severity, string>> = {
  stop: 'M-4 1h8v8h-8z',
  caution: 'M0 .5l4.8 8.7h-9.6z',
  note: 'M0 .8a4.2 4.2 0 1 0 .01 0z',
};
const GOOD_MARKER = 'M0 1.6a3.4 3.4 0 1 0 .01 0z';

const Marker = ({ at, severity }: { readonly at: number; readonly severity: Severity | 'good' }) => (
  <svg x={percent(at)} overflow="visible" aria-hidden="true">
    {severity === 'good' ? (
      <path d={GOOD_MARKER} fill="var(--sheet)" stroke="var(--ink)" strokeWidth={1.8} />
    ) : (
      <path d={MARKERS[severity]} fill={`var(--${severity})`} />
    )}
  </svg>
);

/** The bare tape is the same for all: made once. */
const BARE_TAPE = (
  <g stroke="var(--line-2)">
    {Array.from({ length: TICKS + 1 }, (_, i) => percent(i / TICKS)).map((at, i) => (
      <line key={at} x1={at} x2={at} y1={FOOT} y2={FOOT - tickHeight(i)} />
    ))}
    <line x1="0" x2="100%" y1={FOOT} y2={FOOT} />
  </g>
);

interface MarginTapeProps {
  readonly measured: Measured | null;
  readonly severity: Severity | 'good';
}

/** A short piece of tape: the limit is its long tick, the value its marker; a thick foot is the side of no. */
export const MarginTape = memo(({ measured, severity }: MarginTapeProps) => {
  const place = measured ? tapePlace(measured) : null;
  const limit = place ? percent(place.limit) : '0%';
  return (
    <svg className={styles.tape} aria-hidden="true">
      {BARE_TAPE}
      {place ? (
        <>
          <line
            x1={place.goodSide === 'right' ? '0' : limit}
            x2={place.goodSide === 'right' ? limit : '100%'}
            y1={FOOT}
            y2={FOOT}
            stroke="var(--ink-2)"
            strokeWidth={3}
          />
          <line x1={limit} x2={limit} y1={FOOT + 0.5} y2={3} stroke="var(--ink)" strokeWidth={1.6} />
          <Marker at={place.value} severity={severity} />
        </>
      ) : null}
    </svg>
  );
});
