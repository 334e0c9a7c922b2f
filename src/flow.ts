import { boxUnion, type Result } from './base/index.ts';
import { type Solids, shapeBox } from './bodies/index.ts';
import { type Catalog, type HouseRules, houseRules } from './catalog/index.ts';
import type { Design } from './design/index.ts';
import { type Blocker, type CargoSpace, createCargoSpace, type LargestBox, largestBox } from './envelope/index.ts';
import { createFitOutSolver, type FitOut } from './fitout/index.ts';
import {
  type ArrangePlan,
  type ArrangeWishes,
  arrange,
  type CarryIn,
  findWaysOut,
  type Inspection,
  type InspectionInput,
  inspect,
  type OpeningOrder,
  type ProgramSolver,
  planCarryIn,
  workOutOrder,
} from './inspection/index.ts';

/**
 * From a design to everything that follows from it. Each stage remembers its last result and runs again only when
 * what it reads has changed by identity, which the edits of the design room keep for all that they do not touch.
 */
export interface Flow {
  readonly catalog: Catalog;
  readonly rules: (design: Design) => HouseRules;
  readonly fitOut: (design: Design) => FitOut;
  /** The cargo space, or what is wrong with the survey. Throws when the flow was made without the solid kernel. */
  readonly space: (design: Design) => Result<CargoSpace>;
  readonly inspection: (design: Design) => Inspection;
  /** The same with the carrying in of carcasses and mounts, which is searched for: seconds, for paper and terminal. */
  readonly wholeInspection: (design: Design) => Inspection;
  /** Without carrying in, and ways out for stops alone: what a person at the terminal is told at once. */
  readonly inspectionAtOnce: (design: Design) => Inspection;
  /** The whole inspection with ways out tried on copies; slower still, for when there is time. */
  readonly inspectionWithWaysOut: (design: Design) => Inspection;
  /** What must be closed before what opens, and how each item of gear comes to hand. */
  readonly openingOrder: (design: Design) => OpeningOrder;
  /** How every carcass is carried in; null without a cargo space. Takes seconds where no plain way leads in. */
  readonly carryIn: (design: Design) => CarryIn | null;
  /** The largest carcass for a spot, or what keeps it from there; null while there is no cargo space. Takes about a second. */
  readonly largestBox: (design: Design, spot: BoxSpot) => Result<LargestBox, Blocker | null> | null;
  /** Other arrangements of what is stowed, to choose from; takes seconds, and a solver of linear programs. */
  readonly arrangement: (design: Design, wishes: ArrangeWishes, solver: ProgramSolver) => ArrangePlan;
}

/** Where a carcass is to stand. */
export interface BoxSpot {
  /** [forward, left]. */
  readonly at: readonly [number, number];
  /** Height of its underside; the highest point of the floor when null. */
  readonly underside: number | null;
  /** A carcass of the design that makes room, since it is the one that is to grow. */
  readonly insteadOf: string | null;
}

/** The box around the panels of every carcass but one. */
const standingCarcasses = ({ bodies, carcasses }: FitOut, insteadOf: string | null) =>
  carcasses.flatMap(({ id }) => {
    const panels = bodies.flatMap((body) =>
      body.carcass === id && body.kind === 'panel' ? [shapeBox(body.shape)] : [],
    );
    return id === insteadOf || panels.length === 0 ? [] : [{ id, box: panels.reduce(boxUnion) }];
  });

/** Remembers the last answer for as long as every argument is the same object. */
const remembered = <Keys extends readonly unknown[], Value>(
  compute: (...keys: Keys) => Value,
): ((...keys: Keys) => Value) => {
  let last: { readonly keys: Keys; readonly value: Value } | null = null;
  return (...keys) => {
    if (last?.keys.every((key, i) => key === keys[i])) return last.value;
    const value = compute(...keys);
    last = { keys, value };
    return value;
  };
};

export interface FlowParts {
  readonly catalog: Catalog;
  /** The solid kernel; null on a page that only solves the cabinet and leaves the rest to its worker. */
  readonly solids: Solids | null;
}

export const createFlow = ({ catalog, solids }: FlowParts): Flow => {
  const rulesFor = remembered((changes: Design['houseRules']) => houseRules(catalog, changes));
  const rules = (design: Design): HouseRules => rulesFor(design.houseRules);
  const spaceFor = remembered((survey: Design['survey'], limits: HouseRules) => {
    if (!solids) throw new Error('this flow was made without the solid kernel and cannot make a cargo space');
    return createCargoSpace(survey, limits, solids);
  });
  const space = (design: Design): Result<CargoSpace> => spaceFor(design.survey, rules(design));
  const solver = createFitOutSolver(catalog);
  const fitOutFor = remembered((design: Design) => solver(design, rules(design)));
  const inputWith = (design: Design, fitout: FitOut): InspectionInput => {
    const made = space(design);
    return { design, space: made.ok ? made.value : null, fitout, catalog, rules: rules(design) };
  };
  const inspectWith = (design: Design, fitout: FitOut, carry: CarryIn | null = null): Inspection =>
    inspect({ ...inputWith(design, fitout), carry });
  const inspection = remembered((design: Design) => inspectWith(design, fitOutFor(design)));
  // Copies tried for ways out go through a solver of their own, so that they do not push the design's own out of memory.
  const trySolver = createFitOutSolver(catalog);
  const inspectCopy = (copy: Design): Inspection => inspectWith(copy, trySolver(copy, rules(copy)));
  // Of a copy only the plain ways in are tried.
  const inspectCarriedCopy = (copy: Design): Inspection => {
    const fitout = trySolver(copy, rules(copy));
    const { space: room, ...input } = inputWith(copy, fitout);
    return inspectWith(copy, fitout, room && planCarryIn({ ...input, space: room }, 0));
  };
  const carryIn = remembered((design: Design) => {
    const made = space(design);
    if (!made.ok) return null;
    return planCarryIn({ design, space: made.value, fitout: fitOutFor(design), catalog, rules: rules(design) });
  });
  const wholeInspection = remembered((design: Design) => inspectWith(design, fitOutFor(design), carryIn(design)));
  return {
    catalog,
    rules,
    fitOut: fitOutFor,
    space,
    inspection,
    openingOrder: remembered((design: Design) => workOutOrder(inputWith(design, fitOutFor(design)))),
    carryIn,
    wholeInspection,
    largestBox: (design, { at, underside, insteadOf }) => {
      const made = space(design);
      if (!made.ok) return null;
      return largestBox(made.value, design.survey, rules(design), {
        at,
        ...(underside === null ? {} : { underside }),
        carcasses: standingCarcasses(fitOutFor(design), insteadOf),
      });
    },
    arrangement: (design, wishes, solver) => {
      const inputFor = (copy: Design): InspectionInput => inputWith(copy, trySolver(copy, rules(copy)));
      return arrange(design, wishes, { solver, inputFor, inspectCopy });
    },
    inspectionAtOnce: remembered((design: Design) =>
      findWaysOut(inspection(design), design, (copy) => inspectCopy(copy), 'stops'),
    ),
    inspectionWithWaysOut: remembered((design: Design) =>
      findWaysOut(wholeInspection(design), design, (copy, carries) =>
        (carries ? inspectCarriedCopy : inspectCopy)(copy),
      ),
    ),
  };
};
