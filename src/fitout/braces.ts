import { add, boxAround, cross, distance, middle, ROUNDING_MM, scale, subtract, type Vec3 } from '../base/index.ts';
import { boxShape, convexHull } from '../bodies/index.ts';
import { AXES, type Axis, withAxis } from './axes.ts';
import { type BraceFixings, barThickness, boltBrace } from './brace-bolts.ts';
import { type BraceEnd, type BraceGround, type BraceLay, isLaid, type layBrace } from './brace-lay.ts';
import { boltLengthMm } from './hardware.ts';
import type { Body, FitProblem, HardwareUse, MassItem, Panel, PlacedBrace } from './parts.ts';
import { badJoint, mmWords } from './problem.ts';

export interface BraceParts {
  readonly braces: readonly PlacedBrace[];
  readonly bodies: readonly Body[];
  readonly masses: readonly MassItem[];
  readonly hardware: readonly HardwareUse[];
  readonly problems: readonly FitProblem[];
}

const MM_PER_METRE = 1000;
const NO_BRACE: BraceParts = { braces: [], bodies: [], masses: [], hardware: [], problems: [] };

/** How far a point on a face lies outside the carcass that it should be on. */
const outside = ({ box, at }: BraceEnd): number =>
  Math.max(...AXES.map((axis) => Math.max(box.min[axis] - at[axis], at[axis] - box.max[axis])));

const misfits = ({ brace, ends, axis }: BraceLay, { rules }: BraceGround): readonly FitProblem[] => {
  const [from, to] = ends;
  const flush = rules.value('brace-flush');
  const apart = Math.abs(from.at[axis] - to.at[axis]);
  return [
    ...ends.flatMap((end) => {
      const by = outside(end);
      return by > ROUNDING_MM
        ? [badJoint(brace.id, [`an end of the brace lies ${mmWords(by)} off ${end.carcass.name}`])]
        : [];
    }),
    ...(apart > flush ? [badJoint(brace.id, ['the faces that the brace lies on are not flush'], flush, apart)] : []),
  ];
};

/** The bar as a solid: as wide and as thick as its stock, flat on the faces, beyond its outer bolts at both ends. */
const barShape = ({ record, a, b, along, out }: BraceLay, beyond: number) => {
  const [, wide = 0, thick = 0] = record.sizeMm ?? [];
  const aside = scale(cross(out, along), wide / 2);
  const ends = [add(a, scale(along, -beyond)), add(b, scale(along, beyond))];
  const corners = ends.flatMap((end) => [add(end, aside), subtract(end, aside)]);
  return convexHull([...corners, ...corners.map((corner) => add(corner, scale(out, thick)))]);
};

/** A square block on a face: `wide` across, from one height to the other along `way`. */
const blockOn = (at: Vec3, way: Vec3, axis: Axis, wide: number, from: number, to: number) => {
  const half = AXES.reduce<Vec3>((v, each) => (each === axis ? v : withAxis(v, each, wide / 2)), [0, 0, 0]);
  const [low, high] = [add(at, scale(way, from)), add(at, scale(way, to))];
  return boxShape(boxAround([subtract(low, half), add(low, half), subtract(high, half), add(high, half)]));
};

/** Heads on the bar, washers with nuts and bolt ends in the carcasses. */
const fixingBodies = (
  { record, axis, out }: BraceLay,
  { bolts }: Pick<PlacedBrace, 'bolts'>,
  { bolt, washer, nut }: BraceFixings,
  common: Omit<Body, 'id' | 'kind' | 'shape'>,
): readonly Body[] => {
  const thick = barThickness(record);
  const [long, headWide] = bolt.sizeMm ?? [0, 0];
  const head = long - boltLengthMm(bolt);
  const [washerWide, , washerThick] = washer.sizeMm ?? [0, 0, 0];
  const [nutWide] = nut.sizeMm ?? [0];
  return bolts.flatMap(({ id, at, into, gripMm }): readonly Body[] => {
    const end = boltLengthMm(bolt) - thick;
    const piece = (what: string, shape: Body['shape']): Body => ({
      ...common,
      id: `${id}/${what}`,
      kind: 'hardware',
      shape,
    });
    return [
      piece('head', blockOn(at, out, axis, headWide, thick, thick + head)),
      piece('washer', blockOn(at, into, axis, washerWide, gripMm, gripMm + washerThick)),
      piece('nut', blockOn(at, into, axis, nutWide, gripMm + washerThick, end)),
    ];
  });
};

