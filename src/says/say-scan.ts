import { formatLengthUnit, type LengthUnits } from '../base/index.ts';
import type { ScanCheck } from '../envelope/index.ts';

export interface ScanInUnit {
  readonly check: ScanCheck;
  /** Length of one unit of the file. */
  readonly unitMm: number;
  /** The longest side of the taped cargo space. */
  readonly longestTapedMm: number;
}

/** A scan of the cargo area is about as long as the room; beyond these shares of it unit or content is another. */
const SHORTEST_SHARE = 0.6;
const LONGEST_SHARE = 2.5;

const counted = (count: number, one: string, more: string): string => `${count} ${count === 1 ? one : more}`;

/** What a person must know of a scan, plainly, a sentence each: wrong unit, holes, what is turned inside out, waste. */
export const sayScanCheck = ({ check, unitMm, longestTapedMm }: ScanInUnit, units: LengthUnits): readonly string[] => {
  const longest = Math.max(...check.size) * unitMm;
  const share = longest / longestTapedMm;
  const length = (mm: number): string => formatLengthUnit(mm, units);
  return [
    ...(share < SHORTEST_SHARE || share > LONGEST_SHARE
      ? [
          `In this unit it is ${length(longest)} long, the taped room ${length(longestTapedMm)}: the unit is wrong, or it shows ${share < 1 ? 'only a part of the cargo area' : 'more than the cargo area'}.`,
        ]
      : []),
    ...(check.openEdges > 0
      ? [
          `It is open along ${counted(check.openEdges, 'edge', 'edges')}: where there is a hole it says nothing of the room.`,
        ]
      : []),
    ...(check.flippedEdges > 0
      ? [
          `Along ${counted(check.flippedEdges, 'edge', 'edges')} neighbouring triangles look to opposite sides: some of it is turned inside out.`,
        ]
      : []),
    ...(check.insideOut ? ['It is closed and turned inside out.'] : []),
    ...(check.crowdedEdges > 0
      ? [`${counted(check.crowdedEdges, 'edge is', 'edges are')} shared by three triangles or more.`]
      : []),
    ...(check.flatTriangles > 0
      ? [
          `${counted(check.flatTriangles, 'triangle', 'triangles')} without area ${check.flatTriangles === 1 ? 'is' : 'are'} passed over.`,
        ]
      : []),
  ];
};
