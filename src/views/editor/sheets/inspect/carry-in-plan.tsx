import type { CarryIn } from '../../../../inspection/index.ts';
import { Button, Heading } from '../../parts/index.ts';
import { useEditorParts } from '../../state/use-editor.ts';
import sheet from '../sheet.module.css';
import { CarryWays } from './carry-ways.tsx';
import styles from './opening-order.module.css';
import { useSearch } from './use-search.ts';

/** How each carcass is carried in: asked for by hand. */
export const CarryInPlan = () => {
  const { design, judged } = useEditorParts((editor) => ({
    design: editor.history.design,
    judged: editor.judgement && editor.judgement.edit >= editor.editNumber ? editor.judgement.carry : undefined,
  }));
  const { search, start, cancel } = useSearch<CarryIn | null>();
  // What the search for ways out has found meanwhile need not be asked for.
  const carry = search.kind === 'done' && search.of === design ? search.found : judged;
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
        {search.kind === 'none' && !carry ? (
          <p className={sheet.soft}>
            Through the opening, over sill and bumper, past striker and struts, each carcass in turn; and every mount
            off again.
          </p>
        ) : null}
        {search.kind === 'searching' ? <p>Searching for a way in…</p> : null}
        {search.kind === 'broke' ? <p>The search broke off. Try once more.</p> : null}
        {search.kind === 'done' && search.of !== design && !carry ? (
          <p>The design has changed since this search.</p>
        ) : null}
        {carry === null ? <p>The survey does not make a cargo space yet.</p> : null}
      </div>
      {carry && search.kind !== 'searching' ? <CarryWays carry={carry} /> : null}
    </section>
  );
};
