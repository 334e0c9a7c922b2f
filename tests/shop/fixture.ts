import { HOME, type Pose, type Vec3 } from '../../src/base/index.ts';
import { boxShape } from '../../src/bodies/index.ts';
import { type Catalog, type HouseRules, houseRules, readCatalog } from '../../src/catalog/index.ts';
import { type Design, emptyDesign, type NodeId } from '../../src/design/index.ts';
import type { FitOut, Panel, SolvedOpening } from '../../src/fitout/index.ts';
import type { Inspection } from '../../src/inspection/index.ts';

export const node = (id: string): NodeId => id as NodeId;

const material = (id: string, name: string, thicknessMm: number, densityKgM3: number, kind: string) => ({
  id,
  name,
  kind,
  thicknessMm,
  thicknessRangeMm: [thicknessMm - 0.5, thicknessMm + 0.5],
  densityKgM3,
  youngMPa: { along: 10_000, across: 7_000 },
  bendingStrengthMPa: null,
  creepFactor: 1.5,
  bend: null,
  grain: 'length',
  sheets: [{ name: '2440 × 1220', lengthMm: 2440, widthMm: 1220, price: 100 }],
  colour: '#dddddd',
  source: 'made for the tests',
});

const piece = (id: string, kind: string, massKg: number, price: number, by = 'piece', sizeMm: Vec3 | null = null) => ({
  id,
  name: id.replaceAll('-', ' '),
  kind,
  massKg,
  by,
  ratedN: null,
  sizeMm,
  price,
  source: 'made for the tests',
});

const rule = (id: string, value: number, unit: string) => ({
  id,
  about: id,
  value,
  unit,
  sense: 'value',
  source: 'made for the tests',
  status: 'shop habit',
});

const made = readCatalog({
  materials: [
    material('ply-18', 'Birch plywood 18 mm', 17.7, 695, 'plywood'),
    material('ply-12', 'Birch plywood 12 mm', 12, 692, 'plywood'),
    material('ply-6', 'Birch plywood 6.5 mm', 6.4, 688, 'plywood'),
    material('alu-3', 'Aluminium 3.2 mm', 3.2, 2680, 'aluminium'),
  ],
  slides: [
    {
      id: 'slide-45',
      name: 'Side slide 45 kg',
      mount: 'side',
      sideSpaceMm: 12.9,
      heightMm: 45,
      lengthsMm: [400, 500],
      extension: 1,
      ratingKg: 45,
      massKgPerMetre: 1.8,
      locks: { in: false, out: false },
      detentN: 15,
      carcassHoles: [],
      boxHoles: [],
      price: 24,
      source: 'made for the tests',
    },
  ],
  hardware: [
    piece('band-1', 'edge-band', 0.02, 0.5, 'metre', [1000, 22, 1]),
    piece('band-unsized', 'edge-band', 0.02, 0.5, 'metre'),
    piece('screw-4x40', 'screw', 0.004, 0.06),
    piece('latch-paddle', 'latch', 0.31, 18),
    piece('net', 'net', 0.6, 31),
  ],
  gear: [],
  devices: [],
  rules: [
    rule('edge-premill', 0, 'mm'),
    rule('hardware-spare-share', 0.05, 'share'),
    rule('cut-tolerance', 0.5, 'mm'),
    rule('bore-tolerance', 0.2, 'mm'),
    rule('saw-kerf', 3.2, 'mm'),
    rule('motion-open', 1, 'count'),
    rule('motion-slide', 1, 'count'),
    rule('motion-latch', 1, 'count'),
    rule('motion-lift-other', 1, 'count'),
    rule('bracket-release-stroke', 150, 'mm'),
    rule('sheet-trim', 10, 'mm'),
    rule('sheet-trim-metal', 3, 'mm'),
    rule('first-cut-max', 1300, 'mm'),
    rule('cut-length-max', 3200, 'mm'),
    rule('min-strip-metal-share', 8, 'factor'),
    rule('min-strip', 40, 'mm'),
    rule('offcut-min-side', 250, 'mm'),
    rule('offcut-min-area', 150_000, 'mm2'),
    rule('offcut-min-area-metal', 50_000, 'mm2'),
    rule('offcut-value-share', 0.5, 'share'),
    rule('cut-stages-max', 3, 'count'),
    rule('rate-labour', 60, 'money/h'),
    rule('rate-design', 50, 'money/h'),
    rule('rate-electrical', 80, 'money/h'),
    rule('markup-share', 0.1, 'share'),
    rule('quote-validity-days', 30, 'count'),
    rule('price-uncertainty-share', 0.15, 'share'),
    rule('hours-interview', 1, 'h'),
    rule('hours-survey', 2, 'h'),
    rule('hours-layout', 8, 'h'),
    rule('hours-review', 1, 'h'),
    rule('hours-sheet-handling', 0.25, 'h'),
    rule('hours-cut-part', 0.1, 'h'),
    rule('hours-machine-part', 0.2, 'h'),
    rule('hours-cut-out', 0.15, 'h'),
    rule('hours-bend', 0.05, 'h'),
    rule('hours-band-metre', 0.05, 'h'),
    rule('hours-finish-m2', 0.25, 'h'),
    rule('hours-assemble-part', 0.15, 'h'),
    rule('hours-drawer', 0.75, 'h'),
    rule('hours-slide-out', 2, 'h'),
    rule('hours-door', 0.75, 'h'),
    rule('hours-board', 2.5, 'h'),
    rule('hours-bracket', 0.5, 'h'),
    rule('hours-device', 0.5, 'h'),
    rule('hours-circuit', 1.25, 'h'),
    rule('hours-anchor', 0.5, 'h'),
    rule('hours-install', 2, 'h'),
    rule('hours-weigh', 0.5, 'h'),
  ],
});
if (!made.ok) throw new Error(JSON.stringify(made.error));

