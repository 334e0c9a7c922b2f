import type { Vec2, Vec3 } from '../../../../../base/index.ts';
import type { SurfaceSamples } from '../../../../../envelope/index.ts';

/** From where a scan is looked at: parallel lines of sight, turned about the two axes of the screen. */
export interface ScanView {
  readonly turnRad: number;
  readonly tiltRad: number;
  readonly zoom: number;
}

export interface Frame {
  readonly centre: Vec3;
  /** Half of the diagonal of the box around it. */
  readonly reach: number;
}

/** The middle and the reach of the samples. */
export const frameOf = ({ at }: SurfaceSamples): Frame => {
  const low = [Infinity, Infinity, Infinity];
  const high = [-Infinity, -Infinity, -Infinity];
  for (let i = 0; i < at.length; i++) {
    const value = at[i] ?? 0;
    low[i % 3] = Math.min(low[i % 3] ?? 0, value);
    high[i % 3] = Math.max(high[i % 3] ?? 0, value);
  }
  const middle = (k: number): number => ((low[k] ?? 0) + (high[k] ?? 0)) / 2;
  const span = (k: number): number => (high[k] ?? 0) - (low[k] ?? 0);
  const reach = Math.hypot(span(0), span(1), span(2)) / 2;
  return { centre: [middle(0), middle(1), middle(2)], reach: Number.isFinite(reach) && reach > 0 ? reach : 1 };
};

/** Right, up and towards the eye, as unit vectors of the scan; the scan's z is up while the tilt is zero. */
export const eyeAxes = ({ turnRad, tiltRad }: ScanView): readonly [Vec3, Vec3, Vec3] => {
  const [ct, st, cp, sp] = [Math.cos(turnRad), Math.sin(turnRad), Math.cos(tiltRad), Math.sin(tiltRad)];
  return [
    [-st, ct, 0],
    [-ct * sp, -st * sp, cp],
    [ct * cp, st * cp, sp],
  ];
};

/** Pixels a unit of the scan. */
export const scaleOf = ({ zoom }: ScanView, { reach }: Frame, size: Vec2): number =>
  (zoom * Math.min(size[0], size[1])) / (2 * reach);

/** Where a place of the scan stands in the picture. */
export const onPicture = (at: Vec3, view: ScanView, frame: Frame, size: Vec2): Vec2 => {
  const [right, up] = eyeAxes(view);
  const k = scaleOf(view, frame, size);
  const along = (axis: Vec3): number =>
    (at[0] - frame.centre[0]) * axis[0] + (at[1] - frame.centre[1]) * axis[1] + (at[2] - frame.centre[2]) * axis[2];
  return [size[0] / 2 + k * along(right), size[1] / 2 - k * along(up)];
};

/** The line of sight through a place of the picture, begun in front of everything. */
export const sightThrough = (
  pixel: Vec2,
  view: ScanView,
  frame: Frame,
  size: Vec2,
): { readonly from: Vec3; readonly along: Vec3 } => {
  const [right, up, eye] = eyeAxes(view);
  const k = scaleOf(view, frame, size);
  const [u, v, w] = [(pixel[0] - size[0] / 2) / k, (size[1] / 2 - pixel[1]) / k, 4 * frame.reach];
  const at = (i: 0 | 1 | 2): number => frame.centre[i] + u * right[i] + v * up[i] + w * eye[i];
  return { from: [at(0), at(1), at(2)], along: [-eye[0], -eye[1], -eye[2]] };
};

export interface PictureInk {
  readonly far: Vec3;
  readonly near: Vec3;
}

/**
 * Hot loop: the samples as dots of two by two pixels, nearest in front, shaded by how squarely they face the eye.
 * Surfaces that look away are left out, so that a room is seen into through the wall next to the eye.
 */
export const paintScan = (
  pixels: Uint8ClampedArray,
  size: Vec2,
  { at, normal }: SurfaceSamples,
  view: ScanView,
  frame: Frame,
  { facing, ink }: { readonly facing: 1 | -1; readonly ink: PictureInk },
): void => {
  const [width, height] = size;
  const depth = new Float32Array(width * height).fill(-Infinity);
  const [right, up, eye] = eyeAxes(view);
  const k = scaleOf(view, frame, size);
  const [cx, cy, cz] = frame.centre;
  for (let i = 0; i < at.length; i += 3) {
    const lit = facing * ((normal[i] ?? 0) * eye[0] + (normal[i + 1] ?? 0) * eye[1] + (normal[i + 2] ?? 0) * eye[2]);
    if (lit <= 0) continue;
    const [x, y, z] = [(at[i] ?? 0) - cx, (at[i + 1] ?? 0) - cy, (at[i + 2] ?? 0) - cz];
    const u = Math.floor(width / 2 + k * (x * right[0] + y * right[1] + z * right[2]));
    const v = Math.floor(height / 2 - k * (x * up[0] + y * up[1] + z * up[2]));
    const w = x * eye[0] + y * eye[1] + z * eye[2];
    for (let dy = 0; dy < 2; dy++)
      for (let dx = 0; dx < 2; dx++) {
        const [px, py] = [u + dx, v + dy];
        if (px < 0 || py < 0 || px >= width || py >= height) continue;
        const cell = py * width + px;
        if (w <= (depth[cell] ?? 0)) continue;
        depth[cell] = w;
        for (let c = 0; c < 3; c++)
          pixels[4 * cell + c] = (ink.far[c] ?? 0) + lit * ((ink.near[c] ?? 0) - (ink.far[c] ?? 0));
        pixels[4 * cell + 3] = 255;
      }
  }
};
