import { describe, expect, it } from 'vitest';
import {
  after,
  distance,
  inverse,
  type Pose,
  placed,
  ROUNDING_MM,
  seededRandom,
  shift,
  turnAbout,
  type Vec3,
} from '../../../src/base/index.ts';
import {
  alignByMarks,
  cutScan,
  makeTriangleGrid,
  readScan,
  refineScan,
  type ScanMesh,
  type Section,
  sectionDifference,
  sectionSamples,
  stationFromScan,
} from '../../../src/envelope/index.ts';
import { nearestOnMesh, newMeshNear } from '../../../src/envelope/scan/triangle-grid.ts';
import { asPly, boxMesh, movedMesh, type Plain } from './meshes.ts';

const SIZE = { x: 1500, y: 1200, z: 900 };
const room = boxMesh([0, -600, 0], [1500, 600, 900], 6);
const meshOf = (mesh: Plain): ScanMesh => {
  const read = readScan(asPly(mesh, true));
  if (!read.ok) throw new Error(JSON.stringify(read.error));
  return read.value;
};
/** Where the scanner stood: the scan is the room seen from there. */
const pose: Pose = after(shift([350, -120, 40]), turnAbout([100, 200, 0], [0.2, 0.5, 1], 1.1));
const scan = meshOf(movedMesh(room, inverse(pose)));
const MARKS: readonly Vec3[] = [
  [0, 600, 0],
  [1500, -600, 0],
  [0, -600, 900],
];
const pairs = MARKS.map((vehicle) => ({ vehicle, scan: placed(inverse(pose), vehicle) }));

const ring = (half: number, height: number) =>
  [
    [-half, 0],
    [-half, height],
    [half, height],
    [half, 0],
  ] as const;
const sections: readonly Section[] = [300, 900, 1300].map((x, i) => ({
  station: `station-${i + 1}` as Section['station'],
  x,
  ring: ring(600, 900),
}));

describe('alignByMarks', () => {
  it('finds the placement that was hidden in three marks', () => {
    const fit = alignByMarks(pairs);
    if (!fit.ok) throw new Error('refused');
    for (const point of room.points)
      expect(distance(placed(fit.value.pose, placed(inverse(pose), point)), point)).toBeLessThan(ROUNDING_MM);
    expect(Math.max(...fit.value.off)).toBeLessThan(ROUNDING_MM);
  });

  it('tells a wrong unit by its name, and refuses marks in a line', () => {
    const inMetres = pairs.map((pair) => ({ ...pair, scan: pair.scan.map((c) => c / 1000) as unknown as Vec3 }));
    const wrong = alignByMarks(inMetres);
    expect(wrong.ok ? '' : wrong.error[0]).toMatchObject({ code: 'wrong-unit', expected: 'the scan read in m' });
    const line = [0, 500, 1000].map((x): Vec3 => [x, 0, 0]).map((at) => ({ scan: at, vehicle: at }));
    const refused = alignByMarks(line);
    expect(refused.ok ? '' : refused.error[0]?.code).toBe('marks-in-line');
    const few = alignByMarks(pairs.slice(1));
    expect(few.ok ? '' : few.error[0]?.code).toBe('too-few-marks');
  });
});

describe('nearestOnMesh', () => {
  it('finds what a look at every triangle finds', () => {
    const grid = makeTriangleGrid(scan);
    const random = seededRandom(3);
    const near = newMeshNear();
    for (let i = 0; i < 200; i++) {
      const p: Vec3 = [2000 * random() - 200, 2000 * random() - 1000, 1400 * random() - 200];
      const inScan = placed(inverse(pose), p);
      nearestOnMesh(grid, Float64Array.from(inScan), Infinity, near);
      // A box: outside by the overshoot on each axis, inside by the nearest wall.
      const low = [0, -600, 0].map((least, k) => least - (p[k] ?? 0));
      const high = [1500, 600, 900].map((most, k) => (p[k] ?? 0) - most);
      const over = low.map((l, k) => Math.max(l, high[k] ?? 0, 0));
      const out = Math.hypot(...over);
      const expected = out > 0 ? out : Math.min(...low.map((l) => -l), ...high.map((h) => -h));
      expect(Math.abs(near.distance - expected)).toBeLessThan(ROUNDING_MM);
    }
  });
});

