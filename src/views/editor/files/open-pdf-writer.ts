import regularAddress from 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed.ttf?url';
import strongAddress from 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed-Bold.ttf?url';
import { drawingsToPdf, type PdfWriter } from '../../../shop/index.ts';

const fetched = async (address: string): Promise<Uint8Array> => {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`the type face for paper is not there (${answer.status})`);
  return new Uint8Array(await answer.arrayBuffer());
};

/** Writes pages as PDF in the window; the type face for paper comes from where the window came from. */
export const openPdfWriter = async (): Promise<PdfWriter> => {
  const [regular, strong] = await Promise.all([fetched(regularAddress), fetched(strongAddress)]);
  return (pages, about) => drawingsToPdf(pages, about, { regular, strong });
};