const braceParts = (lay: BraceLay, ground: BraceGround, panels: ReadonlyMap<string, Panel>): BraceParts => {
  const { brace, record, a, b, along, holeMm, ends } = lay;
  const { catalog, rules } = ground;
  const { id } = brace;
  const beyond = rules.value('brace-end');
  const lengthMm = distance(a, b) + 2 * beyond;
  const at = middle(a, b);
  const name = brace.name === '' ? 'brace' : brace.name;
  const common = { origin: id, carcass: null, mover: null } as const;
  const bolted = boltBrace(lay, panels, catalog, rules);
  const apart = misfits(lay, ground);
  // A bar that does not lie on both carcasses is told alone: what its bolts meet follows from it.
  const problems = apart.length > 0 ? apart : bolted.problems;
  const { fixings, bolts } = bolted;
  const pieces = [
    { id, name, record, quantity: lengthMm / MM_PER_METRE },
    ...(fixings
      ? [
          { id: `${id}/bolts`, name: fixings.bolt.name, record: fixings.bolt, quantity: lay.bolts.length },
          { id: `${id}/washers`, name: fixings.washer.name, record: fixings.washer, quantity: lay.bolts.length },
          { id: `${id}/nuts`, name: fixings.nut.name, record: fixings.nut, quantity: lay.bolts.length },
        ]
      : []),
  ];
  const placedBrace: PlacedBrace = {
    id,
    name,
    item: record.id,
    carcasses: [ends[0].carcass.id, ends[1].carcass.id],
    at,
    along,
    lengthMm,
    holeMm,
    holesMm: lay.bolts.map((bolt) => distance(withAxis(bolt.at, lay.axis, a[lay.axis]), a) + beyond),
    bolts,
    bolt: fixings?.bolt.id ?? null,
    washer: fixings?.washer.id ?? null,
    nut: fixings?.nut.id ?? null,
    sound: problems.length === 0,
  };
  return {
    braces: [placedBrace],
    bodies: [
      { ...common, id, name, kind: 'hardware', shape: barShape(lay, beyond) },
      ...(fixings ? fixingBodies(lay, { bolts }, fixings, { ...common, name: fixings.bolt.name }) : []),
    ],
    masses: pieces.map((piece): MassItem => {
      const massKg = piece.record.massKg * piece.quantity;
      const sigmaKg = massKg * rules.value('hardware-mass-sigma-share');
      return { ...common, id: piece.id, kind: 'hardware', name: piece.name, massKg, sigmaKg, at };
    }),
    hardware: pieces.map(
      (piece): HardwareUse => ({
        ...common,
        id: piece.id,
        from: 'hardware',
        item: piece.record.id,
        name: piece.record.name,
        quantity: piece.quantity,
        lengthMm: null,
        at,
      }),
    ),
    problems,
  };
};

/**
 * Bars between carcasses with their bolts, washers and nuts: they weigh and take room. Their holes in the panels were
 * wished for when the carcasses were solved (`braceHoles`); here it shows whether the panels can hold the bolts.
 */
export const solveBraces = (
  lays: readonly ReturnType<typeof layBrace>[],
  ground: BraceGround,
  made: readonly Panel[],
): BraceParts => {
  const panels = new Map(made.map((panel) => [panel.id, panel]));
  const parts = lays.map((lay) => (isLaid(lay) ? braceParts(lay, ground, panels) : { ...NO_BRACE, problems: [lay] }));
  return {
    braces: parts.flatMap(({ braces }) => braces),
    bodies: parts.flatMap(({ bodies }) => bodies),
    masses: parts.flatMap(({ masses }) => masses),
    hardware: parts.flatMap(({ hardware }) => hardware),
    problems: parts.flatMap(({ problems }) => problems),
  };
};
