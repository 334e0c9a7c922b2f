import { boxCorners } from '../../base/index.ts';
import type { Catalog, HouseRules } from '../../catalog/index.ts';
import { type Design, findOpening } from '../../design/index.ts';
import type { CargoSpace } from '../../envelope/index.ts';
import type { FitOut } from '../../fitout/index.ts';
import { createReach } from './gear-reach.ts';
import { createLanes, type Lanes } from './lanes.ts';
import type { GearReach, OpeningOrder } from './opening-order.ts';
import { orderRows } from './order-rows.ts';
import { outsideOf, type Stowed, stanceOf } from './take-out.ts';
import { type Ground, groundOf, type Solid } from './units.ts';

export interface OrderInput {
  readonly design: Design;
  readonly space: CargoSpace | null;
  readonly fitout: FitOut;
  readonly catalog: Catalog;
  readonly rules: HouseRules;
}

/** Units with a latch of their own: hardware of the kind latch, or slides that lock where they are pushed in. */
const latchedUnits = ({ fitout, catalog }: OrderInput, ground: Ground): ReadonlySet<string> => {
  const held = new Set<string>(
    fitout.hardware
      .filter(({ from, item }) =>
        from === 'slide' ? catalog.slides.get(item)?.locks.in === true : catalog.hardware.get(item)?.kind === 'latch',
      )
      .map(({ origin }) => origin),
  );
  // A carriage and the board on it come from one node and have one latch: that of what moves first.
  return new Set(
    ground.units
      .filter(({ closure, part, carriedBy }) => {
        const carrier = carriedBy === null ? undefined : ground.byId.get(carriedBy);
        return !closure && held.has(part) && carrier?.part !== part;
      })
      .map(({ id }) => id),
  );
};

const stowedGear = ({ fitout }: OrderInput, ground: Ground): ReadonlyMap<string, Stowed> =>
  new Map(
    fitout.gear.flatMap(({ gear, opening, level }) => {
      const room = fitout.rooms.find((own) => own.opening === opening && own.level === level);
      const own = ground.gear.get(gear);
      return room && own ? [[gear, { gear, opening, room, solid: own.solid, rides: own.rides }] as const] : [];
    }),
  );

const strokesOf = ({ design, fitout, catalog, rules }: OrderInput): ReadonlyMap<string, number> => {
  // What a spring clip holds is lifted out of it.
  const clipped = new Set<string>(
    fitout.hardware.filter(({ item }) => catalog.hardware.get(item)?.kind === 'clip').map(({ origin }) => origin),
  );
  return new Map(
    fitout.rooms.flatMap(({ opening, keeps }) => {
      if (keeps !== 'bracket' || clipped.has(opening)) return [];
      const content = findOpening(design, opening)?.opening.content;
      const own =
        content?.kind === 'fitted' && 'releaseStrokeMm' in content.fitting ? content.fitting.releaseStrokeMm : null;
      return [[opening as string, own ?? rules.value('bracket-release-stroke')] as const];
    }),
  );
};

const closedVehicle = ({ space }: OrderInput, ground: Ground): readonly Solid['shape'][] => {
  const closures = ground.units.filter(({ closure }) => closure).flatMap(({ solids }) => solids);
  const bounds = space ? [{ vertices: boxCorners(space.bounds), faces: [], radius: 0 }] : [];
  const shapes = [...bounds, ...closures.map(({ shape }) => shape)];
  return shapes.length > 0 ? shapes : ground.fixed.map(({ shape }) => shape);
};

/** How gear comes out and movers go, worked out item by item as it is asked for. */
export interface Access {
  readonly lanes: Lanes;
  /** The item's way to hand; null for gear without a place. */
  readonly reach: (gear: string) => GearReach | null;
}

const makeAccess = (input: OrderInput): Access => {
  const ground = groundOf(input.fitout, input.space);
  const lanes = createLanes(ground);
  const stowed = stowedGear(input, ground);
  const { rules } = input;
  const reach = createReach({
    lanes,
    stowed,
    take: {
      ground,
      outside: outsideOf(closedVehicle(input, ground)),
      stance: stanceOf(new Set(input.design.survey.closures.map(({ outward }) => outward))),
      strokes: strokesOf(input),
    },
    counting: {
      open: rules.value('motion-open'),
      slide: rules.value('motion-slide'),
      undo: rules.value('motion-latch'),
      liftOther: rules.value('motion-lift-other'),
      latched: latchedUnits(input, ground),
    },
  });
  const firstDue = new Set<string>(input.design.gear.filter((gear) => gear.firstDue).map(({ id }) => id));
  const known = new Map<string, GearReach>();
  return {
    lanes,
    reach: (id) => {
      const item = stowed.get(id);
      if (!item) return null;
      const own = known.get(id) ?? reach(item, firstDue.has(id));
      known.set(id, own);
      return own;
    },
  };
};

/** The rules of an inspection and the opening order ask for the same, and it is worked out once for one fit-out. */
const knownAccess = new WeakMap<FitOut, { readonly input: OrderInput; readonly access: Access }>();

export const accessOf = (input: OrderInput): Access => {
  const known = knownAccess.get(input.fitout);
  if (
    known &&
    known.input.space === input.space &&
    known.input.rules === input.rules &&
    known.input.design === input.design
  )
    return known.access;
  const access = makeAccess(input);
  knownAccess.set(input.fitout, { input, access });
  return access;
};

/**
 * The opening order of a design: which mover must stand where before which other one can travel, and for each item of
 * gear the shortest sequence of motions from the closed vehicle to hand. Every motion in it is proven for its whole
 * way; where no sequence is found, it says what was in the way and not that there is none.
 */
export const workOutOrder = (input: OrderInput): OpeningOrder => {
  const { lanes, reach } = accessOf(input);
  return { rows: orderRows(lanes), gear: input.design.gear.flatMap(({ id }) => reach(id) ?? []) };
};
