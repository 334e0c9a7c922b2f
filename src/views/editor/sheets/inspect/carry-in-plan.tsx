import type { CarryIn } from '../../../../inspection/index.ts';
import { sayCarryIn } from '../../../../says/index.ts';
import { Button, Heading } from '../../parts/index.ts';
import { useEditor } from '../../state/use-editor.ts';
import { useNames } from '../../state/use-names.ts';
import sheet from '../sheet.module.css';
import styles from './opening-order.module.css';
import { useSearch } from './use-search.ts';

/** How each carcass is carried in: asked for by hand. */
export const CarryInPlan = () => {
  const design = useEditor((editor) => editor.history.design);
  const { nameOf } = useNames();
  const { search, start, cancel } = useSearch<CarryIn | null>();
  return (
    <section className={styles.order} aria-label="Carrying in">
      <Heading
        level={3}
        title="Carrying in"
        actions={
          search.kind === 'searching' ? (
            <Button small onClick={cancel}>
              Stop searching
            </Button>
          ) : (
            <Button small onClick={() => start(design, (engine) => engine.carryIn(design))}>
              Find a way in
            </Button>
          )
        }
      />
      <div role="status">
        {search.kind === 'none' ? (
          <p className={sheet.soft}>
            Through the opening, over sill and bumper, past striker and struts, each carcass in turn.
          </p>
        ) : null}
        {search.kind === 'searching' ? <p>Searching for a way in…</p> : null}
        {search.kind === 'broke' ? <p>The search broke off. Try once more.</p> : null}
        {search.kind === 'done' && search.of !== design ? <p>The design has changed since this search.</p> : null}
        {search.kind === 'done' && search.found === null ? <p>The survey does not make a cargo space yet.</p> : null}
      </div>
      {search.kind === 'done' && search.found !== null ? (
        <ul className={styles.steps}>
          {sayCarryIn(search.found, design.units, nameOf).map((line, i) => (
            // Two carcasses may be carried by the same words.
            // biome-ignore lint/suspicious/noArrayIndexKey: lines of one answer never move
            <li key={i}>{line.trim().replace(/^- /, '')}</li>
          ))}
        </ul>
      ) : null}
    </section>
  );
};
