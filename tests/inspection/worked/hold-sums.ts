import { anchorUse, groupForces, plateCollapse } from '../../../src/inspection/hold/index.ts';
import { anchor, catalog, designWith, findingsOf, fitOut, inspectScene, rules } from '../fixture.ts';
import { bracedPair, FORWARD, KG, PAIR } from '../scenes/braces.ts';
import { held } from '../scenes/hold.ts';
import { type PageSum, pageSum } from './example.ts';

const HELD = held();

/** What the code makes of one link of an anchor of the tests under a pull and a shear (N): load over capacity. */
const useOf = (link: string, tensionN: number, shearN: number, rest: object = {}): number => {
  const job = { design: designWith(), space: null, fitout: fitOut(HELD), catalog, rules };
  const { links } = anchorUse(job, anchor('one', [0, 0, 0], rest), { tensionN, shearN }, null);
  return links.find((own) => own.link === link)?.use ?? Number.NaN;
};

const [PULL, ACROSS] = [
  [1000, 0],
  [0, 1000],
] as const;
/** The load along or across that would use up a link (N). */
const capacityN = (link: string, [tensionN, shearN]: readonly [number, number], rest: object = {}): number =>
  Math.max(tensionN, shearN) / useOf(link, tensionN, shearN, rest);

const piece = (id: string) => {
  const record = catalog.hardware.get(id);
  if (!record) throw new Error(`no hardware ${id}`);
  return record;
};
const [BOLT, NUT, WASHER, PLATE] = ['bolt-m8x40', 'rivet-nut-steel-m8', 'washer-m8-30', 'backing-plate-80'].map(piece);
const PLY = catalog.materials.get('birch-ply-18');
const BIRCH_6 = catalog.materials.get('birch-ply-6');

const size = (record: typeof BOLT, axis: 0 | 1 | 2): number => record?.sizeMm?.[axis] ?? Number.NaN;
const SHEET = ['floor-skin-ultimate', 'floor-skin-thickness', 'anchor-partial-factor'];

/** The pair of carcasses that braces tie, and where their anchors stand about the middle of all. */
const pairFigures = (() => {
  const { anchors = [], carcasses = [] } = bracedPair(KG, PAIR);
  const [first] = carcasses;
  const ys = [...new Set(anchors.map(({ at }) => at[1]))].toSorted((a, b) => a - b);
  const xs = anchors.map(({ at }) => at[0]);
  const middle = ys.reduce((sum, y) => sum + y, 0) / ys.length;
  const apart = Math.abs((carcasses[1]?.pose.at[1] ?? 0) - (first?.pose.at[1] ?? 0));
  return {
    apart,
    bolts: anchors.length,
    own: anchors.length / 2,
    along: (Math.max(...xs) - Math.min(...xs)) / 2,
    far: middle - (ys[0] ?? Number.NaN),
    near: middle - (ys[1] ?? Number.NaN),
  };
})();

