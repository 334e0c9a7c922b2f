import { ORIGIN, type Vec3 } from '../base/index.ts';

/** A corner of the difference a − b of two shapes, with the two vertices it comes from and its share in a blend. */
export interface Corner {
  x: number;
  y: number;
  z: number;
  a: Vec3;
  b: Vec3;
  share: number;
}

/** The point of a corner, edge, triangle or tetrahedron nearest to the origin, by the shares of its corners. */
export interface Simplex {
  corners: [Corner, Corner, Corner, Corner];
  count: number;
  x: number;
  y: number;
  z: number;
  /** True once the origin is known to lie inside the tetrahedron. */
  holdsOrigin: boolean;
}

export const newCorner = (): Corner => ({ x: 0, y: 0, z: 0, a: ORIGIN, b: ORIGIN, share: 0 });

export const newSimplex = (): Simplex => ({
  corners: [newCorner(), newCorner(), newCorner(), newCorner()],
  count: 0,
  x: 0,
  y: 0,
  z: 0,
  holdsOrigin: false,
});

export const setCorner = (corner: Corner, a: Vec3, b: Vec3): void => {
  corner.x = a[0] - b[0];
  corner.y = a[1] - b[1];
  corner.z = a[2] - b[2];
  corner.a = a;
  corner.b = b;
};

/** Shares of up to three corners and the squared distance they reach; overwritten by each call (hot loop). */
export interface Blend {
  p: number;
  q: number;
  r: number;
  square: number;
}

export const newBlend = (): Blend => ({ p: 0, q: 0, r: 0, square: 0 });

const setBlend = (out: Blend, a: Corner, b: Corner, c: Corner, p: number, q: number, r: number): Blend => {
  const x = a.x * p + b.x * q + c.x * r;
  const y = a.y * p + b.y * q + c.y * r;
  const z = a.z * p + b.z * q + c.z * r;
  out.p = p;
  out.q = q;
  out.r = r;
  out.square = x * x + y * y + z * z;
  return out;
};

/** Nearest to the origin on the segment a–b; `out.r` is 0. */
export const nearestOnEdge = (a: Corner, b: Corner, out: Blend): void => {
  const x = b.x - a.x;
  const y = b.y - a.y;
  const z = b.z - a.z;
  const size = x * x + y * y + z * z;
  const along = -(a.x * x + a.y * y + a.z * z);
  const t = size > 0 ? Math.min(1, Math.max(0, along / size)) : 0;
  setBlend(out, a, b, b, 1 - t, t, 0);
};

const sides: readonly [Blend, Blend, Blend] = [newBlend(), newBlend(), newBlend()];

/** A triangle without area: the nearest of its three sides. */
const nearestOnSides = (a: Corner, b: Corner, c: Corner, out: Blend): Blend => {
  const [ab, bc, ca] = sides;
  nearestOnEdge(a, b, ab);
  nearestOnEdge(b, c, bc);
  nearestOnEdge(c, a, ca);
  if (ab.square <= bc.square && ab.square <= ca.square) return setBlend(out, a, b, c, ab.p, ab.q, 0);
  if (bc.square <= ca.square) return setBlend(out, a, b, c, 0, bc.p, bc.q);
  return setBlend(out, a, b, c, ca.q, 0, ca.p);
};

/**
 * Nearest to the origin on the triangle a, b, c, by the region its projection falls in (the usual case distinction
 * over corner, side and face regions).
 */
