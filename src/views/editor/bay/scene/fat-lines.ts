import { LineMaterial } from 'three/examples/jsm/lines/LineMaterial.js';
import { LineSegments2 } from 'three/examples/jsm/lines/LineSegments2.js';
import { LineSegmentsGeometry } from 'three/examples/jsm/lines/LineSegmentsGeometry.js';
import type { LineData } from '../../../../shop/index.ts';

export interface FatLook {
  readonly colour: string;
  readonly widthPx: number;
  readonly share: number;
  /** Shines through what stands before it. */
  readonly through: boolean;
}

/** Lines of a real width, for the few that must be seen: a selection, a feeler line. */
export const fatLines = (lines: LineData, look: FatLook): LineSegments2 => {
  const geometry = new LineSegmentsGeometry();
  geometry.setPositions(lines);
  const material = new LineMaterial({
    color: look.colour,
    linewidth: look.widthPx,
    transparent: true,
    opacity: look.share,
    depthTest: !look.through,
    depthWrite: false,
  });
  // Drawn a hair nearer, so that an edge is not lost in its own face.
  material.polygonOffset = true;
  material.polygonOffsetFactor = 0;
  material.polygonOffsetUnits = -12;
  const drawn = new LineSegments2(geometry, material);
  drawn.renderOrder = look.through ? 4 : 5;
  drawn.frustumCulled = false;
  return drawn;
};

export const disposeFatLines = (lines: LineSegments2): void => {
  lines.geometry.dispose();
  lines.material.dispose();
};
