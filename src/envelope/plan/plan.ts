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
  /** What is written of each of several points along a curve, or null for a single figure. */
  readonly points: readonly string[] | null;
  /** The small drawing that shows where it is taken, or null. */
  readonly figure: string | null;
}

export type FigureView = 'section' | 'plan' | 'side';

export interface FigureLine {
  readonly from: Vec2;
  readonly to: Vec2;
  /** An extension runs from a mark to the end of a reading that is drawn beside it. */
  readonly role: 'outline' | 'centre' | 'extension' | 'reading';
  /** The step that it shows, or null for what only shows where it is. */
  readonly step: number | null;
}

export interface FigureLabel {
  /** The middle of the words. */
  readonly at: Vec2;
  readonly text: string;
  /** The step whose number it is, or null for a word that says where things are. */
  readonly step: number | null;
}

/**
 * A small drawing of a generic outline, in mm at true proportions, u to the right and v up. Sections are seen from the
 * rear (the vehicle's left on the left); plans from above and side views from the vehicle's right side have the rear at
 * the left. Lines leave room for the labels, so that it needs no fill and prints as it is.
 */
export interface PlanFigure {
  readonly id: string;
  readonly title: string;
  readonly view: FigureView;
  readonly lines: readonly FigureLine[];
  /** The marks that its readings touch. */
  readonly marks: readonly Vec2[];
  readonly labels: readonly FigureLabel[];
  /** The height of a capital for which the labels were placed, in mm of the drawing. */
  readonly letter: number;
  /** Low and high corner of everything drawn. */
  readonly from: Vec2;
  readonly to: Vec2;
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
