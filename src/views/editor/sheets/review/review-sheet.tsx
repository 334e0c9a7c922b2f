import { useMemo } from 'react';
import { revisionStamp } from '../../../../revision/index.ts';
import { sayStamp } from '../../../../says/index.ts';
import { Heading } from '../../parts/index.ts';
import { useEditor } from '../../state/use-editor.ts';
import sheet from '../sheet.module.css';
import { ComparePart } from './compare/compare-part.tsx';
import { CopyPart } from './copy-part.tsx';
import { PrintPart } from './print-part.tsx';
import { RecordPart } from './record-part.tsx';
import { RepliesPart } from './replies-part.tsx';
import styles from './review.module.css';
import { RevisionsPart } from './revisions-part.tsx';

/** Revisions, what changed, the chief's copy and the answer to it, and the record that stays with the vehicle. */
export const ReviewSheet = () => {
  // While an older revision is held up in the bay, the sheet goes on about the present design.
  const design = useEditor((editor) => editor.gesture ?? editor.history.design);
  const stamp = useMemo(() => revisionStamp(design), [design]);
  return (
    <>
      <div className={`${sheet.sheet} ${styles.sheet} no-print`}>
        <Heading title="Review" aside={sayStamp(stamp)} />
        <RevisionsPart stamp={stamp} />
        <ComparePart />
        <CopyPart />
        <RepliesPart stamp={stamp} />
        <RecordPart />
      </div>
      <PrintPart />
    </>
  );
};
