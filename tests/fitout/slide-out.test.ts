import { describe, expect, it } from 'vitest';
import { carcass, empty, fitted, openingOf, panelOf, solved } from './designs.ts';
import { bodyBox } from './measures.ts';

type Plain = Readonly<Record<string, unknown>>;
const tenth = (values: readonly number[]): readonly number[] => values.map((value) => Math.round(value * 10) / 10);

/** Clear 864.6 × 941.6 × 364.6 (across × deep × up) at [17.7, 0, 17.7]. */
const tray = (rest: Plain = {}, gear: readonly Plain[] = []) =>
  solved(
    [
      carcass(
        fitted('opening-1', {
          kind: 'slide-out',
          deckMaterial: 'birch-ply-18',
          lipMaterial: 'birch-ply-12',
          inside: empty('opening-2'),
          ...rest,
        }),
        { size: { width: 900, height: 400, depth: 960 } },
      ),
    ],
    { gear },
  );

const load = (massKg: number): Plain => ({
  id: 'gear-1',
  name: 'Case',
  sizeMm: [500, 400, 150],
  massKg,
  massFrom: 'measured',
  place: { opening: 'opening-2', level: 0, at: [0, 0, 0] },
});

describe('a slide-out on side slides', () => {
  const fitOut = tray({ slide: 'slide-100', lipHeightMm: 60 });

  it('is as deep as the opening less the clearance behind, between its slides', () => {
    expect(fitOut.problems).toEqual([]);
    const side = panelOf(fitOut, 'opening-1/tray-side-left');
    // 941.6 − 20; the deck 17.7 and a lip of 60.
    expect(tenth([side.length, side.width])).toEqual([921.6, 77.7]);
    const deck = panelOf(fitOut, 'opening-1/deck');
    // 864.6 − 2 × 19.3 − 2 × 12 sides + 2 × 0.333 × 12 housed = 809.992.
    expect(deck.width).toBeCloseTo(809.992, 9);
    const lip = panelOf(fitOut, 'opening-1/lip-front');
    expect(tenth([lip.length, lip.width])).toEqual([802, 60]);
  });

  it('takes the longest slide and travels its length', () => {
    expect(fitOut.hardware.find(({ from }) => from === 'slide')).toMatchObject({ item: 'slide-100', lengthMm: 900 });
    expect(fitOut.movers[0]?.motion).toMatchObject({ kind: 'slide', travel: 900 });
  });

  it('carries the room above its deck up to the clearance under the ceiling', () => {
    const { size, mover } = openingOf(fitOut, 'opening-2');
    // 802 between the sides; 921.6 − 24 between the lips; 364.6 − 6 − 17.7 − 15 above.
    expect(tenth(size)).toEqual([802, 897.6, 325.9]);
    expect(mover).toBe('opening-1/tray');
    expect(fitOut.rooms).toMatchObject([{ opening: 'opening-2', keeps: 'lip', mover: 'opening-1/tray' }]);
  });

  it('raises the sides of a bare deck so that the slide has wood to sit on', () => {
    const bare = tray({ slide: 'slide-100', lipHeightMm: 0 });
    expect(bare.problems).toEqual([]);
    // The slide is 56 high.
    expect(panelOf(bare, 'opening-1/tray-side-left').width).toBeCloseTo(56, 9);
    expect(bare.panels.some(({ role }) => role === 'lip-front')).toBe(false);
  });
});

describe('a slide-out on under-mount slides', () => {
  const fitOut = tray({ slide: 'tray-slide-225', lipHeightMm: 60 });

  it('stands on its slides with the gap of moving parts beside it', () => {
    expect(fitOut.problems).toEqual([]);
    // 864.6 − 2 × 3 outside, less 2 × 12.
    expect(panelOf(fitOut, 'opening-1/lip-front').length).toBeCloseTo(834.6, 9);
    // 17.7 + 75 + 17.7 deck.
    expect(openingOf(fitOut, 'opening-2').from[2]).toBeCloseTo(110.4, 9);
    const rail = fitOut.bodies.find(({ id }) => id === 'opening-1/slide-left');
    const { min, max } = bodyBox(rail as never);
    expect(tenth(min)).toEqual([20.7, 0, 17.7]);
    expect(tenth(max)).toEqual([95.7, 900, 92.7]);
  });

  it('is bolted through the floor of the carcass and through the deck', () => {
    const through = (id: string) => panelOf(fitOut, id).cuts.filter((cut) => cut.kind === 'hole' && cut.depth === null);
    // Holes at 37, 133, 229, 421, 613 and 805 lie on a slide of 900; two rails.
    expect(through('carcass-1/bottom')).toHaveLength(12);
    expect(through('opening-1/deck')).toHaveLength(12);
    expect(fitOut.hardware.find(({ item }) => item === 'bolt-m8x40')?.quantity).toBe(24);
  });
});

