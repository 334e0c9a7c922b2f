import fc from 'fast-check';
import { after, boxAt, type Pose, type Random, shift, turnAbout, unit, type Vec3 } from '../../src/base/index.ts';
import { boxShape, type ConvexShape, capsuleShape, type Motion, shapeAt } from '../../src/bodies/index.ts';

/** Laws run on this seed, so that a failure can be looked at again. */
export const SEED = 20261;

const within = (random: Random, least: number, most: number): number => least + (most - least) * random();

export const somePoint = (random: Random, reach: number): Vec3 => [
  within(random, -reach, reach),
  within(random, -reach, reach),
  within(random, -reach, reach),
];

export const somePose = (random: Random, reach: number): Pose =>
  after(shift(somePoint(random, reach)), turnAbout([0, 0, 0], [...somePoint(random, 1)], within(random, -3, 3)));

export const someBox = (random: Random, reach: number): ConvexShape =>
  boxShape(boxAt(somePoint(random, reach), [within(random, 5, 400), within(random, 5, 400), within(random, 5, 400)]));

export const someCapsule = (random: Random, reach: number): ConvexShape =>
  capsuleShape(somePoint(random, reach), somePoint(random, reach), within(random, 0, 80));

/** Boxes square to the axes on whole millimetres (so that faces line up), turned boxes and capsules. */
export const someShape = (random: Random, reach: number): ConvexShape => {
  const kind = random();
  if (kind < 0.3) {
    const at = somePoint(random, reach / 20).map((v) => Math.round(v) * 20);
    const size = somePoint(random, 10).map((v) => Math.round(Math.abs(v) + 1) * 20);
    return boxShape(boxAt([at[0] ?? 0, at[1] ?? 0, at[2] ?? 0], [size[0] ?? 0, size[1] ?? 0, size[2] ?? 0]));
  }
  if (kind < 0.8) return shapeAt(someBox(random, reach), somePose(random, reach / 4));
  return someCapsule(random, reach);
};

/** A seed as the arbitrary: the scene is built from it by the plain generator above. */
export const anySeed: fc.Arbitrary<number> = fc.integer({ min: 1, max: 2 ** 31 - 1 });

/** A slide or a turn somewhere within reach, forwards or backwards. */
export const someMotion = (random: Random, reach: number): Motion => {
  const direction = somePoint(random, 1);
  if (random() < 0.5)
    return {
      kind: 'slide',
      along: unit(direction),
      fromMm: within(random, -reach, reach),
      toMm: within(random, -reach, reach),
    };
  const fromRad = within(random, -3, 3);
  const toRad = fromRad + within(random, -Math.PI * 2, Math.PI * 2);
  return { kind: 'turn', point: somePoint(random, reach), axis: unit(direction), fromRad, toRad };
};
