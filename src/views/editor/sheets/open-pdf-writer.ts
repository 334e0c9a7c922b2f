import regularAddress from 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed.ttf?url';
import strongAddress from 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed-Bold.ttf?url';
import { drawingsToPdf, type PaperFaces, type PdfWriter } from '../../../shop/index.ts';

const face = async (address: string): Promise<Uint8Array> => {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`the type face for paper is not there (${answer.status})`);
  return new Uint8Array(await answer.arrayBuffer());
};

let faces: Promise<PaperFaces> | null = null;

/** The type face for paper, fetched when a paper is first written; tried again after a failure. */
const paperFaces = (): Promise<PaperFaces> => {
  faces ??= Promise.all([face(regularAddress), face(strongAddress)]).then(
    ([regular, strong]) => ({ regular, strong }),
    (fault: unknown) => {
      faces = null;
      throw fault;
    },
  );
  return faces;
};

/** Writes pages as PDF: the same bytes as from the terminal. */
export const openPdfWriter = async (): Promise<PdfWriter> => {
  const read = await paperFaces();
  return (pages, about) => drawingsToPdf(pages, about, read);
};
