import { Line } from '@react-three/drei/core/Line';
import { useMemo } from 'react';
import type { Vec3 } from '../../../../base/index.ts';
import type { LineData } from '../../../../shop/index.ts';

export interface FatLook {
  readonly colour: string;
  readonly widthPx: number;
  readonly share: number;
  /** Shines through what stands before it. */
  readonly through: boolean;
}

/** Ends of the stretches, two for each. */
const endsOf = (lines: LineData): Vec3[] => {
  const ends: Vec3[] = [];
  for (let i = 0; i + 2 < lines.length; i += 3) ends.push([lines[i] ?? 0, lines[i + 1] ?? 0, lines[i + 2] ?? 0]);
  return ends;
};

interface FatLinesProps {
  readonly lines: LineData;
  readonly look: FatLook;
}

/** Lines of a real width, for the few that must be seen: a selection, a feeler line. */
export const FatLines = ({ lines, look: { colour, widthPx, share, through } }: FatLinesProps) => {
  const points = useMemo(() => endsOf(lines), [lines]);
  return (
    <Line
      segments
      points={points}
      color={colour}
      lineWidth={widthPx}
      transparent
      opacity={share}
      depthTest={!through}
      depthWrite={false}
      // Drawn a hair nearer, so that an edge is not lost in its own face.
      polygonOffset
      polygonOffsetFactor={0}
      polygonOffsetUnits={-12}
      renderOrder={through ? 4 : 5}
      frustumCulled={false}
    />
  );
};
