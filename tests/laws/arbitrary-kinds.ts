import { standardCatalog } from '../../src/catalog/index.ts';
import { LYINGS } from '../../src/design/index.ts';
import { type Any, type Fc, hardwareOf, mm, oneOrNone, type Plain } from './arbitrary-parts.ts';

export const holders = (fc: Fc): Any<Plain> => {
  const clamps = hardwareOf('clamp');
  const lies = fc.constantFrom(...LYINGS);
  const cradles = hardwareOf('cradle').filter((id) => id.startsWith('cradle-extinguisher'));
  return fc.oneof(
    fc.record({
      kind: fc.constant('extinguisher-cradle'),
      cradle: fc.constantFrom(...cradles),
      mounting: fc.constantFrom('back', 'left', 'right'),
    }),
    fc.record({
      kind: fc.constant('cylinder-clamp'),
      clamp: fc.constantFrom('clamp-cylinder-150', 'clamp-cylinder-180', 'cradle-oxygen-d'),
      clamps: fc.integer({ min: 1, max: 3 }),
      lies,
    }),
    fc.record({
      kind: fc.constant('tool-clamp'),
      clamp: fc.constantFrom(...clamps),
      clamps: fc.integer({ min: 1, max: 3 }),
      lies,
      headCover: oneOrNone(fc, clamps),
    }),
  );
};

export const passThrough = (fc: Fc): Any<Plain> =>
  fc.record({
    kind: fc.constant('pass-through'),
    through: fc.constantFrom('left', 'right', 'back'),
    widthMm: mm(fc, 40, 300),
    heightMm: mm(fc, 40, 300),
    beyondMm: fc.constantFrom(0, 150, 400),
    frameMaterial: fc.constantFrom('hdpe-6', 'birch-ply-9'),
    edgeTrim: fc.constant('trim-edge-rubber'),
    restraint: oneOrNone(fc, hardwareOf('strap')),
  });

export const chargerBay = (fc: Fc): Any<Plain> => {
  const chargers = [...standardCatalog().devices.values()].filter(({ kind }) => kind === 'charger').map(({ id }) => id);
  return fc.record({
    kind: fc.constant('charger-bay'),
    rows: fc.array(fc.array(fc.constantFrom(...chargers), { minLength: 1, maxLength: 3 }), { maxLength: 2 }),
    vent: oneOrNone(fc, ['vent-louvre-60', 'vent-round-70']),
    fan: fc.constantFrom(null, null, 'fan-bay-80', 'fan-bay-120'),
    aboveMm: fc.constantFrom(0, 120),
  });
};

export const valuables = (fc: Fc, inside: Any<Plain>): Any<Plain> =>
  fc.record({
    kind: fc.constant('valuables'),
    slide: fc.constantFrom(null, null, 'slide-45'),
    slideLengthMm: fc.constantFrom(null, null, 300),
    boxMaterial: fc.constantFrom('birch-ply-12', 'birch-ply-9'),
    bottomMaterial: fc.constantFrom('birch-ply-6', 'hdpe-6'),
    lock: fc.constantFrom('latch-cam-lock', 'latch-slam'),
    pull: oneOrNone(fc, hardwareOf('pull')),
    liner: oneOrNone(fc, hardwareOf('mat')),
    coverMaterial: fc.constantFrom(null, 'birch-ply-9', 'aluminium-20'),
    inside,
  });

export const mapSlot = (fc: Fc): Any<Plain> =>
  fc.record({
    kind: fc.constant('map-slot'),
    slots: fc.integer({ min: 1, max: 5 }),
    lie: fc.constantFrom('upright', 'flat'),
    material: fc.constantFrom('birch-ply-6', 'birch-ply-9'),
    lipHeightMm: fc.constantFrom(0, 30),
  });

export const tabletMount = (fc: Fc): Any<Plain> => {
  const screens = [...standardCatalog().devices.values()].filter(({ kind }) => kind === 'screen').map(({ id }) => id);
  return fc.record({
    kind: fc.constant('tablet-mount'),
    arm: fc.constantFrom(...hardwareOf('arm')),
    tablet: fc.constantFrom(...screens),
    side: fc.constantFrom('left', 'right'),
    swingDeg: fc.integer({ min: 20, max: 180 }),
    turnDeg: fc.integer({ min: 20, max: 120 }),
    latch: oneOrNone(fc, ['latch-draw', 'latch-push-button']),
  });
};

export const trim = (fc: Fc): Any<Plain> =>
  fc.record({
    kind: fc.constant('trim'),
    material: fc.constantFrom('hdpe-10', 'birch-ply-9'),
    cups: fc.integer({ min: 0, max: 3 }),
    cupDiameterMm: fc.constantFrom(70, 85),
    ledgeUpMm: fc.constantFrom(8, 70, 110),
    slotMm: fc.constantFrom(0, 60),
    clip: oneOrNone(fc, hardwareOf('clip')),
  });
