import {
  add,
  type Box,
  boxAt,
  distance,
  inverse,
  placed,
  ROUNDING_MM,
  scale,
  subtract,
  turned,
  unit,
  type Vec3,
} from '../base/index.ts';
import type { Catalog, Hardware, HouseRules } from '../catalog/index.ts';
import type { Brace, Carcass, NodeId } from '../design/index.ts';
import { ACROSS, type Axis, DEEP, UP, withAxis } from './axes.ts';
import type { HoleWish } from './board.ts';
import { carcassPose, vehicleSize } from './frames.ts';
import type { FitProblem, PartId } from './parts.ts';
import { badJoint } from './problem.ts';
import { PIECES } from './standard-pieces.ts';
import { unknown } from './stock.ts';

/** The vehicle axis that each face looks along, and which way. */
const LOOKS: { readonly [F in Brace['lies']]: { readonly axis: Axis; readonly sign: 1 | -1 } } = {
  top: { axis: 2, sign: 1 },
  rear: { axis: 0, sign: -1 },
  front: { axis: 0, sign: 1 },
  left: { axis: 1, sign: 1 },
  right: { axis: 1, sign: -1 },
};

/** What laying out braces looks at beside the braces. */
export interface BraceGround {
  readonly catalog: Catalog;
  readonly rules: HouseRules;
  readonly carcasses: readonly Carcass[];
  /** Low corner of each carcass on the vehicle's axes. */
  readonly lows: ReadonlyMap<string, Vec3>;
}

/** One end of a brace: the carcass that it is bolted to. */
export interface BraceEnd {
  readonly carcass: Carcass;
  readonly box: Box;
  /** Its outermost bolt, on the face of the carcass, in the vehicle. */
  readonly at: Vec3;
}

/** A bolt of a brace before the panel that it goes through is made. */
export interface LaidBolt {
  readonly id: PartId;
  readonly carcass: NodeId;
  readonly name: string;
  /** The panel under it; null on the open face. */
  readonly panel: PartId | null;
  /** On the face of the carcass, in the vehicle. */
  readonly at: Vec3;
}

/** Where a brace lies and where its bolts are, in the vehicle. */
export interface BraceLay {
  readonly brace: Brace;
  readonly record: Hardware;
  readonly ends: readonly [BraceEnd, BraceEnd];
  /** Outermost bolts on the face that stands out further. */
  readonly a: Vec3;
  readonly b: Vec3;
  readonly along: Vec3;
  readonly axis: Axis;
  /** Out of the carcasses, of length 1. */
  readonly out: Vec3;
  readonly holeMm: number;
  readonly bolts: readonly LaidBolt[];
}

const endOf = (
  { carcass, at }: Brace['from'],
  lies: Brace['lies'],
  { carcasses, lows }: BraceGround,
): BraceEnd | null => {
  const own = carcasses.find(({ id }) => id === carcass);
  const low = lows.get(carcass);
  if (!own || !low) return null;
  const box = boxAt(low, vehicleSize(own));
  const { axis, sign } = LOOKS[lies];
  return { carcass: own, box, at: withAxis(add(low, at), axis, (sign > 0 ? box.max : box.min)[axis]) };
};

/** The panel of a carcass that looks along a direction of its own axes; none does out of the open face. */
const roleAt = (own: Vec3): string | null => {
  if (Math.abs(own[ACROSS]) > 0.5) return own[ACROSS] > 0 ? 'side-right' : 'side-left';
  if (Math.abs(own[DEEP]) > 0.5) return own[DEEP] > 0 ? 'back' : null;
  return own[UP] > 0 ? 'top' : 'bottom';
};

const panelUnder = (carcass: Carcass, low: Vec3, out: Vec3): PartId | null => {
  const role = roleAt(turned(inverse(carcassPose(carcass, low)), out));
  return role === null ? null : `${carcass.id}/${role}`;
};

/**
 * Where a brace lies: from the outermost bolt of one end to that of the other, the other bolts of an end
 * `brace-bolt-pitch` further along the bar. Or why it joins nothing.
 */
export const layBrace = (brace: Brace, ground: BraceGround): BraceLay | FitProblem => {
  const { id, lies, item } = brace;
  const { catalog, rules } = ground;
  const record = catalog.hardware.get(item);
  if (!record) return unknown('unknown-hardware', id, item);
  const [from, to] = [endOf(brace.from, lies, ground), endOf(brace.to, lies, ground)];
  if (!from || !to || brace.from.carcass === brace.to.carcass) return badJoint(id, ['a brace joins two carcasses']);
  const { axis, sign } = LOOKS[lies];
  // Flat on the face that stands out further; the other is told where it is not flush.
  const flat = sign * Math.max(sign * from.at[axis], sign * to.at[axis]);
  const [a, b] = [withAxis(from.at, axis, flat), withAxis(to.at, axis, flat)];
  if (distance(a, b) <= ROUNDING_MM) return badJoint(id, ['both ends of the brace are in one place']);
  const along = unit(subtract(b, a));
  const out = withAxis([0, 0, 0], axis, sign);
  const [count, pitch] = [rules.value('brace-bolts'), rules.value('brace-bolt-pitch')];
  const boltsAt = ({ carcass, box, at }: BraceEnd, inward: Vec3, first: number): readonly LaidBolt[] =>
    Array.from({ length: count }, (_, i) => ({
      id: `${id}/bolt-${first + i}`,
      carcass: carcass.id,
      name: carcass.name === '' ? carcass.id : carcass.name,
      panel: panelUnder(carcass, box.min, out),
      at: withAxis(add(at, scale(inward, i * pitch)), axis, at[axis]),
    }));
  return {
    brace,
    record,
    ends: [from, to],
    a,
    b,
    along,
    axis,
    out,
    holeMm: (catalog.hardware.get(PIECES.brace)?.threadMm ?? 0) + rules.value('brace-hole-spare'),
    bolts: [...boltsAt(from, along, 1), ...boltsAt(to, scale(along, -1), 1 + count)],
  };
};

export const isLaid = (lay: BraceLay | FitProblem): lay is BraceLay => 'bolts' in lay;

/** The holes of braces in the panels of one carcass whose low corner is at `low`, in its own coordinates. */
export const braceHoles = (lays: readonly BraceLay[], carcass: Carcass, low: Vec3): readonly HoleWish[] => {
  const back = inverse(carcassPose(carcass, low));
  return lays.flatMap(({ bolts, holeMm }) =>
    bolts.flatMap(({ carcass: own, panel, at }): readonly HoleWish[] =>
      own !== carcass.id || panel === null
        ? []
        : [{ board: panel, at: placed(back, at), diameter: holeMm, depth: null, why: 'brace' }],
    ),
  );
};
