import type { LengthUnits } from '../base/index.ts';
import { shortOf, type WheelhouseAsk, type WheelhouseCut } from '../inspection/index.ts';
import { sayLength } from './amounts.ts';

export interface SaidWheelhouse {
  /** What the survey asks for each figure of the cut-out. */
  readonly asks: Readonly<Record<'fromMm' | 'lengthMm' | 'inMm' | 'upMm', string>>;
  /** What is kept off, and why. */
  readonly why: string;
  /** How the typed cut-out stands to it, and whether it is short. */
  readonly typed: string;
  readonly short: boolean;
}

const listed = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;

/** What the survey asks of a cut-out, beside what was typed. */
export const sayWheelhouse = (typed: WheelhouseCut, ask: WheelhouseAsk, units: LengthUnits): SaidWheelhouse => {
  const long = (mm: number): string => sayLength(mm, units);
  const asks = (mm: number): string => `survey asks ${long(mm)}`;
  const { before, behind, in: inward, up } = shortOf(typed, ask);
  const start = ask.cut.side === 'back' ? 'at its left end' : 'at its near end';
  const end = ask.cut.side === 'back' ? 'at its right end' : 'at its far end';
  const short = [
    ...(before > 0 ? [`${long(before)} short ${start}`] : []),
    ...(behind > 0 ? [`${long(behind)} short ${end}`] : []),
    ...(inward > 0 ? [`${long(inward)} short inward`] : []),
    ...(up > 0 ? [`${long(up)} too low`] : []),
  ];
  return {
    asks: {
      fromMm: asks(ask.cut.fromMm),
      lengthMm: asks(ask.cut.lengthMm),
      inMm: asks(ask.cut.inMm),
      upMm: asks(ask.cut.upMm),
    },
    why: `Asked: ${long(ask.gap.value)} clear of ${ask.name}, and ${long(ask.halfWidthMm)} more for what survey, vehicle and build may be off.`,
    typed:
      short.length > 0 ? `The cut-out is ${listed(short)}.` : 'The cut-out leaves the room that the survey asks for.',
    short: short.length > 0,
  };
};
