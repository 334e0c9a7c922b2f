import { bad, good, type Problem, type Result } from '../base/index.ts';
import type { Closure, Survey } from '../design/index.ts';
import { placeClosure } from './place-closure.ts';
import type { PlacedClosure, VehicleBody } from './space.ts';

/** True when following `carriedBy` from the closure leads back to it. */
const carriesItself = (closure: Closure, byId: ReadonlyMap<string, Closure>): boolean => {
  const seen = new Set<string>();
  let carrier = closure.carriedBy;
  while (carrier !== null && !seen.has(carrier)) {
    if (carrier === closure.id) return true;
    seen.add(carrier);
    carrier = byId.get(carrier)?.carriedBy ?? null;
  }
  return false;
};

const carrierProblems = (closures: Survey['closures']): readonly Problem[] => {
  const byId = new Map<string, Closure>(closures.map((closure) => [closure.id, closure]));
  return closures.flatMap((closure, i): readonly Problem[] => {
    const at = `survey.closures[${i}].carriedBy`;
    if (closure.carriedBy === null) return [];
    if (!byId.has(closure.carriedBy))
      return [{ at, code: 'no-such-closure', expected: 'a closure of the survey', got: closure.carriedBy }];
    return carriesItself(closure, byId)
      ? [{ at, code: 'circle', expected: 'a closure that it does not carry itself', got: closure.carriedBy }]
      : [];
  });
};

export interface ClosuresRead {
  readonly closures: readonly PlacedClosure[];
  readonly bodies: readonly VehicleBody[];
}

/** Every closure as a mover with its closed body in convex pieces, from the hinge to the free edge. */
export const readClosures = (closures: Survey['closures']): Result<ClosuresRead> => {
  const problems: Problem[] = [...carrierProblems(closures)];
  const placed: PlacedClosure[] = [];
  const bodies: VehicleBody[] = [];
  closures.forEach((closure, i) => {
    const read = placeClosure(closure, `survey.closures[${i}]`);
    if (!read.ok) {
      problems.push(...read.error);
      return;
    }
    placed.push(read.value.placed);
    read.value.pieces.forEach((shape, piece) => {
      const id = `${closure.id}/piece-${piece + 1}`;
      bodies.push({ id, origin: closure.id, name: closure.name, kind: 'closure', shape, closure: closure.id });
    });
  });
  return problems.length > 0 ? bad(problems) : good({ closures: placed, bodies });
};
