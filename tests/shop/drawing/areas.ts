import type { Corner, Stroke } from '../../../src/shop/drawing/drawing.ts';

/** Area inside a closed polyline, arcs counted: the polygon through its corners and a segment of a circle on each arc. */
export const polylineArea = (corners: readonly Corner[]): number =>
  Math.abs(
    corners.reduce((sum, { at: [x, y], bulge }, i) => {
      const [nx, ny] = (corners[(i + 1) % corners.length] ?? corners[0])?.at ?? [0, 0];
      const chord = Math.hypot(nx - x, ny - y);
      const angle = 4 * Math.atan(bulge);
      const radius = bulge === 0 ? 0 : (chord * (1 + bulge * bulge)) / (4 * Math.abs(bulge));
      const segment = (radius * radius * (Math.abs(angle) - Math.sin(Math.abs(angle)))) / 2;
      return sum + (x * ny - nx * y) / 2 + Math.sign(bulge) * segment;
    }, 0),
  );

/** Area of everything closed on a layer. */
export const areaOn = (strokes: readonly { readonly kind: string; readonly layer: string }[], layer: string): number =>
  (strokes as readonly Stroke[])
    .filter((stroke) => stroke.layer === layer)
    .reduce((sum, stroke) => {
      if (stroke.kind === 'circle') return sum + Math.PI * stroke.radius ** 2;
      return stroke.kind === 'polyline' && stroke.closed ? sum + polylineArea(stroke.corners) : sum;
    }, 0);
