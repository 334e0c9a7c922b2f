import fc from 'fast-check';
import type { FitOut, Panel, PanelCut } from '../../src/fitout/index.ts';
import { fitOutOf, node, panel } from './fixture.ts';

/** Sizes on a half-millimetre raster, so that equal parts do come up. */
const size = (from: number, to: number) => fc.integer({ min: from * 2, max: to * 2 }).map((halves) => halves / 2);
const face = fc.constantFrom('a' as const, 'b' as const);
const band = fc.constantFrom(null, null, 'band-1');

const cutIn = (length: number, width: number): fc.Arbitrary<PanelCut> => {
  const inX = size(0, Math.floor(length));
  const inY = size(0, Math.floor(width));
  const hole = fc.record({
    kind: fc.constant('hole' as const),
    face,
    at: fc.tuple(inX, inY),
    diameter: fc.constantFrom(3, 4.5, 8),
    depth: fc.constantFrom(null, 6, 10),
    why: fc.constantFrom('screw', 'slide'),
  });
  const recess = fc
    .record({
      kind: fc.constantFrom('dado' as const, 'groove' as const, 'rabbet' as const, 'pocket' as const),
      face,
      from: fc.tuple(size(0, length - 20), size(0, width - 20)),
      size: fc.tuple(size(6, 20), size(6, 20)),
      depth: fc.constantFrom(3, 6),
    })
    .map(({ kind, face: side, from, size: [w, h], depth }): PanelCut => {
      return { kind, face: side, from, to: [from[0] + w, from[1] + h], depth, takes: null };
    });
  return fc.oneof(hole, recess);
};

const panelShape = fc.tuple(fc.constantFrom(300, 412.5, 700), fc.constantFrom(120, 300, 580)).chain(([length, width]) =>
  fc.record({
    length: fc.constant(length),
    width: fc.constant(width),
    role: fc.constantFrom('side-left', 'top', 'divider', 'box-front'),
    material: fc.constantFrom('ply-18', 'ply-12', 'alu-3'),
    thickness: fc.constantFrom(17.7, 12),
    grain: fc.constantFrom('length' as const, 'any' as const),
    hand: fc.constantFrom(null, null, 'left' as const, 'right' as const),
    bands: fc.record({ l1: band, l2: band, w1: band, w2: band }),
    outline: fc.constantFrom(null, null, [
      [0, 0],
      [length, 0],
      [length, width],
      [length / 4, width],
    ] as const),
    cuts: fc.array(cutIn(length, width), { maxLength: 6 }),
    carcass: fc.constantFrom(node('carcass-1'), node('carcass-2')),
    massKg: fc.double({ min: 0.001, max: 60, noNaN: true }),
  }),
);

const twice = <T>(list: readonly T[], again: readonly number[]): readonly T[] => [
  ...list,
  ...again.flatMap((i) => list.slice(i % Math.max(list.length, 1), (i % Math.max(list.length, 1)) + 1)),
];

/** Fit-outs of panels alone, some of them repeated, in two carcasses. */
export const anyFitOut: fc.Arbitrary<FitOut> = fc
  .tuple(fc.array(panelShape, { maxLength: 14 }), fc.array(fc.nat(30), { maxLength: 10 }))
  .map(([shapes, again]) =>
    fitOutOf(twice(shapes, again).map((shape, i): Panel => panel(`carcass-1/part-${i}`, shape))),
  );
