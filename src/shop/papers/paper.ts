import type { Design } from '../../design/index.ts';
import type { CarryIn, Inspection, OpeningOrder } from '../../inspection/index.ts';
import type { CutAgain } from '../../revision/index.ts';
import { nameOfPart } from '../../says/index.ts';
import type { Drawing } from '../drawing/drawing.ts';
import type { Drawings, DrawingsInput } from '../drawings.ts';
import type { HardwareRow } from '../hardware-list.ts';
import type { LabelSheetId } from '../labels/label-sheets.ts';
import type { PaperHead } from '../paper/index.ts';
import type { Price } from '../price/index.ts';
import type { SheetLayouts } from '../sheet-layouts.ts';
import { titleWords } from '../title-words.ts';

/** What the papers are made from, each part worked out once for all of them. */
export interface PapersInput extends DrawingsInput {
  readonly inspection: Inspection;
  /** How everything is carried in; without it there is no paper of it. */
  readonly carry?: CarryIn | null;
  readonly order: OpeningOrder;
  readonly drawings: Drawings;
  readonly layouts: SheetLayouts;
  readonly hardware: readonly HardwareRow[];
  readonly price: Price;
  readonly cutAgain: CutAgain | null;
  readonly labelSheet: LabelSheetId;
  /** The first free label of a sheet that has been begun, from 1. */
  readonly firstLabel: number;
}

/** One paper of the packet: what it is for, and its pages when they are asked for. */
export interface Paper {
  /** Names its file: `cut-list` is written as `cut-list.pdf`. */
  readonly name: string;
  readonly about: string;
  readonly pages: () => readonly Drawing[];
}

export const paperHead = (
  design: Design,
  title: string,
  caution: string,
  lies: PaperHead['lies'] = 'upright',
): PaperHead => ({
  title,
  designTitle: design.title,
  customer: design.customer,
  revision: titleWords(design).signed,
  units: design.units,
  caution,
  lies,
});

/** What people call the parts of this design. */
export const namesOf = ({ design, fitout }: Pick<PapersInput, 'design' | 'fitout'>): ((id: string) => string) =>
  nameOfPart(design, fitout);

export const SCREENING = 'Screening figures, no approval: local codes and licensed practice decide.';
