import type { Vec2 } from '../../base/index.ts';

/** One cubic curve: two handles and its end. */
export type Curve = readonly [Vec2, Vec2, Vec2];

/**
 * An arc as cubic curves of at most a quarter turn each, off by less than 0.03 % of the radius. `spanRad` is positive
 * to the left.
 */
export const arcCurves = (centre: Vec2, radius: number, fromRad: number, spanRad: number): readonly Curve[] => {
  const count = Math.max(1, Math.ceil(Math.abs(spanRad) / (Math.PI / 2)));
  const step = spanRad / count;
  const handle = (4 / 3) * Math.tan(step / 4) * radius;
  const point = (rad: number): Vec2 => [centre[0] + radius * Math.cos(rad), centre[1] + radius * Math.sin(rad)];
  const along = ([x, y]: Vec2, rad: number, by: number): Vec2 => [x - Math.sin(rad) * by, y + Math.cos(rad) * by];
  return Array.from({ length: count }, (_, i): Curve => {
    const [a, b] = [fromRad + i * step, fromRad + (i + 1) * step];
    return [along(point(a), a, handle), along(point(b), b, -handle), point(b)];
  });
};

/** The arc from one corner of a polyline to the next, of bulge = tan(angle / 4). */
export const bulgeCurves = (from: Vec2, to: Vec2, bulge: number): readonly Curve[] => {
  const spanRad = 4 * Math.atan(bulge);
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  // From the middle of the chord to the centre, to the left of the way for a bulge below 1.
  const off = (1 - bulge * bulge) / (4 * bulge);
  const centre: Vec2 = [(from[0] + to[0]) / 2 - dy * off, (from[1] + to[1]) / 2 + dx * off];
  const radius = Math.hypot(from[0] - centre[0], from[1] - centre[1]);
  return arcCurves(centre, radius, Math.atan2(from[1] - centre[1], from[0] - centre[0]), spanRad);
};
