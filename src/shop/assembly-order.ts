import type { Vec3 } from '../base/index.ts';
import type { Catalog, HouseRules } from '../catalog/index.ts';
import type { FitOut } from '../fitout/index.ts';
import { sayCarcassIn, sayDiagonals, sayFixed, sayMoverIn, saySteps } from '../says/index.ts';
import { type AssemblyStage, assemblyPlan, fromFace, type PanelStep, type VehicleStep } from './assembly/index.ts';
import type { OrderStep } from './drawing/order-sheets.ts';
import type { Marks } from './marks.ts';
import { counted, type NameOf } from './places.ts';

export interface AssemblyOrderInput {
  readonly fitout: FitOut;
  readonly catalog: Catalog;
  readonly rules: HouseRules;
  readonly marks: Marks;
  readonly names: NameOf;
}

const distinct = (words: readonly string[]): readonly string[] => [...new Set(words)];

/** What is screwed to a panel: its name in the catalog, by the id that the holes carry. */
const pieceName = (id: string, { catalog }: AssemblyOrderInput): string =>
  catalog.slides.get(id)?.name ?? catalog.hardware.get(id)?.name ?? id;

const deviceName = (id: string, { fitout, catalog }: AssemblyOrderInput): string => {
  const device = fitout.devices.find((each) => each.id === id)?.device ?? id;
  return catalog.devices.get(device)?.name ?? device;
};

/** The steps of one assembly, the panels named by their marks. */
const stageSteps = (stage: AssemblyStage, input: AssemblyOrderInput): readonly OrderStep[] => {
  const { assembly, steps, hardware } = stage;
  const { fitout, marks, names, rules } = input;
  const carcass = fitout.carcasses.find(({ id }) => id === assembly.carcass) ?? null;
  const byId = new Map(assembly.panels.map((panel) => [panel.id, panel]));
  const panelsOf = (ids: readonly string[]) => ids.flatMap((id) => byId.get(id) ?? []);
  const marked = (ids: readonly string[]): readonly string[] => distinct(ids.map((id) => marks.markOf.get(id) ?? id));
  const title = names(assembly.id);
  const there: string[] = [];
  const said = steps.map((step: PanelStep, i): OrderStep => {
    const way: Vec3 | null = step.into === null || carcass === null ? null : fromFace(carcass, step.into);
    // What was put together by itself stands for itself in its own pictures.
    const inner = steps.some(
      (later, k) => k > i && later.panels.length > 1 && step.panels.every((id) => later.panels.includes(id)),
    );
    const lines = saySteps({
      marks: marked(step.panels),
      names: distinct(panelsOf(step.panels).map(({ name }) => name)),
      way,
      found: step.found,
      joints: step.joints.map(({ joint, screws, outOfReach }) => ({
        kind: joint.kind,
        with: marked([step.panels.includes(joint.taken) ? joint.holder : joint.taken])[0] ?? '',
        screws,
        outOfReach,
      })),
      before: marked(step.before),
      fixFirst: step.fixFirst.map(({ why, count }) => ({ name: pieceName(why, input), count })),
      devicesFirst: [counted(step.devicesFirst.map((id) => deviceName(id, input)))].filter((words) => words !== ''),
    });
    const shown: OrderStep = {
      title,
      lines:
        i === steps.length - 1 && assembly.mover === null
          ? [...lines, sayDiagonals(rules.value('diagonal-error'))]
          : lines,
      carcass,
      there: inner ? [] : panelsOf(there),
      coming: panelsOf(step.panels),
      into: step.into,
      names: new Map(step.panels.map((id) => [id, marks.markOf.get(id) ?? id])),
    };
    there.push(...step.panels);
    return shown;
  });
  if (hardware.length === 0) return said;
  const pieces = counted(hardware.map(({ name }) => name)).split('; ');
  return [
    ...said,
    { title, lines: [sayFixed(title, pieces)], carcass: null, there: [], coming: [], into: null, names: new Map() },
  ];
};

const vehicleLines = (step: VehicleStep, input: AssemblyOrderInput): readonly string[] => {
  const { names } = input;
  switch (step.kind) {
    case 'carcass':
      return [sayCarcassIn(names(step.carcass), step.anchors, step.before.map(names))];
    case 'fixed': {
      const pieces = [...step.hardware.map(({ name }) => name), ...step.devices.map(({ id }) => deviceName(id, input))];
      return [sayFixed(names(step.carcass), counted(pieces).split('; '))];
    }
    case 'mover':
      return [sayMoverIn(names(step.mover), step.before.map(names))];
  }
};

/** What stands and what comes in the picture of a step in the vehicle: the panels of the carcass, and those that move. */
const vehicleStep = (step: VehicleStep, movedIn: ReadonlySet<string>, input: AssemblyOrderInput): OrderStep => {
  const { fitout, names } = input;
  const own = fitout.panels.filter(({ carcass }) => carcass === step.carcass);
  const mover = step.kind === 'mover' ? step.mover : null;
  const coming =
    step.kind === 'mover'
      ? own.filter((panel) => panel.mover === mover)
      : step.kind === 'carcass'
        ? own.filter((panel) => panel.mover === null)
        : [];
  const carcass = fitout.carcasses.find(({ id }) => id === step.carcass) ?? null;
  const motion = fitout.movers.find(({ id }) => id === mover)?.motion;
  const out = motion?.kind === 'slide' ? motion.direction : null;
  const face = carcass?.pose.turn[1] ?? null;
  return {
    title: `in the vehicle: ${names(step.carcass)}`,
    lines: vehicleLines(step, input),
    carcass,
    there: step.kind === 'mover' ? own.filter((panel) => panel.mover === null || movedIn.has(panel.mover)) : [],
    coming,
    into: step.kind !== 'mover' ? null : out === null ? face : [-out[0], -out[1], -out[2]],
    names: new Map(),
  };
};

/** The whole order as numbered steps for paper and screen. */
export const assemblyOrder = (input: AssemblyOrderInput): readonly OrderStep[] => {
  const plan = assemblyPlan(input.fitout, input.catalog, input.rules);
  const movedIn = new Set<string>();
  return [
    ...plan.stages.flatMap((stage) => stageSteps(stage, input)),
    ...plan.vehicle.map((step) => {
      const shown = vehicleStep(step, movedIn, input);
      if (step.kind === 'mover') movedIn.add(step.mover);
      return shown;
    }),
  ];
};
