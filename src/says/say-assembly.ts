import type { Vec3 } from '../base/index.ts';

/** How many, with the word that fits. */
const many = (count: number, word: string): string => `${count} ${word}${count === 1 ? '' : 's'}`;

const listed = (words: readonly string[]): string => {
  const last = words.at(-1) ?? '';
  return words.length < 2 ? last : `${words.slice(0, -1).join(', ')} and ${last}`;
};

/** Across to the viewer's right, deep from the face, up: where something comes from when it travels so. */
const COMES_FROM: readonly (readonly [minus: string, plus: string])[] = [
  ['from the right', 'from the left'],
  ['from behind', 'from the face'],
  ['from above', 'from below'],
];

/** Below this share of the way another axis counts as well: the panel goes in aslant. */
const STRAIGHT = 0.98;

/** `from the left`, for travel along across × deep × up. */
export const sayWayIn = (way: Vec3): string => {
  const axis = way.findIndex((share) => Math.abs(share) >= STRAIGHT);
  const words = COMES_FROM[axis];
  return words === undefined ? 'aslant, square to its own face' : words[(way[axis] ?? 0) > 0 ? 1 : 0];
};

export interface SaidJoint {
  readonly kind: 'dado' | 'groove' | 'rabbet' | 'butt' | 'laid';
  readonly with: string;
  readonly screws: number;
  readonly outOfReach: number;
}

const JOINT_WORDS = {
  dado: 'dado of',
  groove: 'groove with',
  rabbet: 'rabbet with',
  butt: 'butt to',
  laid: 'flat against',
} as const;

export interface SaidStep {
  /** Marks of what goes in. */
  readonly marks: readonly string[];
  readonly names: readonly string[];
  /** Across, deep, up; null for the first, or where no straight move brings it in. */
  readonly way: Vec3 | null;
  readonly found: boolean;
  readonly joints: readonly SaidJoint[];
  /** Marks of what would be in the way. */
  readonly before: readonly string[];
  readonly fixFirst: readonly { readonly name: string; readonly count: number }[];
  readonly devicesFirst: readonly string[];
}

const first = (step: SaidStep): string => (step.marks.length > 1 ? 'put together before' : step.names.join(', '));

const wayWords = ({ way, found }: SaidStep): string => {
  if (way !== null) return `Bring it in ${sayWayIn(way)}.`;
  return found ? 'Begin with it.' : 'No straight way in was found: turn it in, or loosen what was put on before.';
};

const screwWords = (joints: readonly SaidJoint[]): string => {
  const screws = joints.reduce((sum, joint) => sum + joint.screws, 0);
  const blocked = joints.reduce((sum, joint) => sum + joint.outOfReach, 0);
  if (screws === 0) return '';
  const reach =
    blocked === 0
      ? ''
      : ` No driver reaches ${blocked === screws ? 'them' : `${blocked} of them`} straight: glue, and screw aslant from inside.`;
  return `${many(screws, 'screw')}.${reach}`;
};

/** One step of putting panels together, in a few short sentences. */
export const saySteps = (step: SaidStep): readonly string[] => {
  const joints = step.joints.map(({ kind, with: other }) => `${JOINT_WORDS[kind]} ${other}`);
  const lines = [
    `${listed(step.marks)}: ${first(step)}.`,
    ...(step.fixFirst.length === 0
      ? []
      : [
          `Before it goes in, screw on: ${step.fixFirst.map(({ name, count }) => `${name}, ${many(count, 'hole')}`).join('; ')}.`,
        ]),
    ...(step.devicesFirst.length === 0 ? [] : [`Before it goes in, fix in it: ${step.devicesFirst.join(', ')}.`]),
    wayWords(step),
    ...(joints.length === 0 ? [] : [`Joins: ${joints.join(', ')}.`]),
    screwWords(step.joints),
    ...(step.before.length === 0 ? [] : [`Must be in before ${listed(step.before)}.`]),
  ];
  return lines.filter((line) => line !== '');
};

/** What is measured when a carcass stands closed. */
export const sayDiagonals = (mostMm: number): string =>
  `Measure both diagonals of the face before the glue sets: they may differ by ${mostMm} mm.`;

export const sayCarcassIn = (name: string, anchors: number, before: readonly string[]): string => {
  const bolts =
    anchors === 0
      ? 'No anchors are drawn: it must not travel like that.'
      : `Bolt it down at its ${many(anchors, 'anchor')} before anything stands in the way of the bolts: see the anchor template.`;
  const first = before.length === 0 ? '' : ` It goes in before ${listed(before)}.`;
  return `Carry ${name} in.${first} ${bolts}`;
};

export const sayFixed = (name: string, pieces: readonly string[]): string => `Fix in ${name}: ${pieces.join(', ')}.`;

export const sayMoverIn = (name: string, before: readonly string[]): string =>
  before.length === 0 ? `Put in ${name}.` : `Put in ${name}, before ${listed(before)}.`;
