import type { Vec2 } from '../../base/index.ts';
import type { CarcassContext } from '../context.ts';
import type { PanelCut } from '../parts.ts';

/** What the holes of a grille are for: unlike those of screws, they are seen. */
export const GRILLE_HOLE = 'speaker grille';

/** Rows of a staggered pattern stand closer than its holes do. */
const ROW_SHARE = Math.sqrt(3) / 2;

/**
 * Holes of a grille before a speaker: a staggered pattern about the middle, every hole wholly inside the round of the
 * diameter that the speaker sounds through.
 */
export const grilleHoles = (at: Vec2, diameter: number, { rule }: CarcassContext): readonly PanelCut[] => {
  const [hole, pitch] = [rule('grille-hole'), rule('grille-pitch')];
  const reach = (diameter - hole) / 2;
  const rows = Math.floor(reach / (pitch * ROW_SHARE));
  const columns = Math.ceil(reach / pitch);
  return Array.from({ length: 2 * rows + 1 }, (_, r) => r - rows).flatMap((r) =>
    Array.from({ length: 2 * columns + 1 }, (_, c) => c - columns).flatMap((c): readonly PanelCut[] => {
      const off: Vec2 = [(c + (r % 2 === 0 ? 0 : 0.5)) * pitch, r * pitch * ROW_SHARE];
      if (Math.hypot(...off) > reach) return [];
      const place: Vec2 = [at[0] + off[0], at[1] + off[1]];
      return [{ kind: 'hole', face: 'a', at: place, diameter: hole, depth: null, why: GRILLE_HOLE }];
    }),
  );
};
