import { useEffect, useState } from 'react';
import { type RevisionStamp, revisionStamp } from '../../../revision/index.ts';
import { sayStamp } from '../../../says/index.ts';
import { Chip } from '../parts/index.ts';
import { useEditor } from '../state/use-editor.ts';

/** A hand that draws is not kept waiting for a hash. */
const REST_MS = 250;

const titleOf = ({ letter, draft, approvals }: RevisionStamp): string => {
  if (draft) return `Changed since revision ${letter} was released`;
  const names = approvals.map(({ who }) => who).join(', ');
  return `Nothing has changed since revision ${letter} was released; ${names === '' ? 'not approved yet' : `approved by ${names}`}`;
};

/** What state the design is in once a letter was released: the letter itself, or a draft after it. */
export const StateChip = () => {
  const design = useEditor((editor) => editor.gesture ?? editor.history.design);
  const [stamp, setStamp] = useState(() => revisionStamp(design));
  useEffect(() => {
    const timer = setTimeout(() => setStamp(revisionStamp(design)), REST_MS);
    return () => clearTimeout(timer);
  }, [design]);
  return (
    <span title={titleOf(stamp)}>
      <Chip>{sayStamp(stamp)}</Chip>
    </span>
  );
};
