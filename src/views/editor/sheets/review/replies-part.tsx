import { useMemo, useRef, useState } from 'react';
import { settleRemark } from '../../../../design/index.ts';
import {
  mergeReply,
  type PlacedRemark,
  placedRemarks,
  type RevisionStamp,
  readReply,
} from '../../../../revision/index.ts';
import { sayMerged, sayOlder, sayOutcome, sayProblem, sayRemark } from '../../../../says/index.ts';
import { Button, Heading } from '../../parts/index.ts';
import { useDesk } from '../../state/use-desk.ts';
import { useEditor } from '../../state/use-editor.ts';
import { useNames } from '../../state/use-names.ts';
import sheet from '../sheet.module.css';
import { By } from './by.tsx';
import styles from './review.module.css';
import { rememberedName, today } from './today.ts';
import { WordsField } from './words-field.tsx';

const RemarkLine = ({ placed }: { readonly placed: PlacedRemark }) => {
  const { nameOf } = useNames();
  const edit = useEditor((editor) => editor.edit);
  const select = useEditor((editor) => editor.select);
  const selected = useEditor((editor) => placed.node !== null && editor.selection.includes(placed.node));
  const [because, setBecause] = useState('');
  const { reply, index, outcome, node } = placed;
  const by = { who: rememberedName() || 'the shop', on: today() };
  const older = sayOlder(placed);
  return (
    <li className={sheet.card} data-selected={selected}>
      <p>
        {node === null ? (
          <bdi>{sayRemark(placed, nameOf)}</bdi>
        ) : (
          <button type="button" className={sheet.pick} onClick={() => select([node])}>
            <bdi>{sayRemark(placed, nameOf)}</bdi>
          </button>
        )}
      </p>
      <p className={`${sheet.soft} ${sheet.small}`}>
        <By {...reply} />
        {older === '' ? '' : ` · ${older}`} · <bdi>{sayOutcome(placed)}</bdi>
      </p>
      {outcome.state === 'open' ? (
        <div className={sheet.bar}>
          <Button
            small
            onClick={() =>
              edit('settle a remark', (design) => settleRemark(design, reply.id, index, { state: 'done', ...by }))
            }
          >
            Done
          </Button>
          <WordsField label="Not done because" value={because} maxLength={2000} onChange={setBecause} />
          <Button
            small
            disabled={because.trim() === ''}
            onClick={() =>
              edit('settle a remark', (design) =>
                settleRemark(design, reply.id, index, { state: 'not-done', because: because.trim(), ...by }),
              )
            }
          >
            Not done
          </Button>
        </div>
      ) : (
        <div className={sheet.bar}>
          <Button
            small
            onClick={() =>
              edit('open a remark again', (design) => settleRemark(design, reply.id, index, { state: 'open' }))
            }
          >
            Open it again
          </Button>
        </div>
      )}
    </li>
  );
};

/** Replies brought in from files or pasted text; each remark stands with its part and says what became of it. */
export const RepliesPart = ({ stamp }: { readonly stamp: RevisionStamp }) => {
  const design = useEditor((editor) => editor.gesture ?? editor.history.design);
  const edit = useEditor((editor) => editor.edit);
  const file = useRef<HTMLInputElement>(null);
  const tell = useDesk((desk) => desk.tell);
  const [pasted, setPasted] = useState('');
  const [trouble, setTrouble] = useState<readonly string[]>([]);
  const remarks = useMemo(() => placedRemarks(design, stamp.sha256), [design, stamp.sha256]);
  const open = remarks.filter(({ outcome }) => outcome.state === 'open').length;
  const bringIn = (texts: readonly string[]): void => {
    const read = texts.map((text) => readReply(text));
    setTrouble(read.flatMap((each) => (each.ok ? [] : each.error.map(sayProblem))));
    const replies = read.flatMap((each) => (each.ok ? [each.value] : []));
    if (replies.length === 0) return;
    const merged = replies.reduce(mergeReply, design);
    tell(sayMerged(replies, design, merged));
    if (merged !== design) edit('bring a reply in', (now) => replies.reduce(mergeReply, now));
  };
  return (
    <section className={sheet.group}>
      <Heading title="Replies" aside={remarks.length === 0 ? 'none yet' : `${open} of ${remarks.length} open`} />
      <input
        ref={file}
        type="file"
        multiple
        accept=".json,application/json,text/plain"
        aria-label="Reply files"
        className={styles.file}
        onChange={(event) => {
          const files = [...(event.target.files ?? [])];
          event.target.value = '';
          void Promise.all(files.map((each) => each.text())).then(bringIn);
        }}
      />
      <label className={styles.paste}>
        or the text block of a message
        <textarea rows={2} value={pasted} onChange={(event) => setPasted(event.target.value)} />
      </label>
      <div className={sheet.bar}>
        <Button
          disabled={pasted.trim() === ''}
          onClick={() => {
            bringIn([pasted]);
            setPasted('');
          }}
        >
          Bring the text in
        </Button>
      </div>
      {trouble.length > 0 ? (
        <ul className={sheet.problems} role="alert">
          {trouble.map((says) => (
            <li key={says}>{says}</li>
          ))}
        </ul>
      ) : null}
      <ul className={sheet.group}>
        {remarks.map((placed) => (
          <RemarkLine key={`${placed.reply.id} ${placed.index}`} placed={placed} />
        ))}
      </ul>
    </section>
  );
};