export const catalog: Catalog = made.value;
export const rules: HouseRules = houseRules(catalog, []);

/** A panel of 700 × 600 × 17.7 without cuts, changed as wanted; mass from its own size. */
export const panel = (id: string, changes: Partial<Panel> = {}): Panel => {
  const whole: Panel = {
    id,
    origin: node('carcass-1'),
    carcass: node('carcass-1'),
    role: 'shelf',
    name: 'shelf',
    material: 'ply-18',
    thickness: 17.7,
    length: 700,
    width: 600,
    outline: null,
    grain: 'length',
    bands: { l1: null, l2: null, w1: null, w2: null },
    hand: null,
    cuts: [],
    pose: HOME,
    mover: null,
    volumeMm3: 0,
    massKg: 0,
    ...changes,
  };
  const volumeMm3 = whole.length * whole.width * whole.thickness;
  return { ...whole, volumeMm3, massKg: changes.massKg ?? (volumeMm3 * 695) / 1e9 };
};

export const opening = (id: string, changes: Partial<SolvedOpening> = {}): SolvedOpening => ({
  id: node(id),
  carcass: node('carcass-1'),
  parent: null,
  depth: 0,
  content: 'empty',
  name: '',
  from: [0, 0, 0],
  size: [100, 100, 100],
  least: [0, 0, 0],
  mover: null,
  ...changes,
});

export const emptyFitOut: FitOut = {
  carcasses: [],
  openings: [],
  panels: [],
  bodies: [],
  movers: [],
  masses: [],
  hardware: [],
  devices: [],
  rooms: [],
  gear: [],
  anchors: [],
  braces: [],
  problems: [],
};

export const fitOutOf = (panels: readonly Panel[], changes: Partial<FitOut> = {}): FitOut => ({
  ...emptyFitOut,
  carcasses: [{ id: node('carcass-1'), name: 'Main cabinet', pose: HOME, size: [900, 600, 700], massKg: 0 }],
  panels,
  masses: panels.map(({ id, origin, carcass, name, massKg }) => ({
    id,
    origin,
    carcass,
    kind: 'panel' as const,
    name,
    massKg,
    sigmaKg: 0,
    at: [0, 0, 0] as const,
    mover: null,
  })),
  ...changes,
});

export const emptyInspection: Inspection = {
  findings: [],
  measured: [],
  consulted: {},
  cases: [],
  weighed: null,
  checked: { rules: 0, bodies: 0, pairs: 0, movers: 0, moverPairs: 0 },
};

export const design = (title = 'Brook Hollow support car', units: Design['units'] = 'mm'): Design =>
  emptyDesign(title, units);

const upright = (at: Vec3): Pose => ({
  turn: [
    [0, 0, 1],
    [1, 0, 0],
    [0, 1, 0],
  ],
  at,
});

