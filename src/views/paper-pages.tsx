import { type Drawing, drawingToSvg } from '../shop/index.ts';
import styles from './paper-pages.module.css';

/** As an image a drawing is only looked at: nothing in it can run. */
export const drawingAddress = (drawing: Drawing, ink?: string): string =>
  `data:image/svg+xml;charset=utf-8,${encodeURIComponent(drawingToSvg(drawing, ink === undefined ? {} : { ink }))}`;

/** A sheet of A4 is narrower than one of Letter; each is printed at its own size. */
const LETTER_MM = 215;

const sheetOf = ({ size: [width, height] }: Drawing): string => {
  const paper = Math.min(width, height) > LETTER_MM ? 'letter' : 'a4';
  return `${paper} ${width > height ? 'across' : 'upright'}`;
};

interface PaperPagesProps {
  readonly pages: readonly Drawing[];
  /** Shown on screen as well, as wide as there is room. */
  readonly onScreen?: boolean;
}

/** Drawings as whole pages: on paper at their true size. */
export const PaperPages = ({ pages, onScreen = false }: PaperPagesProps) => (
  <div className={onScreen ? styles.shown : styles.paper} data-paper>
    {pages.map((page, i) => (
      <img
        // biome-ignore lint/suspicious/noArrayIndexKey: pages of one paper come in a fixed order.
        key={i}
        className={styles.page}
        data-sheet={sheetOf(page)}
        src={drawingAddress(page)}
        alt={`${page.title}, page ${i + 1} of ${pages.length}`}
      />
    ))}
  </div>
);
