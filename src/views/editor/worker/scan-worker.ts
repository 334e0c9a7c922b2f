import { expose, transfer } from 'comlink';
import { bad, good, type Pose, scale } from '../../../base/index.ts';
import {
  checkScan,
  compareScan,
  cutScan,
  guessScanUnit,
  pickScan,
  readScan,
  SCAN_UNITS,
  type ScanMesh,
  scaledScan,
  stationFromScan,
  surfaceSamples,
} from '../../../envelope/index.ts';
import type { ScanDesk } from './scan-api.ts';

/** Enough to fill the picture of a scan without gaps. */
const SAMPLES = 240_000;

const NO_SCAN = bad([{ at: 'scan', code: 'missing', expected: 'a scan that was loaded and aligned' }]);

let mesh: ScanMesh | null = null;
let placed: { readonly mesh: ScanMesh; readonly pose: Pose } | null = null;

const desk: ScanDesk = {
  load: async (bytes, longestTapedMm) => {
    [mesh, placed] = [null, null];
    const read = readScan(bytes);
    if (!read.ok) return read;
    mesh = read.value;
    const check = checkScan(mesh);
    const samples = surfaceSamples(mesh, SAMPLES);
    const unit = guessScanUnit(check, longestTapedMm);
    return transfer(good({ check, unit, samples }), [samples.at.buffer, samples.normal.buffer]);
  },
  pick: async (from, along, facing) => (mesh ? pickScan(mesh, from, along, facing) : null),
  compare: async ({ unit, marks, sections, options }) => {
    if (!mesh) return NO_SCAN;
    const size = SCAN_UNITS[unit];
    const inMm = scaledScan(mesh, size);
    const pairs = marks.map(({ scan, vehicle }) => ({ scan: scale(scan, size), vehicle }));
    const compared = compareScan(inMm, pairs, sections, options);
    if (compared.ok) placed = { mesh: inMm, pose: compared.value.pose };
    return compared;
  },
  station: async (depthMm, count) =>
    placed ? stationFromScan(cutScan(placed.mesh, placed.pose, depthMm), depthMm, count) : NO_SCAN,
};

expose(desk);
