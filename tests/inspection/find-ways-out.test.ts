import { describe, expect, test } from 'vitest';
import {
  addGear,
  changeCarcass,
  type Design,
  divideOpening,
  duplicateCarcass,
  type Gear,
  placeGear,
  setPartSize,
} from '../../src/design/index.ts';
import { findWaysOut, openStops } from '../../src/inspection/index.ts';
import { inspector, oneCarcass } from './solved.ts';

const tryOut = (design: Design) => {
  const look = inspector(design.survey);
  return { look, inspection: findWaysOut(look(design), design, look) };
};

const box = (name: string, sizeMm: Gear['sizeMm']): Omit<Gear, 'id'> => ({
  name,
  kind: null,
  sizeMm,
  massKg: 1,
  massFrom: 'measured',
  massSigmaKg: 0,
  needs: ['upright'],
  firstDue: false,
  user: '',
  note: '',
  place: null,
});

/** Gear boxes in the carcass's own opening, each at its place. */
const withGear = (
  design: Design,
  rows: readonly { readonly size: Gear['sizeMm']; readonly at: Gear['sizeMm'] }[],
): Design => {
  const opening = design.cabinet.carcasses[0]?.opening.id;
  if (!opening) throw new Error('no opening');
  const added = addGear(
    design,
    rows.map(({ size }, i) => box(`Box ${i + 1}`, size)),
  );
  return added.ids.reduce((made, id, i) => {
    const row = rows[i];
    return row ? placeGear(made, id, { opening, level: 0, at: row.at, stance: 'upright', turnDeg: 0 }) : made;
  }, added.design);
};

