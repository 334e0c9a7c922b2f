import {
  type Anchor,
  type Carcass,
  changeCarcass,
  changeFitting,
  type Design,
  type Fitting,
  findOpening,
  freshAnchors,
  freshIds,
  type NodeId,
} from '../../design/index.ts';
import type { Finding } from '../finding.ts';
import type { Candidate, WayFinder } from './candidate.ts';

/** Pieces of the standard catalog that hold more, the lighter first. */
const STRONGER = {
  plate: 'backing-plate-80',
  washer: 'backing-plate-50',
  bolts: ['bolt-m10x50', 'bolt-m12x60'],
  latches: ['latch-slam', 'latch-paddle', 'latch-rotary', 'latch-two-point-bar'],
  stop: 'stop-angle-18',
  restraints: ['net-large', 'strap-ratchet-25', 'strap-quick-50'],
} as const;

const carcassOf = (design: Design, finding: Finding): Carcass | null =>
  design.cabinet.carcasses.find(({ id }) => id === finding.parts[0]) ?? null;

type Change = (anchor: Anchor) => Anchor;

/** The same change to every anchor of the carcass; nothing where it changes none. */
const everyAnchor = (
  design: Design,
  { id, anchors }: Carcass,
  rank: number,
  facts: Candidate['facts'],
  change: Change,
): readonly Candidate[] => {
  const changed = anchors.map(change);
  if (changed.every((anchor, i) => anchor === anchors[i])) return [];
  return [
    {
      kind: 'fit-anchors',
      facts: { carcass: id, ...facts },
      design: changeCarcass(design, id, { anchors: changed }),
      change: rank,
      group: null,
    },
  ];
};

/** Shares of the depth at which another pair of anchors is tried. */
const MORE_AT: readonly (readonly number[])[] = [
  [1 / 2],
  [1 / 3],
  [2 / 3],
  [1 / 4],
  [3 / 4],
  [1 / 3, 2 / 3],
  [1 / 4, 1 / 2, 3 / 4],
];

/** More anchors near each side, like the ones that are there: a pair, then two and three. */
const anotherPair = (design: Design, { id, anchors, size }: Carcass): readonly Candidate[] => {
  const like = anchors.find(({ on }) => on === 'floor');
  if (like?.on !== 'floor') return [];
  return MORE_AT.map((shares, i): Candidate => {
    const newId = freshIds(design);
    const depths = shares.map((share) => Math.round(size.depth * share));
    const more = depths.flatMap((mm) =>
      (['left', 'right'] as const).map(
        (from): Anchor => ({
          ...like,
          id: newId('anchor'),
          across: { from, mm: like.across.mm },
          deep: { from: 'face', mm },
        }),
      ),
    );
    return {
      kind: 'add-anchors',
      facts: { carcass: id, count: more.length, mm: depths[0] ?? 0 },
      design: changeCarcass(design, id, { anchors: [...anchors, ...more] }),
      change: i,
      group: `add anchors ${id}`,
    };
  });
};

/** A nut behind a plate in place of an insert, a larger plate, a bonded one, a wider washer, a thicker bolt, more anchors. */
export const anchorWays: WayFinder = (finding, design) => {
  const carcass = carcassOf(design, finding);
  if (!carcass) return [];
  const all = (rank: number, facts: Candidate['facts'], change: Change): readonly Candidate[] =>
    everyAnchor(design, carcass, rank, facts, change);
  const { plate, washer, bolts } = STRONGER;
  const proud = { letIn: false, insert: null, plateBonded: true } as const;
  return [
    ...all(0, { how: 'through' }, (anchor) =>
      anchor.insert === null ? anchor : { ...anchor, insert: null, plate: anchor.plate ?? plate },
    ),
    ...all(1, { how: 'plate', item: plate }, (anchor) => (anchor.plate === plate ? anchor : { ...anchor, plate })),
    ...all(2, { how: 'bond' }, (anchor) =>
      anchor.plateBonded ? anchor : { ...anchor, plate: anchor.plate ?? plate, plateBonded: true },
    ),
    ...all(3, { how: 'washer', item: washer }, (anchor) => (anchor.washer === washer ? anchor : { ...anchor, washer })),
    ...bolts.flatMap((bolt, i) =>
      all(4 + i, { how: 'bolt', item: bolt }, (anchor) =>
        anchor.bolt === bolt ? anchor : { ...anchor, bolt, insert: null, plate: anchor.plate ?? plate },
      ),
    ),
    ...all(6, { how: 'proud' }, (anchor) => ({ ...anchor, ...proud, plate: anchor.plate ?? plate })),
    ...all(7, { how: 'proud-bolt', item: bolts[0] }, (anchor) => ({ ...anchor, ...proud, bolt: bolts[0], plate })),
    ...anotherPair(design, carcass),
  ];
};

