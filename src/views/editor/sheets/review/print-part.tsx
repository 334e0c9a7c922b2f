import { useState } from 'react';
import { flushSync } from 'react-dom';
import { createGearMap, type GearMapData } from '../../../../shop/index.ts';
import { CompartmentLabels, GearMap } from '../../../gear-map.tsx';
import { Button, Heading } from '../../parts/index.ts';
import { useEditorParts, useEditorStore } from '../../state/use-editor.ts';
import { InspectionPaper } from '../inspect/inspection-paper.tsx';
import sheet from '../sheet.module.css';

type Paper =
  | { readonly kind: 'inspection' }
  | { readonly kind: 'crew-card'; readonly data: GearMapData }
  | { readonly kind: 'labels'; readonly data: GearMapData };

/** What is printed from this step: the inspection sheet, or the cards that hang in the vehicle. */
export const PrintPart = () => {
  const store = useEditorStore();
  const { judgement, fresh } = useEditorParts((editor) => ({
    judgement: editor.judgement,
    fresh: editor.judgement !== null && editor.judgement.edit >= editor.editNumber,
  }));
  const [paper, setPaper] = useState<Paper>({ kind: 'inspection' });
  const print = (next: Paper): void => {
    // The paper has to stand in the page before the browser takes its picture of it.
    flushSync(() => setPaper(next));
    window.print();
    setPaper({ kind: 'inspection' });
  };
  const printMap = (kind: 'crew-card' | 'labels'): void => {
    const { history, fitOut, judgement: judged } = store.getState();
    if (judged) print({ kind, data: createGearMap({ design: history.design, fitout: fitOut, order: judged.order }) });
  };
  return (
    <>
      <section className={`${sheet.sheet} no-print`}>
        <Heading title="On paper" aside="black on white" />
        <div className={sheet.bar}>
          <Button disabled={!judgement} onClick={() => print({ kind: 'inspection' })}>
            Print the inspection sheet
          </Button>
          <Button disabled={!fresh} onClick={() => printMap('crew-card')}>
            Print the crew card
          </Button>
          <Button disabled={!fresh} onClick={() => printMap('labels')}>
            Print compartment labels
          </Button>
        </div>
      </section>
      {paper.kind === 'inspection' && judgement ? (
        <InspectionPaper inspection={judgement.inspection} order={judgement.order} fresh={fresh} />
      ) : null}
      {paper.kind === 'crew-card' ? <GearMap data={paper.data} /> : null}
      {paper.kind === 'labels' ? <CompartmentLabels data={paper.data} /> : null}
    </>
  );
};
