import {
  type Box,
  boxAround,
  boxCorners,
  groupBy,
  inverse,
  ORIGIN,
  placed,
  ROUNDING_SHARE,
  scale,
  turned,
  type Vec3,
} from '../../base/index.ts';
import { boxShape } from '../../bodies/index.ts';
import type { Catalog, HouseRules } from '../../catalog/index.ts';
import type { FitOut, SolvedCarcass } from '../../fitout/index.ts';
import { type Assembly, assembliesOf, isPiece, rankOf } from './assemblies.ts';
import { driverWay, type Joint, jointsOf, reachOf, screwPoints } from './joints.ts';
import { anyShare, type Block, blockOf, lumpOf } from './sweep.ts';
import { type Loose, type Move, orderOfMoves } from './take-apart.ts';
import { type Panel, woodOf } from './wood.ts';

type Hardware = FitOut['hardware'][number];
type Device = FitOut['devices'][number];

/** One joint that a step closes, with how many screws it takes and how many of them no driver reaches by then. */
export interface ClosedJoint {
  readonly joint: Joint;
  readonly screws: number;
  readonly outOfReach: number;
}

/** A screwed-on part that is easier to fix while its panel lies on the bench. */
export interface FixFirst {
  readonly why: string;
  readonly count: number;
}

/** One panel, or several that were joined before, going into its place. */
export interface PanelStep {
  readonly panels: readonly string[];
  /** Which way it travels into its place, in the vehicle's axes; null for the first and for what only goes in turned. */
  readonly into: Vec3 | null;
  /** False where no straight move was found that brings it in. */
  readonly found: boolean;
  readonly joints: readonly ClosedJoint[];
  /** Panels that would be in its way: they come later. */
  readonly before: readonly string[];
  readonly fixFirst: readonly FixFirst[];
  readonly devicesFirst: readonly string[];
}

export interface AssemblyStage {
  readonly assembly: Assembly;
  readonly steps: readonly PanelStep[];
  /** Hardware of the assembly that is not a fastener, edge band or slide: fixed when it stands. */
  readonly hardware: readonly Hardware[];
}

/** What happens once carcasses go into the vehicle, in order. */
export type VehicleStep =
  | { readonly kind: 'carcass'; readonly carcass: string; readonly anchors: number; readonly before: readonly string[] }
  | {
      readonly kind: 'fixed';
      readonly carcass: string;
      readonly hardware: readonly Hardware[];
      readonly devices: readonly Device[];
    }
  | { readonly kind: 'mover'; readonly carcass: string; readonly mover: string; readonly before: readonly string[] };

export interface AssemblyPlan {
  readonly stages: readonly AssemblyStage[];
  readonly vehicle: readonly VehicleStep[];
}

const AXIS_WAYS: readonly Vec3[] = [
  [1, 0, 0],
  [-1, 0, 0],
  [0, 1, 0],
  [0, -1, 0],
  [0, 0, 1],
  [0, 0, -1],
];

const sameWay = (a: Vec3, b: Vec3): boolean => a.every((value, i) => Math.abs(value - (b[i] ?? 0)) < ROUNDING_SHARE);

/** The vehicle's axes, and square to every panel that leans. */
const waysOf = (panels: readonly Panel[]): readonly Vec3[] => {
  const ways = [...AXIS_WAYS];
  for (const { pose } of panels)
    for (const way of [pose.turn[2], scale(pose.turn[2], -1)])
      if (!ways.some((known) => sameWay(known, way))) ways.push(way);
  return ways;
};

interface AccessRules {
  readonly firstMm: number;
  readonly pitchMm: number;
  readonly driverWide: number;
  readonly driverDeep: number;
}

const accessRules = (rules: HouseRules): AccessRules => ({
  firstMm: rules.value('screw-first'),
  pitchMm: rules.value('screw-pitch'),
  driverWide: rules.value('tool-access-diameter'),
  driverDeep: rules.value('tool-access-depth'),
});

/** The room that a driver takes behind a screw: square to the face, as wide and as deep as the house rules want. */
const driverRoom = (point: Vec3, way: Vec3, holder: Panel, { driverWide, driverDeep }: AccessRules): Block => {
  const [x, y] = holder.pose.turn;
  const half = driverWide / 2;
  const corners = [0, driverDeep].flatMap((deep) =>
    [-half, half].flatMap((a) =>
      [-half, half].map(
        (b): Vec3 =>
          [0, 1, 2].map(
            (i) => (point[i] ?? 0) + (way[i] ?? 0) * deep + (x[i] ?? 0) * a + (y[i] ?? 0) * b,
          ) as unknown as Vec3,
      ),
    ),
  );
  // Square holders stand on the axes; behind a leaning one the room around the driver is taken a little large.
  const box: Box = boxAround(corners);
  return { shape: boxShape(box), box, square: true };
};

