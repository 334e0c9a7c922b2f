import { type Design, type GearPlace, type NodeId, placeGear } from '../../design/index.ts';
import type { Finding, Inspection } from '../finding.ts';
import { findingKey } from '../inspect.ts';
import type { InspectionInput } from '../job.ts';
import { type ArrangeWishes, arrangeGround, type Ground, type Staying } from './berths.ts';
import { exactly } from './exact.ts';
import { type ArrangeFigures, arrangeFigures } from './figures.ts';
import {
  ABOUT,
  ARRANGE_FIRST,
  type ArrangeFirst,
  type Ban,
  compareScores,
  GIVE,
  type Minimise,
  minimiseInTurn,
  ORDER,
  OUTSIDE_INDEX,
  type Picks,
  type Staged,
  scoresOf,
} from './goals.ts';
import type { ProgramSolver } from './program.ts';
import { bySearch } from './search.ts';
import { otherSides, type Sides } from './sides.ts';

/** One item that goes elsewhere. */
export interface ArrangedItem {
  readonly gear: string;
  readonly from: GearPlace;
  readonly to: GearPlace;
}

/** An arrangement that is offered: the design that it leads to, and its figures. */
export interface Arrangement {
  /** What it puts first; several where they come to the same. */
  readonly first: readonly [ArrangeFirst, ...ArrangeFirst[]];
  readonly design: Design;
  readonly items: readonly ArrangedItem[];
  /** Carcasses that stand elsewhere. */
  readonly carcasses: readonly string[];
  readonly figures: ArrangeFigures;
  /** Open findings after it, by severity, as the inspection counts them. */
  readonly cautions: number;
  /** What no arrangement does better on, of what it puts first. */
  readonly best: readonly ArrangeFirst[];
}

/** What was looked at, and what none of it can go below. */
export interface ArrangePlan {
  readonly now: ArrangeFigures;
  readonly cautions: number;
  /** Those that change something, one for each thing that may come first; none where nothing better was found. */
  readonly choices: readonly Arrangement[];
  /** What no arrangement can go below, on what each puts first: a share, an index, motions. Null where not known. */
  readonly bounds: Readonly<Record<ArrangeFirst, number | null>>;
  readonly stays: readonly { readonly gear: string; readonly why: Staying }[];
  /** True where all arrangements were weighed against each other, false where they were searched. */
  readonly exact: boolean;
  readonly items: number;
  readonly places: number;
  readonly sides: number;
}

export interface ArrangeTools {
  readonly solver: ProgramSolver;
  /** Solves a copy of the design, for its figures. */
  readonly inputFor: (design: Design) => InspectionInput;
  /** Inspects a copy of the design. */
  readonly inspectCopy: (design: Design) => Inspection;
}

/** Up to as many pairs of item and place all arrangements are weighed; beyond, they are searched. */
const MOST_PAIRS = 700;
/** Times that an arrangement is sought again because the inspection stops the one found. */
const MOST_ROUNDS = 6;
const PERCENT = 100;

const keyOf = ({ rule, parts }: Finding): string => findingKey(rule, parts);

const stopsOf = ({ findings }: Inspection): ReadonlyMap<string, Finding> =>
  new Map(findings.filter(({ severity }) => severity === 'stop').map((finding) => [keyOf(finding), finding]));

const cautionsOf = ({ findings }: Inspection): number =>
  findings.filter(({ severity, accepted }) => severity === 'caution' && accepted === null).length;

interface Variant extends Sides {
  readonly ground: Ground;
}

const pairsOf = ({ table }: Ground): number => table.items.reduce((sum, { choices }) => sum + choices.length, 0);

const applied = ({ design, ground }: Variant, picks: Picks): Design =>
  ground.table.items.reduce((copy, { id }, i) => {
    const pick = picks[i] ?? 0;
    const place = ground.places[i]?.[pick];
    return pick === 0 || !place ? copy : placeGear(copy, id as NodeId, place);
  }, design);

/** What is not to be tried again: the moved items that a new stop speaks of, where it names any, else all of them. */
const banFor = ({ ground }: Variant, picks: Picks, stop: Finding): Ban => {
  const moved = picks.flatMap((pick, item) => (pick === 0 ? [] : [{ item, pick }]));
  const named = moved.filter(({ item, pick }) => {
    const place = ground.places[item]?.[pick];
    const id = ground.table.items[item]?.id ?? '';
    return stop.parts.some((part) => part === id || part.startsWith(`${id}/`) || part === place?.opening);
  });
  return named.length > 0 ? named : moved;
};

interface Settled {
  readonly variant: Variant;
  readonly staged: Staged;
  readonly design: Design;
  readonly inspection: Inspection;
}

/** The arrangement of one variant that the inspection lets stand; null where none of those tried is. */
const settle = (
  variant: Variant,
  first: ArrangeFirst,
  minimise: Minimise,
  before: ReadonlyMap<string, Finding>,
  inspectCopy: ArrangeTools['inspectCopy'],
): Settled | null => {
  const bans: Ban[] = [];
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const staged = minimiseInTurn(variant.ground.table, ORDER[first], bans, minimise);
    if (!staged) return null;
    const design = applied(variant, staged.picks);
    const inspection = inspectCopy(design);
    const fresh = [...stopsOf(inspection)].filter(([key]) => !before.has(key)).map(([, finding]) => finding);
    if (fresh.length === 0) return { variant, staged, design, inspection };
    const more = fresh.map((stop) => banFor(variant, staged.picks, stop)).filter((ban) => ban.length > 0);
    if (more.length === 0) return null;
    bans.push(...more);
  }
  return null;
};

