import { standardCatalog } from '../../src/catalog/index.ts';
import { type Design, designSchema, emptyDesign } from '../../src/design/index.ts';
import { chargerBay, holders, mapSlot, passThrough, tabletMount, trim, valuables } from './arbitrary-kinds.ts';
import { type Any, type Fc, hardwareOf, ids, mm, oneOrNone, type Plain } from './arbitrary-parts.ts';
import { braces, structure } from './arbitrary-structure.ts';

export interface RandomDesignOptions {
  /** How many openings may lie inside each other in a carcass; 4 when left out. */
  readonly depth?: number;
  readonly maxCarcasses?: number;
  readonly maxGear?: number;
  /** Only shares and hugs, so that rules seldom fight; false when left out. */
  readonly gentle?: boolean;
  /** Every carcass has structure, and boards and joints of ordinary make that can take it; false when left out. */
  readonly structured?: boolean;
}

const boardMaterial = (fc: Fc): Any<string> =>
  fc.constantFrom(...ids('materials').filter((id) => /^(birch|faced|hdpe-1)/.test(id)));

const sizeRule = (fc: Fc, gentle: boolean): Any<Plain> =>
  fc.oneof(
    { weight: 4, arbitrary: fc.integer({ min: 1, max: 3 }).map((weight) => ({ rule: 'share', weight })) },
    { weight: 2, arbitrary: fc.constant({ rule: 'hug' }) },
    { weight: gentle ? 0 : 2, arbitrary: mm(fc, 60, 250).map((at) => ({ rule: 'fixed', mm: at })) },
  );

const drawer = (fc: Fc, inside: Any<Plain>): Any<Plain> =>
  fc.record({
    kind: fc.constant('drawer'),
    slide: oneOrNone(
      fc,
      [...standardCatalog().slides.values()].filter(({ mount }) => mount === 'side').map(({ id }) => id),
    ),
    slideLengthMm: fc.constantFrom(null, null, 300, 400),
    boxMaterial: fc.constantFrom('birch-ply-12', 'birch-ply-15'),
    bottomMaterial: fc.constantFrom('birch-ply-6', 'birch-ply-9'),
    boxHeightMm: fc.constantFrom(null, null, 90, 140),
    slideLocks: fc.constantFrom('none', 'none', 'shut', 'both'),
    boxJoint: fc.constantFrom('rabbet', 'butt'),
    bottomJoint: fc.constantFrom('groove', 'groove', 'below'),
    front: fc.constantFrom('inset', 'overlay'),
    latch: oneOrNone(fc, hardwareOf('latch')),
    pull: oneOrNone(fc, hardwareOf('pull')),
    inside,
  });

const slideOut = (fc: Fc, inside: Any<Plain>): Any<Plain> =>
  fc.record({
    kind: fc.constant('slide-out'),
    slide: oneOrNone(fc, ids('slides')),
    slideLengthMm: fc.constantFrom(null, null, 600, 400),
    deckMaterial: fc.constantFrom('birch-ply-18', 'birch-ply-15'),
    lipHeightMm: fc.constantFrom(0, 60, 90),
    lipMaterial: fc.constantFrom('birch-ply-12', 'birch-ply-9'),
    latch: oneOrNone(fc, hardwareOf('latch')),
    mount: fc.constantFrom(null, null, 'side', 'under'),
    lockEveryMm: fc.constantFrom(null, null, 150, 300),
    tieDown: fc.constantFrom(null, { everyMm: 120, strap: 'strap-cam-25', straps: 1 }),
    loadPlate: fc.constantFrom(null, 'plate-load-90'),
    inside,
    second: fc.option(fc.record({ upMm: fc.constantFrom(120, 260), inside }), { nil: null, freq: 2 }),
  });

const openStorage = (fc: Fc): Any<Plain> =>
  fc.record({
    kind: fc.constant('open-storage'),
    shelvesUpMm: fc
      .uniqueArray(fc.integer({ min: 80, max: 300 }), { maxLength: 2 })
      .map((list) => [...list].sort((a, b) => a - b)),
    shelfMaterial: fc.constantFrom('birch-ply-12', 'birch-ply-9'),
    shelves: fc.constantFrom('fixed', 'adjustable'),
    restraint: oneOrNone(fc, hardwareOf('net', 'strap')),
    lipHeightMm: fc.constantFrom(0, 40),
    mat: oneOrNone(fc, hardwareOf('mat')),
    drain: oneOrNone(fc, hardwareOf('drain')),
  });

