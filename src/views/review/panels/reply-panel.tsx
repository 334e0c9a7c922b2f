import { useState } from 'react';
import type { Remark } from '../../../design/index.ts';
import { printReply, REPLY_FORMAT, type Reply } from '../../../revision/index.ts';
import type { ReviewData } from '../../../shop/index.ts';
import { type Draft, useReview } from '../state.ts';

const sayRemark = (remark: Remark): string => {
  if (remark.kind === 'swap') return `Swap ${remark.name} and ${remark.withName}`;
  if (remark.kind === 'move') return `Move ${remark.name} to ${remark.toName}`;
  return remark.kind === 'note' ? `${remark.name}: ${remark.text}` : remark.text;
};

/** Today as the reader's own clock has it. */
const today = (): string => {
  const now = new Date();
  const two = (part: number): string => String(part).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
};

export const replyOf = (data: ReviewData, draft: Draft): Reply => ({
  format: REPLY_FORMAT,
  version: 1,
  design: data.title,
  letter: data.letter,
  sha256: data.sha256,
  who: draft.who.trim(),
  on: draft.on,
  remarks: [
    ...draft.remarks,
    ...data.questions.flatMap((question): readonly Remark[] => {
      const text = (draft.answers[question.id] ?? '').trim();
      return text === '' ? [] : [{ kind: 'answer', question: question.id, asked: question.text, text }];
    }),
  ],
  approved: draft.approved,
});

const save = (text: string, name: string): void => {
  const address = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
};

const fileName = ({ title }: ReviewData, who: string): string => {
  const stem = `${title}-reply-${who}`.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '-');
  return `${stem.replace(/^-|-$/g, '').slice(0, 80)}.json`;
};

/** What goes back to the shop: the remarks so far, name and day, approval, and the two ways to send it. */
export const ReplyPanel = () => {
  const data = useReview((state) => state.data);
  const draft = useReview((state) => state.draft);
  const change = useReview((state) => state.change);
  const dropRemark = useReview((state) => state.dropRemark);
  const tap = useReview((state) => state.tap);
  const [block, setBlock] = useState(false);
  const named = draft.who.trim() !== '';
  const dated: Draft = draft.on === '' ? { ...draft, on: today() } : draft;
  const text = printReply(replyOf(data, dated));
  return (
    <>
      <h2>Your reply</h2>
      {draft.remarks.length === 0 ? (
        <p>No remarks yet. Tap a part or an item of gear, then write a note, swap it or move it.</p>
      ) : (
        <ul className="lines">
          {draft.remarks.map((remark, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: remarks have no name of their own and are only taken out.
            <li key={i}>
              <bdi>{sayRemark(remark)}</bdi>
              <span className="row">
                {remark.kind === 'answer' ? null : (
                  <button type="button" onClick={() => tap(remark.part)}>
                    Show
                  </button>
                )}
                <button type="button" onClick={() => dropRemark(i)}>
                  Take it out
                </button>
              </span>
            </li>
          ))}
        </ul>
      )}
      <label>
        Your name
        <input
          value={draft.who}
          maxLength={200}
          autoComplete="name"
          onChange={(event) => change({ who: event.target.value })}
        />
      </label>
      <label>
        Day
        <input type="date" value={dated.on} onChange={(event) => change({ on: event.target.value })} />
      </label>
      {data.letter === '' ? (
        <p>This is a draft ({data.stamp}): it can be commented on, and approved once it is released.</p>
      ) : (
        <label className="tick">
          <input
            type="checkbox"
            checked={draft.approved}
            onChange={(event) => change({ approved: event.target.checked })}
          />
          I approve revision {data.letter} as shown here
        </label>
      )}
      <div className="row">
        <button type="button" className="main" disabled={!named} onClick={() => save(text, fileName(data, draft.who))}>
          Save the reply
        </button>
        <button type="button" disabled={!named} onClick={() => setBlock(!block)}>
          {block ? 'Hide the text block' : 'As a text block'}
        </button>
      </div>
      {named ? null : <p>Write your name first: the shop has to know whose reply it is.</p>}
      {block && named ? (
        <label>
          Copy all of this into a message to the shop
          <textarea className="block" readOnly rows={8} value={text} onFocus={(event) => event.target.select()} />
        </label>
      ) : null}
    </>
  );
};
