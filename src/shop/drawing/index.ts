export * from './drawing.ts';
export { panelFigure } from './panel-figure.ts';
export { drawingToSvg } from './svg.ts';