const faceplate = (fc: Fc): Any<Plain> => {
  const devices = ids('devices');
  const row = fc.array(fc.constantFrom('', ...devices), { maxLength: 3 }).map((list) => list.filter((id) => id !== ''));
  return fc.record({
    kind: fc.constant('faceplate'),
    material: fc.constantFrom('aluminium-32', 'composite-4'),
    tiltDeg: fc.integer({ min: -30, max: 40 }),
    setbackMm: fc.constantFrom(0, 20),
    rows: fc.array(row, { maxLength: 2 }),
  });
};

const apparatusBracket = (fc: Fc): Any<Plain> =>
  fc.record({
    kind: fc.constant('apparatus-bracket'),
    bracket: fc.constantFrom(...hardwareOf('cradle')),
    mounting: fc.constantFrom('floor', 'back'),
    strap: oneOrNone(fc, hardwareOf('strap')),
    lock: fc.constantFrom(null, 'lock-pack-lever'),
    nextSizeUp: fc.boolean(),
  });

const door = (fc: Fc, inside: Any<Plain>): Any<Plain> =>
  fc.record({
    kind: fc.constant('door'),
    hung: fc.constantFrom('left', 'right', 'top', 'bottom', 'roll'),
    front: fc.constantFrom('inset', 'overlay'),
    material: fc.constantFrom('birch-ply-18', 'birch-ply-12', 'aluminium-32'),
    hinge: fc.constantFrom(...hardwareOf('hinge')),
    latch: oneOrNone(fc, hardwareOf('latch')),
    lock: fc.constantFrom(null, 'latch-cam-lock'),
    opensDeg: fc.integer({ min: 20, max: 180 }),
    stay: oneOrNone(fc, hardwareOf('gas-spring', 'strap')),
    inside,
  });

const board = (fc: Fc, inside: Any<Plain>): Any<Plain> =>
  fc.record({
    kind: fc.constant('board'),
    way: fc.constantFrom('side-flip', 'top-flip', 'slide-and-turn'),
    hinge: fc.constantFrom('left', 'right'),
    widthMm: fc.constantFrom(null, null, 250, 400),
    heightMm: fc.constantFrom(null, null, 200, 300),
    material: fc.constantFrom('birch-ply-12', 'hdpe-10', 'composite-6'),
    stopsDeg: fc
      .uniqueArray(fc.integer({ min: 2, max: 12 }), { minLength: 1, maxLength: 4 })
      .map((steps) => steps.map((step) => step * 15)),
    ratchet: fc.constantFrom(null, 'ratchet-arm-15'),
    magneticFace: fc.boolean(),
    markerTray: oneOrNone(fc, hardwareOf('lip')),
    worklight: fc.constantFrom(null, 'light-puck', 'light-strip-500'),
    springs: oneOrNone(fc, hardwareOf('gas-spring')),
    slide: fc.constantFrom(null, null, 'slide-45'),
    latch: oneOrNone(fc, hardwareOf('latch')),
    inside,
  });

const anyFitting = (fc: Fc, inside: Any<Plain>): Any<Plain> =>
  fc.oneof(
    holders(fc),
    passThrough(fc),
    chargerBay(fc),
    valuables(fc, inside),
    mapSlot(fc),
    tabletMount(fc),
    trim(fc),
    drawer(fc, inside),
    slideOut(fc, inside),
    openStorage(fc),
    faceplate(fc),
    apparatusBracket(fc),
    door(fc, inside),
    board(fc, inside),
  );

/** Random content without ids: an opening is given its id when the whole document is numbered. */
const opening = (fc: Fc, depth: number, gentle: boolean): Any<Plain> => {
  const empty = fc.constant<Plain>({ content: { kind: 'empty' } });
  if (depth <= 0) return empty;
  const inside = opening(fc, depth - 1, gentle);
  const fitting = anyFitting(fc, inside);
  const part = fc.record({ size: sizeRule(fc, gentle), opening: inside });
  const divided = fc.record({
    kind: fc.constant('divided'),
    along: fc.constantFrom('columns', 'rows', 'rows', 'layers'),
    divider: fc.constantFrom('panel', 'panel', 'panel', 'none'),
    parts: fc.array(part, { minLength: 2, maxLength: 4 }),
  });
  const fitted = fc.record({ kind: fc.constant('fitted'), fitting });
  return fc.oneof(
    { weight: 1, arbitrary: empty },
    { weight: 3, arbitrary: fc.record({ content: divided }) },
    { weight: 3, arbitrary: fc.record({ content: fitted }) },
  );
};

