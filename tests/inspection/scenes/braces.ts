import type { Design } from '../../../src/design/index.ts';
import type { FitOut } from '../../../src/fitout/index.ts';
import { type Anchor, anchor, mass, node, panel } from '../fixture.ts';
import { FACING_REAR } from './access.ts';

export type Brace = FitOut['braces'][number];

/** Two carcasses 1000 deep and 600 wide side by side, 20 apart; the middle of the first at y = 0, of the second at 620. */
const MIDDLES = { 'carcass-1': 0, 'carcass-2': 620 } as const;
type Id = keyof typeof MIDDLES;
export const IDS: readonly Id[] = ['carcass-1', 'carcass-2'];

const standing = (id: Id): FitOut['carcasses'][number] => ({
  id: node(id),
  name: id,
  pose: {
    turn: FACING_REAR,
    at: [0, MIDDLES[id] + 300, 0],
  },
  size: [600, 1000, 700],
  massKg: 0,
});

const anchorsOf = (id: Id): readonly Anchor[] =>
  [
    [50, -200],
    [50, 200],
    [950, -200],
    [950, 200],
  ].map(([x = 0, y = 0], i) =>
    anchor(`anchor-${id.slice(-1)}${i + 1}`, [x, MIDDLES[id] + y, 0], { carcass: node(id), panel: `${id}/bottom` }),
  );

/** A bar over both tops at one x: outer bolts 72 in from the sides, the others 40 nearer to the gap. */
export const bar = (id: string, x: number, rest: Partial<Brace> = {}): Brace => {
  const bolt = (n: number, carcass: Id, y: number): Brace['bolts'][number] => ({
    id: `${id}/bolt-${n}`,
    carcass: node(carcass),
    panel: `${carcass}/top`,
    at: [x, y, 700],
    into: [0, 0, -1],
    edgeMm: 32,
    gripMm: 17.7,
  });
  return {
    id: node(id),
    name: id,
    item: 'brace-angle-30',
    carcasses: [node('carcass-1'), node('carcass-2')],
    at: [x, 310, 700],
    along: [0, 1, 0],
    lengthMm: 214,
    holeMm: 8.5,
    holesMm: [25, 65, 149, 189],
    bolts: [bolt(1, 'carcass-1', 228), bolt(2, 'carcass-1', 268), bolt(3, 'carcass-2', 392), bolt(4, 'carcass-2', 352)],
    bolt: 'bolt-m8x40',
    washer: 'washer-m8-30',
    nut: 'lock-nut-m8',
    sound: true,
    ...rest,
  };
};

export const bracedPair = (kg: Readonly<Record<Id, number>>, braces: readonly Brace[], ids = IDS): Partial<FitOut> => ({
  carcasses: ids.map(standing),
  panels: ids.flatMap((id) => [
    panel(`${id}/bottom`, 600, 1000, { role: 'bottom', carcass: node(id) }),
    panel(`${id}/top`, 600, 1000, { role: 'top', carcass: node(id) }),
  ]),
  masses: ids.map((id) => mass(`load-${id}`, kg[id], [500, MIDDLES[id], 350], { kind: 'gear', carcass: node(id) })),
  anchors: ids.flatMap(anchorsOf),
  braces,
});

/** Forward alone at 10 g. */
export const FORWARD: Partial<Design> = {
  holdTo: ['own'],
  houseRules: [
    ['hold-own-forward', 10],
    ['hold-own-rear', 0],
    ['hold-own-side', 0],
    ['hold-own-up', 0],
  ].map(([rule, value]) => ({ rule: String(rule), value: Number(value), who: 'A', why: 'b' })),
};
/** Masses of the two (kg). */
export const KG = { 'carcass-1': 145, 'carcass-2': 100 };
/** Two angles over their tops. */
export const PAIR = [bar('brace-1', 200), bar('brace-2', 800)];
