import { useEffect, useMemo, useState } from 'react';
import { houseRules } from '../../../../catalog/index.ts';
import type { Design } from '../../../../design/index.ts';
import { type FitOut, solveFitOut } from '../../../../fitout/index.ts';
import {
  changedPanels,
  compareDesigns,
  compareFigures,
  figuresOf,
  revisionDesign,
} from '../../../../revision/index.ts';
import { nameOfPart, sayChange, sayFigureChange } from '../../../../says/index.ts';
import { createDrawings, drawingToSvg } from '../../../../shop/index.ts';
import { ChoiceField, Heading } from '../../parts/index.ts';
import { useBench } from '../../state/bench.ts';
import { useEditor, useEditorStore } from '../../state/use-editor.ts';
import sheet from '../sheet.module.css';
import styles from './review.module.css';

/** Lines shown at once: a list of hundreds is read from the terminal. */
const MOST_LINES = 60;

interface SideOf {
  readonly design: Design;
  readonly fitout: FitOut;
}

const faceImage = ({ design, fitout }: SideOf, carcass: string, catalog: ReturnType<typeof useBench>['catalog']) => {
  const rules = houseRules(catalog, design.houseRules);
  const [drawing] = createDrawings({ design, fitout, catalog, rules, space: null }).draw(`face-${carcass}`) ?? [];
  // As an image a drawing is only looked at: nothing in it can run.
  return drawing ? `data:image/svg+xml;charset=utf-8,${encodeURIComponent(drawingToSvg(drawing))}` : null;
};

const Faces = ({
  letter,
  before,
  after,
}: {
  readonly letter: string;
  readonly before: SideOf;
  readonly after: SideOf;
}) => {
  const { catalog } = useBench();
  const carcass = useEditor((editor) => editor.carcass) ?? after.design.cabinet.carcasses[0]?.id ?? '';
  const [was, is] = useMemo(
    () => [faceImage(before, carcass, catalog), faceImage(after, carcass, catalog)],
    [before, after, carcass, catalog],
  );
  return (
    <div className={styles.pair}>
      {[
        { title: `Revision ${letter}`, image: was },
        { title: 'Now', image: is },
      ].map(({ title, image }) => (
        <figure key={title}>
          <figcaption>{title}</figcaption>
          {image === null ? (
            <p>This carcass is not in it.</p>
          ) : (
            <img src={image} alt={`Face of the carcass, ${title}`} />
          )}
        </figure>
      ))}
    </div>
  );
};

/** Shows the older design in the bay for as long as the button is held; letting go brings the present one back. */
const HoldInBay = ({ letter, older }: { readonly letter: string; readonly older: Design }) => {
  const store = useEditorStore();
  const end = (): void => store.getState().cancelGesture();
  const begin = (): void => {
    const { beginGesture, previewGesture, gesture } = store.getState();
    if (gesture) return;
    beginGesture();
    previewGesture(({ revisions, approvals, replies, record }) => ({
      ...older,
      revisions,
      approvals,
      replies,
      record,
    }));
  };
  useEffect(() => () => store.getState().cancelGesture(), [store]);
  return (
    <button
      type="button"
      className={styles.hold}
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        begin();
      }}
      onPointerUp={end}
      onPointerCancel={end}
      onBlur={end}
      onKeyDown={(event) => {
        if (event.key === ' ' || event.key === 'Enter') {
          event.preventDefault();
          begin();
        }
      }}
      onKeyUp={end}
    >
      Hold to see {letter} in the bay
    </button>
  );
};

const Lines = ({ title, lines }: { readonly title: string; readonly lines: readonly string[] }) =>
  lines.length === 0 ? null : (
    <div>
      <h3>{title}</h3>
      <ul className={styles.lines}>
        {lines.slice(0, MOST_LINES).map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      {lines.length > MOST_LINES ? <p className={sheet.soft}>and {lines.length - MOST_LINES} more</p> : null}
    </div>
  );

/** What changed since a letter: words, figures, panels, faces, and the bay. */
export const ComparePart = () => {
  const { catalog } = useBench();
  // While the older design is held up in the bay, the present one is the one at the start of that gesture.
  const design = useEditor((editor) => editor.gesture ?? editor.history.design);
  const letters = design.revisions.map(({ letter }) => letter);
  const [chosen, setChosen] = useState<string | null>(null);
  const letter = chosen !== null && letters.includes(chosen) ? chosen : (letters.at(-1) ?? null);
  const found = useMemo(() => {
    if (letter === null) return null;
    const read = revisionDesign(design, letter);
    if (!read.ok) return null;
    const solve = (each: Design): SideOf => ({
      design: each,
      fitout: solveFitOut(each, catalog, houseRules(catalog, each.houseRules)),
    });
    const [before, after] = [solve(read.value), solve(design)];
    const speech = {
      units: design.units,
      before: nameOfPart(before.design, before.fitout),
      after: nameOfPart(after.design, after.fitout),
    };
    const figures = ({ fitout }: SideOf) => figuresOf({ fitout, inspection: null, sheets: null, price: null });
    return {
      before,
      after,
      words: compareDesigns(before.design, after.design).map((change) => sayChange(change, speech)),
      numbers: compareFigures(figures(before), figures(after)).map((change) => sayFigureChange(change, design.units)),
      panels: changedPanels(before.fitout, after.fitout).map(({ name, how }) => `${name}: ${how}`),
    };
  }, [design, letter, catalog]);
  if (letter === null) return null;
  return (
    <section className={sheet.group}>
      <Heading title="What changed" aside={`since ${letter}`} />
      {letters.length > 1 ? (
        <ChoiceField
          label="Compare with"
          value={letter}
          choices={letters.map((each) => ({ value: each, label: `revision ${each}` }))}
          onCommit={setChosen}
        />
      ) : null}
      {found === null ? (
        <p>Revision {letter} has been altered since it was released and cannot be compared.</p>
      ) : (
        <>
          {found.words.length === 0 ? <p>Nothing.</p> : null}
          <Lines title="In words" lines={found.words} />
          <Lines title="By number" lines={found.numbers} />
          {found.words.length === 0 ? null : (
            <>
              <HoldInBay letter={letter} older={found.before.design} />
              <Faces letter={letter} before={found.before} after={found.after} />
            </>
          )}
          <Lines title="Panels" lines={found.panels} />
        </>
      )}
    </section>
  );
};
