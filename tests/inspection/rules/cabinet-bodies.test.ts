import { describe, expect, test } from 'vitest';
import { type BodyRow, findingsOf, linesOf, node, panel } from '../fixture.ts';
import { cabinetScene, drawerBox, SIDE, secondCarcass } from '../scenes/cabinet.ts';

const TOP: BodyRow = { id: 'carcass-1/top', min: [0, 10, 782], max: [600, 500, 800] };

describe('body-body', () => {
  test('panels of one assembly are let into each other; the same overlap between two carcasses is a stop', () => {
    expect(linesOf(cabinetScene([SIDE, TOP]), 'body-body')).toEqual([]);
    // The top reaches 8 into the side's 18; 18 deep along z; out sideways by 8 is the shortest way.
    expect(linesOf(cabinetScene([SIDE, { ...TOP, carcass: node('carcass-2') }]), 'body-body')).toEqual([
      'stop carcass-1+carcass-2 -8',
    ]);
  });

  test('gear over gear, gear into a panel, touching is fine', () => {
    const bag: BodyRow = { id: 'gear-1', kind: 'gear', min: [100, 18, 0], max: [300, 200, 300] };
    expect(linesOf(cabinetScene([SIDE, bag]), 'body-body')).toEqual([]);
    const inspection = cabinetScene([
      SIDE,
      { ...bag, min: [100, 13, 0] },
      { ...bag, id: 'gear-2', min: [280, 100, 0], max: [500, 250, 200] },
    ]);
    expect(linesOf(inspection, 'body-body')).toEqual(['stop gear-1+gear-2 -20', 'stop gear-1+carcass-1/side -5']);
    expect(findingsOf(inspection, 'body-body')[0]?.facts).toMatchObject({ firstKind: 'gear', relation: 'one-piece' });
  });

  test('nothing solid stands in the room behind a plug; air may share air, and a device its own', () => {
    const radio: BodyRow = {
      id: 'radio/body',
      origin: node('radio'),
      kind: 'device',
      min: [0, 20, 400],
      max: [200, 200, 460],
    };
    const plugs: BodyRow = {
      id: 'radio/plugs',
      origin: node('radio'),
      kind: 'plug-room',
      min: [190, 20, 400],
      max: [280, 200, 460],
    };
    const other: BodyRow = { ...plugs, id: 'head/plugs', origin: node('head') };
    expect(linesOf(cabinetScene([radio, plugs, other]), 'body-body')).toEqual(['stop radio+head -10']);
    const back: BodyRow = { id: 'carcass-1/back', min: [270, 0, 0], max: [276, 600, 800] };
    expect(linesOf(cabinetScene([plugs, back]), 'body-body')).toEqual(['stop radio+carcass-1/back -10']);
  });

  test('a drawer in its panel is a stop between the two panels', () => {
    const drawer: BodyRow = { id: 'opening-2/box-side', mover: 'drawer-1', min: [20, 12, 100], max: [500, 24, 200] };
    expect(linesOf(cabinetScene([SIDE, drawer]), 'body-body')).toEqual(['stop carcass-1/side+opening-2/box-side -6']);
  });
});

describe('moving-gap', () => {
  const drawer = (gap: number): BodyRow => drawerBox(18 + gap);
  test.each<[number, readonly string[]]>([
    [3, []],
    [2, ['caution box+carcass-1/side 2']],
    [0, ['caution box+carcass-1/side 0']],
  ])('a drawer %d from a fixed panel', (gap, expected) => {
    expect(linesOf(cabinetScene([SIDE, drawer(gap)]), 'moving-gap')).toEqual(expected);
  });

  test('a drawer front keeps the reveal; slides touch by design', () => {
    const front = panel('box', 100, 100, { role: 'front', mover: 'drawer-1' });
    expect(linesOf(cabinetScene([SIDE, drawer(2)], { panels: [front] }), 'moving-gap')).toEqual([]);
    expect(linesOf(cabinetScene([SIDE, drawer(1.9)], { panels: [front] }), 'moving-gap')).toEqual([
      'caution box+carcass-1/side 1.9',
    ]);
    expect(linesOf(cabinetScene([SIDE, { ...drawer(0), kind: 'hardware' }]), 'moving-gap')).toEqual([]);
  });
});

describe('carcass-gap', () => {
  const second = secondCarcass(-2);
  test('side by side 3 apart; two is a caution', () => {
    expect(linesOf(cabinetScene([SIDE, second]), 'carcass-gap')).toEqual(['caution carcass-1+carcass-2 2']);
    expect(linesOf(cabinetScene([SIDE, { ...second, max: [600, -3, 800] }]), 'carcass-gap')).toEqual([]);
  });
  test('one on top of the other bears', () => {
    const above: BodyRow = { ...second, min: [0, 0, 800], max: [600, 500, 900] };
    expect(linesOf(cabinetScene([SIDE, above]), 'carcass-gap')).toEqual([]);
    expect(linesOf(cabinetScene([SIDE, above]), 'body-body')).toEqual([]);
  });
});
