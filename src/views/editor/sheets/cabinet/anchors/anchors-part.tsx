import { useMemo } from 'react';
import {
  type Anchor,
  addAnchor,
  type Carcass,
  changeAnchor,
  changeCarcass,
  freshAnchors,
  freshIds,
  removeAnchor,
} from '../../../../../design/index.ts';
import { Button } from '../../../parts/index.ts';
import { useEditor } from '../../../state/use-editor.ts';
import sheet from '../../sheet.module.css';
import { PieceCard } from '../piece-card.tsx';
import { useCabinet } from '../use-cabinet.ts';
import { AnchorFields } from './anchor-fields.tsx';
import { AnchorPlan } from './anchor-plan.tsx';
import { anchorUses } from './anchor-uses.ts';
import { anchorWords, useWords } from './anchor-words.ts';

interface AnchorLineProps {
  readonly carcass: Carcass;
  readonly anchor: Anchor;
  readonly index: number;
  readonly use: number | null;
}

const AnchorLine = ({ carcass, anchor, index, use }: AnchorLineProps) => {
  const { edit } = useCabinet().editor.getState();
  return (
    <PieceCard
      within={[carcass.id]}
      id={anchor.id}
      words={anchorWords(anchor, index)}
      about={useWords(use)}
      onRemove={() => edit('remove an anchor', (now) => removeAnchor(now, carcass.id, anchor.id))}
    >
      <AnchorFields
        anchor={anchor}
        onChange={(next) => edit('change an anchor', (now) => changeAnchor(now, carcass.id, next))}
      />
    </PieceCard>
  );
};

/** What holds a carcass down: where, with what, and how hard each anchor works in the worst case. */
export const AnchorsPart = ({ carcass }: { readonly carcass: Carcass }) => {
  const { editor } = useCabinet();
  const { edit, select } = editor.getState();
  const inspection = useEditor((state) => state.judgement?.inspection ?? null);
  const uses = useMemo(
    () =>
      anchorUses(
        inspection,
        carcass.id,
        carcass.anchors.map(({ id }) => id),
      ),
    [inspection, carcass],
  );
  const add = (on: Anchor['on']): void => {
    const { id } = addAnchor(editor.getState().history.design, carcass.id, on);
    edit('add an anchor', (now) => addAnchor(now, carcass.id, on).design);
    select([carcass.id, id]);
  };
  return (
    <>
      {carcass.anchors.length > 0 ? <AnchorPlan carcass={carcass} uses={uses} /> : null}
      <ul className={sheet.group} aria-label="Anchors">
        {carcass.anchors.map((anchor, i) => (
          <AnchorLine key={anchor.id} carcass={carcass} anchor={anchor} index={i} use={uses.get(anchor.id) ?? null} />
        ))}
      </ul>
      <div className={sheet.head}>
        {carcass.anchors.length === 0 ? (
          <Button
            small
            onClick={() =>
              edit('bolt a carcass down', (now) =>
                changeCarcass(now, carcass.id, { anchors: freshAnchors(freshIds(now)) }),
              )
            }
          >
            Bolt it down at its corners
          </Button>
        ) : null}
        <Button small onClick={() => add('floor')}>
          Add a floor anchor
        </Button>
        <Button small onClick={() => add('wall')}>
          Add a wall bracket
        </Button>
      </div>
      <p className={sheet.soft}>
        Look and photograph below before any hole. A screening sum, not a crash test: a licensed person answers for what
        holds it.
      </p>
    </>
  );
};
