import type { LengthUnits } from '../base/index.ts';
import type { Finding } from '../inspection/index.ts';
import { sayAmount, sayLength } from './amounts.ts';

/** How one reader is spoken to: units, and what things are called. */
export interface Speech {
  readonly units: LengthUnits;
  /** The name of a part or a node, for a sentence. */
  readonly name: (id: string) => string;
  readonly length: (mm: number) => string;
  readonly amount: (value: number, unit: string) => string;
}

export const speechFor = (units: LengthUnits, name: (id: string) => string): Speech => ({
  units,
  name,
  length: (mm) => sayLength(mm, units),
  amount: (value, unit) => sayAmount(value, unit, units),
});

/** What is said of a finding. Value and limit are said plainly unless the words give their own. */
export interface FindingWords {
  /** One line, without a full stop. */
  readonly title: string;
  /** One or two sentences more. */
  readonly detail: string;
  readonly valueText?: string;
  readonly limitText?: string;
}

export type SayRule = (finding: Finding, speech: Speech) => FindingWords;

export const factText = (finding: Finding, key: string): string => String(finding.facts[key] ?? '');

export const factNumber = (finding: Finding, key: string): number => {
  const value = finding.facts[key];
  return typeof value === 'number' ? value : Number.NaN;
};

export const sentence = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** The name of the finding's part at `index`, or a stand-in where it names none. */
export const partName = (finding: Finding, index: number, speech: Speech, otherwise = 'it'): string => {
  const id = finding.parts[index];
  return id === undefined ? otherwise : speech.name(id);
};
