import type { Vec2, Vec3 } from '../../base/index.ts';
import type { Section } from '../space.ts';
import type { ScanLine } from './cut-scan.ts';

/** How the scan stands to one place of a taped section. */
export interface ScanDifference {
  /** On the taped section, [y, z]. */
  readonly at: Vec2;
  /** The nearest place of the scan. */
  readonly to: Vec2;
  /** Positive where the scan lies outside the taped section: the room is larger than taped. */
  readonly offMm: number;
}

export interface SectionDifference {
  readonly station: Section['station'];
  readonly x: number;
  readonly places: readonly ScanDifference[];
  /** Share of the section to which the scan has something within reach. */
  readonly seen: number;
  readonly meanMm: number;
  /** The place of the greatest difference either way, or null where nothing was seen. */
  readonly worst: ScanDifference | null;
}

const nearestOn = ([y, z]: Vec2, a: Vec2, b: Vec2): Vec2 => {
  const [u, v] = [b[0] - a[0], b[1] - a[1]];
  const square = u * u + v * v;
  const t = square === 0 ? 0 : Math.max(0, Math.min(1, ((y - a[0]) * u + (z - a[1]) * v) / square));
  return [a[0] + t * u, a[1] + t * v];
};

interface Sample {
  readonly at: Vec2;
  /** Unit normal that looks out of the section. */
  readonly outward: Vec2;
}

/** Places along a ring, at most `step` apart, the corners among them. A ring runs anticlockwise seen from the rear. */
const samplesOf = (ring: readonly Vec2[], step: number): readonly Sample[] =>
  ring.flatMap((a, i) => {
    const b = ring[(i + 1) % ring.length] ?? a;
    const size = Math.hypot(b[0] - a[0], b[1] - a[1]);
    if (size === 0) return [];
    // Seen from the rear y points to the left, so that with [y, z] the ring runs clockwise and its left is outside.
    const outward: Vec2 = [-(b[1] - a[1]) / size, (b[0] - a[0]) / size];
    const count = Math.max(1, Math.ceil(size / step));
    return Array.from({ length: count }, (_, k): Sample => {
      const t = k / count;
      return { at: [a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1])], outward };
    });
  });

const differenceAt = ({ at, outward }: Sample, lines: readonly ScanLine[], reach: number): ScanDifference | null => {
  let best: { readonly to: Vec2; readonly away: number } | null = null;
  for (const { points, closed } of lines)
    for (let i = 0; i + (closed ? 0 : 1) < points.length; i++) {
      const [a, b] = [points[i], points[(i + 1) % points.length]];
      if (!a || !b) continue;
      const to = nearestOn(at, a, b);
      const away = Math.hypot(to[0] - at[0], to[1] - at[1]);
      if (away <= (best?.away ?? reach)) best = { to, away };
    }
  if (!best) return null;
  const side = (best.to[0] - at[0]) * outward[0] + (best.to[1] - at[1]) * outward[1];
  return { at, to: best.to, offMm: side >= 0 ? best.away : -best.away };
};

/**
 * How a cut of the scan differs from the taped section, at places at most `step` apart; further than `reach` the scan
 * has a hole. Positive is outside: there is more room than was taped.
 */
export const sectionDifference = (
  section: Section,
  lines: readonly ScanLine[],
  step: number,
  reach: number,
): SectionDifference => {
  const samples = samplesOf(section.ring, step);
  const places = samples.flatMap((sample) => differenceAt(sample, lines, reach) ?? []);
  const worst = places.reduce<ScanDifference | null>(
    (most, place) => (most === null || Math.abs(place.offMm) > Math.abs(most.offMm) ? place : most),
    null,
  );
  const sum = places.reduce((total, { offMm }) => total + offMm, 0);
  return {
    station: section.station,
    x: section.x,
    places,
    seen: samples.length === 0 ? 0 : places.length / samples.length,
    meanMm: places.length === 0 ? 0 : sum / places.length,
    worst,
  };
};

/** Places on the taped sections in vehicle axes, at most `step` apart: what a scan is brought onto. */
export const sectionSamples = (sections: readonly Section[], step: number): readonly Vec3[] =>
  sections.flatMap(({ x, ring }) => samplesOf(ring, step).map(({ at }): Vec3 => [x, at[0], at[1]]));
