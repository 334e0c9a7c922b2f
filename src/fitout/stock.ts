import type { Catalog, Material } from '../catalog/index.ts';
import type { NodeId } from '../design/index.ts';
import type { FitProblem } from './parts.ts';

/** Stands in for a material that the catalog does not have, so that the rest of the cabinet still shows. */
const STAND_IN: Omit<Material, 'id'> = {
  name: 'unknown material',
  kind: 'plywood',
  thicknessMm: 18,
  thicknessRangeMm: [18, 18],
  densityKgM3: 700,
  youngMPa: { along: 1, across: 1 },
  bendingStrengthMPa: null,
  creepFactor: 1,
  bend: null,
  grain: 'length',
  sheets: [],
  colour: '#808080',
  source: 'stand-in',
};

export interface Stock {
  readonly material: Material;
  readonly problems: readonly FitProblem[];
}

/** The material of the catalog, or a stand-in under the same id with the problem that says so. */
export const stockOf = (catalog: Catalog, id: string, at: NodeId): Stock => {
  const material = catalog.materials.get(id);
  if (material) return { material, problems: [] };
  return { material: { ...STAND_IN, id }, problems: [unknown('unknown-material', at, id)] };
};

/** A record that the catalog does not have. */
export const unknown = (
  code: 'unknown-material' | 'unknown-hardware' | 'unknown-device',
  at: NodeId,
  id: string,
): FitProblem => ({ code, at, axis: null, needMm: null, haveMm: null, because: [id] });
