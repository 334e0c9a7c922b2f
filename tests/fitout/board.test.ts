import { describe, expect, it } from 'vitest';
import { radians } from '../../src/base/index.ts';
import { carcass, empty, fitted, openingOf, panelOf, solved } from './designs.ts';
import { bodyBox } from './measures.ts';

type Plain = Readonly<Record<string, unknown>>;

const board = (rest: Plain = {}): Plain => ({
  kind: 'board',
  material: 'birch-ply-12',
  stopsDeg: [180, 90],
  inside: empty('opening-2'),
  ...rest,
});

/** 864.6 × 664.6 × 581.6 clear (across × up × deep); the viewer looks along +y, across runs along +x. */
const one = (rest: Plain = {}) => solved([carcass(fitted('opening-1', board(rest)))]);

const around = (width: number, height: number, depth: number): Plain => ({
  size: { width: width + 2 * 17.7, height: height + 2 * 17.7, depth: depth + 6.4 + 12 },
});

const boxOf = (fitOut: ReturnType<typeof one>, part: string) => {
  const body = fitOut.bodies.find(({ id }) => id === `opening-1/${part}`);
  if (!body) throw new Error(`no body ${part}`);
  return bodyBox(body as never);
};

/** Width of a board of 12 over its hinge: 2 from the near side, 3 from the far one, the line 1.5 before it. */
const WIDE = Math.sqrt((864.6 - 2 - 3) ** 2 - (12 + 1.5) ** 2);

const tenths = (values: readonly number[]): readonly number[] => values.map((value) => Math.round(value * 10) / 10);

