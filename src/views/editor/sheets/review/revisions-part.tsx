import { useState } from 'react';
import { approveRevision, recordCut } from '../../../../design/index.ts';
import { type RevisionStamp, releaseRevision } from '../../../../revision/index.ts';
import { sayHash } from '../../../../says/index.ts';
import { Button, Heading } from '../../parts/index.ts';
import { useEditor } from '../../state/use-editor.ts';
import { CutWarning } from '../cut-warning.tsx';
import sheet from '../sheet.module.css';
import { By } from './by.tsx';
import { rememberedName, rememberName, today } from './today.ts';
import { WordsField } from './words-field.tsx';

/** Letters so far, who released and approved each, and the next one. */
export const RevisionsPart = ({ stamp }: { readonly stamp: RevisionStamp }) => {
  const design = useEditor((editor) => editor.gesture ?? editor.history.design);
  const edit = useEditor((editor) => editor.edit);
  const [who, setWho] = useState(rememberedName);
  const [why, setWhy] = useState('');
  const [approver, setApprover] = useState('');
  const ready = who.trim() !== '' && why.trim() !== '' && stamp.draft;
  const release = (): void => {
    rememberName(who.trim());
    edit('release a revision', (now) => releaseRevision(now, { who: who.trim(), why: why.trim(), on: today() }));
    setWhy('');
  };
  return (
    <section className={sheet.group}>
      <Heading title="Revisions" aside={`hash ${sayHash(stamp.sha256)}`} />
      <CutWarning />
      {design.revisions.map((revision) => (
        <div className={sheet.card} key={revision.letter}>
          <p>
            <strong>{revision.letter}</strong> released by <By {...revision} />: <bdi>{revision.why}</bdi>
          </p>
          <p className={`${sheet.soft} ${sheet.small}`}>
            {sayHash(revision.sha256)}
            {design.approvals
              .filter(({ letter }) => letter === revision.letter)
              .map((each) => (
                <span key={each.who}>
                  {' · approved by '}
                  <By {...each} />
                </span>
              ))}
            {revision.cut.map((each, i) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: cuts have no name and are only added.
              <span key={i}>
                {' · cut by '}
                <By {...each} />
              </span>
            ))}
          </p>
          <div className={sheet.bar}>
            <Button
              small
              disabled={who.trim() === ''}
              title={who.trim() === '' ? 'Write your name below first' : undefined}
              onClick={() =>
                edit('record a cut', (now) =>
                  recordCut(now, revision.letter, { who: who.trim(), on: today(), note: '' }),
                )
              }
            >
              Sheets were cut from {revision.letter}
            </Button>
          </div>
        </div>
      ))}
      <div className={sheet.fields}>
        <WordsField label="Your name" value={who} onChange={setWho} />
        <WordsField label="Why this revision" value={why} maxLength={2000} onChange={setWhy} />
      </div>
      <div className={sheet.bar}>
        <Button look="main" disabled={!ready} onClick={release}>
          Release the next revision
        </Button>
        {stamp.draft ? null : <span className={sheet.soft}>Nothing has changed since {stamp.letter}.</span>}
      </div>
      {stamp.draft || stamp.letter === '' ? null : (
        <div className={sheet.bar}>
          <WordsField label="Signed on paper by" value={approver} onChange={setApprover} />
          <Button
            disabled={approver.trim() === ''}
            onClick={() => {
              edit('put down an approval', (now) =>
                approveRevision(now, stamp.letter, { who: approver.trim(), on: today() }),
              );
              setApprover('');
            }}
          >
            Put down the approval of {stamp.letter}
          </Button>
        </div>
      )}
    </section>
  );
};