describe('refineScan', () => {
  const options = { tapeSigma: 1.5, markSigma: 3, reach: 60 };

  it('brings marks picked badly back onto the sections', () => {
    const off: readonly Vec3[] = [
      [4, -3, 2],
      [-2, 4, -4],
      [3, 2, 3],
    ];
    const picked = pairs.map((pair, i) => ({
      ...pair,
      scan: pair.scan.map((c, k) => c + (off[i]?.[k] ?? 0)) as unknown as Vec3,
    }));
    const start = alignByMarks(picked);
    if (!start.ok) throw new Error('refused');
    const grid = makeTriangleGrid(scan);
    const samples = sectionSamples(sections, 40);
    const errorOf = (found: Pose): number =>
      Math.max(
        ...room.points.map((p) =>
          Math.hypot(...([1, 2] as const).map((k) => placed(found, placed(inverse(pose), p))[k] - p[k])),
        ),
      );
    const refined = refineScan(samples, grid, picked, start.value.pose, options);
    expect(refined.settled).toBe(true);
    // Across and up the walls hold it (130 samples at 1.5 mm against three marks at 3 mm); along x only the marks do.
    expect(errorOf(refined.pose)).toBeLessThan(0.3);
    expect(errorOf(refined.pose)).toBeLessThan(errorOf(start.value.pose) / 5);
    expect(refined).toEqual(refineScan(samples, grid, picked, start.value.pose, options));
  });
});

describe('cutScan', () => {
  it('cuts one closed line with the section of the room', () => {
    const lines = cutScan(scan, pose, 700);
    expect(lines).toHaveLength(1);
    expect(lines[0]?.closed).toBe(true);
    const points = lines[0]?.points ?? [];
    const twice = points.reduce((sum, [y, z], i) => {
      const [v, w] = points[(i + 1) % points.length] ?? [0, 0];
      return sum + y * w - v * z;
    }, 0);
    expect(Math.abs(Math.abs(twice) / 2 - SIZE.y * SIZE.z)).toBeLessThan(1);
  });

  it('shows the difference to a taped section, outside positive', () => {
    const taped: Section = { station: 'station-9' as Section['station'], x: 700, ring: ring(595, 903) };
    const difference = sectionDifference(taped, cutScan(scan, pose, 700), 25, 100);
    expect(difference.seen).toBe(1);
    const wall = difference.places.find(({ at }) => Math.abs(at[0]) === 595 && at[1] > 300 && at[1] < 600);
    const roof = difference.places.find(({ at }) => at[1] === 903 && Math.abs(at[0]) < 300);
    // The room is 600 to the wall where 595 was taped, 900 to the roof where 903 was taped.
    expect(wall?.offMm).toBeCloseTo(5, 6);
    expect(roof?.offMm).toBeCloseTo(-3, 6);
  });

  it('a hole in the scan is not seen, and no station comes from it', () => {
    const right = room.triangles.filter((triangle) => !triangle.every((i) => (room.points[i]?.[1] ?? 0) === 600));
    const holed = meshOf(movedMesh({ ...room, triangles: right }, inverse(pose)));
    const lines = cutScan(holed, pose, 700);
    expect(
      sectionDifference({ station: 'station-9' as Section['station'], x: 700, ring: ring(600, 900) }, lines, 25, 100)
        .seen,
    ).toBeLessThan(1);
    const none = stationFromScan(lines, 700, 9);
    expect(none.ok ? '' : none.error[0]?.code).toBe('holes');
  });

  it('gives a station marked as coming from the scan', () => {
    const made = stationFromScan(cutScan(scan, pose, 700), 700, 9);
    if (!made.ok) throw new Error('refused');
    expect(made.value).toMatchObject({ source: 'scan', xMm: 700 });
    expect(made.value.left).toHaveLength(9);
    for (const [out] of [...made.value.left, ...made.value.right]) expect(out).toBeCloseTo(600, 6);
  });
});