describe('findWaysOut', () => {
  test('a carcass through the wall is moved off it by what lacks, in steps of the reader', () => {
    // 600 wide from y = 10.5 to 610.5, wall at 600: 10.5 out. Limit 6, half width 5.385.
    const design = oneCarcass(10.5);
    const { look, inspection } = tryOut(design);
    const [stop] = openStops(inspection);
    expect(stop).toMatchObject({ rule: 'body-in-space', parts: ['carcass-1'] });
    expect(stop?.value).toBeCloseTo(-10.5, 9);
    const ways = stop?.waysOut ?? [];
    // 10.5 + 6 + 5.385 = 21.885, up to 22: nothing is left to say.
    expect(ways.map(({ kind, facts }) => `${kind} ${facts.axis ?? facts.size} ${facts.mm}`)).toEqual([
      'move-carcass y -22',
      'shrink-carcass width 22',
    ]);
    for (const way of ways) {
      const again = look(way.design);
      expect(openStops(again)).toEqual([]);
      const after = again.measured.find(({ rule }) => rule === 'body-in-space');
      expect(after?.value).toBe(way.valueAfter);
    }
    expect(ways[0]?.valueAfter).toBeCloseTo(11.5, 9);
  });

  test('where there is no room for the whole of it, the limit is met and a caution is left', () => {
    // A second carcass stands 18 to the right: 22 would leave less than nothing, 17 leave 1.
    const design = oneCarcass(10.5);
    const second = duplicateCarcass(design, design.cabinet.carcasses[0]?.id ?? ('' as never));
    const beside = changeCarcass(second.design, second.id, {
      place: { x: { rule: 'at', mm: 60 }, y: { rule: 'at', mm: 10.5 - 18 - 600 }, z: { rule: 'at', mm: 0 } },
      size: { width: 600, height: 400, depth: 600 },
    });
    const { look, inspection } = tryOut(
      changeCarcass(beside, second.id, { size: { width: 600, height: 400, depth: 600 } }),
    );
    const way = openStops(inspection)
      .find(({ parts }) => parts[0] === 'carcass-1')
      ?.waysOut.find(({ kind }) => kind === 'move-carcass');
    expect(way).toMatchObject({ facts: { axis: 'y', mm: -17 } });
    expect(way?.valueAfter).toBeCloseTo(6.5, 9);
    const after = look(way?.design ?? design);
    expect(
      after.findings.filter(({ rule, parts }) => rule === 'body-in-space' && parts[0] === 'carcass-1'),
    ).toMatchObject([{ severity: 'caution' }]);
  });

  test('in inches it moves by sixteenths', () => {
    const { inspection } = tryOut(oneCarcass(10.5, 'in'));
    const way = openStops(inspection)[0]?.waysOut[0];
    // 21.885 mm are 13.79 sixteenths: 14 × 1.5875 = 22.225 mm.
    expect(way).toMatchObject({ kind: 'move-carcass', facts: { axis: 'y' } });
    expect(way?.facts.mm).toBeCloseTo(-22.225, 9);
  });

  test('an edit that would make a new stop is not offered', () => {
    // Turned gear or gear pushed over would go through the side: only the free way is left.
    const design = withGear(oneCarcass(-300), [
      { size: [300, 200, 200], at: [0, 0, 0] },
      { size: [300, 200, 200], at: [180, 0, 0] },
    ]);
    const { look, inspection } = tryOut(design);
    const [stop] = openStops(inspection);
    expect(stop).toMatchObject({ rule: 'body-body', value: -20 });
    expect(stop?.waysOut.length).toBeGreaterThan(0);
    for (const way of stop?.waysOut ?? []) expect(openStops(look(way.design))).toEqual([]);
    // The first box cannot give way to the right, where it would leave the room; the second one can, by 20.
    expect(stop?.waysOut[0]).toMatchObject({ kind: 'move-gear', facts: { gear: 'Box 2', axis: 'across', mm: 20 } });
  });

  test('gear that sticks out of its room is pushed in, or its carcass grows', () => {
    const pushed = tryOut(withGear(oneCarcass(-300), [{ size: [300, 200, 200], at: [400, 0, 0] }]));
    const [stop] = openStops(pushed.inspection).filter(({ rule }) => rule === 'gear-in-room');
    expect(stop?.waysOut[0]).toMatchObject({ kind: 'move-gear', facts: { axis: 'across' } });
    expect(stop?.waysOut[0]?.facts.mm).toBeLessThan(0);

    // 480 high in a room of 500 less two boards: turning does not help, it must stand.
    const tall = tryOut(withGear(oneCarcass(-300), [{ size: [300, 200, 480], at: [0, 0, 0] }]));
    const [high] = openStops(tall.inspection).filter(({ rule }) => rule === 'gear-in-room');
    expect(high?.waysOut.map(({ kind }) => kind)).toEqual(['grow-carcass']);
    expect(high?.waysOut[0]?.facts).toMatchObject({ size: 'height' });
  });

  test('of fixed rows that want too much the largest is given what is left', () => {
    // 500 less two boards of 17.7 and one divider leave 446.9 for rows of 150 and 350.
    const made = oneCarcass(-300);
    const opening = made.cabinet.carcasses[0]?.opening.id;
    if (!opening) throw new Error('no opening');
    const divided = divideOpening(made, opening, 'rows', 2);
    const tooMuch = [150, 350].reduce(
      (design, mm, i) => setPartSize(design, opening, i, { rule: 'fixed', mm }),
      divided,
    );
    const { look, inspection } = tryOut(tooMuch);
    const [stop] = openStops(inspection);
    expect(stop).toMatchObject({
      rule: 'cabinet-solves',
      parts: [opening],
      facts: { code: 'rules-fight', axis: 'up' },
    });
    // A higher carcass would leave fixed rows with room that nobody takes, which is a stop again.
    expect(stop?.waysOut.map(({ kind }) => kind)).toEqual(['share-part']);
    expect(openStops(look(stop?.waysOut[0]?.design ?? tooMuch))).toEqual([]);
    const rows = stop?.waysOut[0]?.design.cabinet.carcasses[0]?.opening.content;
    expect(rows?.kind === 'divided' && rows.parts.map(({ size }) => size.rule)).toEqual(['fixed', 'share']);
  });

  test('nothing is offered for what only a person can decide, and the inspection stays as it was', () => {
    const design = oneCarcass(-300);
    const look = inspector(design.survey);
    const plain = look(design);
    expect(findWaysOut(plain, design, look)).toEqual(plain);
  });

  test('an accepted stop asks for no way out', () => {
    const design = oneCarcass(10.5);
    const accepted = [{ rule: 'body-in-space', parts: ['carcass-1'], who: 'A', why: 'b', on: '' }];
    const { inspection } = tryOut({ ...design, accepted });
    expect(inspection.findings.filter(({ waysOut }) => waysOut.length > 0)).toEqual([]);
  });

  test('no more copies are tried than the bound', () => {
    const rows = Array.from({ length: 14 }, (_, i) => ({
      size: [100, 100, 100] as const,
      at: [i * 30, 0, 0] as const,
    }));
    const design = withGear(oneCarcass(-300), rows);
    const look = inspector(design.survey);
    let tries = 0;
    findWaysOut(look(design), design, (copy) => {
      tries++;
      return look(copy);
    });
    expect(tries).toBeGreaterThan(12);
    expect(tries).toBeLessThanOrEqual(60);
  });
});
