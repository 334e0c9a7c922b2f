import { useMemo } from 'react';
import type { LengthUnits } from '../../../base/index.ts';
import type { Design } from '../../../design/index.ts';
import type { FitOut } from '../../../fitout/index.ts';
import type { Finding, WayOut } from '../../../inspection/index.ts';
import { nameOfPart, type SaidFinding, sayFinding, sayWayMargin, sayWayOut } from '../../../says/index.ts';
import { useEditorParts } from './use-editor.ts';

/** The words for what is on screen, in the design's units and with its own names. */
export interface Names {
  readonly nameOf: (part: string) => string;
  readonly sayFinding: (finding: Finding) => SaidFinding;
  readonly sayWayOut: (way: WayOut) => string;
  readonly sayWayMargin: (finding: Finding, way: WayOut) => string;
}

interface Named {
  readonly design: Design;
  readonly fitOut: FitOut;
  readonly names: Names;
}

let last: Named | null = null;

/** Names are gathered once for each design, however many lines of a list ask for them. */
const namesFor = (design: Design, fitOut: FitOut): Names => {
  if (last?.design === design && last.fitOut === fitOut) return last.names;
  const units: LengthUnits = design.units;
  const nameOf = nameOfPart(design, fitOut);
  const names: Names = {
    nameOf,
    sayFinding: (finding) => sayFinding(finding, units, nameOf),
    sayWayOut: (way) => sayWayOut(way, units, nameOf),
    sayWayMargin: (finding, way) => sayWayMargin(finding, way, units),
  };
  last = { design, fitOut, names };
  return names;
};

export const useNames = (): Names => {
  const { design, fitOut } = useEditorParts((editor) => ({ design: editor.history.design, fitOut: editor.fitOut }));
  return useMemo(() => namesFor(design, fitOut), [design, fitOut]);
};