interface Bench {
  readonly panelOf: (id: string) => Panel;
  readonly blocksOf: (id: string) => readonly Block[];
  readonly joints: readonly Joint[];
  readonly rules: AccessRules;
}

const benchOf = ({ panels }: Assembly, rules: AccessRules): Bench => {
  const byId = new Map(panels.map((panel) => [panel.id, panel]));
  const wood = new Map(panels.map((panel) => [panel.id, woodOf(panel).map(blockOf)]));
  return {
    panelOf: (id) => {
      const panel = byId.get(id);
      if (!panel) throw new Error(`no panel ${id}`);
      return panel;
    },
    blocksOf: (id) => wood.get(id) ?? [],
    joints: jointsOf(panels),
    rules,
  };
};

/** The joints between these and those, with the screws that no driver reaches while all of them are there. */
const closed = (
  { panelOf, blocksOf, joints, rules }: Bench,
  some: readonly string[],
  others: readonly string[],
): readonly ClosedJoint[] => {
  const [a, b] = [new Set(some), new Set(others)];
  return joints.flatMap((joint): readonly ClosedJoint[] => {
    const { holder, taken } = joint;
    if (!((a.has(holder) && b.has(taken)) || (b.has(holder) && a.has(taken)))) return [];
    const panel = panelOf(holder);
    const points = screwPoints(joint, panel, rules);
    const way = driverWay(joint, panel);
    const around = [...some, ...others].filter((id) => id !== holder && id !== taken).flatMap(blocksOf);
    const outOfReach = points.filter((point) => anyShare([driverRoom(point, way, panel, rules)], around)).length;
    return [{ joint, screws: points.length, outOfReach }];
  });
};

/** Blind holes of a panel for what is screwed to it, by what for. */
const fixFirstOf = (panels: readonly Panel[]): readonly FixFirst[] => {
  const holes = panels.flatMap(({ cuts }) =>
    cuts.flatMap((cut) => (cut.kind === 'hole' && cut.depth !== null ? [cut.why] : [])),
  );
  return [
    ...groupBy(
      holes.filter((why) => why.endsWith(' screw')),
      (why) => why,
    ),
  ].map(([why, all]) => ({
    why: why.slice(0, -' screw'.length),
    count: all.length,
  }));
};

/** Steps of putting together one assembly. Several panels that only go in together come as steps of their own first. */
const stageOf = (assembly: Assembly, fitOut: FitOut, catalog: Catalog, rules: AccessRules): AssemblyStage => {
  const bench = benchOf(assembly, rules);
  const ways = waysOf(assembly.panels);
  const reach = reachOf(assembly.panels);
  const movesOf = (panels: readonly Panel[]): readonly Move[] => {
    const things = panels.map(
      (panel): Loose => ({ id: panel.id, lump: lumpOf(bench.blocksOf(panel.id)), rank: rankOf(panel) }),
    );
    const reachable = (moving: readonly string[], rest: readonly string[]): boolean =>
      closed(bench, moving, rest).every(({ outOfReach }) => outOfReach === 0);
    return orderOfMoves(things, { ways, reach, reachable });
  };
  const stepsOf = (panels: readonly Panel[], placedBefore: readonly string[]): readonly PanelStep[] => {
    const there = [...placedBefore];
    return movesOf(panels).flatMap((move): readonly PanelStep[] => {
      const moving = move.ids.map(bench.panelOf);
      const inner = moving.length > 1 ? stepsOf(moving, []) : [];
      const step: PanelStep = {
        panels: move.ids,
        into: move.into,
        found: move.into !== null || there.length === 0,
        joints: closed(bench, move.ids, there),
        before: move.before,
        // Several that go in together were fitted out when each of them was laid down.
        fixFirst: moving.length > 1 ? [] : fixFirstOf(moving),
        devicesFirst:
          moving.length > 1
            ? []
            : fitOut.devices.flatMap(({ id, opening }) =>
                moving.some(({ role, origin }) => role === 'plate' && origin === opening) ? [id] : [],
              ),
      };
      there.push(...move.ids);
      return [...inner, step];
    });
  };
  return {
    assembly,
    steps: stepsOf(assembly.panels, []),
    hardware: fitOut.hardware.filter(
      (use) =>
        use.carcass === assembly.carcass && use.mover !== null && use.mover === assembly.mover && isPiece(use, catalog),
    ),
  };
};

const carcassBlock = ({ pose, size }: SolvedCarcass): Block => {
  const corners = boxCorners({ min: ORIGIN, max: size }).map((corner) => placed(pose, corner));
  return blockOf(boxShape(boxAround(corners)));
};

/** In through the hatch, then down to the floor. */
const INTO_VEHICLE: readonly Vec3[] = [
  [-1, 0, 0],
  [0, 0, 1],
];