const joints = (fc: Fc): Any<Plain> =>
  fc.record({
    corner: fc.constantFrom('dado', 'dado', 'rabbet', 'butt'),
    dadoDepthMm: fc.constantFrom(0, 4, 5, 6),
    back: fc.oneof(
      fc.record({
        kind: fc.constant('groove'),
        grooveDepthMm: fc.constantFrom(4, 6, 9),
        setbackMm: fc.constantFrom(0, 9, 12),
      }),
      fc.record({ kind: fc.constant('rabbet'), depthMm: fc.constantFrom(5, 8) }),
      fc.constant({ kind: 'none' }),
    ),
  });

/** Boards thick enough for the joints that are cut into them. */
const soundMake = (fc: Fc): Any<Plain> =>
  fc.record({
    material: fc.constantFrom('birch-ply-15', 'birch-ply-18', 'hdpe-19'),
    joints: fc.record({
      corner: fc.constantFrom('dado', 'dado', 'rabbet', 'butt'),
      dadoDepthMm: fc.constantFrom(5, 6),
      back: fc.constantFrom(
        { kind: 'groove', grooveDepthMm: 6, setbackMm: 9 },
        { kind: 'rabbet', depthMm: 7 },
        { kind: 'none' },
      ),
    }),
  });

const carcass = (fc: Fc, depth: number, gentle: boolean, structured: boolean): Any<Plain> => {
  const box = fc.record({
    name: fc.constantFrom('', 'Left bay', 'Tower'),
    facing: fc.constantFrom('rear', 'left', 'right', 'front'),
    size: fc.record({ width: mm(fc, 400, 1300), height: mm(fc, 350, 1000), depth: mm(fc, 350, 1100) }),
    material: boardMaterial(fc),
    backMaterial: fc.constantFrom('birch-ply-6', 'birch-ply-9'),
    joints: joints(fc),
    edgeBand: oneOrNone(fc, hardwareOf('edge-band')),
    opening: opening(fc, depth, gentle),
  });
  return fc
    .tuple(box, structured ? soundMake(fc) : fc.constant<Plain>({}), structure(fc, structured))
    .map(([plain, sound, more]) => ({ ...plain, ...sound, ...more(plain.size) }));
};

/** Lists of a carcass whose items are nodes of their own, and what their ids begin with. */
const STRUCTURE_IDS: Readonly<Record<string, string>> = {
  chamfers: 'chamfer',
  chases: 'chase',
  wheelhouses: 'wheelhouse',
  anchors: 'anchor',
};

/** Numbers every opening, device and piece of structure of a tree: `opening-7`, `device-2`, `chamfer-1`. */
const numbered = (tree: unknown, next: (prefix: string) => string): unknown => {
  if (Array.isArray(tree)) return tree.map((item) => numbered(item, next));
  if (typeof tree !== 'object' || tree === null) return tree;
  const entries = Object.entries(tree).map(([key, value]): readonly [string, unknown] => {
    if (key === 'opening' || key === 'inside')
      return [key, { id: next('opening'), name: '', ...(numbered(value, next) as Plain) }];
    const prefix = STRUCTURE_IDS[key];
    if (prefix !== undefined && Array.isArray(value))
      return [key, value.map((item: Plain) => ({ ...item, id: next(prefix) }))];
    if (key === 'fan' && typeof value === 'string') return [key, { id: next('device'), device: value }];
    if (key === 'rows' && Array.isArray(value))
      return [key, value.map((row: readonly string[]) => row.map((device) => ({ id: next('device'), device })))];
    return [key, numbered(value, next)];
  });
  return Object.fromEntries(entries);
};

const counter = (): ((prefix: string) => string) => {
  const counts = new Map<string, number>();
  return (prefix) => {
    const count = (counts.get(prefix) ?? 0) + 1;
    counts.set(prefix, count);
    return `${prefix}-${count}`;
  };
};

/** A random door or command board in `opening-1`, with nothing inside. */
export const randomLeaf = (fc: Fc): Any<Plain> =>
  fc.oneof(door(fc, opening(fc, 0, true)), board(fc, opening(fc, 0, true))).map((fitting) => {
    const next = counter();
    next('opening');
    return numbered(fitting, next) as Plain;
  });