describe('a command board', () => {
  it('fills the face less the reveal and turns through the stops that it is given', () => {
    const fitOut = one();
    expect(fitOut.problems).toEqual([]);
    const leaf = panelOf(fitOut, 'opening-1/front');
    // 664.6 − 4 along the grain.
    expect(leaf.length).toBeCloseTo(660.6, 9);
    expect(leaf.width).toBeCloseTo(WIDE, 9);
    const [mover] = fitOut.movers;
    expect(mover?.motion).toMatchObject({ kind: 'turn', axis: [0, 0, -1], travelRad: radians(180) });
    // 90 of 180 is half the travel.
    expect(mover?.rests).toEqual([
      { name: 'stowed', share: 0 },
      { name: '90°', share: 0.5 },
      { name: '180°', share: 1 },
    ]);
  });

  it('carries steel, tray and light on the working face, and keeps the room behind clear of them', () => {
    const fitOut = one({ markerTray: 'tray-lip-25', worklight: 'light-board' });
    // The face keeps 10 from every edge: less 20 across × 640.6 at 5.495 kg/m².
    const mass = (part: string) => fitOut.masses.find(({ id }) => id === `opening-1/${part}`)?.massKg;
    expect(mass('steel-face')).toBeCloseTo(((WIDE - 20) / 1000) * 0.6406 * 5.495, 9);
    // A lip at 0.26 kg a metre over that.
    expect(mass('marker-tray')).toBeCloseTo(((WIDE - 20) / 1000) * 0.26, 9);
    expect(mass('worklight')).toBeCloseTo(0.3, 9);
    // Behind 12 of board and 0.7 of steel; the tray at the low edge, 25 high, the light 25 high at the high one.
    expect(tenths([boxOf(fitOut, 'marker-tray').min[1], boxOf(fitOut, 'marker-tray').min[2]])).toEqual([12.7, 29.7]);
    expect(tenths([boxOf(fitOut, 'worklight').min[2], boxOf(fitOut, 'worklight').max[2]])).toEqual([645.3, 670.3]);
    // 12 + 0.7 + the light's 20 + 8, and 3 between moving parts: 581.6 − 43.7.
    expect(openingOf(fitOut, 'opening-2').size[1]).toBeCloseTo(537.9, 9);
    expect(fitOut.devices).toMatchObject([{ device: 'light-board', opening: 'opening-1', mover: 'opening-1/board' }]);
    expect(fitOut.hardware.find(({ id }) => id === 'opening-1/worklight')?.from).toBe('device');
    // 12 mm at 692.
    expect(mass('front')).toBeCloseTo(0.6606 * (WIDE / 1000) * 0.012 * 692, 9);
    expect(one({ magneticFace: false }).masses.some(({ id }) => id.endsWith('steel-face'))).toBe(false);
  });

  it('is held at its stops by a ratchet at its hinge, and names a stop between two that it holds', () => {
    const held = one({ stopsDeg: [90, 120, 180], ratchet: 'ratchet-arm-15' });
    expect(held.problems).toEqual([]);
    const piece = held.hardware.find(({ id }) => id === 'opening-1/ratchet');
    // At the hinge line on the left, on the carcass.
    expect(piece).toMatchObject({ item: 'ratchet-arm-15', quantity: 1, mover: null });
    expect(piece?.at?.[0]).toBeCloseTo(19.7, 9);
    const mass = (fitOut: typeof held): number => fitOut.masses.reduce((sum, { massKg }) => sum + massKg, 0);
    expect(mass(held) - mass(one({ stopsDeg: [90, 120, 180] }))).toBeCloseTo(0.38, 9);
    // 100 lies between 90 and 105.
    expect(one({ stopsDeg: [90, 100], ratchet: 'ratchet-arm-15' }).problems).toMatchObject([
      { code: 'bad-joint', because: ['stop at 100°', 'Ratchet arm for a board, holds every 15°, not there'] },
    ]);
    expect(one({ stopsDeg: [90, 100], ratchet: 'ratchet-arm-10' }).problems).toEqual([]);
    expect(one({ ratchet: 'nothing-such' }).problems).toMatchObject([{ code: 'unknown-hardware' }]);
  });

  it('flips up about its upper edge, the tray where it is low then, with a spring on each side', () => {
    const fitOut = one({ way: 'top-flip', stopsDeg: [110], springs: 'gas-spring-130', markerTray: 'tray-lip-25' });
    expect(fitOut.problems).toEqual([]);
    expect(fitOut.movers[0]?.motion).toMatchObject({ axis: [-1, 0, 0], travelRad: radians(110) });
    // Upper edge 682.3 − 2, less 10 of clear edge.
    expect(boxOf(fitOut, 'marker-tray').max[2]).toBeCloseTo(670.3, 9);
    expect(fitOut.hardware.filter(({ item }) => item === 'gas-spring-130')).toHaveLength(2);
    // Springs 22 thick and 3 of gap on each side, so the face begins 25 from the side.
    expect(boxOf(fitOut, 'marker-tray').min[0]).toBeCloseTo(17.7 + 25, 9);
    expect(openingOf(fitOut, 'opening-2').size[0]).toBeCloseTo(864.6 - 50, 9);
  });

  it('is brought out by a carriage before it turns', () => {
    const fitOut = one({ way: 'slide-and-turn', hinge: 'right', slide: 'slide-45' });
    expect(fitOut.problems).toEqual([]);
    expect(fitOut.movers.map(({ id, carriedBy }) => [id, carriedBy])).toEqual([
      ['opening-1/carriage-slide', null],
      ['opening-1/board', 'opening-1/carriage-slide'],
    ]);
    // 581.6 − 12 board − 20 behind = 549.6: the 500 fits; straight out of the face.
    expect(fitOut.movers[0]?.motion).toMatchObject({ kind: 'slide', direction: [0, -1, 0], travel: 500 });
    const carriageBox = boxOf(fitOut, 'carriage');
    // Right side at 882.3, less 12.9 of slide, 17.7 thick; behind the board.
    expect(tenths([carriageBox.min[0], carriageBox.max[0], carriageBox.min[1]])).toEqual([851.7, 869.4, 12]);
    // The board ends where the carriage does: 864.6 − 12.9 − 3 to the far side.
    expect(panelOf(fitOut, 'opening-1/front').width).toBeCloseTo(Math.sqrt(848.7 ** 2 - 13.5 ** 2), 9);
    expect(fitOut.hardware.find(({ from }) => from === 'slide')).toMatchObject({ item: 'slide-45', lengthMm: 500 });
    const holes = (id: string) => panelOf(fitOut, id).cuts.filter((cut) => cut.kind === 'hole' && cut.depth !== null);
    // Two slides on one side, each with 5 holes; 12 hinge screws beside those in the carriage.
    expect([holes('carcass-1/side-right').length, holes('opening-1/carriage').length]).toEqual([10, 22]);
    // 12.9 + 17.7 + 3 less across.
    expect(openingOf(fitOut, 'opening-2').size[0]).toBeCloseTo(831, 9);
  });

  it('takes the size that it is given, at its hinge or under the top, or says what it needs', () => {
    const small = one({ widthMm: 500, heightMm: 400, hinge: 'right' });
    // Right edge 882.3 − 2, lower edge 17.7 + 2.
    expect(tenths([...boxOf(small, 'front').min, ...boxOf(small, 'front').max])).toEqual([
      380.3, 0, 19.7, 880.3, 12, 419.7,
    ]);
    const up = one({ way: 'top-flip', widthMm: 500, heightMm: 400 });
    // In the middle of 17.7 … 882.3, under 682.3 − 2.
    expect(tenths([boxOf(up, 'front').min[0], boxOf(up, 'front').min[2]])).toEqual([200, 280.3]);
    // A light of 600 with 10 at both ends.
    expect(one({ widthMm: 500, worklight: 'light-board' }).problems).toMatchObject([
      { code: 'rules-fight', axis: 'across', needMm: 620, haveMm: 500 },
    ]);
    const narrow = solved([carcass(fitted('opening-1', board({ worklight: 'light-board' })), around(500, 400, 400))]);
    expect(narrow.problems).toMatchObject([{ code: 'too-small', axis: 'across' }]);
    // √(620² + 13.5²) from the line, 3 to the far side, 2 from the near one.
    expect(narrow.problems[0]?.needMm).toBeCloseTo(Math.hypot(620, 13.5) + 5, 9);
  });

  it('names what the catalog does not have, and springs beside a narrow board', () => {
    const codes = (rest: Plain) => one(rest).problems.map(({ code, because }) => [code, because[0]]);
    expect(codes({ worklight: 'lamp-none', markerTray: 'tray-none', material: 'paper' })).toEqual([
      ['unknown-material', 'paper'],
      ['unknown-device', 'lamp-none'],
      ['unknown-hardware', 'tray-none'],
    ]);
    expect(codes({ way: 'top-flip', springs: 'gas-spring-130', widthMm: 500, stopsDeg: [110] })).toEqual([
      ['bad-joint', 'gas-spring-130 stands beside the leaf'],
    ]);
  });
});
