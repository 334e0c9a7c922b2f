export {
  buildSolids,
  createSolidBuilder,
  isBare,
  type RigidSolids,
  type SolidSources,
} from './build-solids.ts';
export { type BodyPaint, pushConvex } from './convex-solid.ts';
export { type Housed, housedParts, NOT_HOUSED } from './housed.ts';
export { emptyMesh, type LineData, type MeshData, type MeshNumbers, type Numbers } from './mesh-data.ts';
export { FINISHES, type Finish } from './paints.ts';
export { pushPanel, type Triangulate } from './panel-solid.ts';
export { fullLight } from './shade.ts';
export { type SkinFaces, skinFaces } from './skin-faces.ts';
export { triangulate } from './triangulate.ts';
export { lengthwiseLines, stationRings } from './vehicle-lines.ts';
