export { strokesOf } from './dimensions.ts';
export * from './drawing.ts';
export { type PartWords, panelDrawing } from './panel-drawing.ts';
export { panelFigure } from './panel-figure.ts';
export { drawingToSvg } from './svg.ts';