/**
 * A carcass of 900 × 700 × 600 (across × up × deep) in two equal columns, sides full, top and bottom in dados of 6,
 * back in a groove of 6 set in 12, as in the published parts of the reference folder; one shelf in the right column.
 */
export const twoColumns = (): FitOut => {
  const dado = (x: number, takes: string) =>
    ({ kind: 'dado', face: 'a', from: [x, 0], to: [x + 17.85, 600], depth: 6, takes }) as const;
  const groove = (length: number) =>
    ({ kind: 'groove', face: 'a', from: [0, 581.6], to: [length, 588], depth: 6, takes: 'back' }) as const;
  const pins = (x: number) =>
    [37, 229, 421].map(
      (y) => ({ kind: 'hole', face: 'a', at: [x, y], diameter: 4.5, depth: 12, why: 'slide' }) as const,
    );
  const sideCuts = [dado(0, 'top'), dado(682.15, 'bottom'), groove(700), ...pins(160), ...pins(420)];
  const flat = { length: 876.6, width: 600, bands: { l1: 'band-1', l2: null, w1: null, w2: null } };
  const midCut = {
    kind: 'dado',
    face: 'a',
    from: [429.375, 0],
    to: [447.225, 581.6],
    depth: 6,
    takes: 'divider',
  } as const;
  const parts = [
    panel('side-left', {
      role: 'side-left',
      name: 'side, left',
      hand: 'left',
      bands: flat.bands,
      cuts: sideCuts,
      pose: upright([0, 0, 0]),
    }),
    panel('side-right', {
      role: 'side-right',
      name: 'side, right',
      hand: 'right',
      bands: flat.bands,
      cuts: sideCuts,
      pose: upright([0, 0, 0]),
    }),
    panel('top', { role: 'top', name: 'top', ...flat, cuts: [groove(876.6), midCut] }),
    panel('bottom', { role: 'bottom', name: 'bottom', ...flat, cuts: [groove(876.6), midCut] }),
    panel('back', { role: 'back', name: 'back', material: 'ply-6', thickness: 6.4, length: 876.6, width: 676.6 }),
    panel('divider', { role: 'divider', name: 'divider', length: 676.6, width: 581.6, origin: node('opening-1') }),
    panel('shelf', { role: 'shelf', name: 'shelf', length: 422, width: 560, origin: node('opening-3') }),
  ];
  const box = (id: string, min: Vec3, max: Vec3) =>
    ({
      id,
      origin: node('carcass-1'),
      carcass: node('carcass-1'),
      kind: 'panel',
      name: id,
      shape: boxShape({ min, max }),
      mover: null,
    }) as const;
  return fitOutOf(parts, {
    // The face looks to the rear: across to the viewer's right is the vehicle's −y, deep is forward.
    carcasses: [
      {
        id: node('carcass-1'),
        name: 'Main cabinet',
        pose: {
          turn: [
            [0, -1, 0],
            [1, 0, 0],
            [0, 0, 1],
          ],
          at: [50, 450, 20],
        },
        size: [900, 600, 700],
        massKg: 40,
      },
    ],
    openings: [
      opening('opening-1', { content: 'divided', from: [17.7, 0, 17.7], size: [864.6, 581.6, 664.6] }),
      opening('opening-2', {
        parent: node('opening-1'),
        depth: 1,
        name: 'Packs',
        from: [17.7, 0, 17.7],
        size: [423.45, 581.6, 664.6],
      }),
      opening('opening-3', {
        parent: node('opening-1'),
        depth: 1,
        content: 'fitted',
        name: 'Bags',
        from: [458.85, 0, 17.7],
        size: [423.45, 581.6, 664.6],
      }),
    ],
    bodies: [
      box('side-left', [50, 432.3, 20], [650, 450, 720]),
      box('side-right', [50, -450, 20], [650, -432.3, 720]),
      box('top', [50, -432.3, 702.3], [650, 432.3, 720]),
      box('bottom', [50, -432.3, 20], [650, 432.3, 37.7]),
      box('back', [631.6, -432.3, 37.7], [638, 432.3, 702.3]),
      box('divider', [50, -8.85, 37.7], [631.6, 8.85, 702.3]),
      box('shelf', [60, -432.3, 340], [620, -8.85, 357.7]),
    ],
  });
};
