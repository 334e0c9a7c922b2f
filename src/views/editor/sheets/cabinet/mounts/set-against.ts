import { add, boxUnion, scale, subtract, type Vec3 } from '../../../../../base/index.ts';
import {
  boxShape,
  type ConvexShape,
  certifiedTravel,
  clearanceInside,
  prepareShell,
  shapeBox,
} from '../../../../../bodies/index.ts';
import type { Design, Mount } from '../../../../../design/index.ts';
import type { CargoSpace } from '../../../../../envelope/index.ts';
import type { FitOut } from '../../../../../fitout/index.ts';

/** How far out a mount is looked for a clear place, and how far it may then be pushed back. */
const OUT_MM = 400;
const BACK_MM = 1200;
const HALVINGS = 40;

const shifted = (shape: ConvexShape, by: Vec3): ConvexShape => ({
  ...shape,
  vertices: shape.vertices.map((vertex) => add(vertex, by)),
});

/** The shapes of what carries a mount: the pieces of its closure, or the bodies of its carcass. */
const carrierOf = (mount: Mount, fitOut: FitOut, space: CargoSpace): readonly ConvexShape[] => [
  ...space.bodies.filter(({ closure }) => closure !== null && closure === mount.on).map(({ shape }) => shape),
  ...fitOut.bodies.filter(({ carcass }) => carcass !== null && carcass === mount.on).map(({ shape }) => shape),
];

/** How far back along `back` a shape inside the skin of the cargo space can go; null where it does not begin inside. */
const backToSkin = (shape: ConvexShape, back: Vec3, { skin }: CargoSpace): number | null => {
  const prepared = prepareShell(skin);
  const inside = (mm: number): boolean => {
    const clear = clearanceInside(shifted(shape, scale(back, mm)), prepared, 0);
    return clear === null || clear.distance >= 0;
  };
  if (!inside(0) || inside(BACK_MM)) return null;
  let [low, high] = [0, BACK_MM];
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    if (inside(middle)) low = middle;
    else high = middle;
  }
  return low;
};

/**
 * Where a mount comes to stand when it is pushed straight back, the way that it does not look, until it or its bracket
 * meets what carries it: the closure, the carcass, or the trim of the vehicle. Null where it would meet nothing.
 */
export const setAgainst = (design: Design, id: string, fitOut: FitOut, space: CargoSpace): Vec3 | null => {
  const mount = design.mounts.find((own) => own.id === id);
  const out = fitOut.devices.find(({ origin }) => origin === id)?.off?.along;
  const own = fitOut.bodies.filter(({ origin }) => origin === id).map(({ shape }) => shape);
  if (!mount || !out || own.length === 0) return null;
  const whole = boxShape(own.map(shapeBox).reduce(boxUnion));
  const back = scale(out, -1);
  if (mount.on === null) {
    const by = backToSkin(whole, back, space);
    return by === null ? null : add(mount.at, scale(back, by));
  }
  const from = subtract(mount.at, scale(back, OUT_MM));
  const { contact, reaches } = certifiedTravel(
    { kind: 'slide', along: back, fromMm: 0, toMm: BACK_MM },
    [shifted(whole, subtract(from, mount.at))],
    carrierOf(mount, fitOut, space),
    0,
  );
  return contact && reaches > 0 ? add(from, scale(back, reaches)) : null;
};
