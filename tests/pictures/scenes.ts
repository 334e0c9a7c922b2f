import { standardCatalog } from '../../src/catalog/index.ts';
import { type Design, FITTING_KINDS, type FittingKind, freshFitting, type NodeId } from '../../src/design/index.ts';
import { carcass, designOf, fitted } from '../fitout/designs.ts';

type Plain = Readonly<Record<string, unknown>>;

/** How one kind is shown: the carcass around it, what is changed of the fresh one, and the gear of the second picture. */
interface Scene {
  readonly size: readonly [width: number, height: number, depth: number];
  readonly change?: Plain;
  readonly gear?: readonly (readonly [kind: string, place: Plain])[];
  /** Steps further off than usual at work, for what comes out far. */
  readonly farther?: number;
}

/** Every carcass is shown about this height, where the eye of the bay looks. */
const MIDDLE_UP = 450;
const INSIDE = 'opening-2';
const row = (...devices: readonly string[]): Plain[] =>
  devices.map((device, i) => ({ id: `device-${device}-${i}`, device }));

const SCENES: { readonly [Kind in FittingKind]: Scene } = {
  drawer: {
    size: [500, 260, 520],
    change: { pull: 'pull-flush-small' },
    gear: [['gas-meter-case', { opening: INSIDE, at: [10, 50, 0] }]],
  },
  'slide-out': {
    size: [560, 560, 700],
    change: { second: { upMm: 220, inside: { id: 'opening-3', content: { kind: 'empty' } } } },
    gear: [
      ['gas-meter-case', { opening: INSIDE, at: [10, 60, 0] }],
      ['burn-kit', { opening: 'opening-3', at: [20, 60, 0] }],
    ],
    farther: 1,
  },
  'open-storage': {
    size: [520, 640, 420],
    change: { shelvesUpMm: [300], shelves: 'adjustable', mat: 'mat-rubber-3', drain: 'drain-flush-25' },
    gear: [
      ['jump-pack', { at: [15, 10, 0], turnDeg: 90 }],
      ['rope-hardware', { at: [15, 10, 0], level: 1 }],
    ],
  },
  faceplate: {
    size: [480, 340, 460],
    change: {
      eye: { aboveMm: 220, outMm: 500 },
      airSlots: 4,
      rows: [row('radio-50', 'speaker-4'), row('usb-panel-6', 'rocker-full', 'socket-12')],
    },
  },
  'apparatus-bracket': { size: [400, 740, 560], gear: [['breathing-set-30', { at: [0, 0, 0], turnDeg: 90 }]] },
  door: {
    size: [460, 520, 400],
    change: { hung: 'right' },
    gear: [['burn-kit', { opening: INSIDE, at: [30, 20, 0], turnDeg: 90 }]],
  },
  board: {
    size: [560, 400, 300],
    change: { hinge: 'right', stopsDeg: [90, 110], worklight: 'light-puck' },
    farther: 1,
  },
  'extinguisher-cradle': { size: [320, 640, 400], gear: [['extinguisher-powder-10', { at: [0, 0, 0] }]] },
  'cylinder-clamp': { size: [320, 680, 340], gear: [['cylinder-spare-9', { at: [0, 0, 0] }]] },
  'tool-clamp': {
    size: [760, 300, 300],
    change: { headCover: null },
    gear: [['pry-bar-24', { at: [0, 0, 0], turnDeg: 90 }]],
  },
  'pass-through': { size: [520, 480, 420], gear: [['pry-bar-24', { at: [60, 40, 0], turnDeg: 90 }]] },
  'charger-bay': {
    size: [420, 360, 340],
    change: { fan: { id: 'device-fan', device: 'fan-bay-80' } },
    gear: [['radio-portable', { at: [110, 120, 0] }]],
  },
  valuables: { size: [460, 220, 480], gear: [['document-safe', { opening: INSIDE, at: [10, 50, 0] }]] },
  'map-slot': { size: [360, 420, 380], gear: [['plan-binders', { level: 1, at: [4, 4, 0], stance: 'on-side' }]] },
  'tablet-mount': { size: [480, 360, 360] },
  trim: {
    size: [420, 420, 340],
    gear: [
      ['drink-cup', { level: 0, at: [5, 5, 0] }],
      ['clip-boards', { level: 2, at: [15, 6, 0], stance: 'on-side', turnDeg: 90 }],
    ],
  },
};

const gearOf = ({ gear = [] }: Scene): readonly Plain[] =>
  gear.map(([kind, place], i) => {
    const record = standardCatalog().gear.get(kind);
    if (!record) throw new Error(`no gear ${kind}`);
    const { name, sizeMm, massKg, massSigmaKg, needs } = record;
    const at = { opening: 'opening-1', level: 0, ...place };
    return { id: `gear-${i + 1}`, name, kind, sizeMm, massKg, massSigmaKg, massFrom: 'catalogue', needs, place: at };
  });

/** The fitting alone in a carcass; `at work` with its gear. */
export const sceneOf = (kind: FittingKind, atWork: boolean): Design => {
  const scene = SCENES[kind];
  let count = 1;
  const fresh = freshFitting(kind, (prefix) => `${prefix}-${++count}` as NodeId);
  const [width, height, depth] = scene.size;
  const box = carcass(fitted('opening-1', { ...fresh, ...scene.change }), {
    facing: 'rear',
    size: { width, height, depth },
    place: {
      x: { rule: 'at', mm: 0 },
      y: { rule: 'at', mm: -width / 2 },
      z: { rule: 'at', mm: MIDDLE_UP - height / 2 },
    },
    edgeBand: 'edge-band-1',
  });
  return designOf([box], { title: kind, gear: atWork ? gearOf(scene) : [] });
};

/** Steps further off than usual for the picture at work. */
export const fartherOff = (kind: FittingKind): number => SCENES[kind].farther ?? 0;

export const PICTURED = FITTING_KINDS;
