import type { Vec2, Vec3 } from '../../base/index.ts';
import type { CLOSURE_KINDS, Instrument, NodeId, ReadingKind, Vehicle } from '../../design/index.ts';

export type ClosureKind = (typeof CLOSURE_KINDS)[number];

/** A mark to be stuck on the vehicle, with where it lies in a vehicle of the class. */
export interface PlanMark {
  readonly id: NodeId;
  readonly name: string;
  readonly at: Vec3;
  readonly fixed: readonly [boolean, boolean, boolean];
}

/** Where what is measured is entered. */
export type PlanInto = 'reading' | 'closure' | 'obstacle' | 'zone' | 'ratings' | 'photo';

export const PLAN_GROUPS = [
  'frame',
  'section rear',
  'section middle',
  'section front',
  'seat',
  'opening',
  'closure',
  'obstacles',
  'under the floor',
  'labels',
] as const;
export type PlanGroup = (typeof PLAN_GROUPS)[number];

export interface PlanReading {
  readonly kind: ReadingKind;
  readonly from: NodeId;
  readonly to: NodeId | null;
  readonly at: NodeId | null;
}

export interface PlanStep {
  /** Its number on the sheet, from 1. */
  readonly number: number;
  readonly group: PlanGroup;
  readonly name: string;
  readonly why: string;
  readonly instrument: Instrument;
  readonly into: PlanInto;
  /** The reading that it becomes, or null for what is entered elsewhere. */
  readonly reading: PlanReading | null;
  /** False for a reading that only checks others; without it an error goes unseen. */
  readonly must: boolean;
  /** The small drawing that shows where it is taken, or null. */
  readonly figure: string | null;
}

export type FigureView = 'section' | 'plan' | 'side';

/**
 * A small drawing of a generic outline, in mm at true proportions, u to the right and v up. Sections are seen from the
 * rear (the vehicle's left on the left), plans from above with the rear at the bottom, side views from the vehicle's
 * right side with the rear at the left.
 */
export interface PlanFigure {
  readonly id: string;
  readonly title: string;
  readonly view: FigureView;
  readonly lines: readonly {
    readonly from: Vec2;
    readonly to: Vec2;
    readonly role: 'outline' | 'centre' | 'reading';
  }[];
  /** The numbers of the steps, where they are read. */
  readonly labels: readonly { readonly at: Vec2; readonly text: string }[];
}

export interface PlanStation {
  readonly name: string;
  readonly xMm: number;
  readonly left: readonly NodeId[];
  readonly right: readonly NodeId[];
}

export interface SurveyPlan {
  readonly closureKind: ClosureKind;
  readonly vehicleClass: Vehicle['class'];
  readonly marks: readonly PlanMark[];
  readonly stations: readonly PlanStation[];
  readonly steps: readonly PlanStep[];
  readonly figures: readonly PlanFigure[];
}
