import {
  add,
  type Box,
  boxAt,
  cross,
  distance,
  middle,
  ROUNDING_MM,
  scale,
  subtract,
  unit,
  type Vec3,
} from '../base/index.ts';
import { convexHull } from '../bodies/index.ts';
import type { Catalog, Hardware, HouseRules } from '../catalog/index.ts';
import type { Brace, Carcass } from '../design/index.ts';
import { type Axis, withAxis } from './axes.ts';
import { vehicleSize } from './frames.ts';
import type { Body, FitProblem, HardwareUse, MassItem } from './parts.ts';
import { badJoint, mmWords } from './problem.ts';
import { PIECES } from './standard-pieces.ts';
import { unknown } from './stock.ts';

export interface BraceParts {
  readonly bodies: readonly Body[];
  readonly masses: readonly MassItem[];
  readonly hardware: readonly HardwareUse[];
  readonly problems: readonly FitProblem[];
}

const MM_PER_METRE = 1000;
const BOLTS_AT_AN_END = 2;
const NO_BRACE: BraceParts = { bodies: [], masses: [], hardware: [], problems: [] };

/** The vehicle axis that each face looks along, and which way. */
const LOOKS: { readonly [F in Brace['lies']]: { readonly axis: Axis; readonly sign: 1 | -1 } } = {
  top: { axis: 2, sign: 1 },
  rear: { axis: 0, sign: -1 },
  front: { axis: 0, sign: 1 },
  left: { axis: 1, sign: 1 },
  right: { axis: 1, sign: -1 },
};

/** What the solver of braces looks at beside the braces. */
export interface BraceGround {
  readonly catalog: Catalog;
  readonly rules: HouseRules;
  readonly carcasses: readonly Carcass[];
  /** Low corner of each carcass on the vehicle's axes. */
  readonly lows: ReadonlyMap<string, Vec3>;
}

interface End {
  readonly name: string;
  readonly box: Box;
  /** On the face of the carcass, in the vehicle. */
  readonly at: Vec3;
}

const endOf = ({ carcass, at }: Brace['from'], lies: Brace['lies'], { carcasses, lows }: BraceGround): End | null => {
  const own = carcasses.find(({ id }) => id === carcass);
  const low = lows.get(carcass);
  if (!own || !low) return null;
  const box = boxAt(low, vehicleSize(own));
  const { axis, sign } = LOOKS[lies];
  return { name: own.name, box, at: withAxis(add(low, at), axis, (sign > 0 ? box.max : box.min)[axis]) };
};

/** How far a point on a face lies outside the carcass that it should be on. */
const outside = ({ box, at }: End): number =>
  Math.max(...([0, 1, 2] as const).map((axis) => Math.max(box.min[axis] - at[axis], at[axis] - box.max[axis])));

const misfits = (brace: Brace, [from, to]: readonly [End, End], { rules }: BraceGround): readonly FitProblem[] => {
  const { axis } = LOOKS[brace.lies];
  const flush = rules.value('brace-flush');
  const apart = Math.abs(from.at[axis] - to.at[axis]);
  return [
    ...[from, to].flatMap((end) => {
      const by = outside(end);
      return by > ROUNDING_MM ? [badJoint(brace.id, [`an end of the brace lies ${mmWords(by)} off ${end.name}`])] : [];
    }),
    ...(apart > flush ? [badJoint(brace.id, ['the faces that the brace lies on are not flush'], flush, apart)] : []),
  ];
};

/** The bar as a solid: as wide and as thick as its stock, flat on the faces, beyond its outer bolts at both ends. */
const barShape = (record: Hardware, lies: Brace['lies'], from: Vec3, to: Vec3, beyond: number) => {
  const { axis, sign } = LOOKS[lies];
  const along = unit(subtract(to, from));
  const out = withAxis([0, 0, 0], axis, sign);
  const [, wide = 0, thick = 0] = record.sizeMm ?? [];
  const aside = scale(cross(out, along), wide / 2);
  const ends = [add(from, scale(along, -beyond)), add(to, scale(along, beyond))];
  const corners = ends.flatMap((end) => [add(end, aside), subtract(end, aside)]);
  return convexHull([...corners, ...corners.map((corner) => add(corner, scale(out, thick)))]);
};

const braceParts = (brace: Brace, ground: BraceGround): BraceParts => {
  const { id, lies, item } = brace;
  const { catalog, rules } = ground;
  const refused = (problem: FitProblem): BraceParts => ({ ...NO_BRACE, problems: [problem] });
  const record = catalog.hardware.get(item);
  if (!record) return refused(unknown('unknown-hardware', id, item));
  const [from, to] = [endOf(brace.from, lies, ground), endOf(brace.to, lies, ground)];
  if (!from || !to || brace.from.carcass === brace.to.carcass)
    return refused(badJoint(id, ['a brace joins two carcasses']));
  const { axis } = LOOKS[lies];
  // Flat on the face that stands out further; the other is told where it is not flush.
  const flat = LOOKS[lies].sign * Math.max(LOOKS[lies].sign * from.at[axis], LOOKS[lies].sign * to.at[axis]);
  const [a, b] = [withAxis(from.at, axis, flat), withAxis(to.at, axis, flat)];
  if (distance(a, b) <= ROUNDING_MM) return refused(badJoint(id, ['both ends of the brace are in one place']));
  const beyond = rules.value('brace-end');
  const metres = (distance(a, b) + 2 * beyond) / MM_PER_METRE;
  const massKg = record.massKg * metres;
  const at = middle(a, b);
  const name = brace.name === '' ? 'brace' : brace.name;
  const common = { id, origin: id, carcass: null, name, mover: null };
  const bolts = catalog.hardware.get(PIECES.clamp);
  return {
    bodies: [{ ...common, kind: 'hardware', shape: barShape(record, lies, a, b, beyond) }],
    masses: [{ ...common, kind: 'hardware', massKg, sigmaKg: massKg * rules.value('hardware-mass-sigma-share'), at }],
    hardware: [
      { ...common, from: 'hardware', item: record.id, name: record.name, quantity: metres, lengthMm: null, at },
      ...(bolts
        ? [
            {
              ...common,
              id: `${id}/bolts`,
              from: 'hardware' as const,
              item: bolts.id,
              name: bolts.name,
              quantity: 2 * BOLTS_AT_AN_END,
              lengthMm: null,
              at,
            },
          ]
        : []),
    ],
    problems: misfits(brace, [from, to], ground),
  };
};

/**
 * Bars between carcasses. They count as weight and take room; no load is reckoned to pass through them. Their holes
 * are drilled once both carcasses stand, so no panel has them.
 */
export const solveBraces = (braces: readonly Brace[], ground: BraceGround): BraceParts => {
  const parts = braces.map((brace) => braceParts(brace, ground));
  return {
    bodies: parts.flatMap(({ bodies }) => bodies),
    masses: parts.flatMap(({ masses }) => masses),
    hardware: parts.flatMap(({ hardware }) => hardware),
    problems: parts.flatMap(({ problems }) => problems),
  };
};
