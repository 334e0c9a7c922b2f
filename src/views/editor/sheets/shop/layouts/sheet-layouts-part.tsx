import { useState } from 'react';
import { formatLength } from '../../../../../base/index.ts';
import { boardRemarks, type LayoutJob, type SheetLayouts, sheetsText, stockName } from '../../../../../shop/index.ts';
import { Button, Heading } from '../../../parts/index.ts';
import { useUnits } from '../../../state/use-units.ts';
import type { ShopLists } from '../shop-lists.ts';
import { StockPart } from '../stock/stock-part.tsx';
import { CutTable } from './cut-table.tsx';
import styles from './layouts.module.css';
import { showSheet } from './layouts-store.ts';
import { type ListedSheet, sheetList } from './sheet-list.ts';
import { SheetPicture } from './sheet-picture.tsx';
import { type SheetLayoutsInUse, useSheetLayouts } from './use-sheet-layouts.ts';

const PERCENT = 100;
/** Longest side of a thumbnail on screen, px. */
const THUMB = 84;

interface ThumbsProps {
  readonly sheets: readonly ListedSheet[];
  readonly shown: number;
}

/** Every sheet of every board, small; a press shows it. */
const Thumbs = ({ sheets, shown }: ThumbsProps) => {
  const longest = Math.max(...sheets.map(({ sheet }) => sheet.length));
  return (
    <ul className={styles.thumbs} aria-label="Sheets">
      {sheets.map(({ laid, sheet, at }, i) => (
        <li key={`${laid.board.key} ${at}`}>
          <button type="button" className={styles.thumb} aria-pressed={i === shown} onClick={() => showSheet(i)}>
            <svg
              aria-hidden="true"
              width={(THUMB * sheet.length) / longest}
              height={(THUMB * sheet.width) / longest}
              viewBox={`0 ${-sheet.width} ${sheet.length} ${sheet.width}`}
            >
              <rect y={-sheet.width} width={sheet.length} height={sheet.width} className={styles.stock} />
              {sheet.parts.map((part) => (
                <rect
                  key={`${part.x} ${part.y}`}
                  x={part.x}
                  y={-(part.y + part.width)}
                  width={part.length}
                  height={part.width}
                  className={styles.thumbPart}
                />
              ))}
            </svg>
            <span>sheet {at + 1}</span>
            <small>{laid.board.materialName}</small>
            {sheet.offcut ? <small>{stockName(sheet)}</small> : null}
          </button>
        </li>
      ))}
    </ul>
  );
};

const Fact = ({ title, value, aside }: { readonly title: string; readonly value: string; readonly aside: string }) => (
  <div className={styles.fact}>
    <dt>{title}</dt>
    <dd>
      <strong>{value}</strong> <span>{aside}</span>
    </dd>
  </div>
);

/** How many sheets of the board that is looked at, how good that is, how much of them is used, what they cost. */
const Facts = ({ listed: { laid } }: { readonly listed: ListedSheet }) => {
  const { layout, proof, keptOffcuts } = laid;
  return (
    <dl className={styles.facts}>
      <Fact
        title="Sheets of this board"
        value={laid.offcuts === 0 ? String(laid.sheets) : sheetsText(laid)}
        aside={proof}
      />
      <Fact
        title="Used"
        value={`${(layout.usedShare * PERCENT).toFixed(1)} %`}
        aside={`${keptOffcuts} offcut${keptOffcuts === 1 ? '' : 's'} kept`}
      />
      <Fact title="Price" value={layout.price.toFixed(0)} aside="this board only" />
    </dl>
  );
};

const Improve = ({ use }: { readonly use: SheetLayoutsInUse }) => (
  <div className={`${styles.improve} no-print`}>
    {use.improving ? <Button onClick={use.stop}>Stop</Button> : <Button onClick={use.improve}>Keep improving</Button>}
    <span role="status">{use.improving ? 'looking for better layouts' : (use.trouble ?? '')}</span>
  </div>
);

/** The last layouts there were while new ones are made, so that nothing jumps away under the pen. */
const useLast = (layouts: SheetLayouts | null): SheetLayouts | null => {
  const [last, setLast] = useState(layouts);
  if (layouts !== null && layouts !== last) setLast(layouts);
  return layouts ?? last;
};

/** Parts on stock sheets with the sequence of cuts, and the stock that they are cut from. */
export const SheetLayoutsPart = ({ lists }: { readonly lists: ShopLists }) => {
  const units = useUnits();
  const use = useSheetLayouts(lists);
  const layouts = useLast(use.layouts);
  if (layouts === null) return <p role="status">Laying out the sheets.</p>;
  const sheets = sheetList(layouts);
  const shown = Math.min(use.shown, sheets.length - 1);
  const listed = sheets[shown];
  const parts = new Map(lists.drawings.marks.parts.map((part) => [part.mark, part]));
  const remarks = layouts.boards.flatMap((laid) => boardRemarks(laid, units));
  const size = (mm: number): string => formatLength(mm, units);
  const kerfWords = ({ cut, kerf }: LayoutJob): string => (cut === 'shear' ? 'sheared' : `kerf ${size(kerf)}`);
  return (
    <section className={styles.layouts} aria-label="Sheet layouts" aria-busy={use.layouts === null}>
      {remarks.map((remark) => (
        <p key={remark} className={styles.remark}>
          {remark}
        </p>
      ))}
      {listed === undefined ? null : (
        <>
          <Heading
            level={3}
            title={`Sheet ${listed.at + 1} of ${listed.laid.layout.sheets.length}`}
            aside={`${listed.laid.board.materialName} · ${listed.sheet.offcut ? `${stockName(listed.sheet)} · ` : ''}${size(listed.sheet.length)} × ${size(listed.sheet.width)} ${units} · ${kerfWords(listed.laid.board.job)}`}
          />
          <SheetPicture listed={listed} parts={parts} />
          <Thumbs sheets={sheets} shown={shown} />
          <Facts listed={listed} />
          <Improve use={use} />
        </>
      )}
      <StockPart layouts={layouts} material={listed?.laid.board.material ?? null} />
      {listed === undefined ? null : (
        <>
          <Heading
            level={3}
            title="Cut sequence"
            aside={`sheet ${listed.at + 1} of ${listed.laid.board.materialName}`}
          />
          <CutTable listed={listed} parts={parts} />
        </>
      )}
    </section>
  );
};
