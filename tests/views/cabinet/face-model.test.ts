import { describe, expect, test } from 'vitest';
import { addCarcass, divideOpening, emptyDesign, freshCarcass } from '../../../src/design/index.ts';
import { dimensionChains } from '../../../src/views/editor/sheets/cabinet/face/dimension-chains.ts';
import { firstAtPlace, placeOfFirst } from '../../../src/views/editor/sheets/cabinet/face/divider-targets.ts';
import { faceOf } from '../../../src/views/editor/sheets/cabinet/face/face-model.ts';
import { solvedOpening, withOpenings, workedFace } from './solved-face.ts';

describe('faceOf', () => {
  const { carcass, fitOut } = workedFace();
  const face = faceOf(carcass, fitOut, {});

  test('shows the rooms that are not divided further: three rows and a column', () => {
    expect(face.rooms.map((room) => room.rect)).toEqual([
      // the top row first: 480 − 140 up, then 160 lower each
      { across: 20, up: 340, width: 270, height: 140 },
      { across: 20, up: 180, width: 270, height: 140 },
      { across: 20, up: 20, width: 270, height: 140 },
      { across: 310, up: 20, width: 270, height: 460 },
    ]);
  });

  test('puts a divider between each two neighbours, with both sizes', () => {
    expect(face.dividers.map(({ along, rect, firstMm, secondMm }) => ({ along, rect, firstMm, secondMm }))).toEqual([
      // between the columns: 290 … 310 across
      { along: 'columns', rect: { across: 290, up: 20, width: 20, height: 460 }, firstMm: 270, secondMm: 270 },
      // between the rows: 320 … 340 and 160 … 180 up
      { along: 'rows', rect: { across: 20, up: 320, width: 270, height: 20 }, firstMm: 140, secondMm: 140 },
      { along: 'rows', rect: { across: 20, up: 160, width: 270, height: 20 }, firstMm: 140, secondMm: 140 },
    ]);
  });

  test('a divider’s place and the size before it are two ways of saying the same', () => {
    for (const divider of face.dividers)
      for (const firstMm of [60, 140, 200]) expect(firstAtPlace(divider, placeOfFirst(divider, firstMm))).toBe(firstMm);
  });

  test('of an opening divided in depth one layer is shown, the front one first', () => {
    const empty = emptyDesign('layers', 'mm');
    const first = freshCarcass(empty);
    const design = divideOpening(addCarcass(empty, first), first.opening.id, 'layers', 2);
    const [layered] = design.cabinet.carcasses;
    if (layered?.opening.content.kind !== 'divided') throw new Error('not divided');
    const [front, back] = layered.opening.content.parts.map((part) => part.opening.id);
    if (!front || !back) throw new Error('not two layers');
    const solved = withOpenings([
      solvedOpening(layered, layered.opening.id, [20, 0, 20], [560, 700, 460]),
      solvedOpening(layered, front, [20, 0, 20], [560, 340, 460]),
      solvedOpening(layered, back, [20, 360, 20], [560, 340, 460]),
    ]);
    expect(faceOf(layered, solved, {}).rooms.map((room) => room.id)).toEqual([front]);
    expect(faceOf(layered, solved, { [layered.opening.id]: 1 }).rooms.map((room) => room.id)).toEqual([back]);
    expect(faceOf(layered, solved, {}).layers).toHaveLength(1);
  });

  test('what the fit-out could not solve is left out', () => {
    expect(faceOf(carcass, withOpenings([]), {}).rooms).toEqual([]);
  });
});

describe('dimensionChains', () => {
  const { carcass, fitOut } = workedFace();
  const content = carcass.opening.content;
  const parts = content.kind === 'divided' ? content.parts : [];
  const chains = (selected: string | null) => dimensionChains({ carcass, fitOut, layerOf: {}, selected });

  test('rows stand on the side of their column, columns below, the whole outside of both', () => {
    expect(chains(null).map(({ side, rank, pieces }) => ({ side, rank, count: pieces.length }))).toEqual([
      { side: 'left', rank: 0, count: 3 },
      { side: 'bottom', rank: 0, count: 2 },
      { side: 'bottom', rank: 1, count: 1 },
      { side: 'right', rank: 0, count: 1 },
    ]);
  });

  test('every figure is the inside size of its room', () => {
    const [rows, columns, width, height] = chains(null);
    expect(rows?.pieces.map(({ from, to }) => to - from)).toEqual([140, 140, 140]);
    expect(columns?.pieces.map(({ from, to }) => to - from)).toEqual([270, 270]);
    expect(width?.pieces.map(({ to }) => to)).toEqual([600]);
    expect(height?.pieces.map(({ to }) => to)).toEqual([500]);
  });

  test('a figure says which room it sets, and by which rule that room is measured now', () => {
    const [rows] = chains(null);
    expect(rows?.pieces[0]?.sets).toEqual({
      kind: 'part',
      parent: parts[0]?.opening.id,
      index: 0,
      rule: { rule: 'fixed', mm: 140 },
    });
  });
});
