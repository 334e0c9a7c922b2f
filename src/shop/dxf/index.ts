export { HELD_LAYER, heldStrokes } from './held-words.ts';
export { layerTableCsv } from './layer-table.ts';
export { dxfPage, partDxf } from './part-dxf.ts';
