import { add, type Box, boxAround, boxSize, type Pose, placed, turned, type Vec3 } from '../../base/index.ts';
import type { GearKind } from '../../catalog/index.ts';
import { type BodyPaint, pushTurned } from './convex-solid.ts';
import { type Colour, flatNormal, pushLine, pushTriangles } from './mesh-data.ts';

export type GearForm = GearKind['form'];

/** A gear item as it stands: its box in the coordinates of its room (across, deep, up) and the room's place. */
export interface StandingGear {
  readonly form: GearForm;
  readonly box: Box;
  readonly pose: Pose;
  readonly colour: Colour;
  /** Straps, cylinders, handles: the one thing by which the kind is known. */
  readonly accent: Colour;
}

type Paint = Omit<BodyPaint, 'colour'>;

const boxOf = (from: Vec3, size: Vec3): Box => ({ min: from, max: add(from, size) });

/** How far a ring is drawn in from its box: across and deep. */
type Inset = readonly [number, number];

/** A ring of a soft box: an eight-cornered outline at a height, drawn in by `inset`, its corners cut by at most `soft`. */
const ringAt = (box: Box, up: number, inset: Inset, soft: number): readonly Vec3[] => {
  const [x0, y0] = [box.min[0] + inset[0], box.min[1] + inset[1]];
  const [x1, y1] = [box.max[0] - inset[0], box.max[1] - inset[1]];
  const cut = Math.min(soft, (x1 - x0) / 2, (y1 - y0) / 2);
  return [
    [x0 + cut, y0, up],
    [x1 - cut, y0, up],
    [x1, y0 + cut, up],
    [x1, y1 - cut, up],
    [x1 - cut, y1, up],
    [x0 + cut, y1, up],
    [x0, y1 - cut, up],
    [x0, y0 + cut, up],
  ];
};

const pushFlat = (corners: readonly Vec3[], gear: StandingGear, colour: Colour, paint: Paint): void => {
  const normal = flatNormal(corners);
  if (!normal) return;
  const fan = corners.slice(2).map((_, i) => [0, i + 1, i + 2] as const);
  const shown = corners.map((corner) => placed(gear.pose, corner));
  const way = turned(gear.pose, normal);
  const drawn = shown.map((at) => ({ at, uv: [0, 0] as const, shade: paint.shadeAt(at, way) }));
  pushTriangles(paint.mesh, drawn, fan, way, colour);
};

interface Softness {
  /** How much of the upright edges is cut off. */
  readonly soft: number;
  /** How far down from the top the upper edge is rounded off, and which ways. */
  readonly crown: number;
  readonly rounds?: Inset;
}

const BOTH_WAYS: Inset = [1, 1];

/** A box with soft edges. */
const pushSoftBox = (
  box: Box,
  { soft, crown, rounds = BOTH_WAYS }: Softness,
  gear: StandingGear,
  colour: Colour,
  paint: Paint,
): void => {
  const [low, high] = [box.min[2], box.max[2]];
  const inset = (by: number): Inset => [by * rounds[0], by * rounds[1]];
  const rings = [
    ringAt(box, low, inset(0), soft),
    ringAt(box, high - crown, inset(0), soft),
    ...(crown > 0
      ? [ringAt(box, high - crown * 0.35, inset(crown * 0.35), soft), ringAt(box, high, inset(crown), soft)]
      : []),
  ];
  rings.slice(1).forEach((ring, i) => {
    const below = rings[i] ?? ring;
    ring.forEach((corner, j) => {
      const k = (j + 1) % ring.length;
      pushFlat([below[j] ?? corner, below[k] ?? corner, ring[k] ?? corner, corner], gear, colour, paint);
    });
  });
  const [bottom, top] = [rings[0], rings.at(-1)];
  if (bottom) pushFlat(bottom.toReversed(), gear, colour, paint);
  if (top) pushFlat(top, gear, colour, paint);
  const { lines } = paint;
  if (!lines) return;
  for (const ring of [bottom, top].filter((r) => r !== undefined))
    ring.forEach((corner, j) => {
      pushLine(lines, placed(gear.pose, corner), placed(gear.pose, ring[(j + 1) % ring.length] ?? corner));
    });
};

const longestAxis = (size: Vec3): 0 | 1 | 2 =>
  size[0] >= size[1] && size[0] >= size[2] ? 0 : size[1] >= size[2] ? 1 : 2;

const AXES: readonly Vec3[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];

/** A round thing along the longest side of the box, as thick as the box allows. */
const pushRound = (
  box: Box,
  rings: (long: number, radius: number) => readonly (readonly [number, number])[],
  gear: StandingGear,
  colour: Colour,
  paint: Paint,
): void => {
  const size = boxSize(box);
  const axis = longestAxis(size);
  const across = ([0, 1, 2] as const).filter((other) => other !== axis);
  const radius = Math.min(...across.map((other) => size[other])) / 2;
  const from: [number, number, number] = [box.min[0], box.min[1], box.min[2]];
  for (const other of across) from[other] = (box.min[other] + box.max[other]) / 2;
  const way = turned(gear.pose, AXES[axis] ?? [0, 0, 1]);
  pushTurned(placed(gear.pose, from), way, rings(size[axis], radius), { ...paint, colour });
};

