import type { Vec3 } from '../base/index.ts';
import type { Catalog, HouseRules, Material } from '../catalog/index.ts';
import type { Carcass, Gear, NodeId, Opening } from '../design/index.ts';

/**
 * How the least room of an opening is counted: `built` is what its fittings need to be built at all, `stocked` also
 * counts the gear that it holds with hand room.
 */
export type Counting = 'built' | 'stocked';

/** What solving one carcass may look at. */
export interface CarcassContext {
  readonly catalog: Catalog;
  readonly rules: HouseRules;
  readonly carcass: Carcass;
  /** The carcass material, or its stand-in. */
  readonly material: Material;
  /** Gear whose place is in the opening itself. */
  readonly gearIn: (opening: NodeId) => readonly Gear[];
  /** Value of a house rule. */
  readonly rule: (id: string) => number;
  /** Least room of an opening whose dividers are of `material`: across × deep × up. */
  readonly least: (opening: Opening, counting: Counting, material: Material) => Vec3;
}