const carcassSteps = (fitOut: FitOut): readonly Extract<VehicleStep, { kind: 'carcass' }>[] => {
  const things = fitOut.carcasses.map(
    (each, i): Loose => ({ id: each.id, lump: lumpOf([carcassBlock(each)]), rank: i }),
  );
  const reach = fitOut.carcasses.reduce((sum, { size }) => sum + Math.max(...size), 0) * 2;
  return orderOfMoves(things, { ways: INTO_VEHICLE, reach, reachable: () => true }).flatMap(({ ids, before }) =>
    ids.map((carcass) => ({
      kind: 'carcass' as const,
      carcass,
      anchors: fitOut.anchors.filter((anchor) => anchor.carcass === carcass).length,
      before,
    })),
  );
};

/** Everything in front first: whatever a mover would meet on its way out of the face goes in after it. */
const moverSteps = (fitOut: FitOut, carcass: SolvedCarcass): readonly VehicleStep[] => {
  const own = fitOut.movers.filter(({ id }) =>
    fitOut.bodies.some((body) => body.mover === id && body.carcass === carcass.id),
  );
  const out = turned(carcass.pose, [0, -1, 0]);
  const slides = own.flatMap(({ motion }) => (motion.kind === 'slide' ? [motion.direction] : []));
  const ways = [
    out,
    ...slides.filter((way, i) => !sameWay(way, out) && slides.findIndex((other) => sameWay(way, other)) === i),
  ];
  const depthOf = new Map(own.map(({ id }) => [id, 0]));
  // What is carried by another goes in after it.
  for (const mover of own) {
    let steps = 0;
    for (let at = mover.carriedBy; at !== null && steps < own.length; steps++)
      at = own.find(({ id }) => id === at)?.carriedBy ?? null;
    depthOf.set(mover.id, steps);
  }
  const byDepth = groupBy(own, ({ id }) => depthOf.get(id) ?? 0);
  return [...byDepth.keys()]
    .sort((a, b) => a - b)
    .flatMap((depth) => {
      const things = (byDepth.get(depth) ?? []).map(({ id }, i): Loose => {
        const bodies = fitOut.bodies.filter(
          ({ mover, kind }) => mover === id && kind !== 'gear' && kind !== 'plug-room',
        );
        return { id, lump: lumpOf(bodies.map(({ shape }) => blockOf(shape))), rank: i };
      });
      const moves = orderOfMoves(things, { ways, reach: 2 * Math.max(...carcass.size), reachable: () => true });
      return moves.flatMap(({ ids, before }) =>
        ids.map((mover): VehicleStep => ({ kind: 'mover', carcass: carcass.id, mover, before })),
      );
    });
};

const fixedStep = (fitOut: FitOut, catalog: Catalog, carcass: string): readonly VehicleStep[] => {
  const plates = new Set(fitOut.panels.flatMap(({ role, origin }) => (role === 'plate' ? [origin] : [])));
  const anchors = new Set<string>(fitOut.anchors.map(({ id }) => id));
  const hardware = fitOut.hardware.filter(
    (use) => use.carcass === carcass && use.mover === null && isPiece(use, catalog) && !anchors.has(use.origin),
  );
  const inCarcass = new Set(fitOut.openings.flatMap(({ id, carcass: own }) => (own === carcass ? [id] : [])));
  const devices = fitOut.devices.filter(
    ({ opening, mover }) => mover === null && opening !== null && inCarcass.has(opening) && !plates.has(opening),
  );
  return hardware.length + devices.length === 0 ? [] : [{ kind: 'fixed', carcass, hardware, devices }];
};

/**
 * How the cabinet goes together: what moves is built first, each on the bench, then each carcass; carcasses go into the
 * vehicle, are bolted down while nothing stands in the way of the bolts, get what is fixed in them and last what moves.
 */
export const assemblyPlan = (fitOut: FitOut, catalog: Catalog, rules: HouseRules): AssemblyPlan => {
  const access = accessRules(rules);
  const assemblies = assembliesOf(fitOut);
  const order = fitOut.carcasses.flatMap(({ id }) => [
    ...assemblies.filter(({ carcass, mover }) => carcass === id && mover !== null),
    ...assemblies.filter(({ carcass, mover }) => carcass === id && mover === null),
  ]);
  const byId = new Map(fitOut.carcasses.map((carcass) => [carcass.id as string, carcass]));
  const standing = carcassSteps(fitOut);
  return {
    stages: order.map((assembly) => stageOf(assembly, fitOut, catalog, access)),
    vehicle: standing.flatMap((step): readonly VehicleStep[] => {
      const carcass = byId.get(step.carcass);
      return [step, ...fixedStep(fitOut, catalog, step.carcass), ...(carcass ? moverSteps(fitOut, carcass) : [])];
    }),
  };
};

/** A direction of the vehicle as seen by who stands before the open face of a carcass: across, deep, up. */
export const fromFace = ({ pose }: SolvedCarcass, way: Vec3): Vec3 => turned(inverse({ ...pose, at: ORIGIN }), way);