/** A pressure cylinder: domed shoulders and a valve at the far end. */
const cylinderRings = (long: number, radius: number): readonly (readonly [number, number])[] => {
  const dome = Math.min(radius * 0.8, long * 0.2);
  const neck = Math.min(radius, long * 0.12);
  return [
    [0, 0],
    [0, radius * 0.82],
    [dome * 0.25, radius],
    [long - dome - neck, radius],
    [long - neck - dome * 0.4, radius * 0.8],
    [long - neck, radius * 0.35],
    [long - neck, radius * 0.28],
    [long, radius * 0.28],
    [long, 0],
  ];
};

/** A strip round the box on the axis, thicker than it by a hair so that it shows. */
const band = (box: Box, axis: 0 | 1 | 2, from: number, to: number, proud: number): Box => {
  const size = boxSize(box);
  const min: [number, number, number] = [box.min[0] - proud, box.min[1] - proud, box.min[2]];
  const max: [number, number, number] = [box.max[0] + proud, box.max[1] + proud, box.max[2] + proud];
  min[axis] = box.min[axis] + size[axis] * from;
  max[axis] = box.min[axis] + size[axis] * to;
  return { min, max };
};

/** How far a strap or a seam stands out of what it goes round. */
const PROUD = 1.5;

const least = (size: Vec3): number => Math.min(...size);

/** A strip that lies on its box: no line of its own, or the drawing would be busy. */
const unlined = (paint: Paint): Paint => ({ ...paint, lines: null });

/** The thickness of a handle that a hand closes round. */
const GRIP_MM = 38;

const FORMS: Readonly<Record<GearForm, (gear: StandingGear, paint: Paint) => void>> = {
  box: (gear, paint) => pushSoftBox(gear.box, { soft: 0, crown: 0 }, gear, gear.colour, paint),
  case: (gear, paint) => {
    const soft = least(boxSize(gear.box)) * 0.08;
    pushSoftBox(gear.box, { soft, crown: soft }, gear, gear.colour, paint);
    const seam = band(gear.box, 2, 0.62, 0.68, PROUD);
    pushSoftBox(seam, { soft, crown: 0 }, gear, gear.accent, unlined(paint));
  },
  bag: (gear, paint) => {
    const size = boxSize(gear.box);
    const soft = least(size) * 0.14;
    const crown = Math.min(soft * 1.4, size[2] * 0.4);
    pushSoftBox(gear.box, { soft, crown }, gear, gear.colour, paint);
    const long = size[0] >= size[1] ? 0 : 1;
    const rounds: Inset = long === 0 ? [0, 1] : [1, 0];
    for (const from of [0.24, 0.68]) {
      const strap = band(gear.box, long, from, from + 0.08, PROUD);
      pushSoftBox(strap, { soft: 0, crown, rounds }, gear, gear.accent, unlined(paint));
    }
  },
  cylinder: (gear, paint) => pushRound(gear.box, cylinderRings, gear, gear.accent, paint),
  pack: (gear, paint) => {
    const { min, max } = gear.box;
    const size = boxSize(gear.box);
    const plate = size[1] * 0.3;
    const back: Box = { min: [min[0], max[1] - plate, min[2]], max };
    pushSoftBox(back, { soft: plate * 0.3, crown: plate * 0.3 }, gear, gear.colour, paint);
    const wide = Math.min(size[0] * 0.55, size[1] - plate);
    const left = (min[0] + max[0] - wide) / 2;
    const bottle = boxOf([left, max[1] - plate - wide, min[2] + size[2] * 0.08], [wide, wide, size[2] * 0.86]);
    pushRound(bottle, cylinderRings, gear, gear.accent, unlined(paint));
  },
  long: (gear, paint) => {
    const size = boxSize(gear.box);
    const axis = longestAxis(size);
    const across = ([0, 1, 2] as const).filter((other) => other !== axis);
    const grip = Math.min(GRIP_MM, ...across.map((other) => size[other]));
    const shaftMin: [number, number, number] = [...gear.box.min];
    const shaftMax: [number, number, number] = [...gear.box.max];
    for (const other of across) {
      const middle = other === 2 ? gear.box.min[2] + grip / 2 : (gear.box.min[other] + gear.box.max[other]) / 2;
      shaftMin[other] = middle - grip / 2;
      shaftMax[other] = middle + grip / 2;
    }
    pushSoftBox(boxAround([shaftMin, shaftMax]), { soft: grip * 0.25, crown: 0 }, gear, gear.accent, paint);
    const head = band(gear.box, axis, 0.84, 1, 0);
    pushSoftBox(head, { soft: least(boxSize(head)) * 0.15, crown: 0 }, gear, gear.colour, paint);
  },
};

/** Adds a gear item by its form. Its box is what it takes; what is drawn stays inside but for a hair of strap. */
export const pushGear = (gear: StandingGear, paint: Paint): void => FORMS[gear.form](gear, paint);
