import { bad, type Problem, type Result } from '../../base/index.ts';

export const SCAN_FORMATS = ['stl', 'ply', 'obj', 'glb'] as const;
export type ScanFormat = (typeof SCAN_FORMATS)[number];

/** A triangle mesh as it came, in its own axes and unit: three coordinates a point, three point indices a triangle. */
export interface ScanMesh {
  readonly format: ScanFormat;
  readonly positions: Float64Array;
  readonly triangles: Uint32Array;
}

/** More than this is refused before it fills the memory of a small machine. */
export const MOST_TRIANGLES = 2_000_000;

/** One fault of a file that is not, or not wholly, a mesh. */
export const fault = (code: string, expected: string, got?: string): Result<never> => {
  const problem: Problem = { at: 'scan', code, expected, ...(got === undefined ? {} : { got }) };
  return bad([problem]);
};

export const tooMany = (count: number): Result<never> =>
  fault('too-many', `at most ${MOST_TRIANGLES} triangles; thin the scan out first`, String(count));

/** Gives the mesh when every index names a point and every coordinate is a number. */
export const soundMesh = (format: ScanFormat, positions: Float64Array, triangles: Uint32Array): Result<ScanMesh> => {
  const count = positions.length / 3;
  if (triangles.length === 0) return fault('no-triangles', 'a mesh of triangles; a cloud of points is none');
  if (triangles.length / 3 > MOST_TRIANGLES) return tooMany(triangles.length / 3);
  for (let i = 0; i < triangles.length; i++)
    if ((triangles[i] ?? 0) >= count)
      return fault('bad-index', `point numbers below ${count}`, `${triangles[i]} in triangle ${Math.floor(i / 3) + 1}`);
  for (let i = 0; i < positions.length; i++)
    if (!Number.isFinite(positions[i])) return fault('not-a-number', 'coordinates', `point ${Math.floor(i / 3) + 1}`);
  return { ok: true, value: { format, positions, triangles } };
};

/** The mesh with one of its units counted as so many millimetres. */
export const scaledScan = (mesh: ScanMesh, unitMm: number): ScanMesh =>
  unitMm === 1 ? mesh : { ...mesh, positions: mesh.positions.map((at) => at * unitMm) };
