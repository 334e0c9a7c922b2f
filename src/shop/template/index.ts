export { templateDxf } from './template-dxf.ts';
export { type TemplateFigure, templateFigure } from './template-figure.ts';
export { type TemplateWords, templateSheets, tilesOf } from './template-sheets.ts';