/** Worked sums of docs/loads.md on what holds a cabinet. */
export const HOLD_SUMS: readonly PageSum[] = [
  pageSum(
    {
      page: 'loads.md',
      words:
        '220 kg at 10 g, 350 high, two anchors 50 and two 950 from the edge: F = 220 · 10 · 9.80665 = 21,575 N, V = 21,575 / 4 = 5,394 N each, T = 21,575 · 350 · 950 / (2 (50² + 950²)) = 3,963 N.',
      given: { kg: 220, g: 10, high: 350, near: 50, far: 950 },
      run: ({ kg, g, high, near, far }) => {
        const force = kg * g * rules.value('standard-gravity');
        const anchors = [near, far].flatMap((x) => [-200, 200].map((y) => ({ at: [x, y, 0], on: 'floor' }) as const));
        const foot = { min: [0, -300], max: [1000, 300], z: 0 } as const;
        const forces = groupForces(anchors, foot, { at: [500, 0, high], force: [-force, 0, 0] })?.anchors ?? [];
        return {
          force,
          shear: Math.max(...forces.map(([x, y]) => Math.hypot(x, y))),
          pull: Math.max(...forces.map(([, , z]) => -z)),
        };
      },
      expects: { force: '21,575', shear: '5,394', pull: '3,963' },
    },
    { house: ['standard-gravity'], formula: [2, 4] },
  ),
  pageSum(
    {
      page: 'loads.md',
      words: 'M8, 695 kg/m³, 10.9 thick: 0.11 · (1 − 0.01 · 8) · 695 · 8 · 10.9 / 1.3 = 4,718 N',
      given: { thick: 10.9 },
      run: ({ thick }) => ({ holds: capacityN('panel-bearing', ACROSS, { gripMm: thick }) }),
      expects: { holds: '4,718' },
    },
    {
      house: ['bolt-ply-bearing-coefficient', 'wood-partial-factor'],
      looked: { thread: BOLT?.threadMm ?? Number.NaN, density: PLY?.densityKgM3 ?? Number.NaN },
      formula: [1, 0.01],
    },
  ),
  pageSum(
    {
      page: 'loads.md',
      words: 'washer 30, 10.9 thick: π · 30 · 10.9 · 9.5 / 1.3 = 7,507 N',
      given: { thick: 10.9 },
      run: ({ thick }) => ({ holds: capacityN('panel-punching', PULL, { gripMm: thick }) }),
      expects: { holds: '7,507' },
    },
    { house: ['panel-shear-strength', 'wood-partial-factor'], looked: { washer: size(WASHER, 0) } },
  ),
  pageSum(
    {
      page: 'loads.md',
      words: 'T 1,500 and V 1,000 N: √(1,500² + 1,000²) / 2,500 = 0.72',
      given: { pull: 1500, shear: 1000 },
      run: ({ pull, shear }) => ({ use: useOf('bracket', pull, shear, { bracket: 'bracket-angle-60' }) }),
      expects: { use: '0.72' },
    },
    { looked: { rating: piece('bracket-angle-60').ratedN ?? Number.NaN } },
  ),
  pageSum(
    {
      page: 'loads.md',
      words: 'M8: 5,394 / 14,100 + 3,963 / (1.4 · 21,100) = 0.52',
      given: { shear: 5394, pull: 3963 },
      run: ({ shear, pull }) => ({ use: useOf('bolt', pull, shear) }),
      expects: { use: '0.52' },
    },
    {
      house: ['anchor-interaction-tension'],
      looked: {
        thread: BOLT?.threadMm ?? Number.NaN,
        along: BOLT?.ratedN ?? Number.NaN,
        across: BOLT?.acrossN ?? Number.NaN,
      },
    },
  ),
  pageSum(
    {
      page: 'loads.md',
      words: 'steel M8: (7,261 / 25,000)² + (5,394 / 4,400)² = 1.59',
      given: { pull: 7261, shear: 5394 },
      run: ({ pull, shear }) => ({ use: useOf('insert', pull, shear, { insert: NUT?.id, plate: null }) }),
      expects: { use: '1.59' },
    },
    {
      looked: {
        thread: NUT?.threadMm ?? Number.NaN,
        along: NUT?.ratedN ?? Number.NaN,
        across: NUT?.acrossN ?? Number.NaN,
      },
    },
  ),
  pageSum(
    {
      page: 'loads.md',
      words: 'M8: 2.5 · 270 · 8 · 0.8 / 1.25 = 3,456 N',
      given: {},
      run: () => ({ holds: capacityN('sheet-bearing', ACROSS) }),
      expects: { holds: '3,456' },
    },
    { house: ['bearing-factor-max', ...SHEET], looked: { thread: BOLT?.threadMm ?? Number.NaN } },
  ),
  pageSum(
    {
      page: 'loads.md',
      words: '80 wide: 0.6 π · 80 · 0.8 · 270 / 1.25 = 26,058 N',
      given: {},
      run: () => ({ holds: capacityN('sheet-punching', PULL) }),
      expects: { holds: '26,058' },
    },
    { house: ['punching-coefficient', ...SHEET], looked: { plate: size(PLATE, 0) } },
  ),
  pageSum(
    {
      page: 'loads.md',
      words: '80 × 5, nut 1.6 · 8 = 12.8: 2 π · 235 · 5² / 4 / (1 − 12.8 / (3 · 80 / 2)) / 1.25 = 8,264 N',
      given: {},
      run: () => ({ holds: capacityN('plate', PULL) }),
      expects: { holds: '8,264' },
    },
    {
      house: ['plate-yield', 'anchor-partial-factor'],
      looked: { wide: size(PLATE, 0), thick: size(PLATE, 2), thread: BOLT?.threadMm ?? Number.NaN },
      formula: [1.6, 2, 4, 1, 3],
    },
  ),
  pageSum(
    {
      page: 'loads.md',
      words: '80 × 80 beside 3,456 of skin: (5,394 − 3,456) / (80 · 80 · 2) = 0.15',
      given: { shear: 5394 },
      run: ({ shear }) => ({
        use: useOf('bond', 0, shear, { plateBonded: true }),
        skin: capacityN('sheet-bearing', ACROSS),
      }),
      expects: { use: '0.15', skin: '3,456' },
    },
    { house: ['bond-shear'], looked: { wide: size(PLATE, 0) } },
  ),
  pageSum(
    {
      page: 'loads.md',
      words:
        '145 and 100 kg side by side, middles 620 apart, 10 g forward, 4 bolts M8 each. Alone the heavier puts 145 · 10 · 9.80665 / 4 = 3,555 N on each bolt, 3,555 / 3,456 = 1.03. As one (145 + 100) · 10 · 9.80665 = 24,026 N on 8 bolts, 620 / 2 − 100 · 620 / (145 + 100) = 56.94 beside their middle; they stand 450 before and behind it, 510 and 110 to the sides, squares that add up to 8 · 450² + 4 (510² + 110²) = 2,708,800; √((24,026 / 8 + 24,026 · 56.94 · 510 / 2,708,800)² + (24,026 · 56.94 · 450 / 2,708,800)²) = 3,269 N on the outer bolts, 3,269 / 3,456 = 0.95. Two angles over the tops pass 145 · 10 · 9.80665 − 24,026 / 2 − 2 · 24,026 · 56.94 / 2,708,800 · (510 + 110) = 1,580 N: a caution.',
      given: { heavy: 145, light: 100 },
      run: ({ heavy, light }) => {
        const kg = { 'carcass-1': heavy, 'carcass-2': light };
        const [found] = findingsOf(
          inspectScene({ survey: null, fitout: bracedPair(kg, PAIR), design: FORWARD }),
          'anchor-hold',
        );
        return {
          alone: found?.value ?? Number.NaN,
          group: Number(found?.facts.groupUse),
          skin: capacityN('sheet-bearing', ACROSS),
          g: Number(found?.facts.g),
        };
      },
      expects: { alone: '1.03', group: '0.95', skin: '3,456', g: '10' },
    },
    {
      house: ['standard-gravity'],
      looked: { ...pairFigures, thread: BOLT?.threadMm ?? Number.NaN },
      formula: [2],
    },
  ),
  pageSum(
    {
      page: 'loads.md',
      words:
        '6.4 mm birch, weaker way 29 MPa: m = 29 · 0.67 · 6.4² / 6 = 132.6 N; a tray of 95 high in a room of 187: c = 95 / 2 = 47.5, R = 187 / 2 = 93.5: 2 π · 132.6 / (1 − 2 · 47.5 / (3 · 93.5)) = 1,260 N.',
      given: { tray: 95, room: 187 },
      run: ({ tray, room }) => {
        const { along = 0, across = 0 } = BIRCH_6?.bendingStrengthMPa ?? {};
        const thick = BIRCH_6?.thicknessMm ?? Number.NaN;
        const moment = (Math.min(along, across) * rules.value('bending-shock-share') * thick ** 2) / 6;
        return { moment, holds: plateCollapse(moment, tray / 2, room / 2) };
      },
      expects: { moment: '132.6', holds: '1,260' },
    },
    {
      house: ['bending-shock-share'],
      looked: {
        thick: BIRCH_6?.thicknessMm ?? Number.NaN,
        strength: BIRCH_6?.bendingStrengthMPa?.across ?? Number.NaN,
      },
      formula: [6, 2, 1, 3],
    },
  ),
];
