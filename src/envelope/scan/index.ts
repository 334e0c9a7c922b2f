export * from './align-marks.ts';
export * from './check-scan.ts';
export * from './cut-scan.ts';
export * from './read-scan.ts';
export * from './refine.ts';
export * from './scan-differences.ts';
export { type ScanMesh, scaledScan } from './scan-mesh.ts';
export * from './station-from-scan.ts';
export { makeTriangleGrid } from './triangle-grid.ts';
