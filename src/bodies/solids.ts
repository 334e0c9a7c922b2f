import type { Manifold, ManifoldToplevel } from 'manifold-3d';
import { add, scale, type Vec3 } from '../base/index.ts';
import { kernelFromShell, kernelToShell } from './kernel.ts';
import type { ConvexShape } from './shapes.ts';
import { type Shell, shellTriangles } from './shell.ts';

/** A solid held by the kernel: good only inside the scope it was made in, and only with the Solids that made it. */
export interface Solid {
  readonly held: 'solid';
}

/** Boolean work on closed solids in double precision. */
export interface Solids {
  /** The solid inside a closed, outward oriented shell. Throws RangeError where the shell is not closed. */
  readonly fromShell: (shell: Shell) => Solid;
  /** The solid of a convex shape with volume; rounds become facets that lie on or outside the true surface. */
  readonly fromConvex: (shape: ConvexShape) => Solid;
  readonly union: (parts: readonly Solid[]) => Solid;
  /** `from` without every one of `taken`. */
  readonly difference: (from: Solid, taken: readonly Solid[]) => Solid;
  readonly intersection: (a: Solid, b: Solid) => Solid;
  /** mm³; exactly 0 for bodies that only touch, or nearly so: judge contact by gapBetween, never by volume. */
  readonly volume: (solid: Solid) => number;
  /** The skin as plain data, in doubles; no triangles for an empty solid. */
  readonly toShell: (solid: Solid) => Shell;
  /** Runs `work` and lets go of every solid made in it. Give back plain data: a solid from inside is dead outside. */
  readonly scope: <T>(work: () => T) => T;
  /** Lets go of everything still held. */
  readonly dispose: () => void;
}

/** Facets round a circle for round bodies: they come out at most 1 % of their radius fat, never thin. */
const ROUND_SEGMENTS = 32;

/** The kernel's binary, should the loader not name the file it wants. */
const WASM_FILE = 'manifold.wasm';

/** Points of a faceted ball that holds the true unit ball. */
const ballAround = (kernel: ManifoldToplevel): readonly Vec3[] => {
  const ball = kernel.Manifold.sphere(1, ROUND_SEGMENTS);
  const shell = kernelToShell(ball);
  ball.delete();
  const flattest = Math.min(
    ...shellTriangles(shell).map(([a, b, c]) => {
      const [u, v] = [add(b, scale(a, -1)), add(c, scale(a, -1))];
      const normal: Vec3 = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
      return (normal[0] * a[0] + normal[1] * a[1] + normal[2] * a[2]) / Math.hypot(...normal);
    }),
  );
  return shellTriangles(shell).flatMap((triangle) => triangle.map((point) => scale(point, 1 / flattest)));
};

interface Store {
  readonly hold: (made: Manifold) => Solid;
  readonly look: (solid: Solid) => Manifold;
  readonly scope: Solids['scope'];
  readonly dispose: () => void;
}

/** Every kernel object by its handle, and the handles of each open scope, innermost last. */
const openStore = (): Store => {
  const held = new Map<Solid, Manifold>();
  const scopes: Solid[][] = [[]];
  const letGo = (solids: readonly Solid[]): void => {
    for (const solid of solids) {
      held.get(solid)?.delete();
      held.delete(solid);
    }
  };
  return {
    hold: (made) => {
      const solid: Solid = { held: 'solid' };
      held.set(solid, made);
      scopes.at(-1)?.push(solid);
      return solid;
    },
    look: (solid) => {
      const found = held.get(solid);
      if (!found) throw new RangeError('this solid has been let go, or another kernel made it');
      return found;
    },
    scope: (work) => {
      scopes.push([]);
      try {
        return work();
      } finally {
        letGo(scopes.pop() ?? []);
      }
    },
    dispose: () => letGo(scopes.splice(0, scopes.length, []).flat()),
  };
};

const solidsOf = (kernel: ManifoldToplevel): Solids => {
  const { Manifold } = kernel;
  const store = openStore();
  const { hold, look } = store;
  const ball = ballAround(kernel);
  const points = ({ vertices, radius }: ConvexShape): readonly Vec3[] =>
    radius > 0 ? vertices.flatMap((vertex) => ball.map((point) => add(vertex, scale(point, radius)))) : vertices;
  return {
    fromShell: (shell) => hold(kernelFromShell(kernel, shell)),
    fromConvex: (shape) => hold(Manifold.hull(points(shape).map(([x, y, z]) => [x, y, z]))),
    union: (parts) => hold(Manifold.union(parts.map(look))),
    difference: (from, taken) => hold(Manifold.difference([look(from), ...taken.map(look)])),
    intersection: (a, b) => hold(Manifold.intersection(look(a), look(b))),
    volume: (solid) => look(solid).volume(),
    toShell: (solid) => kernelToShell(look(solid)),
    scope: store.scope,
    dispose: store.dispose,
  };
};

/**
 * Loads the solid kernel. In a page or a worker `locateWasm` gives the address of the kernel's binary, whose file name
 * it is told; Node finds the binary by itself. Rejects where the binary cannot be had.
 */
export const loadSolids = async (locateWasm?: (file: string) => string): Promise<Solids> => {
  const { default: load } = await import('manifold-3d');
  const kernel = await load(locateWasm ? { locateFile: (file = WASM_FILE) => locateWasm(file) } : undefined);
  kernel.setup();
  return solidsOf(kernel);
};
