import type { Design } from '../../design/index.ts';
import type { FitOut } from '../../fitout/index.ts';
import type { Finding, WayOut } from '../../inspection/index.ts';
import { nameOfPart, type SaidFinding, sayAmount, sayFinding, sayWayMargin, sayWayOut } from '../../says/index.ts';

/** Findings of one design in words, in its own units. */
export interface Sayer {
  readonly finding: (finding: Finding) => SaidFinding;
  readonly wayOut: (way: WayOut) => string;
  /** What to do about it: the best way out that was tried; empty where none is known. */
  readonly remedy: (finding: Finding) => string;
  /** Value, limit and uncertainty with their units. */
  readonly figures: (finding: Finding) => string;
}

export const sayer = (design: Design, fitout: FitOut): Sayer => {
  const names = nameOfPart(design, fitout);
  const say = (finding: Finding): SaidFinding => sayFinding(finding, design.units, names);
  const wayOut = (way: WayOut): string => sayWayOut(way, design.units, names);
  return {
    finding: say,
    wayOut,
    remedy: (finding) => {
      const [way] = finding.waysOut;
      if (way === undefined) return '';
      const margin = sayWayMargin(finding, way, design.units);
      return margin === '' ? wayOut(way) : `${wayOut(way)} (${margin})`;
    },
    figures: (finding) => {
      const { valueText, limitText } = say(finding);
      const spread = finding.uncertainty > 0 ? ` ± ${sayAmount(finding.uncertainty, finding.unit, design.units)}` : '';
      return [valueText === '' ? '' : `${valueText}${spread}`, limitText].filter((words) => words !== '').join(' ');
    },
  };
};
