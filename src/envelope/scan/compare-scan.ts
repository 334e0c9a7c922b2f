import { distance, good, type Pose, placed, type Result } from '../../base/index.ts';
import type { Section } from '../space.ts';
import { alignByMarks, type MarkPair } from './align-marks.ts';
import { cutScan, type ScanLine } from './cut-scan.ts';
import { type RefineOptions, refineScan } from './refine.ts';
import { type SectionDifference, sectionDifference, sectionSamples } from './scan-differences.ts';
import type { ScanMesh } from './scan-mesh.ts';
import { makeTriangleGrid } from './triangle-grid.ts';

export interface ComparedStation {
  readonly difference: SectionDifference;
  /** What the scan shows at the station. */
  readonly lines: readonly ScanLine[];
}

export interface ComparedScan {
  readonly pose: Pose;
  /** How far each mark lies from its place once the scan was drawn to the sections (mm). */
  readonly marksOff: readonly number[];
  readonly rmsMm: number;
  /** Share of the samples of the taped sections that the scan was fitted to. */
  readonly fitted: number;
  readonly settled: boolean;
  readonly stations: readonly ComparedStation[];
}

/** Places along a section at which the scan is fitted and compared (mm). */
const STEP = 25;

/**
 * Lays a scan (in mm) beside the taped sections: placed by its marks, drawn to the sections, cut and compared at each.
 * Refused as `alignByMarks` refuses.
 */
export const compareScan = (
  mesh: ScanMesh,
  marks: readonly MarkPair[],
  sections: readonly Section[],
  options: RefineOptions,
): Result<ComparedScan> => {
  const start = alignByMarks(marks);
  if (!start.ok) return start;
  const samples = sectionSamples(sections, STEP);
  const fit =
    samples.length === 0
      ? { pose: start.value.pose, rmsMm: 0, fitted: 0, settled: true }
      : refineScan(samples, makeTriangleGrid(mesh), marks, start.value.pose, options);
  // Nothing of the scan within reach: the marks alone hold, and the differences say how far it lies.
  const pose = Number.isFinite(fit.rmsMm) ? fit.pose : start.value.pose;
  return good({
    pose,
    marksOff: marks.map(({ scan, vehicle }) => distance(placed(pose, scan), vehicle)),
    rmsMm: Number.isFinite(fit.rmsMm) ? fit.rmsMm : 0,
    fitted: fit.fitted,
    settled: fit.settled,
    stations: sections.map((section) => {
      const lines = cutScan(mesh, pose, section.x);
      return { lines, difference: sectionDifference(section, lines, STEP, options.reach) };
    }),
  });
};
