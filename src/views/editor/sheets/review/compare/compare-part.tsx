import { useMemo } from 'react';
import { type Change, changedPanels, compareDesigns } from '../../../../../revision/index.ts';
import { nameOfPart, sayChange } from '../../../../../says/index.ts';
import { ChoiceField, Heading } from '../../../parts/index.ts';
import { useEditor } from '../../../state/use-editor.ts';
import sheet from '../../sheet.module.css';
import styles from '../review.module.css';
import { BayPair } from './bay-pair.tsx';
import { FacePair } from './face-pair.tsx';
import { FiguresPart } from './figures-part.tsx';
import { HoldInBay } from './hold-in-bay.tsx';
import { NOW, type Side, type Sides, useSides } from './use-sides.ts';

/** Lines shown at once: a list of hundreds is read from the terminal. */
const MOST_LINES = 60;

const More = ({ count }: { readonly count: number }) =>
  count > MOST_LINES ? <p className={sheet.soft}>and {count - MOST_LINES} more</p> : null;

interface SaidChange {
  readonly change: Change;
  readonly says: string;
}

/** In words; what is still in the present design is chosen with a press. */
const Words = ({ said }: { readonly said: readonly SaidChange[] }) => {
  const select = useEditor((editor) => editor.select);
  return (
    <>
      <Heading level={3} title="In words" aside={`${said.length} ${said.length === 1 ? 'change' : 'changes'}`} />
      <ul className={styles.lines}>
        {said.slice(0, MOST_LINES).map(({ change: { id, kind }, says }) => (
          <li key={`${id} ${kind}`}>
            {id === '' || kind === 'removed' ? (
              says
            ) : (
              <button type="button" className={sheet.pick} onClick={() => select([id])}>
                {says}
              </button>
            )}
          </li>
        ))}
      </ul>
      <More count={said.length} />
    </>
  );
};

/** Which two designs; a file from elsewhere may be one of them. */
const Choice = ({ sides }: { readonly sides: Sides }) => (
  <>
    <div className={sheet.fields}>
      {sides.choices.length > 1 ? (
        <>
          <ChoiceField label="From" value={sides.from} choices={sides.choices} onCommit={sides.chooseFrom} />
          <ChoiceField label="To" value={sides.to} choices={sides.choices} onCommit={sides.chooseTo} />
        </>
      ) : null}
    </div>
    <label className={styles.paste}>
      or compare with another design file
      <input
        className={styles.file}
        type="file"
        accept=".json,application/json"
        onChange={(event) => {
          const [file] = event.target.files ?? [];
          if (file) void sides.open(file);
          // The same file, saved again, can then be chosen again.
          event.target.value = '';
        }}
      />
    </label>
    {sides.trouble === '' ? null : (
      <ul className={sheet.problems} role="alert">
        <li>{sides.trouble}</li>
      </ul>
    )}
  </>
);

const Panels = ({ panels }: { readonly panels: ReturnType<typeof changedPanels> }) =>
  panels.length === 0 ? null : (
    <>
      <Heading level={3} title="Panels to cut" aside={`${panels.length} cut otherwise, new, or no longer needed`} />
      <ul className={styles.lines}>
        {panels.slice(0, MOST_LINES).map(({ id, name, how }) => (
          <li key={id}>
            {name}: {how}
          </li>
        ))}
      </ul>
      <More count={panels.length} />
    </>
  );

const Compared = ({
  before,
  after,
  toNow,
}: {
  readonly before: Side;
  readonly after: Side;
  readonly toNow: boolean;
}) => {
  const { changes, said, panels } = useMemo(() => {
    const speech = {
      units: after.design.units,
      before: nameOfPart(before.design, before.fitout),
      after: nameOfPart(after.design, after.fitout),
    };
    const found = compareDesigns(before.design, after.design);
    return {
      changes: found,
      said: found.map((change) => ({ change, says: sayChange(change, speech) })),
      panels: changedPanels(before.fitout, after.fitout),
    };
  }, [before, after]);
  if (changes.length === 0) return <p>Nothing.</p>;
  return (
    <>
      <Words said={said} />
      <FiguresPart before={before} after={after} />
      <BayPair before={before} after={after} changes={changes} panels={panels} />
      {toNow ? <HoldInBay called={before.called} older={before.design} /> : null}
      <FacePair before={before} after={after} changes={changes} />
      <Panels panels={panels} />
    </>
  );
};

/** What changed between two letters, files or the present design: in words, by number and in pictures. */
export const ComparePart = () => {
  const sides = useSides();
  const { before, after, from, to } = sides;
  return (
    <section className={sheet.group} aria-label="What changed">
      <Heading
        title="What changed"
        aside={before && after && from !== to ? `${before.called} to ${after.called}` : undefined}
      />
      <Choice sides={sides} />
      {before === null || after === null ? (
        <p>This letter has been altered since it was released and cannot be compared.</p>
      ) : from === to ? (
        <p className={sheet.soft}>
          {to === NOW ? 'Release a letter, or choose another file, to see what changed.' : 'Both are the same.'}
        </p>
      ) : (
        <Compared before={before} after={after} toNow={to === NOW} />
      )}
    </section>
  );
};
