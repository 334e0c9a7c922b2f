import { useState } from 'react';
import { flushSync } from 'react-dom';
import { CARDS, createGearMap, type Drawing } from '../../../../shop/index.ts';
import { PaperPages } from '../../../paper-pages.tsx';
import { fileStem } from '../../files/file-name.ts';
import { Button, Heading } from '../../parts/index.ts';
import { useDesk } from '../../state/use-desk.ts';
import { useEditorParts, useEditorStore } from '../../state/use-editor.ts';
import { InspectionPaper } from '../inspect/inspection-paper.tsx';
import sheet from '../sheet.module.css';
import { saveOne } from '../shop/save-packet.ts';
import styles from './review.module.css';

const LABELS: { readonly [Name in (typeof CARDS)[number]['name']]: string } = {
  'gear-map': 'Gear map',
  'crew-card': 'Crew card',
  'compartment-labels': 'Compartment labels',
};

/** Makes the pages of a card from the design as it stands; null while that is not inspected. */
const usePages = (): ((card: (typeof CARDS)[number]) => readonly Drawing[] | null) => {
  const store = useEditorStore();
  return ({ draw }) => {
    const { history, fitOut, judgement } = store.getState();
    return judgement && draw(createGearMap({ design: history.design, fitout: fitOut, order: judgement.order }));
  };
};

const useSavePdf = (): ((card: (typeof CARDS)[number], pages: readonly Drawing[]) => Promise<void>) => {
  const store = useEditorStore();
  const tell = useDesk((desk) => desk.tell);
  return async ({ name, about }, pages) => {
    try {
      // The writer of PDF is large: it comes when a first page is saved.
      const { openPdfWriter } = await import('../open-pdf-writer.ts');
      const write = await openPdfWriter();
      const { title } = store.getState().history.design;
      const path = `${fileStem(title)}-${name}.pdf`;
      saveOne({ path, kind: 'book', about, bytes: write(pages, { title: LABELS[name], subject: title }) });
      tell(`${path} saved.`);
    } catch (fault) {
      tell(`${LABELS[name]} could not be saved: ${String(fault)}`, 'trouble');
    }
  };
};

/** What is printed from this step: the inspection sheet, and the cards that hang in the vehicle. */
export const PrintPart = () => {
  const { judgement, fresh } = useEditorParts((editor) => ({
    judgement: editor.judgement,
    fresh: editor.judgement !== null && editor.judgement.edit >= editor.editNumber,
  }));
  const pagesOf = usePages();
  const savePdf = useSavePdf();
  const [pages, setPages] = useState<readonly Drawing[] | null>(null);
  const print = async (next: readonly Drawing[] | null): Promise<void> => {
    // The paper has to stand in the page, its pictures read, before the browser takes its picture of it.
    flushSync(() => setPages(next));
    await Promise.all(Array.from(document.images, (image) => image.decode().catch(() => undefined)));
    window.print();
    setPages(null);
  };
  return (
    <>
      <section className={`${sheet.sheet} no-print`}>
        <Heading title="On paper" aside="black on white" />
        <ul className={styles.papers}>
          <li>
            <span>Inspection sheet</span>
            <Button
              small
              disabled={!judgement}
              onClick={() => void print(null)}
              aria-label="Print the inspection sheet"
            >
              Print
            </Button>
          </li>
          {CARDS.map((card) => (
            <li key={card.name}>
              <span>{LABELS[card.name]}</span>
              <Button
                small
                disabled={!fresh}
                aria-label={`Print: ${LABELS[card.name]}`}
                onClick={() => void print(pagesOf(card))}
              >
                Print
              </Button>
              <Button
                small
                disabled={!fresh}
                aria-label={`Save as PDF: ${LABELS[card.name]}`}
                onClick={() => {
                  const drawn = pagesOf(card);
                  if (drawn) void savePdf(card, drawn);
                }}
              >
                Save as PDF
              </Button>
            </li>
          ))}
        </ul>
      </section>
      {pages === null && judgement ? (
        <InspectionPaper inspection={judgement.inspection} order={judgement.order} fresh={fresh} />
      ) : null}
      {pages === null ? null : <PaperPages pages={pages} />}
    </>
  );
};
