import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { drawingsToPdf, type PdfWriter } from '../../shop/index.ts';

const face = (name: string): Uint8Array =>
  readFileSync(createRequire(import.meta.url).resolve(`dejavu-fonts-ttf/ttf/${name}.ttf`));

/** Writes pages as PDF with the type face for paper, which is read from the disk once. */
export const openPdfWriter = (): PdfWriter => {
  const faces = { regular: face('DejaVuSansCondensed'), strong: face('DejaVuSansCondensed-Bold') };
  return (pages, about) => drawingsToPdf(pages, about, faces);
};
