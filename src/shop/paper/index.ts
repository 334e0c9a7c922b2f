export * from './paper.ts';
export { paperPages, paperWidth } from './paper-pages.ts';
export { drawingsToPdf, type PaperFaces, type PdfAbout, type PdfWriter } from './pdf.ts';
export { wrapWords } from './wrap-words.ts';
