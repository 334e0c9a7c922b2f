import { add, scale, subtract, unit, type Vec3 } from '../../base/index.ts';
import type { ConvexShape } from '../../bodies/index.ts';
import type { Device } from '../../catalog/index.ts';
import { type BodyPaint, pushTurned } from './convex-solid.ts';
import type { Colour } from './mesh-data.ts';
import { pushQuad } from './mesh-data.ts';
import { linear } from './paints.ts';

/** A face seen from in front: its low left corner, its sides, the way it looks. */
interface FaceFrame {
  readonly corner: Vec3;
  readonly right: Vec3;
  readonly up: Vec3;
  readonly out: Vec3;
}

const GLASS = linear('#24453f');
const KEY = linear('#7b8388');
const DARK = linear('#0e1112');
const LAMP = linear('#d8d3bd');

/** How far a detail stands before the face, so that it shows. */
const PROUD_MM = 0.8;

/** A box made from `boxShape`: its first corner is the low one, the second, fourth and fifth lie along x, y and z. */
const frameOf = ({ vertices }: ConvexShape): FaceFrame | null => {
  const [low, x, , y, z] = vertices;
  if (!low || !x || !y || !z) return null;
  const deep = subtract(z, low);
  return { corner: add(low, deep), right: subtract(x, low), up: subtract(y, low), out: unit(deep) };
};

const at = ({ corner, right, up, out }: FaceFrame, u: number, v: number, proud: number): Vec3 =>
  add(add(corner, scale(out, proud)), add(scale(right, u), scale(up, v)));

type Paint = Omit<BodyPaint, 'colour'>;

/** A flat patch over part of the face, from one share of its width and height to another. */
const patch = (
  frame: FaceFrame,
  [u0, v0, u1, v1]: readonly [number, number, number, number],
  colour: Colour,
  paint: Paint,
): void => {
  const corner = (u: number, v: number) => {
    const point = at(frame, u, v, PROUD_MM);
    return { at: point, uv: [0, 0] as const, shade: paint.shadeAt(point, frame.out) };
  };
  pushQuad(paint.mesh, [corner(u0, v0), corner(u1, v0), corner(u1, v1), corner(u0, v1)], frame.out, colour);
};

const length = (v: Vec3): number => Math.hypot(v[0], v[1], v[2]);

/** A round knob or a hole: `deep` is how far it stands out. */
const round = (
  frame: FaceFrame,
  u: number,
  v: number,
  share: number,
  deep: number,
  colour: Colour,
  paint: Paint,
): void => {
  const radius = (share * Math.min(length(frame.right), length(frame.up))) / 2;
  const rings = [
    [0, radius],
    [deep, radius * 0.9],
    [deep, 0],
  ] as const;
  pushTurned(at(frame, u, v, 0), frame.out, rings, { ...paint, lines: null, colour });
};

const row = (count: number): readonly number[] => Array.from({ length: count }, (_, i) => i / count);

const head = (frame: FaceFrame, paint: Paint): void => {
  patch(frame, [0.08, 0.42, 0.66, 0.86], GLASS, paint);
  for (const u of row(5)) patch(frame, [0.08 + u * 0.58, 0.14, 0.17 + u * 0.58, 0.3], KEY, paint);
  round(frame, 0.83, 0.6, 0.42, 9, KEY, paint);
};

const bars = (frame: FaceFrame, paint: Paint): void => {
  for (const v of row(6)) patch(frame, [0.12, 0.14 + v * 0.78, 0.88, 0.2 + v * 0.78], DARK, paint);
};

const DETAILS: Readonly<Record<Device['kind'], (frame: FaceFrame, paint: Paint) => void>> = {
  radio: head,
  head,
  deck: bars,
  speaker: bars,
  socket: (frame, paint) => round(frame, 0.5, 0.5, 0.62, 1.5, DARK, paint),
  usb: (frame, paint) => {
    for (const v of [0.32, 0.6]) patch(frame, [0.3, v, 0.7, v + 0.1], DARK, paint);
  },
  switch: (frame, paint) => {
    patch(frame, [0.2, 0.12, 0.8, 0.88], KEY, paint);
    patch(frame, [0.34, 0.7, 0.66, 0.78], LAMP, paint);
  },
  screen: (frame, paint) => patch(frame, [0.06, 0.08, 0.94, 0.92], GLASS, paint),
  charger: (frame, paint) => {
    for (const u of [0.12, 0.54]) patch(frame, [u, 0.12, u + 0.34, 0.88], DARK, paint);
  },
  light: (frame, paint) => patch(frame, [0.05, 0.1, 0.95, 0.9], LAMP, paint),
  blank: () => undefined,
  hub: (frame, paint) => {
    for (const u of row(6)) patch(frame, [0.1 + u * 0.8, 0.2, 0.2 + u * 0.8, 0.5], DARK, paint);
  },
  fan: (frame, paint) => {
    round(frame, 0.5, 0.5, 0.9, 1.5, DARK, paint);
    round(frame, 0.5, 0.5, 0.3, 3, KEY, paint);
  },
};

/** Draws on the face of a device what its kind is known by: a glass, keys, a socket, a grille. */
export const pushDeviceFace = (shape: ConvexShape, kind: Device['kind'], paint: Paint): void => {
  const frame = frameOf(shape);
  if (frame) DETAILS[kind](frame, paint);
};
