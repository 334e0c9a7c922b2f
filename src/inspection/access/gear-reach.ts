import type { Blockers, Lanes } from './lanes.ts';
import type { GearReach, OrderStep } from './opening-order.ts';
import { createStands, freeToTake, type InItsWay, inItsWay, type Stowed, type TakeGround } from './take-out.ts';
import { chainOf, type Rest, type Shares, type Unit } from './units.ts';

/** What motions count, and which units have a latch to be undone first. */
export interface Counting {
  readonly open: number;
  readonly slide: number;
  readonly undo: number;
  readonly liftOther: number;
  readonly latched: ReadonlySet<string>;
}

export interface ReachGround {
  readonly lanes: Lanes;
  readonly take: TakeGround;
  readonly counting: Counting;
  readonly stowed: ReadonlyMap<string, Stowed>;
}

/** States looked at for one item before it is said that no way was found. */
const MOST_STATES = 240;

interface State {
  /** Where the movers stand, as a text; states of one text and one set of removed items are the same. */
  readonly stand: string;
  readonly shares: Shares;
  readonly removed: ReadonlySet<string>;
  readonly count: number;
  readonly steps: readonly OrderStep[];
}

const standOf = (shares: Shares): string =>
  Object.entries(shares)
    .flatMap(([id, share]) => (share === 0 ? [] : [`${id}=${share}`]))
    .sort()
    .join(' ');

const keyOf = ({ stand, removed }: State): string =>
  removed.size === 0 ? stand : [stand, ...[...removed].sort()].join(' ');

const IS_HELD: ReadonlySet<string> = new Set(['net', 'strap', 'bracket']);

/** What holds an item is undone once: a net or strap for all that lies behind it, a bracket for its own. */
const undoGear = (
  { counting, stowed }: ReachGround,
  item: Stowed,
  removed: ReadonlySet<string>,
): readonly OrderStep[] => {
  if (!IS_HELD.has(item.room.keeps)) return [];
  const already = [...removed].some((id) => stowed.get(id)?.room === item.room);
  return already
    ? []
    : [{ act: 'undo', part: item.opening, mover: null, rest: null, share: null, count: counting.undo }];
};

const moveSteps = ({ counting }: ReachGround, unit: Unit, from: number, rest: Rest): readonly OrderStep[] => {
  const steps: OrderStep[] = [];
  if (from === 0 && counting.latched.has(unit.id))
    steps.push({ act: 'undo', part: unit.part, mover: unit.id, rest: null, share: null, count: counting.undo });
  steps.push({
    act: rest.share > from ? 'open' : 'close',
    part: unit.part,
    mover: unit.id,
    rest: rest.name,
    share: rest.share,
    count: unit.motion.kind === 'slide' ? counting.slide : counting.open,
  });
  return steps;
};

const counted = (steps: readonly OrderStep[]): number => steps.reduce((sum, { count }) => sum + count, 0);

interface Search {
  readonly best: State | null;
  /** Units and gear that were in the way somewhere. */
  readonly metUnits: ReadonlySet<string>;
  readonly metGear: ReadonlySet<string>;
  readonly fixed: string | null;
}

/** What a search may move: the units and the items that have been found in the way so far. */
interface Within {
  readonly units: readonly Unit[];
  readonly gear: readonly Stowed[];
}

