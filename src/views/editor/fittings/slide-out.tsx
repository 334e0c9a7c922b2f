import { changeFitting, freshIds, type SlideOut } from '../../../design/index.ts';
import { ChoiceField, LengthField, NumberField } from '../parts/index.ts';
import { useEditor } from '../state/use-editor.ts';
import { useUnits } from '../state/use-units.ts';
import { HardwareField, MaterialField } from './catalog-fields.tsx';
import type { FittingView } from './fitting-view.ts';
import styles from './fittings.module.css';
import { KIND_WORDS } from './kind-words.ts';
import { SlideField } from './slide-fields.tsx';
import { useChangeFitting } from './use-change-fitting.ts';

const MOUNTS = [
  { value: '', label: 'as the load asks' },
  { value: 'side', label: 'at its sides' },
  { value: 'under', label: 'under the deck' },
] as const;

const USUAL_PITCH_MM = 200;

/** Slots along the deck and the straps through them. */
const TieDownFields: FittingView<SlideOut>['Form'] = ({ opening, fitting }) => {
  const change = useChangeFitting<SlideOut>(opening);
  const units = useUnits();
  const { tieDown } = fitting;
  return (
    <>
      <HardwareField
        label="Straps through slots"
        value={tieDown?.strap ?? null}
        kinds={['strap']}
        none="no slots"
        onChange={(strap) =>
          change('change the straps', {
            tieDown: strap === null ? null : { everyMm: USUAL_PITCH_MM, straps: 2, ...tieDown, strap },
          })
        }
      />
      {tieDown ? (
        <>
          <NumberField
            label="Straps"
            value={tieDown.straps}
            unit=""
            min={1}
            max={8}
            onCommit={(straps) =>
              change('change the number of straps', { tieDown: { ...tieDown, straps: Math.round(straps) } })
            }
          />
          <LengthField
            label="A slot every"
            valueMm={tieDown.everyMm}
            units={units}
            min={60}
            onCommit={(everyMm) => change('change the pitch of the slots', { tieDown: { ...tieDown, everyMm } })}
          />
        </>
      ) : null}
    </>
  );
};

/** A second deck, given a room of its own when it is first asked for. */
const SecondFields: FittingView<SlideOut>['Form'] = ({ opening, fitting }) => {
  const edit = useEditor((editor) => editor.edit);
  const units = useUnits();
  const { second } = fitting;
  const setUp = (upMm: number): void =>
    edit('change the second level', (design) => {
      const inside = second?.inside ?? {
        id: freshIds(design)('opening'),
        name: '',
        content: { kind: 'empty' as const },
      };
      return changeFitting(design, opening, (draft) => {
        if (draft.kind === 'slide-out') Object.assign(draft, { second: { upMm, inside } });
      });
    });
  return (
    <LengthField
      label="Second level, top above the deck"
      valueMm={second?.upMm ?? null}
      units={units}
      min={1}
      hint={second ? undefined : 'Empty for a single deck.'}
      onCommit={setUp}
      onClear={() =>
        edit('take the second level off', (design) =>
          changeFitting(design, opening, (draft) => {
            if (draft.kind === 'slide-out') draft.second = null;
          }),
        )
      }
    />
  );
};

const Form: FittingView<SlideOut>['Form'] = ({ opening, fitting }) => {
  const change = useChangeFitting<SlideOut>(opening);
  const units = useUnits();
  return (
    <div className={styles.fields}>
      <MaterialField
        label="Deck"
        value={fitting.deckMaterial}
        onChange={(deckMaterial) => change('change the deck', { deckMaterial })}
      />
      <LengthField
        label="Lip round the deck"
        valueMm={fitting.lipHeightMm}
        units={units}
        min={0}
        onCommit={(lipHeightMm) => change('change the lip', { lipHeightMm })}
      />
      <MaterialField
        label="Lip"
        value={fitting.lipMaterial}
        onChange={(lipMaterial) => change('change the lip', { lipMaterial })}
      />
      <HardwareField
        label="Hold closed"
        value={fitting.latch}
        kinds={['latch']}
        none="slides only"
        onChange={(latch) => change('change the latch', { latch })}
      />
      <HardwareField
        label="Stops behind it"
        value={fitting.backStop}
        kinds={['bracket']}
        none="the back panel alone"
        onChange={(backStop) => change('change the back stops', { backStop })}
      />
      <LengthField
        label="Locks every"
        valueMm={fitting.lockEveryMm}
        units={units}
        min={50}
        hint={fitting.lockEveryMm === null ? 'Empty locks at the ends alone.' : undefined}
        onCommit={(lockEveryMm) => change('change where it locks', { lockEveryMm })}
        onClear={() => change('change where it locks', { lockEveryMm: null })}
      />
      <TieDownFields opening={opening} fitting={fitting} />
      <SecondFields opening={opening} fitting={fitting} />
      <HardwareField
        label="Plate with the safe load"
        value={fitting.loadPlate}
        kinds={['sign']}
        none="none"
        onChange={(loadPlate) => change('change the plate', { loadPlate })}
      />
      <ChoiceField
        label="Slides"
        value={fitting.mount ?? ''}
        choices={MOUNTS}
        onCommit={(mount) =>
          change('change the mounting of the slides', {
            mount: mount === '' ? null : mount,
            slide: null,
            slideLengthMm: null,
          })
        }
      />
      <SlideField
        opening={opening}
        slide={fitting.slide}
        mounts={fitting.mount === null ? ['side', 'under'] : [fitting.mount]}
        onChange={(slide) => change('change the slide', { slide, slideLengthMm: null })}
        length={{
          mm: fitting.slideLengthMm,
          onChange: (slideLengthMm) => change('change the length of the slide', { slideLengthMm }),
        }}
      />
    </div>
  );
};

export const slideOutView: FittingView<SlideOut> = { ...KIND_WORDS['slide-out'], Form };
