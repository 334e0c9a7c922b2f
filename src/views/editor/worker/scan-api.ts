import type { Result, Vec3 } from '../../../base/index.ts';
import type { Station } from '../../../design/index.ts';
import type {
  ComparedScan,
  Facing,
  MarkPair,
  RefineOptions,
  ScanCheck,
  ScanUnit,
  Section,
  SurfaceSamples,
} from '../../../envelope/index.ts';

/** A scan that was read, with what a person must know of it. */
export interface LoadedScan {
  readonly check: ScanCheck;
  /** What a unit of the file most likely stands for. */
  readonly unit: ScanUnit;
  /** In the unit of the file. */
  readonly samples: SurfaceSamples;
}

export interface CompareRequest {
  readonly unit: ScanUnit;
  /** Where each mark stands in the scan, in the unit of the file, and in the vehicle in mm. */
  readonly marks: readonly MarkPair[];
  readonly sections: readonly Section[];
  readonly options: RefineOptions;
}

/** The door of the worker that holds the scan: the mesh itself never crosses. */
export interface ScanDesk {
  load(bytes: Uint8Array, longestTapedMm: number): Promise<Result<LoadedScan>>;
  /** Where a line of sight meets the scan, in the unit of the file. */
  pick(from: Vec3, along: Vec3, facing: Facing): Promise<Vec3 | null>;
  compare(request: CompareRequest): Promise<Result<ComparedScan>>;
  /** A station from the scan as it was placed last. */
  station(depthMm: number, count: number): Promise<Result<Omit<Station, 'id'>>>;
}
