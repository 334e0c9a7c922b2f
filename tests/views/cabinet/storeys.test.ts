import { describe, expect, it } from 'vitest';
import type { Opening } from '../../../src/design/index.ts';
import { storeysOf } from '../../../src/views/editor/sheets/cabinet/inside/storeys.ts';
import { carcass, designOf, empty, fitted, solved } from '../../fitout/designs.ts';

const tray = (second: object | null) =>
  carcass(
    fitted('opening-1', {
      kind: 'slide-out',
      deckMaterial: 'birch-ply-18',
      lipMaterial: 'birch-ply-12',
      inside: empty('opening-2'),
      second,
    }),
  );
const openingOf = (box: ReturnType<typeof tray>) => designOf([box]).cabinet.carcasses[0]?.opening as Opening;

describe('the storeys of an opening', () => {
  it('are the deck of a tray and its second level, so that gear is put on either', () => {
    const two = tray({ upMm: 250, inside: empty('opening-3') });
    const storeys = storeysOf(openingOf(two), solved([two]).rooms);
    expect(storeys.map(({ name, rooms }) => [name, rooms.map(({ opening }) => opening)])).toEqual([
      ['deck', ['opening-2']],
      ['second level', ['opening-3']],
    ]);
  });

  it('are one for everything else', () => {
    const one = tray(null);
    expect(storeysOf(openingOf(one), solved([one]).rooms)).toHaveLength(1);
  });
});