export const nearestOnTriangle = (a: Corner, b: Corner, c: Corner, out: Blend): Blend => {
  const ux = b.x - a.x;
  const uy = b.y - a.y;
  const uz = b.z - a.z;
  const vx = c.x - a.x;
  const vy = c.y - a.y;
  const vz = c.z - a.z;
  const ua = -(ux * a.x + uy * a.y + uz * a.z);
  const va = -(vx * a.x + vy * a.y + vz * a.z);
  if (ua <= 0 && va <= 0) return setBlend(out, a, b, c, 1, 0, 0);
  const ub = -(ux * b.x + uy * b.y + uz * b.z);
  const vb = -(vx * b.x + vy * b.y + vz * b.z);
  if (ub >= 0 && vb <= ub) return setBlend(out, a, b, c, 0, 1, 0);
  const uc = -(ux * c.x + uy * c.y + uz * c.z);
  const vc = -(vx * c.x + vy * c.y + vz * c.z);
  if (vc >= 0 && uc <= vc) return setBlend(out, a, b, c, 0, 0, 1);
  const overC = ua * vb - ub * va;
  const overB = uc * va - ua * vc;
  const overA = ub * vc - uc * vb;
  const sum = overA + overB + overC;
  if (!(sum > 0)) return nearestOnSides(a, b, c, out);
  if (overC <= 0 && ua >= 0 && ub <= 0) {
    const t = ua / (ua - ub);
    return setBlend(out, a, b, c, 1 - t, t, 0);
  }
  if (overB <= 0 && va >= 0 && vc <= 0) {
    const t = va / (va - vc);
    return setBlend(out, a, b, c, 1 - t, 0, t);
  }
  if (overA <= 0 && vb - ub >= 0 && uc - vc >= 0) {
    const t = (vb - ub) / (vb - ub + (uc - vc));
    return setBlend(out, a, b, c, 0, 1 - t, t);
  }
  return setBlend(out, a, b, c, overA / sum, overB / sum, overC / sum);
};

/** True when the origin lies strictly on the side of plane a, b, c where d lies. */
const sameSide = (a: Corner, b: Corner, c: Corner, d: Corner): boolean => {
  const ux = b.x - a.x;
  const uy = b.y - a.y;
  const uz = b.z - a.z;
  const vx = c.x - a.x;
  const vy = c.y - a.y;
  const vz = c.z - a.z;
  const nx = uy * vz - uz * vy;
  const ny = uz * vx - ux * vz;
  const nz = ux * vy - uy * vx;
  const toD = nx * (d.x - a.x) + ny * (d.y - a.y) + nz * (d.z - a.z);
  const toOrigin = -(nx * a.x + ny * a.y + nz * a.z);
  return toD > 0 ? toOrigin > 0 : toD < 0 && toOrigin < 0;
};

const face = newBlend();
const best = newBlend();

const tryFace = (a: Corner, b: Corner, c: Corner, d: Corner): boolean => {
  if (sameSide(a, b, c, d)) return false;
  nearestOnTriangle(a, b, c, face);
  if (!(face.square < best.square)) return true;
  best.square = face.square;
  a.share = face.p;
  b.share = face.q;
  c.share = face.r;
  d.share = 0;
  return true;
};

const solveTetrahedron = (simplex: Simplex): void => {
  const [a, b, c, d] = simplex.corners;
  best.square = Infinity;
  let outside = tryFace(a, b, c, d);
  outside = tryFace(a, b, d, c) || outside;
  outside = tryFace(a, c, d, b) || outside;
  outside = tryFace(b, c, d, a) || outside;
  simplex.holdsOrigin = !outside;
};

/** Drops the corners that have no share and puts the blended point into the simplex. */
const keepShared = (simplex: Simplex): void => {
  const { corners } = simplex;
  const count = simplex.count;
  let kept = 0;
  let x = 0;
  let y = 0;
  let z = 0;
  for (let i = 0; i < count; i++) {
    const corner = corners[i as 0 | 1 | 2 | 3];
    if (!(corner.share > 0)) continue;
    x += corner.x * corner.share;
    y += corner.y * corner.share;
    z += corner.z * corner.share;
    corners[i as 0 | 1 | 2 | 3] = corners[kept as 0 | 1 | 2 | 3];
    corners[kept as 0 | 1 | 2 | 3] = corner;
    kept += 1;
  }
  simplex.count = kept;
  simplex.x = x;
  simplex.y = y;
  simplex.z = z;
};

/** Finds the point of the simplex nearest to the origin and drops the corners it does not need. */
export const solveSimplex = (simplex: Simplex): void => {
  const [a, b, c] = simplex.corners;
  if (simplex.count === 1) a.share = 1;
  else if (simplex.count === 2) {
    nearestOnEdge(a, b, face);
    a.share = face.p;
    b.share = face.q;
  } else if (simplex.count === 3) {
    nearestOnTriangle(a, b, c, face);
    a.share = face.p;
    b.share = face.q;
    c.share = face.r;
  } else solveTetrahedron(simplex);
  if (!simplex.holdsOrigin) keepShared(simplex);
};
