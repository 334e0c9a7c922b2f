import { Button, Heading } from '../../parts/index.ts';
import { useEditorParts } from '../../state/use-editor.ts';
import { InspectionPaper } from '../inspect/inspection-paper.tsx';
import sheet from '../sheet.module.css';

/** What the chief is shown. Today: the inspection sheet on paper; what will come is said plainly. */
export const ReviewSheet = () => {
  const { judgement, fresh } = useEditorParts((editor) => ({
    judgement: editor.judgement,
    fresh: editor.judgement !== null && editor.judgement.edit >= editor.editNumber,
  }));
  return (
    <>
      <div className={`${sheet.sheet} no-print`}>
        <Heading title="Review" aside="draft" />
        <p>
          Sit down with the chief before metal is cut. Today that works at this window, with the bay beside you, and
          with the inspection sheet on paper: it lists every finding, who accepted what and why, weight and balance in
          each loading case, and has lines to sign on.
        </p>
        <div className={sheet.bar}>
          <Button look="main" disabled={!judgement} onClick={() => window.print()}>
            Print the inspection sheet
          </Button>
        </div>
        <div className={sheet.later}>
          <p>Not here yet:</p>
          <ul style={{ listStyle: 'disc', paddingLeft: '1.4em' }}>
            <li>revisions A, B, C frozen as they were shown, and what changed between two of them;</li>
            <li>a review copy: one file for the chief's tablet, with the bay, a gear finder and room for comments;</li>
            <li>the reply brought back in, and the record of who signed.</li>
          </ul>
        </div>
      </div>
      {judgement ? <InspectionPaper inspection={judgement.inspection} order={judgement.order} fresh={fresh} /> : null}
    </>
  );
};
