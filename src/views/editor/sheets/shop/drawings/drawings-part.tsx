import { useEffect, useMemo, useState } from 'react';
import { changeDocument } from '../../../../../design/index.ts';
import type { Inspection } from '../../../../../inspection/index.ts';
import { ASSEMBLY_ORDER, type Drawing, type Drawings, heldPages, routerFile } from '../../../../../shop/index.ts';
import { drawingAddress, PaperPages } from '../../../../paper-pages.tsx';
import { fileStem } from '../../../files/file-name.ts';
import { Button, type Choice, ChoiceField, useTheme } from '../../../parts/index.ts';
import { useDesk } from '../../../state/use-desk.ts';
import { useEditorParts } from '../../../state/use-editor.ts';
import { useNames } from '../../../state/use-names.ts';
import { useUnits } from '../../../state/use-units.ts';
import { saveOne } from '../save-packet.ts';
import type { ShopLists } from '../shop-lists.ts';
import { useFreshInspection } from '../use-packet-wish.ts';
import { drawingChoices } from './drawing-choices.ts';
import styles from './drawings.module.css';
import { OrderWait } from './order-wait.tsx';
import { useChosenDrawing } from './use-chosen-drawing.ts';
import { useOrder } from './use-order.ts';

const INK = { light: '#1d2328', dark: '#e8e4da' } as const;
const PROJECTIONS: readonly Choice<'third' | 'first'>[] = [
  { value: 'third', label: 'third angle' },
  { value: 'first', label: 'first angle' },
];

/** The sheets of what is chosen, drawn once the choice is on screen; null until then, and until it may be drawn here. */
const useSheets = (drawings: Drawings, name: string, ready: boolean): readonly Drawing[] | null => {
  const [drawn, setDrawn] = useState<{
    readonly of: Drawings;
    readonly name: string;
    readonly sheets: readonly Drawing[];
  } | null>(null);
  useEffect(() => {
    if (!ready) return undefined;
    const timer = setTimeout(() => setDrawn({ of: drawings, name, sheets: drawings.draw(name) ?? [] }), 30);
    return () => clearTimeout(timer);
  }, [drawings, name, ready]);
  return drawn !== null && drawn.of === drawings && drawn.name === name ? drawn.sheets : null;
};

interface SaveBarProps {
  readonly name: string;
  readonly sheets: readonly Drawing[];
  readonly drawings: Drawings;
  readonly title: string;
  /** Null until the design is inspected: nothing is saved before, since what is held back has to say so. */
  readonly inspection: Inspection | null;
}

const SaveBar = ({ name, sheets, drawings, title, inspection }: SaveBarProps) => {
  const tell = useDesk((desk) => desk.tell);
  const units = useUnits();
  const about = sheets[0]?.title ?? name;
  const path = `${fileStem(title)}-${name}`;
  const savePdf = async (): Promise<void> => {
    try {
      // The writer of PDF is large: it comes when a first page is saved.
      const { openPdfWriter } = await import('../../open-pdf-writer.ts');
      const write = await openPdfWriter();
      saveOne({ path: `${path}.pdf`, kind: 'book', about, bytes: write(sheets, { title: about, subject: title }) });
      tell(`${path}.pdf saved: print it at actual size.`);
    } catch (fault) {
      tell(`The drawing could not be saved: ${String(fault)}`, 'trouble');
    }
  };
  const dxf = inspection && routerFile(drawings, name, units, inspection);
  return (
    <div className={styles.save}>
      <Button small disabled={inspection === null || sheets.length === 0} onClick={() => void savePdf()}>
        Save as PDF
      </Button>
      {dxf === null ? null : (
        <Button
          small
          disabled={inspection === null}
          onClick={() => saveOne({ path: `${path}.dxf`, kind: 'router', about, text: dxf })}
        >
          Save as DXF
        </Button>
      )}
      <span className={styles.count}>{sheets.length === 1 ? '1 sheet' : `${sheets.length} sheets`}</span>
    </div>
  );
};

/** Every drawing, the anchor templates and the assembly order as they come on paper. */
export const DrawingsPart = ({ lists }: { readonly lists: ShopLists }) => {
  const { drawings } = lists;
  const { design, edit } = useEditorParts((editor) => ({ design: editor.history.design, edit: editor.edit }));
  const { nameOf } = useNames();
  const { shown } = useTheme();
  const choices = drawingChoices(drawings, nameOf);
  const { name, choose } = useChosenDrawing(choices);
  const [order, drawAgain] = useOrder(lists.input, name === ASSEMBLY_ORDER);
  const waits = name === ASSEMBLY_ORDER && order.is !== 'there';
  const drawn = useSheets(drawings, name, !waits);
  const inspection = useFreshInspection();
  const sheets = useMemo(() => (drawn && inspection ? heldPages(drawn, inspection) : drawn), [drawn, inspection]);
  return (
    <section aria-label="Drawings">
      <div className={`${styles.bar} no-print`}>
        <ChoiceField label="Drawing" value={name} choices={choices} onCommit={choose} />
        <ChoiceField
          label="Views turned in"
          value={design.projection}
          choices={PROJECTIONS}
          onCommit={(projection) => edit(`draw in ${projection} angle`, (now) => changeDocument(now, { projection }))}
        />
        {sheets === null ? null : (
          <SaveBar name={name} sheets={sheets} drawings={drawings} title={design.title} inspection={inspection} />
        )}
      </div>
      {waits ? (
        <OrderWait state={order} again={drawAgain} />
      ) : sheets === null ? (
        <p role="status">Drawing…</p>
      ) : (
        sheets.map((drawing, i) => (
          <img
            // biome-ignore lint/suspicious/noArrayIndexKey: sheets of one paper come in a fixed order
            key={i}
            className={`${styles.sheet} no-print`}
            src={drawingAddress(drawing, INK[shown])}
            alt={sheets.length === 1 ? drawing.title : `${drawing.title}, sheet ${i + 1} of ${sheets.length}`}
          />
        ))
      )}
      {sheets === null ? null : <PaperPages pages={sheets} />}
    </section>
  );
};
