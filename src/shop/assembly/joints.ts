import {
  boxSize,
  compareText,
  dot,
  inverse,
  placed,
  ROUNDING_MM,
  ROUNDING_SHARE,
  sameLength,
  turned,
  type Vec2,
  type Vec3,
} from '../../base/index.ts';
import { shapeBox } from '../../bodies/index.ts';
import type { PanelFace } from '../../fitout/index.ts';
import { type Panel, prismsOf } from './wood.ts';

/** One panel's end at another's face: what screws or a groove hold together. */
export interface Joint {
  /** The panel whose face the other stands at. */
  readonly holder: string;
  readonly taken: string;
  /** A groove holds by itself; the others are screwed through the holder. What is laid on lies flat against its face. */
  readonly kind: 'dado' | 'groove' | 'rabbet' | 'butt' | 'laid';
  /** The face of the holder that the other stands at. */
  readonly face: PanelFace;
  /** The line of the joint on the holder, in its panel coordinates. */
  readonly from: Vec2;
  readonly to: Vec2;
}

type Recess = Extract<Panel['cuts'][number], { takes: string | null }>;

/** The middle line of a recess along its longer side. */
const lineOf = ({ from, to }: Pick<Recess, 'from' | 'to'>): readonly [Vec2, Vec2] => {
  const middle: Vec2 = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  return to[0] - from[0] > to[1] - from[1]
    ? [
        [from[0], middle[1]],
        [to[0], middle[1]],
      ]
    : [
        [middle[0], from[1]],
        [middle[0], to[1]],
      ];
};

const recessJoints = (holder: Panel, ids: ReadonlySet<string>): readonly Joint[] =>
  holder.cuts.flatMap((cut): readonly Joint[] => {
    if (cut.kind === 'hole' || cut.kind === 'cutout' || cut.kind === 'pocket') return [];
    if (cut.takes === null || !ids.has(cut.takes)) return [];
    const [from, to] = lineOf(cut);
    return [{ holder: holder.id, taken: cut.takes, kind: cut.kind, face: cut.face, from, to }];
  });

/** A panel with the corners of its outside, which every pair asks for. */
interface Cornered {
  readonly panel: Panel;
  readonly corners: readonly Vec3[];
}

const lean = (a: Panel, b: Panel): number => Math.abs(dot(a.pose.turn[2], b.pose.turn[2]));
const SQUARE = 0.5;
const PARALLEL = 1 - ROUNDING_SHARE;

/** Where `taken` stands with an end, or lies with a face, flat against a face of `holder`, nothing recessed. */
const flushJoint = (holder: Panel, taken: Cornered): Joint | null => {
  const leans = lean(holder, taken.panel);
  if (leans >= SQUARE && leans < PARALLEL) return null;
  const back = inverse(holder.pose);
  const corners = taken.corners.map((corner) => placed(back, corner));
  const zs = corners.map(([, , z]) => z);
  const face = sameLength(Math.min(...zs), holder.thickness) ? 'a' : sameLength(Math.max(...zs), 0) ? 'b' : null;
  if (face === null) return null;
  const end = face === 'a' ? holder.thickness : 0;
  const at = corners.filter(([, , z]) => Math.abs(z - end) <= ROUNDING_MM);
  const range = (axis: 0 | 1, most: number): Vec2 => [
    Math.max(0, Math.min(...at.map((corner) => corner[axis]))),
    Math.min(most, Math.max(...at.map((corner) => corner[axis]))),
  ];
  const [x0, x1] = range(0, holder.length);
  const [y0, y1] = range(1, holder.width);
  if (!(x1 - x0 > ROUNDING_MM && y1 - y0 > ROUNDING_MM)) return null;
  const [from, to] = lineOf({ from: [x0, y0], to: [x1, y1] });
  return { holder: holder.id, taken: taken.panel.id, kind: leans < SQUARE ? 'butt' : 'laid', face, from, to };
};

/**
 * All joints between the panels: by recess where one is cut for the other, else where an end stands at a face or two
 * faces lie against each other; the smaller one is then screwed through. What lies in a groove, or on another panel, is
 * not screwed to the ends that it also touches.
 */
export const jointsOf = (panels: readonly Panel[]): readonly Joint[] => {
  const ids = new Set(panels.map(({ id }) => id));
  const recessed = panels.flatMap((panel) => recessJoints(panel, ids));
  const joined = new Set(recessed.flatMap(({ holder, taken }) => [`${holder} ${taken}`, `${taken} ${holder}`]));
  const cornered = panels.map(
    (panel): Cornered => ({ panel, corners: prismsOf(panel).flatMap(({ vertices }) => vertices) }),
  );
  const flush = panels.flatMap((holder) =>
    cornered.flatMap((taken): readonly Joint[] => {
      if (holder === taken.panel || joined.has(`${holder.id} ${taken.panel.id}`)) return [];
      const joint = flushJoint(holder, taken);
      return joint === null ? [] : [joint];
    }),
  );
  const areaOf = new Map(panels.map(({ id, length, width }) => [id, length * width]));
  const isSmaller = (a: string, b: string): boolean => {
    const [one, other] = [areaOf.get(a) ?? 0, areaOf.get(b) ?? 0];
    return one === other ? compareText(a, b) < 0 : one < other;
  };
  const laid = flush.filter(({ kind, holder, taken }) => kind === 'laid' && isSmaller(holder, taken));
  const heldElsewhere = new Set([
    ...recessed.filter(({ kind }) => kind === 'groove').map(({ taken }) => taken),
    ...laid.map(({ taken }) => taken),
  ]);
  const butts = flush.filter(({ kind, holder }) => kind === 'butt' && !heldElsewhere.has(holder));
  return [...recessed, ...laid, ...butts];
};

export interface ScrewRules {
  /** From the end of a joint to its first screw, and the most between two. */
  readonly firstMm: number;
  readonly pitchMm: number;
}

/** Where the screws of a joint are driven, on the far face of the holder, in the vehicle; none for a groove. */
export const screwPoints = (joint: Joint, holder: Panel, { firstMm, pitchMm }: ScrewRules): readonly Vec3[] => {
  if (joint.kind === 'groove') return [];
  const { from, to, face } = joint;
  const long = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const run = Math.max(0, long - 2 * firstMm);
  const gaps = Math.max(1, Math.ceil(run / pitchMm));
  const z = face === 'a' ? 0 : holder.thickness;
  const count = run > 0 ? gaps + 1 : 1;
  return Array.from({ length: count }, (_, i) => {
    const share = run > 0 ? (firstMm + (run * i) / gaps) / long : 0.5;
    return placed(holder.pose, [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share, z]);
  });
};

/** From the far face of the holder out to whoever drives its screws. */
export const driverWay = (joint: Joint, holder: Panel): Vec3 =>
  turned(holder.pose, [0, 0, joint.face === 'a' ? -1 : 1]);

/** Greatest size of all panels together: a way out of anything. */
export const reachOf = (panels: readonly Panel[]): number =>
  panels
    .flatMap(prismsOf)
    .map((shape) => boxSize(shapeBox(shape)))
    .reduce((sum, size) => sum + Math.max(...size), 0);