describe('the slide of a slide-out', () => {
  const chosen = (massKg: number) =>
    tray({ lipHeightMm: 60 }, [load(massKg)]).hardware.find(({ from }) => from === 'slide')?.item;

  it('is the lightest that carries the load, and locks both ways from the house limit on', () => {
    // Deck 9.4, sides 1.2 and lips 0.8 weigh 11.4 kg. Up to 20 kg in all a slide without locks will do: 45 × 0.5 × 700/838.8 = 18.8.
    expect(chosen(2)).toBe('slide-45');
    // 31 kg must lock: 100 × 0.5 × 900/826 > 1 → 50 kg.
    expect(chosen(20)).toBe('slide-100-lock');
    // 81 kg: 227 × 0.5 = 113.5 kg.
    expect(chosen(70)).toBe('slide-227-lock');
    // 161 kg: 400 × 0.5 = 200 kg, under-mounted.
    expect(chosen(150)).toBe('tray-slide-400');
  });

  it('may be too high for its opening', () => {
    const low = solved([
      carcass(
        fitted('opening-1', {
          kind: 'slide-out',
          slide: 'tray-slide-900',
          deckMaterial: 'birch-ply-18',
          lipMaterial: 'birch-ply-12',
          lipHeightMm: 60,
          inside: empty('opening-2'),
        }),
        { size: { width: 900, height: 235.4, depth: 960 } },
      ),
    ]);
    // 130 slide + 17.7 deck + 60 lip + 15 above = 222.7 in 200.
    expect(low.problems).toMatchObject([{ code: 'too-small', at: 'opening-1', axis: 'up' }]);
    expect(low.problems[0]?.needMm).toBeCloseTo(222.7, 9);
  });
});

describe('a slide-out that is tied down, locked and marked', () => {
  it('has slots along both sides of its deck, and straps that hold what stands on it', () => {
    const fitOut = tray({ slide: 'slide-100', tieDown: { everyMm: 200, strap: 'strap-cam-25', straps: 2 } });
    expect(fitOut.problems).toEqual([]);
    const slots = panelOf(fitOut, 'opening-1/deck').cuts.filter((cut) => cut.kind === 'cutout');
    // 897.6 between the lips: slots of 25 + 10 every 200 make ⌊862.6 / 200⌋ + 1 = 5 a side.
    expect(slots).toHaveLength(10);
    const [first] = slots;
    if (first?.kind !== 'cutout' || first.outline.shape !== 'rectangle') throw new Error('no slot');
    const { from, to } = first.outline;
    expect([to[0] - from[0], to[1] - from[1]].map(Math.round).sort((a, b) => a - b)).toEqual([8, 35]);
    // The deck loses 10 × (35 × 8 − (4 − π) × 4²) × 17.7.
    const plain = panelOf(tray({ slide: 'slide-100' }), 'opening-1/deck').volumeMm3;
    const slot = 35 * 8 - (4 - Math.PI) * 16;
    expect(plain - panelOf(fitOut, 'opening-1/deck').volumeMm3).toBeCloseTo(10 * slot * 17.7, 3);
    expect(fitOut.rooms[0]?.keeps).toBe('strap');
    // 2 × 0.2 kg, riding on the tray.
    expect(fitOut.masses.find(({ id }) => id === 'opening-2/straps')).toMatchObject({
      massKg: 0.4,
      mover: 'opening-1/tray',
    });
  });

  it('keeps its slots beside the rails of under-mount slides', () => {
    const fitOut = tray({ slide: 'tray-slide-225', tieDown: { everyMm: 300, strap: 'strap-cam-25', straps: 1 } });
    const slots = panelOf(fitOut, 'opening-1/deck').cuts.flatMap((cut) =>
      cut.kind === 'cutout' && cut.outline.shape === 'rectangle' ? [cut.outline.from[1], cut.outline.to[1]] : [],
    );
    const wide = panelOf(fitOut, 'opening-1/deck').width;
    // The rail reaches 75 in from the outside of the side of 12, the deck 4 into that: 75 + 25 + 12 − 8 from its edge.
    expect(Math.min(...slots)).toBeCloseTo(75 + 25 + 0.333 * 12, 6);
    expect(Math.max(...slots)).toBeCloseTo(wide - (75 + 25 + 0.333 * 12), 6);
  });

  it('locks every so far on slides that do, and says which do not', () => {
    const fitOut = tray({ lockEveryMm: 300 });
    expect(fitOut.problems).toEqual([]);
    // Under-mount slides of 225 kg lock every 150; 900 long, all of it.
    expect(fitOut.hardware.find(({ from }) => from === 'slide')).toMatchObject({
      item: 'tray-slide-225',
      lengthMm: 900,
    });
    expect(fitOut.movers[0]?.rests).toEqual([
      { name: 'stowed', share: 0 },
      { name: 'lock 1', share: expect.closeTo(1 / 3, 9) },
      { name: 'lock 2', share: expect.closeTo(2 / 3, 9) },
      { name: 'open', share: 1 },
    ]);
    const because = (rest: Plain) => tray(rest).problems.flatMap((problem) => problem.because);
    expect(because({ lockEveryMm: 200, slide: 'tray-slide-225' })).toEqual([
      'Under-mount tray slide 225 kg, full extension does not lock every 200 mm',
    ]);
    expect(because({ lockEveryMm: 150, slide: 'slide-100' })).toHaveLength(3);
  });

  it('runs on the slides that its mounting names', () => {
    const slide = (mount: string | null) => tray({ mount }).hardware.find(({ from }) => from === 'slide')?.item;
    expect([slide(null), slide('side'), slide('under')]).toEqual(['slide-45', 'slide-45', 'tray-slide-225']);
  });

  it('bears a plate with what its slides leave for the load', () => {
    const fitOut = tray({ slide: 'slide-227-lock', slideLengthMm: 900, loadPlate: 'plate-load-90' });
    // 227 × 0.5 × min(1, 900 / 826) = 113.5; deck 826 × 921.6 × 17.7 at 680 kg/m³ and lips 2 × (921.6 × 77.7 + 826 × 60) × 12
    // at 692 weigh 9.2 + 2.0 = 11.2: 102 whole kilograms are left.
    expect(fitOut.hardware.find(({ id }) => id === 'opening-1/load-plate')?.safeLoadKg).toBe(102);
  });
});

