import type { Pose, Vec2 } from '../../base/index.ts';
import type { ScanMesh } from './scan-mesh.ts';

/** A line in which the scan meets a station: points [y, z] in vehicle axes. A closed line does not repeat its first. */
export interface ScanLine {
  readonly points: readonly Vec2[];
  readonly closed: boolean;
}

/** Height of every point of the mesh over the plane x = depth in vehicle axes, in one pass. */
const heights = ({ positions }: ScanMesh, pose: Pose, depth: number): Float64Array => {
  // The x of a placed point is the first row of the turn times the point, plus the shift.
  const [a, b, c] = [pose.turn[0][0], pose.turn[1][0], pose.turn[2][0]];
  const out = new Float64Array(positions.length / 3);
  for (let i = 0; i < out.length; i++)
    out[i] =
      a * (positions[3 * i] ?? 0) +
      b * (positions[3 * i + 1] ?? 0) +
      c * (positions[3 * i + 2] ?? 0) +
      pose.at[0] -
      depth;
  return out;
};

interface Crossing {
  readonly at: Vec2;
  /** The crossings that a triangle joins it to. */
  readonly joined: number[];
}

const crossingAt = (mesh: ScanMesh, pose: Pose, over: Float64Array, p: number, q: number): Vec2 => {
  const [low, high] = p < q ? [p, q] : [q, p];
  const [h, k] = [over[low] ?? 0, over[high] ?? 0];
  const t = h / (h - k);
  const along = (axis: number): number => {
    const from = mesh.positions[3 * low + axis] ?? 0;
    return from + t * ((mesh.positions[3 * high + axis] ?? 0) - from);
  };
  const [x, y, z] = [along(0), along(1), along(2)];
  const [u, v, w] = pose.turn;
  return [u[1] * x + v[1] * y + w[1] * z + pose.at[1], u[2] * x + v[2] * y + w[2] * z + pose.at[2]];
};

/** Follows joined crossings from one end until there is none left. */
const follow = (crossings: readonly Crossing[], from: number, used: Uint8Array): readonly number[] => {
  const run = [from];
  used[from] = 1;
  for (let at = from; ; ) {
    const next = crossings[at]?.joined.find((other) => !used[other]);
    if (next === undefined) return run;
    used[next] = 1;
    run.push(next);
    at = next;
  }
};

const linesOf = (crossings: readonly Crossing[]): readonly ScanLine[] => {
  const used = new Uint8Array(crossings.length);
  const lines: ScanLine[] = [];
  const take = (start: number): void => {
    const run = follow(crossings, start, used);
    const [first, last] = [run[0] ?? start, run.at(-1) ?? start];
    const closed = run.length > 2 && (crossings[last]?.joined.includes(first) ?? false);
    if (run.length > 1) lines.push({ points: run.flatMap((i) => (crossings[i] ? [crossings[i].at] : [])), closed });
  };
  // Open lines first, from their ends; what is left runs in circles.
  crossings.forEach(({ joined }, i) => {
    if (!used[i] && joined.length === 1) take(i);
  });
  crossings.forEach((_, i) => {
    if (!used[i]) take(i);
  });
  return lines;
};

/**
 * Cuts a placed scan at a depth. A point of the mesh that lies in the plane counts as ahead of it, so that every edge
 * is crossed once or not at all and lines join by the edges that triangles share.
 */
export const cutScan = (mesh: ScanMesh, pose: Pose, depth: number): readonly ScanLine[] => {
  const over = heights(mesh, pose, depth);
  const points = over.length;
  const known = new Map<number, number>();
  const crossings: Crossing[] = [];
  const crossing = (p: number, q: number): number => {
    const key = p < q ? p * points + q : q * points + p;
    const found = known.get(key);
    if (found !== undefined) return found;
    known.set(key, crossings.length);
    return crossings.push({ at: crossingAt(mesh, pose, over, p, q), joined: [] }) - 1;
  };
  for (let t = 0; t < mesh.triangles.length; t += 3) {
    const a = mesh.triangles[t] ?? 0;
    const b = mesh.triangles[t + 1] ?? 0;
    const c = mesh.triangles[t + 2] ?? 0;
    const [ahead, bhead, chead] = [(over[a] ?? 0) >= 0, (over[b] ?? 0) >= 0, (over[c] ?? 0) >= 0];
    if (ahead === bhead && bhead === chead) continue;
    const ends: number[] = [];
    if (ahead !== bhead) ends.push(crossing(a, b));
    if (bhead !== chead) ends.push(crossing(b, c));
    if (chead !== ahead) ends.push(crossing(c, a));
    const [first, second] = ends;
    if (first === undefined || second === undefined) continue;
    crossings[first]?.joined.push(second);
    crossings[second]?.joined.push(first);
  }
  return linesOf(crossings);
};
