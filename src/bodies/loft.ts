import { type Polygon, signedArea, type Vec2, type Vec3 } from '../base/index.ts';
import { earTriangles } from './ears.ts';
import type { Shell } from './shell.ts';

/** A closed ring of [y, z] standing across the x axis. */
export interface LoftSection {
  readonly x: number;
  readonly ring: readonly Vec2[];
}

const check = (sections: readonly LoftSection[]): number => {
  const [first] = sections;
  if (!first || sections.length < 2) throw new RangeError(`loftShell: ${sections.length} sections enclose nothing`);
  const count = first.ring.length;
  if (count < 3) throw new RangeError(`loftShell: a ring of ${count} corners encloses nothing`);
  sections.forEach(({ x, ring }, i) => {
    const before = sections[i - 1];
    if (ring.length !== count)
      throw new RangeError(`loftShell: ring at x ${x} has ${ring.length} corners, not ${count}`);
    if (before && !(x > before.x)) throw new RangeError(`loftShell: section at x ${x} does not follow x ${before.x}`);
  });
  return count;
};

/** Rings turned to run anticlockwise in y, z, whichever way they came. All must come the same way. */
const oriented = (sections: readonly LoftSection[]): readonly Polygon[] => {
  const areas = sections.map(({ ring }) => signedArea(ring));
  if (areas.every((area) => area > 0)) return sections.map(({ ring }) => ring);
  if (areas.every((area) => area < 0)) return sections.map(({ ring }) => [...ring].reverse());
  throw new RangeError(`loftShell: rings run different ways or enclose nothing (areas ${areas.join(', ')} mm²)`);
};

const squareBetween = (p: Vec3, q: Vec3): number => (p[0] - q[0]) ** 2 + (p[1] - q[1]) ** 2 + (p[2] - q[2]) ** 2;

/**
 * The solid through parallel sections, x ascending, whose rings have equal corner counts: corner i joins corner i. Each
 * strip between two corners is folded along its shorter diagonal, the two ends are closed by ears. Closed, outward,
 * corners kept exactly. Rings may run either way round and may repeat a corner where a feature has died out.
 */
export const loftShell = (sections: readonly LoftSection[]): Shell => {
  const count = check(sections);
  const rings = oriented(sections);
  const points: Vec3[] = rings.flatMap((ring, s) => ring.map((p): Vec3 => [sections[s]?.x ?? 0, p[0], p[1]]));
  const triangles: number[] = [];
  const cap = (ring: Polygon, from: number, flip: boolean): void => {
    for (const [a, b, c] of earTriangles(ring)) triangles.push(...(flip ? [c, b, a] : [a, b, c]).map((i) => from + i));
  };
  const strip = (a: number, b: number): void => {
    const [c, d] = [b + count, a + count];
    const [p, q, r, s] = [points[a], points[b], points[c], points[d]];
    if (!p || !q || !r || !s) return;
    if (squareBetween(p, r) <= squareBetween(q, s)) triangles.push(a, b, c, a, c, d);
    else triangles.push(a, b, d, b, c, d);
  };
  rings.forEach((ring, s) => {
    if (s === 0) cap(ring, 0, true);
    if (s === rings.length - 1) cap(ring, s * count, false);
    else for (let i = 0; i < count; i++) strip(s * count + i, s * count + ((i + 1) % count));
  });
  return { positions: points.flat(), triangles };
};
