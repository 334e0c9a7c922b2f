import type { Manifold, ManifoldToplevel } from 'manifold-3d';
import type { Shell } from './shell.ts';

const single = (positions: Shell['positions'] | Float64Array, index: number): string =>
  [0, 1, 2].map((axis) => Math.fround(positions[3 * index + axis] ?? 0)).join();

const readMesh = (kernel: ManifoldToplevel, { positions, triangles }: Shell): Manifold => {
  const vertProperties = Float32Array.from(positions);
  const mesh = new kernel.Mesh({ numProp: 3, vertProperties, triVerts: Uint32Array.from(triangles) });
  try {
    return kernel.Manifold.ofMesh(mesh);
  } catch (cause) {
    throw new RangeError(`fromShell: the shell of ${triangles.length / 3} triangles is not closed`, { cause });
  }
};

/**
 * Gives a kernel solid the points of a shell in doubles. The kernel reads a mesh in single precision only, and then
 * counts everything nearer than about a third of a micrometre as one; so the true points are put back in place of the
 * rounded ones, known by their rounded value, and the tolerance is set back to that of doubles.
 */
export const kernelFromShell = (kernel: ManifoldToplevel, shell: Shell): Manifold => {
  const { positions } = shell;
  const rounded = readMesh(kernel, shell);
  const byRounded = new Map<string, number>();
  for (let i = 0; 3 * i < positions.length; i++) byRounded.set(single(positions, i), i);
  const exact = rounded.warpBatch((points, count) => {
    for (let i = 0; i < count; i++) {
      const source = byRounded.get(single(points, i));
      if (source === undefined) continue;
      for (const axis of [0, 1, 2]) points[3 * i + axis] = positions[3 * source + axis] ?? 0;
    }
  });
  const made = exact.setTolerance(0);
  rounded.delete();
  exact.delete();
  return made;
};

/** The skin of a kernel solid in doubles: triangles from its mesh, points from a warp that only looks. */
export const kernelToShell = (solid: Manifold): Shell => {
  const mesh = solid.getMesh();
  let positions = new Float64Array();
  solid
    .warpBatch((points) => {
      positions = Float64Array.from(points);
    })
    .delete();
  if (positions.length !== 3 * mesh.numVert) throw new RangeError('toShell: mesh and solid number their points apart');
  return { positions, triangles: Uint32Array.from(mesh.triVerts) };
};