/** Four anchors of ordinary make in the corners of the floor. */
export const anchorCountWays: WayFinder = (finding, design) => {
  const carcass = carcassOf(design, finding);
  if (!carcass) return [];
  if (carcass.anchors.length > 0) return anotherPair(design, carcass);
  const anchors = freshAnchors(freshIds(design));
  return [
    {
      kind: 'add-anchors',
      facts: { carcass: carcass.id, count: anchors.length, mm: 0 },
      design: changeCarcass(design, carcass.id, { anchors }),
      change: 0,
      group: null,
    },
  ];
};

/** Steps (mm) in which an anchor is moved out of a place where nobody may drill. */
const MOVE_STEP_MM = 50;
const MOST_MOVES = 12;

const movedTo = (design: Design, carcass: Carcass, anchor: Anchor, mm: number, rank: number): Candidate => {
  const moved: Anchor =
    anchor.on === 'floor' ? { ...anchor, deep: { from: 'face', mm } } : { ...anchor, along: { from: 'start', mm } };
  const anchors = carcass.anchors.map((own) => (own.id === anchor.id ? moved : own));
  return {
    kind: 'move-anchor',
    facts: { anchor: anchor.id, mm },
    design: changeCarcass(design, carcass.id, { anchors }),
    change: rank,
    group: `move ${anchor.id}`,
  };
};

/** The anchor moved along the carcass, the nearest place first. */
export const anchorPlaceWays: WayFinder = (finding, design) => {
  const carcass = carcassOf(design, finding);
  const anchor = carcass?.anchors.find(({ id }) => id === finding.parts[1]);
  if (!carcass || !anchor) return [];
  const { from, mm } = anchor.on === 'floor' ? anchor.deep : anchor.along;
  const { depth, width } = carcass.size;
  const length = anchor.on === 'wall' && anchor.side === 'back' ? width : depth;
  const now = from === 'face' || from === 'start' ? mm : length - mm;
  return Array.from({ length: MOST_MOVES }, (_, i) => (i + 1) * MOVE_STEP_MM).flatMap((by) =>
    [now - by, now + by]
      .filter((to) => to >= MOVE_STEP_MM && to <= length - MOVE_STEP_MM)
      .map((to) => movedTo(design, carcass, anchor, Math.round(to), by)),
  );
};

type FittedPart = 'latch' | 'backStop' | 'restraint';

const fitPart = (
  design: Design,
  opening: NodeId,
  part: FittedPart,
  item: string,
  rank: number,
): readonly Candidate[] => {
  const content = findOpening(design, opening)?.opening.content;
  if (content?.kind !== 'fitted' || !(part in content.fitting)) return [];
  if ((content.fitting as Partial<Record<FittedPart, unknown>>)[part] === item) return [];
  const change = (fitting: object): void => {
    (fitting as Partial<Record<FittedPart, string>>)[part] = item;
  };
  return [
    {
      kind: 'fit-piece',
      facts: { opening, item, part },
      design: changeFitting(design, opening, (fitting: Fitting) => change(fitting)),
      change: rank,
      group: `fit ${part}`,
    },
  ];
};

const fitsOf =
  (part: FittedPart, items: readonly string[]): WayFinder =>
  (finding, design) => {
    const opening = finding.parts[0] as NodeId | undefined;
    return opening === undefined ? [] : items.flatMap((item, i) => fitPart(design, opening, part, item, i));
  };

export const latchWays = fitsOf('latch', STRONGER.latches);
export const backStopWays = fitsOf('backStop', [STRONGER.stop]);
export const gearHoldWays = fitsOf('restraint', STRONGER.restraints);
