import { changeDocument, HOLD_SETS, type HoldSet } from '../../../../design/index.ts';
import { CheckField, Heading } from '../../parts/index.ts';
import { useEditorParts } from '../../state/use-editor.ts';
import sheet from '../sheet.module.css';

const SET_WORDS: { readonly [S in HoldSet]: string } = {
  road: 'Road: hard braking and corners',
  'crew-area': 'Crew area: gear beside people',
  ambulance: 'Ambulance kind: every way alike',
  own: 'The shop’s own figures',
};

/** The load sets that everything fastened is held against: one at least. */
export const HeldTo = () => {
  const { holdTo, edit } = useEditorParts((editor) => ({
    holdTo: editor.history.design.holdTo,
    edit: editor.edit,
  }));
  const toggle = (set: HoldSet, on: boolean): void => {
    const next = HOLD_SETS.filter((one) => (one === set ? on : holdTo.includes(one)));
    if (next.length > 0) edit('change what is held against', (now) => changeDocument(now, { holdTo: next }));
  };
  return (
    <>
      <Heading
        level={3}
        title="Held against"
        aside="each way the greatest of these counts; screening, not a crash test"
      />
      <div className={sheet.fields}>
        {HOLD_SETS.map((set) => (
          <CheckField
            key={set}
            label={SET_WORDS[set]}
            checked={holdTo.includes(set)}
            disabled={holdTo.length === 1 && holdTo.includes(set)}
            onCommit={(on) => toggle(set, on)}
          />
        ))}
      </div>
    </>
  );
};
