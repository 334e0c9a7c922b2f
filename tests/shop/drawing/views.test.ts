import { describe, expect, it } from 'vitest';
import { boxShape, capsuleShape } from '../../../src/bodies/index.ts';
import { resolved } from '../../../src/shop/drawing/dimensions.ts';
import type { Drawing } from '../../../src/shop/drawing/drawing.ts';
import { faceView } from '../../../src/shop/drawing/face-view.ts';
import { generalView } from '../../../src/shop/drawing/general-view.ts';
import { openingChains } from '../../../src/shop/drawing/opening-chains.ts';
import { convexOutline, type Sight, silhouetteOf } from '../../../src/shop/drawing/projection.ts';
import { visibleEdges } from '../../../src/shop/drawing/visible-edges.ts';
import { markParts } from '../../../src/shop/marks.ts';
import { node, opening, twoColumns } from '../fixture.ts';

/** Looking forward from the hatch: right is −y. */
const SIGHT: Sight = { origin: [0, 0, 0], right: [0, -1, 0], up: [0, 0, 1], away: [1, 0, 0] };
const lengthOf = (edges: ReturnType<typeof visibleEdges>): number =>
  edges.reduce((sum, { from, to }) => sum + Math.hypot(to[0] - from[0], to[1] - from[1]), 0);
const box = (id: string, min: readonly [number, number, number], max: readonly [number, number, number]) =>
  silhouetteOf(id, boxShape({ min, max }), SIGHT);
const textsOf = (drawing: Drawing): readonly string[] =>
  resolved(drawing).shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []));

describe('silhouettes', () => {
  it('of a box are its rectangle, anticlockwise, with its depths', () => {
    const seen = box('b', [10, -30, 5], [40, 20, 25]);
    expect(seen).toMatchObject({ near: 10, far: 40 });
    expect(convexOutline(seen.ring)).toEqual([
      [-20, 5],
      [30, 5],
      [30, 25],
      [-20, 25],
    ]);
  });

  it('of a capsule are as wide as it is thick', () => {
    const seen = silhouetteOf('c', capsuleShape([0, 0, 0], [0, 0, 100], 8), SIGHT);
    expect(Math.max(...seen.ring.map(([x]) => x))).toBeCloseTo(8, 9);
    expect(Math.max(...seen.ring.map(([, y]) => y))).toBeCloseTo(108, 9);
    expect(seen).toMatchObject({ near: -8, far: 8 });
  });
});

describe('visible edges', () => {
  it('leave out what a nearer body covers', () => {
    const back = box('back', [50, -100, 0], [60, 100, 100]);
    const front = box('front', [0, -40, -20], [10, 40, 120]);
    const edges = visibleEdges([back, front]);
    // The front is seen whole: 2 · (80 + 140) = 440. Of the back, 80 mm of its upper and lower edge are covered.
    expect(lengthOf(edges.filter(({ item }) => item === 'front'))).toBeCloseTo(440, 9);
    expect(lengthOf(edges.filter(({ item }) => item === 'back'))).toBeCloseTo(2 * 200 + 2 * 100 - 2 * 80, 9);
  });

  it('leave out a body that is covered whole, and show it when it is nearer', () => {
    const small = box('small', [50, -10, 40], [60, 10, 60]);
    const near = box('small', [0, -10, 40], [5, 10, 60]);
    const large = box('large', [10, -100, 0], [20, 100, 100]);
    expect(visibleEdges([small, large]).filter(({ item }) => item === 'small')).toEqual([]);
    expect(lengthOf(visibleEdges([near, large]).filter(({ item }) => item === 'small'))).toBe(80);
  });

  it('keep an edge that only touches a nearer body', () => {
    const left = box('left', [0, 0, 0], [10, 50, 100]);
    const beside = box('beside', [20, -50, 0], [30, 0, 100]);
    expect(lengthOf(visibleEdges([left, beside]))).toBe(2 * 300);
  });
});

describe('opening chains', () => {
  const part = (
    id: string,
    parent: string,
    from: readonly [number, number, number],
    size: readonly [number, number, number],
  ) => opening(id, { parent: node(parent), depth: 1, from, size });

  it('run below for columns and beside the face for the rows of outer columns, inside for the rest', () => {
    const chains = openingChains([
      opening('opening-1', { content: 'divided', from: [18, 0, 18], size: [864, 580, 664] }),
      part('opening-2', 'opening-1', [18, 0, 18], [276, 580, 664]),
      part('opening-3', 'opening-1', [312, 0, 18], [276, 580, 664]),
      part('opening-4', 'opening-1', [606, 0, 18], [276, 580, 664]),
      ...[2, 3, 4].flatMap((column) => [
        part(`opening-${column}0`, `opening-${column}`, [18 + 294 * (column - 2), 0, 18], [276, 580, 300]),
        part(`opening-${column}1`, `opening-${column}`, [18 + 294 * (column - 2), 0, 336], [276, 580, 346]),
      ]),
    ]);
    expect(chains.map(({ axis, side }) => [axis, side])).toEqual([
      ['across', 'low'],
      ['up', 'low'],
      ['up', 'inside'],
      ['up', 'high'],
    ]);
    expect(chains[0]?.spans).toEqual([
      [18, 294],
      [312, 588],
      [606, 882],
    ]);
  });

  it('leave out layers, and openings that move', () => {
    expect(
      openingChains([
        opening('opening-1', { content: 'divided', size: [100, 100, 100] }),
        part('opening-2', 'opening-1', [0, 0, 0], [100, 50, 100]),
        part('opening-3', 'opening-1', [0, 50, 0], [100, 50, 100]),
      ]),
    ).toEqual([]);
  });
});

describe('views', () => {
  const fitout = twoColumns();
  const marks = markParts(fitout);
  const common = {
    fitout,
    marks,
    designTitle: 'Brook Hollow',
    customer: '',
    signed: 'draft',
    foot: { projection: 'third' as const, revisions: [] },
    units: 'mm' as const,
    space: null,
  };
  const [carcass] = fitout.carcasses;
  if (!carcass) throw new Error('no carcass');

  it('show the face with overall sizes, clear sizes, names and marks', () => {
    const texts = textsOf(faceView({ ...common, carcass }));
    for (const words of ['900', '700', 'Packs', 'Bags', 'A1', 'A2', 'A3', 'A5', 'A6']) expect(texts).toContain(words);
    // Clear column: (900 − 3 · 17.7) / 2 = 423.45, twice in the chain.
    expect(texts.filter((words) => words === '423.4')).toHaveLength(2);
    // The back stands behind open air: its mark would float in an opening.
    expect(texts).not.toContain('A4');
  });

  it('show the plan with the hatch at the foot, and the side from the right', () => {
    // Across 900 and deep 600 on the plan; 50 from the sill. Deep 600 and up 700 on the side; 20 from the floor.
    const plan = textsOf(generalView('plan', common));
    for (const words of ['900', '600', '50', 'A']) expect(plan).toContain(words);
    const side = textsOf(generalView('side', common));
    for (const words of ['600', '700', '20', 'A']) expect(side).toContain(words);
  });
});