export const createReach = (
  ground: ReachGround,
  stands = createStands(ground.lanes.ground),
): ((item: Stowed, firstDue: boolean) => GearReach) => {
  const { lanes, take } = ground;
  const knownTakes = new Map<string, readonly InItsWay[]>();
  const waysFor = (item: Stowed, state: State): readonly InItsWay[] => {
    const key = `${item.gear} | ${keyOf(state)}`;
    const known = knownTakes.get(key) ?? inItsWay(take, item, state.shares, stands(state.shares), state.removed);
    knownTakes.set(key, known);
    return known;
  };

  const knownMoves = new Map<string, Blockers>();
  const movesFor = (unit: Unit, from: number, rest: Rest, { stand, shares }: State): Blockers => {
    const key = `${unit.id} ${rest.share} | ${stand}`;
    const known = knownMoves.get(key) ?? lanes.blockers(unit, from, rest.share, shares);
    knownMoves.set(key, known);
    return known;
  };

  const next = (state: State, { units, gear }: Within, met: (id: string) => void): readonly State[] => {
    const states: State[] = [];
    for (const unit of units) {
      const from = state.shares[unit.id] ?? 0;
      for (const rest of unit.rests.toReversed()) {
        if (rest.share === from) continue;
        const { units: blocking, fixed } = movesFor(unit, from, rest, state);
        if (fixed) continue;
        blocking.forEach(met);
        if (blocking.length > 0) continue;
        const steps = moveSteps(ground, unit, from, rest);
        const shares = { ...state.shares, [unit.id]: rest.share };
        states.push({
          stand: standOf(shares),
          shares,
          removed: state.removed,
          count: state.count + counted(steps),
          steps: [...state.steps, ...steps],
        });
      }
    }
    for (const item of gear) {
      if (state.removed.has(item.gear) || !freeToTake(waysFor(item, state))) continue;
      const steps: readonly OrderStep[] = [
        ...undoGear(ground, item, state.removed),
        { act: 'lift-away', part: item.gear, mover: null, rest: null, share: null, count: ground.counting.liftOther },
      ];
      states.push({
        stand: state.stand,
        shares: state.shares,
        removed: new Set([...state.removed, item.gear]),
        count: state.count + counted(steps),
        steps: [...state.steps, ...steps],
      });
    }
    return states;
  };

  const search = (item: Stowed, within: Within): Search => {
    const open: State[] = [{ stand: '', shares: {}, removed: new Set(), count: 0, steps: [] }];
    const done = new Set<string>();
    const [metUnits, metGear] = [new Set<string>(), new Set<string>()];
    let fixed: string | null = null;
    let best: State | null = null;
    while (open.length > 0 && done.size < MOST_STATES) {
      let at = 0;
      open.forEach((state, i) => {
        if (state.count < (open[at]?.count ?? Infinity)) at = i;
      });
      const [state] = open.splice(at, 1);
      if (!state || (best && state.count >= best.count)) break;
      const key = keyOf(state);
      if (done.has(key)) continue;
      done.add(key);
      const ways = waysFor(item, state);
      if (freeToTake(ways)) {
        const steps = undoGear(ground, item, state.removed);
        const whole = { ...state, steps: [...state.steps, ...steps], count: state.count + counted(steps) };
        if (!best || whole.count < best.count) best = whole;
        continue;
      }
      for (const way of ways) {
        if (way.fixed !== null) fixed = way.fixed;
        for (const id of way.units) metUnits.add(id);
        for (const id of way.gear) metGear.add(id);
      }
      open.push(...next(state, within, (id) => metUnits.add(id)));
    }
    return { best, metUnits, metGear, fixed };
  };

  const unitsOf = (ids: ReadonlySet<string>): readonly Unit[] => lanes.ground.units.filter(({ id }) => ids.has(id));

  return (item, firstDue) => {
    const unitIds = new Set(chainOf(lanes.ground, item.rides).map(({ id }) => id));
    const gearIds = new Set<string>();
    let found: Search;
    // A mover that is nowhere in the way cannot help: the search is repeated with all that were, until none is new.
    for (let before = -1; ; ) {
      const gear = [...gearIds].flatMap((id) => ground.stowed.get(id) ?? []);
      found = search(item, { units: unitsOf(unitIds), gear });
      for (const id of found.metUnits) for (const unit of chainOf(lanes.ground, id)) unitIds.add(unit.id);
      for (const id of found.metGear) {
        gearIds.add(id);
        for (const unit of chainOf(lanes.ground, ground.stowed.get(id)?.rides ?? null)) unitIds.add(unit.id);
      }
      if (unitIds.size + gearIds.size === before) break;
      before = unitIds.size + gearIds.size;
    }
    const { best } = found;
    const common = { gear: item.gear, opening: item.opening, firstDue, found: best !== null };
    if (best) {
      const taken: OrderStep = { act: 'take', part: item.gear, mover: null, rest: null, share: null, count: 0 };
      return { ...common, steps: [...best.steps, taken], count: best.count, shares: best.shares, stuck: null };
    }
    // Closures open at any time, so that they are never what it sticks on.
    const kept = unitsOf(found.metUnits).filter(({ closure }) => !closure);
    const parts = [...kept.map(({ part }) => part), ...found.metGear];
    return { ...common, steps: [], count: null, shares: {}, stuck: { parts, fixed: found.fixed } };
  };
};
