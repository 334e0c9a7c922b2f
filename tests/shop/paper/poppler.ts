import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { PaperFaces } from '../../../src/shop/paper/pdf.ts';

const face = (name: string): Uint8Array =>
  readFileSync(new URL(`../../../node_modules/dejavu-fonts-ttf/ttf/${name}.ttf`, import.meta.url));

export const faces: PaperFaces = {
  regular: face('DejaVuSansCondensed'),
  strong: face('DejaVuSansCondensed-Bold'),
};

/** Runs a poppler program on the file; `-` in its arguments stands for the file. */
const onFile = <T>(pdf: Uint8Array, work: (file: string, folder: string) => T): T => {
  const folder = mkdtempSync(join(tmpdir(), 'paper-'));
  try {
    const file = join(folder, 'paper.pdf');
    writeFileSync(file, pdf);
    return work(file, folder);
  } finally {
    rmSync(folder, { recursive: true });
  }
};

/** The words of a PDF as poppler reads them. */
export const pdfText = (pdf: Uint8Array): string =>
  onFile(pdf, (file) => execFileSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8', maxBuffer: 2 ** 28 }));

/** Names and embedding of the faces: one line each. */
export const pdfFonts = (pdf: Uint8Array): readonly string[] =>
  onFile(pdf, (file) => execFileSync('pdffonts', [file], { encoding: 'utf8' }).trim().split('\n').slice(2));

export interface Picture {
  readonly width: number;
  readonly height: number;
  /** 0 black to 255 white, row by row from the top. */
  readonly grey: Uint8Array;
}

const pictureIn = (bytes: Buffer): Picture => {
  const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(bytes.subarray(0, 40).toString('latin1'));
  if (!head) throw new Error('not a PGM');
  return { width: Number(head[1]), height: Number(head[2]), grey: bytes.subarray(head[0].length) };
};

/** One page as grey dots, as a printer would set them. */
export const pdfPicture = (pdf: Uint8Array, page: number, dotsPerInch: number): Picture => {
  let picture: Picture | null = null;
  eachPicture(pdf, page, page, dotsPerInch, (drawn) => {
    picture = drawn;
  });
  if (!picture) throw new Error(`no page ${page}`);
  return picture;
};

/** Pages that poppler draws in one go: their dots lie on the disk all at once. */
const PAGES_AT_ONCE = 12;

/** Shows pages `first` to `last`, counted from 1, as grey dots, one after the other. */
export const eachPicture = (
  pdf: Uint8Array,
  first: number,
  last: number,
  dotsPerInch: number,
  see: (picture: Picture, page: number) => void,
): void =>
  onFile(pdf, (file, folder) => {
    for (let from = first; from <= last; from += PAGES_AT_ONCE) {
      const to = Math.min(last, from + PAGES_AT_ONCE - 1);
      const pages = ['-f', `${from}`, '-l', `${to}`];
      execFileSync('pdftoppm', ['-gray', '-r', `${dotsPerInch}`, ...pages, file, join(folder, 'page')]);
      const drawn = readdirSync(folder)
        .filter((name) => name.endsWith('.pgm'))
        .sort();
      drawn.forEach((name, i) => {
        see(pictureIn(readFileSync(join(folder, name))), from + i);
        rmSync(join(folder, name));
      });
    }
  });

/** One word with the box of its line, in points from the upper left corner of the page. */
export interface Word {
  readonly words: string;
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

export interface PageWords {
  readonly width: number;
  readonly height: number;
  readonly words: readonly Word[];
}

const SIGNS: Readonly<Record<string, string>> = { '&lt;': '<', '&gt;': '>', '&quot;': '"', '&amp;': '&' };

/** Every word of every page with its box, as poppler finds them. */
export const pdfWords = (pdf: Uint8Array): readonly PageWords[] => {
  const found = onFile(pdf, (file) =>
    execFileSync('pdftotext', ['-bbox', file, '-'], { encoding: 'utf8', maxBuffer: 2 ** 28 }),
  );
  return [...found.matchAll(/<page width="([\d.]+)" height="([\d.]+)">(.*?)<\/page>/gs)].map(
    ([, width, height, inside = '']): PageWords => ({
      width: Number(width),
      height: Number(height),
      words: [...inside.matchAll(/<word xMin="(.+?)" yMin="(.+?)" xMax="(.+?)" yMax="(.+?)">(.*?)<\/word>/g)].map(
        ([, x0, y0, x1, y1, words = '']) => ({
          words: words.replace(/&(lt|gt|quot|amp);/g, (sign) => SIGNS[sign] ?? sign),
          x0: Number(x0),
          y0: Number(y0),
          x1: Number(x1),
          y1: Number(y1),
        }),
      ),
    }),
  );
};