/** A random fitting whose own opening is `opening-1`, with ids for whatever it holds; `depth` openings inside it. */
export const randomFitting = (fc: Fc, depth = 1): Any<Plain> =>
  anyFitting(fc, opening(fc, depth, true)).map((fitting) => {
    const next = counter();
    next('opening');
    return numbered(fitting, next) as Plain;
  });

/** Carcasses in a row from left to right with a gap of 5 mm, each but the first beside the one before it. */
const inARow = (carcasses: readonly Plain[], next: (prefix: string) => string): readonly Plain[] =>
  carcasses.map((each, i) => ({
    ...(numbered(each, next) as Plain),
    id: `carcass-${i + 1}`,
    place: {
      x: { rule: 'at', mm: 40 },
      y: i === 0 ? { rule: 'at', mm: -600 } : { rule: 'beside', carcass: `carcass-${i}`, side: 'plus', gapMm: 5 },
      z: { rule: 'at', mm: 0 },
    },
  }));

/** Gear for openings that the design has; `nth` picks the opening. */
const gear = (fc: Fc): Any<Plain & { readonly nth: number }> =>
  fc.record({
    name: fc.constantFrom('Rope bag', 'Irons', 'Lamp'),
    sizeMm: fc.tuple(mm(fc, 40, 400), mm(fc, 40, 250), mm(fc, 30, 250)),
    massKg: fc.integer({ min: 2, max: 150 }).map((tenths) => tenths / 10),
    massFrom: fc.constantFrom('measured', 'catalogue', 'estimated'),
    massSigmaKg: fc.constantFrom(0, 0.1, 0.5),
    firstDue: fc.boolean(),
    at: fc.tuple(mm(fc, 0, 60), mm(fc, 0, 60), fc.constant(0)),
    stance: fc.constantFrom('upright', 'on-side', 'on-back'),
    turnDeg: fc.constantFrom(0, 90, 180, 270),
    nth: fc.nat(40),
  });

const mount = (fc: Fc): Any<readonly Plain[]> => {
  const devices = ids('devices');
  if (devices.length === 0) return fc.constant([]);
  const one = fc.record({
    device: fc.constantFrom(...devices),
    at: fc.tuple(mm(fc, 0, 900), mm(fc, -500, 500), mm(fc, 300, 900)),
    looks: fc.constantFrom('front', 'rear', 'left', 'right', 'up', 'down'),
    onEnd: fc.boolean(),
    letIn: fc.boolean(),
    bracket: fc.constantFrom(null, 'bracket-angle-60'),
  });
  return fc.array(one, { maxLength: 2 });
};

const openingIds = (tree: unknown): readonly string[] => {
  if (Array.isArray(tree)) return tree.flatMap(openingIds);
  if (typeof tree !== 'object' || tree === null) return [];
  const own = 'id' in tree && 'content' in tree ? [String(tree.id)] : [];
  return [...own, ...Object.values(tree).flatMap(openingIds)];
};

/**
 * Random designs that the schema takes: carcasses side by side with trees of openings, every kind of fitting,
 * chamfers, chases, wheelhouses, stands, anchors and braces, gear in openings that exist (whether it fits or not), and
 * mounts. Catalog ids are those of the standard catalog, so
 * that unknown records do not come up. Vehicle and survey are those of a fresh design.
 */
export const randomDesign = (fc: Fc, options: RandomDesignOptions = {}): Any<Design> => {
  const { depth = 4, maxCarcasses = 3, maxGear = 8, gentle = false, structured = false } = options;
  const parts = fc.record({
    carcasses: fc.array(carcass(fc, depth, gentle, structured), { minLength: 1, maxLength: maxCarcasses }),
    gear: fc.array(gear(fc), { maxLength: maxGear }),
    mounts: mount(fc),
    braces: braces(fc),
  });
  return parts.map((drawn) => {
    const carcasses = inARow(drawn.carcasses, counter());
    const openings = openingIds(carcasses);
    return designSchema.parse({
      ...emptyDesign('Random', 'mm'),
      cabinet: { carcasses, braces: drawn.braces(carcasses.length) },
      gear: drawn.gear.map(({ nth, at, stance, turnDeg, ...item }, i) => ({
        ...item,
        id: `gear-${i + 1}`,
        place: nth % 5 === 4 ? null : { opening: openings[nth % openings.length], level: 0, at, stance, turnDeg },
      })),
      mounts: drawn.mounts.map((each, i) => ({ ...each, id: `mount-${i + 1}`, name: '', on: null })),
    }) as Design;
  });
};
