import type { Polygon, Vec2 } from '../../base/index.ts';
import { earTriangles } from '../../bodies/index.ts';
import type { Triangulate } from './panel-solid.ts';

/** A corner of the ring under way, by its place in the flat list: the outer ring, then the holes. */
type Ring = readonly number[];

const side = (a: Vec2, b: Vec2, p: Vec2): number => (b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]);

/** True when two pieces cross, or touch elsewhere than at a common end. */
const cross = (a: Vec2, b: Vec2, c: Vec2, d: Vec2): boolean => {
  const shared = [a, b].some((p) => [c, d].some((q) => p[0] === q[0] && p[1] === q[1]));
  if (shared) return false;
  const [s1, s2, s3, s4] = [side(a, b, c), side(a, b, d), side(c, d, a), side(c, d, b)];
  return s1 * s2 <= 0 && s3 * s4 <= 0 && !(s1 === 0 && s2 === 0 && s3 === 0 && s4 === 0);
};

/** The ring with a hole joined to it by the shortest bridge that crosses nothing. */
const joined = (ring: Ring, hole: Ring, waiting: readonly Ring[], flat: Polygon): Ring => {
  const at = (index: number | undefined): Vec2 => flat[index ?? 0] ?? [0, 0];
  const edges = [ring, hole, ...waiting].flatMap((one) =>
    one.map((from, i) => [at(from), at(one[(i + 1) % one.length])] as const),
  );
  const bridges = ring
    .flatMap((from, i) =>
      hole.map((to, k) => ({ i, k, far: Math.hypot(at(from)[0] - at(to)[0], at(from)[1] - at(to)[1]) })),
    )
    .sort((a, b) => a.far - b.far || a.i - b.i || a.k - b.k);
  const free = bridges.find(({ i, k }) => edges.every(([c, d]) => !cross(at(ring[i]), at(hole[k]), c, d)));
  if (!free) throw new RangeError('triangulate: a hole that no bridge reaches');
  const { i, k } = free;
  return [...ring.slice(0, i + 1), ...hole.slice(k), ...hole.slice(0, k + 1), ...ring.slice(i)];
};

/** Cuts a flat piece with holes into triangles: holes are joined to the outer ring by bridges, then ears are clipped. */
export const triangulate: Triangulate = (outer, holes) => {
  const flat = [...outer, ...holes.flat()];
  let start = outer.length;
  const rings = holes.map((hole): Ring => {
    const ring = hole.map((_, i) => start + i).toReversed();
    start += hole.length;
    return ring;
  });
  const ring = rings.reduce<Ring>(
    (done, hole, i) => joined(done, hole, rings.slice(i + 1), flat),
    outer.map((_, i) => i),
  );
  const given = (index: number): number => ring[index] ?? 0;
  return earTriangles(ring.map((index) => flat[index] ?? [0, 0])).map(
    ([a, b, c]) => [given(a), given(b), given(c)] as const,
  );
};