const sameChange = (a: Arrangement, b: Arrangement): boolean => {
  const said = ({ items, carcasses }: Arrangement): string => JSON.stringify([items, carcasses]);
  return said(a) === said(b);
};

/** Arrangements that come to the same are one. */
const merged = (choices: readonly Arrangement[]): readonly Arrangement[] => {
  const kept: Arrangement[] = [];
  for (const own of choices) {
    const at = kept.findIndex((other) => sameChange(own, other));
    const twin = kept[at];
    if (twin) kept[at] = { ...twin, first: [...twin.first, ...own.first], best: [...twin.best, ...own.best] };
    else kept.push(own);
  }
  return kept;
};

/** A bound of the table in the figures that people read; null for an index that no lift has. */
const boundFigure = (first: ArrangeFirst, bound: number): number | null => {
  const at = Math.max(0, bound);
  if (first === 'lifting' && at >= OUTSIDE_INDEX) return null;
  return first === 'balance' ? at / PERCENT : at;
};

/** What an arrangement can be better by at all: nothing where the vehicle's figures are not known. */
const isKnown = (first: ArrangeFirst, { sideShare, liftIndex, armsMm }: ArrangeFigures): boolean =>
  (first === 'balance' ? sideShare : first === 'lifting' ? liftIndex : armsMm) !== null;

/**
 * Arrangements of what is stowed among the places that it fits, and of carcasses left and right: the best balance from
 * side to side, the lowest lifting index, first-due gear nearest to hand, each put first in turn and the others next.
 * Only those are offered that make no new stop. Nothing is changed: a choice is a design for somebody to take.
 */
export const arrange = (design: Design, wishes: ArrangeWishes, tools: ArrangeTools): ArrangePlan => {
  const { solver, inputFor, inspectCopy } = tools;
  const input = inputFor(design);
  const now = arrangeFigures(input);
  const inspection = inspectCopy(design);
  const before = stopsOf(inspection);
  const own: Variant = { design, moved: [], ground: arrangeGround(input, wishes) };
  const aside = wishes.keepCarcasses ? [] : otherSides(design, input.fitout);
  const variants: readonly Variant[] = [
    own,
    ...aside.flatMap((sides): readonly Variant[] =>
      [...stopsOf(inspectCopy(sides.design)).keys()].every((key) => before.has(key))
        ? [{ ...sides, ground: arrangeGround(inputFor(sides.design), wishes) }]
        : [],
    ),
  ];
  const exact = variants.every(({ ground }) => pairsOf(ground) <= MOST_PAIRS);
  const minimise = exact ? exactly(solver) : bySearch(solver);
  const lowest = (first: ArrangeFirst): number => {
    const [goal] = ORDER[first];
    if (goal === undefined) return 0;
    return Math.min(
      ...variants.map(({ ground: { table } }) => {
        const start = table.items.map(() => 0);
        return minimise(table, goal, { caps: {}, bans: [] }, start)?.bound ?? 0;
      }),
    );
  };
  const bounds = { balance: lowest('balance'), lifting: lowest('lifting'), 'first-due': lowest('first-due') };
  const choices = ARRANGE_FIRST.flatMap((first): readonly Arrangement[] => {
    if (!isKnown(first, now)) return [];
    const settled = variants
      .flatMap((variant) => settle(variant, first, minimise, before, inspectCopy) ?? [])
      .reduce<Settled | null>(
        (best, each) =>
          best === null || compareScores(ORDER[first], each.staged.scores, best.staged.scores) < 0 ? each : best,
        null,
      );
    if (!settled) return [];
    const { variant, staged } = settled;
    const items = variant.ground.table.items.flatMap(({ id }, i): readonly ArrangedItem[] => {
      const [pick, places] = [staged.picks[i] ?? 0, variant.ground.places[i]];
      const [from, to] = [places?.[0], places?.[pick]];
      return pick === 0 || !from || !to ? [] : [{ gear: id, from, to }];
    });
    const nothing = scoresOf(own.ground.table, []);
    if (compareScores(ABOUT[first], staged.scores, nothing) >= 0) return [];
    const [goal] = ORDER[first];
    return [
      {
        first: [first],
        design: settled.design,
        items,
        carcasses: variant.moved,
        figures: arrangeFigures(inputFor(settled.design)),
        cautions: cautionsOf(settled.inspection),
        best: goal !== undefined && staged.scores[goal] <= bounds[first] + GIVE[goal] ? [first] : [],
      },
    ];
  });
  return {
    now,
    cautions: cautionsOf(inspection),
    choices: merged(choices),
    bounds: {
      balance: isKnown('balance', now) ? boundFigure('balance', bounds.balance) : null,
      lifting: isKnown('lifting', now) ? boundFigure('lifting', bounds.lifting) : null,
      'first-due':
        isKnown('first-due', now) && now.motions !== null ? boundFigure('first-due', bounds['first-due']) : null,
    },
    stays: own.ground.stays,
    exact,
    items: own.ground.table.items.length,
    places: new Set(own.ground.table.items.flatMap(({ choices: each }) => each.map(({ berth }) => berth))).size,
    sides: variants.length - 1,
  };
};
