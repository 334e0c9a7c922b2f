import { useEffect, useMemo, useState } from 'react';
import {
  ASSEMBLY_ORDER,
  booksOf,
  type Drawing,
  heldDrawings,
  LABEL_SHEET_IDS,
  LABEL_SHEETS,
  type Paper,
  papersOf,
  shopWork,
} from '../../../../shop/index.ts';
import { PaperPages } from '../../../paper-pages.tsx';
import { fileStem } from '../../files/file-name.ts';
import { Button, ChoiceField, Heading, NumberField } from '../../parts/index.ts';
import { useDesk } from '../../state/use-desk.ts';
import { useUnits } from '../../state/use-units.ts';
import { cutAgainOf } from '../cut-warning.tsx';
import sheet from '../sheet.module.css';
import { OrderWait } from './drawings/order-wait.tsx';
import { useOrder } from './drawings/use-order.ts';
import { chooseLabels, useLabelChoice } from './label-choice.ts';
import { useSheetLayouts } from './layouts/use-sheet-layouts.ts';
import styles from './papers.module.css';
import { type PacketWish, packetFront, saveOne } from './save-packet.ts';
import type { ShopLists } from './shop-lists.ts';
import { usePacketWish } from './use-packet-wish.ts';
import { FIRST_PAPER, showShopPaper, useShopPaper } from './view.ts';

/** Where the name of the file says too little. */
const TITLES: Readonly<Record<string, string>> = {
  inspection: 'Inspection sheet',
  installation: 'Installation check',
  layouts: 'Sheets with cuts',
  drawings: 'Part drawings',
};

/** `weigh-record` is the Weigh record. */
const titleOf = ({ name }: Paper): string => {
  const words = name.replaceAll('-', ' ');
  return TITLES[name] ?? `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
};

/** The first page names what the whole packet lacks, so the whole packet is made for it; null until then. */
const useFront = (wish: PacketWish | null, wanted: boolean): readonly Drawing[] | null => {
  const [made, setMade] = useState<readonly Drawing[] | null>(null);
  useEffect(() => {
    if (!wanted || wish === null) return undefined;
    const stopper = new AbortController();
    setMade(null);
    packetFront(wish, stopper.signal).then(setMade, () => undefined);
    return () => stopper.abort();
  }, [wanted, wish]);
  return made;
};

const LabelFields = () => {
  const { labelSheet, firstLabel } = useLabelChoice(useUnits());
  const { columns, rows } = LABEL_SHEETS[labelSheet];
  return (
    <div className={`${styles.fields} no-print`}>
      <ChoiceField
        label="Labels in hand"
        value={labelSheet}
        choices={LABEL_SHEET_IDS.map((id) => ({ value: id, label: LABEL_SHEETS[id].about }))}
        onCommit={(next) => chooseLabels({ labelSheet: next, firstLabel: 1 })}
      />
      <NumberField
        label="First free label"
        value={firstLabel}
        whole
        min={1}
        max={columns * rows}
        onCommit={(next) => chooseLabels({ firstLabel: next })}
      />
    </div>
  );
};

const useSavePdf = (lists: ShopLists): ((paper: Paper) => Promise<void>) => {
  const tell = useDesk((desk) => desk.tell);
  return async (paper) => {
    const { title } = lists.input.design;
    const path = `${fileStem(title)}-${paper.name}.pdf`;
    try {
      const { openPdfWriter } = await import('../open-pdf-writer.ts');
      const write = await openPdfWriter();
      saveOne({
        path,
        kind: 'paper',
        about: paper.about,
        bytes: write(paper.pages(), { title: paper.about, subject: title }),
      });
      tell(`${path} saved.`);
    } catch (fault) {
      tell(`${path} could not be saved: ${String(fault)}`, 'trouble');
    }
  };
};

/** Every paper but the first, from the design as it stands; none until it is inspected and laid out. */
const usePapers = (lists: ShopLists, wish: PacketWish | null): readonly Paper[] => {
  const { layouts } = useSheetLayouts(lists);
  return useMemo(() => {
    if (!layouts || !wish) return [];
    const { lists: of, labels, ...judged } = wish;
    const cutAgain = cutAgainOf(of.input.design, of.input.catalog);
    const work = shopWork(
      { ...of.input, ...judged, ...labels, layouts, cutAgain },
      heldDrawings(of.drawings, judged.inspection),
    );
    return [...papersOf(work), ...booksOf(work)];
  }, [layouts, wish]);
};

/** Pages of a paper, or the sentence that says why there are none. */
const Shown = ({ paper }: { readonly paper: Paper }) => {
  const pages = useMemo((): readonly Drawing[] | string => {
    try {
      return paper.pages();
    } catch (fault) {
      return `This paper could not be made: ${fault instanceof Error ? fault.message : String(fault)}`;
    }
  }, [paper]);
  if (typeof pages === 'string') return <p role="alert">{pages}</p>;
  return pages.length === 0 ? <p>Nothing to put on this paper yet.</p> : <PaperPages pages={pages} onScreen />;
};

/** Every paper of the packet as it will be printed; what is chosen here is what the browser prints. */
export const PapersPart = ({ lists }: { readonly lists: ShopLists }) => {
  const wish = usePacketWish(lists);
  const chosen = useShopPaper();
  const front = useFront(wish, chosen === FIRST_PAPER);
  const others = usePapers(lists, wish);
  const savePdf = useSavePdf(lists);
  const first: Paper = {
    name: FIRST_PAPER,
    about: 'what is in the packet, and what is missing',
    pages: () => front ?? [],
  };
  const papers = [first, ...others];
  const paper = papers.find(({ name }) => name === chosen) ?? first;
  const [order, drawAgain] = useOrder(lists.input, paper.name === ASSEMBLY_ORDER);
  const undrawn = paper.name === ASSEMBLY_ORDER && order.is !== 'there';
  const waits = wish === null || (paper === first && front === null) || undrawn;
  return (
    <section className={sheet.group} aria-label="Papers">
      <ul className={`${styles.list} no-print`} aria-label="Papers of the packet">
        {papers.map((one) => (
          <li key={one.name}>
            <button
              type="button"
              className={styles.paper}
              aria-pressed={one === paper}
              title={one.about}
              onClick={() => showShopPaper(one.name)}
            >
              {titleOf(one)}
            </button>
          </li>
        ))}
      </ul>
      <div className="no-print">
        <Heading
          level={3}
          title={titleOf(paper)}
          aside={paper.about}
          actions={
            <Button small disabled={waits} onClick={() => void savePdf(paper)}>
              Save as PDF
            </Button>
          }
        />
      </div>
      {paper.name === 'labels' ? <LabelFields /> : null}
      {undrawn ? (
        <OrderWait state={order} again={drawAgain} />
      ) : waits ? (
        <p role="status">{wish === null ? 'Waits for the inspection.' : 'Making the first page.'}</p>
      ) : (
        <Shown paper={paper} />
      )}
    </section>
  );
};
