import { MM_PER_INCH, ROUNDING_MM } from '../../base/index.ts';
import type { Design } from '../../design/index.ts';
import type { Finding, FindingFacts } from '../finding.ts';

/** Kinds of edits, the lightest hand first: among edits that clear a finding the earlier kind is offered first. */
export const WAY_KINDS = [
  'move-gear',
  'turn-gear',
  'fit-piece',
  'fit-anchors',
  'add-anchors',
  'move-anchor',
  'let-slide-be-chosen',
  'share-part',
  'shorten-slide',
  'other-hinge',
  'lower-stop',
  'raise-row',
  'lower-row',
  'move-carcass',
  'grow-opening',
  'shrink-carcass',
  'grow-carcass',
  'move-gear-elsewhere',
] as const;
export type WayKind = (typeof WAY_KINDS)[number];

/** An edit that may clear a finding: not offered before it has been tried. */
export interface Candidate {
  readonly kind: WayKind;
  readonly facts: FindingFacts;
  readonly design: Design;
  /** How much is changed, in millimetres where it is a length; compared within one kind only. */
  readonly change: number;
  /** Candidates of one group say the same in other lengths: once one of them works, the rest are not tried. */
  readonly group: string | null;
  /** The same edit by another amount, where a smaller one may do: amounts are multiples of the step. */
  readonly sized?: {
    readonly amount: number;
    readonly step: number;
    readonly of: (amount: number) => Candidate | null;
  };
}

/** What may clear a finding. A list that is cheap to make: each entry costs an inspection to try. */
export type WayFinder = (finding: Finding, design: Design) => readonly Candidate[];

export const NO_WAY: WayFinder = () => [];

/** What a shop marks off: a sixteenth of an inch, or a millimetre. */
const STEPS_PER_INCH = 16;
const stepOf = (units: Design['units']): number => (units === 'in' ? MM_PER_INCH / STEPS_PER_INCH : 1);

/** An edit by an amount, with the same by others, so that the smallest that clears the finding can be looked for. */
export const sizedCandidate = (
  amount: number,
  step: number,
  of: (amount: number) => Candidate | null,
): readonly Candidate[] => {
  const made = of(amount);
  return made ? [{ ...made, sized: { amount, step, of } }] : [];
};

/** What can be marked off, in the reader's units. */
export const markOff = (units: Design['units']): number => stepOf(units);

/** The length rounded up to a step that can be marked off in the reader's units. */
export const roundedUp = (mm: number, units: Design['units']): number => {
  const step = stepOf(units);
  return Math.ceil((mm - ROUNDING_MM) / step) * step;
};

/**
 * How much more room a gap finding wants: enough that nothing is left to say, and enough to meet the limit although
 * the uncertainty still leaves a caution.
 */
export const wantedMm = (finding: Finding): readonly number[] => {
  const short = finding.limit - finding.value;
  return finding.uncertainty > 0 ? [short + finding.uncertainty, short] : [short];
};
