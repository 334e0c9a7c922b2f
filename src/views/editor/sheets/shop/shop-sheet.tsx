import { lazy, Suspense, useMemo } from 'react';
import { Button, Heading, SeverityMark, ToggleChip } from '../../parts/index.ts';
import { useBench } from '../../state/bench.ts';
import { useEditorParts } from '../../state/use-editor.ts';
import { CutWarning } from '../cut-warning.tsx';
import sheet from '../sheet.module.css';
import { CutListTable } from './cut-list-table.tsx';
import { HardwareTable } from './hardware-table.tsx';
import { SheetLayoutsPart } from './layouts/sheet-layouts-part.tsx';
import { MassTables } from './mass-table.tsx';
import { PacketBar } from './packet-bar.tsx';
import { PapersPart } from './papers-part.tsx';
import { PartDrawing } from './part-drawing.tsx';
import { PricePart } from './price-part.tsx';
import { type ShopLists, shopLists } from './shop-lists.ts';
import { SHOP_PARTS, showShopPart, useShopPart } from './view.ts';

/** Drawings come when they are first looked at. */
const DrawingsPart = lazy(() => import('./drawings/drawings-part.tsx').then((it) => ({ default: it.DrawingsPart })));

const Lists = ({ lists }: { readonly lists: ShopLists }) => {
  const part = useShopPart();
  if (part === 'sheet layouts') return <SheetLayoutsPart lists={lists} />;
  if (part === 'drawings')
    return (
      <Suspense fallback={null}>
        <DrawingsPart lists={lists} />
      </Suspense>
    );
  if (part === 'hardware') return <HardwareTable lists={lists} />;
  if (part === 'masses') return <MassTables lists={lists} />;
  if (part === 'price') return <PricePart lists={lists} />;
  if (part === 'papers') return <PapersPart lists={lists} />;
  return (
    <>
      <div className="no-print">
        <PartDrawing lists={lists} />
      </div>
      <CutListTable lists={lists} />
    </>
  );
};

/** Stops that nobody accepted: cutting now would cut them into wood. */
const Stops = ({ count }: { readonly count: number }) =>
  count === 0 ? null : (
    <p className={sheet.bar}>
      <SeverityMark severity="stop" />
      {count === 1 ? 'One stop stands' : `${count} stops stand`} against this design. Clear or accept them before you
      cut.
    </p>
  );

/** What leaves for the saw: look first, then save. */
export const ShopSheet = () => {
  const { design, fitOut, judgement, stops, setStep } = useEditorParts((editor) => ({
    judgement: editor.judgement,
    design: editor.history.design,
    fitOut: editor.fitOut,
    stops: (editor.judgement?.inspection.findings ?? []).filter(
      (finding) => finding.severity === 'stop' && finding.accepted === null,
    ).length,
    setStep: editor.setStep,
  }));
  const { catalog } = useBench();
  const part = useShopPart();
  const space = judgement?.space.ok ? judgement.space.value : null;
  const lists = useMemo(() => shopLists(design, fitOut, catalog, space), [design, fitOut, catalog, space]);
  if (lists.drawings.rows.length === 0)
    return (
      <div className={sheet.first}>
        <h2>Nothing to cut yet</h2>
        <p>Add a carcass in the cabinet step; its panels then stand here with their cut sizes.</p>
        <Button look="main" onClick={() => setStep('cabinet')}>
          Go to the cabinet
        </Button>
      </div>
    );
  return (
    <div className={sheet.sheet}>
      <Heading
        title="Shop"
        aside={`${fitOut.panels.length} panels, ${lists.drawings.rows.length} marks, ${lists.hardware.length} lines of hardware`}
      />
      <div className={`${sheet.chips} no-print`}>
        {SHOP_PARTS.map((one) => (
          <ToggleChip key={one} pressed={one === part} onClick={() => showShopPart(one)}>
            {one}
          </ToggleChip>
        ))}
      </div>
      <Stops count={stops} />
      <CutWarning />
      <Lists lists={lists} />
      <PacketBar lists={lists} />
    </div>
  );
};
