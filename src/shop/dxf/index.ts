export { layerTableCsv } from './layer-table.ts';
export { partDxf } from './part-dxf.ts';