describe('a slide-out with a second level', () => {
  const two = (rest: Plain = {}) =>
    tray({ slide: 'slide-100', second: { upMm: 180, inside: empty('opening-3') }, ...rest });

  it('carries a second deck between taller sides, and a room above it that moves along', () => {
    const fitOut = two();
    expect(fitOut.problems).toEqual([]);
    // Sides: 17.7 of deck + 180 + lip 60.
    expect(tenth([panelOf(fitOut, 'opening-1/tray-side-left').width])).toEqual([257.7]);
    const deck = panelOf(fitOut, 'opening-1/second-deck');
    // As the first: 802 between the sides + 2 × 0.333 × 12; full depth.
    expect(deck.width).toBeCloseTo(809.992, 9);
    expect(deck.length).toBeCloseTo(921.6, 9);
    // Below: 180 − 17.7. Above: 325.9 − 180.
    expect(tenth(openingOf(fitOut, 'opening-2').size)).toEqual([802, 897.6, 162.3]);
    expect(tenth(openingOf(fitOut, 'opening-3').size)).toEqual([802, 897.6, 145.9]);
    expect(openingOf(fitOut, 'opening-3').mover).toBe('opening-1/tray');
    expect(fitOut.rooms.map(({ opening, keeps }) => [opening, keeps])).toEqual([
      ['opening-2', 'lip'],
      ['opening-3', 'lip'],
    ]);
    // 6 + 17.7 + 180 + 60 of lip + 15 above.
    expect(fitOut.openings[0]?.least[2]).toBeCloseTo(278.7, 9);
  });

  it('counts what stands on it, and refuses one that leaves too little below', () => {
    const heavy = two({ slide: null });
    const gear = { ...load(150), place: { opening: 'opening-3', level: 0, at: [0, 0, 0] } };
    const loaded = tray({ second: { upMm: 180, inside: empty('opening-3') } }, [gear]);
    const slideOf = (fitOut: typeof heavy) => fitOut.hardware.find(({ from }) => from === 'slide')?.item;
    expect(slideOf(heavy)).not.toBe(slideOf(loaded));
    expect(slideOf(loaded)).toBe('tray-slide-400');
    // 70 − 17.7 leaves 52.3 for a lip of 60.
    expect(two({ second: { upMm: 70, inside: empty('opening-3') } }).problems).toMatchObject([
      { code: 'rules-fight', at: 'opening-1', axis: 'up', needMm: 60, haveMm: expect.closeTo(52.3, 9) },
    ]);
  });
});
