import { lazy, Suspense } from 'react';
import { type Fitting, findOpening, nameOpening, type Opening, type SizeRule } from '../../../../../design/index.ts';
import type { FittingFormProps } from '../../../fittings/fitting-view.ts';
import { FITTING_VIEWS } from '../../../fittings/index.ts';
import { ChoiceField, Length, LengthField, NumberField, TextField } from '../../../parts/index.ts';
import { useUnits } from '../../../state/use-units.ts';
import { placeInParent } from '../actions/opening-actions.ts';
import { withPartSize } from '../typed-size.ts';
import { useCabinet } from '../use-cabinet.ts';
import styles from './settings.module.css';

/** Comes with the rest of what moves, after the sheet stands. */
const ScrubsOf = lazy(() => import('../../scrub/movers-part.tsx').then((it) => ({ default: it.ScrubsOf })));

const RULES: readonly { readonly value: SizeRule['rule']; readonly label: string }[] = [
  { value: 'fixed', label: 'a fixed size' },
  { value: 'share', label: 'a share of what is left' },
  { value: 'hug', label: 'as big as its content' },
];

const ALONG = {
  columns: { axis: 0, words: 'Width' },
  rows: { axis: 2, words: 'Height' },
  layers: { axis: 1, words: 'Depth' },
} as const;

/** The rule that a room of a divided opening is measured by. */
const SizeFields = ({ opening }: { readonly opening: Opening }) => {
  const { editor, design, fitOut } = useCabinet();
  const units = useUnits();
  const place = placeInParent(design, opening.id);
  const parent = place && findOpening(design, place.parent)?.opening.content;
  if (!place || parent?.kind !== 'divided') return null;
  const size = parent.parts[place.index]?.size;
  const { axis, words } = ALONG[parent.along];
  const present = fitOut.openings.find((one) => one.id === opening.id)?.size[axis] ?? 0;
  if (!size) return null;
  const set = (rule: SizeRule): void =>
    editor.getState().edit('change a size', (now) => withPartSize(now, place.parent, place.index, rule));
  return (
    <>
      <LengthField
        label={words}
        valueMm={present}
        units={units}
        min={1}
        remark={size.rule === 'fixed' ? 'fixed' : size.rule}
        onCommit={(mm) => set({ rule: 'fixed', mm })}
      />
      <ChoiceField
        label={`${words} is`}
        value={size.rule}
        choices={RULES}
        onCommit={(rule) =>
          set(rule === 'fixed' ? { rule, mm: present } : rule === 'share' ? { rule, weight: 1 } : { rule })
        }
      />
      {size.rule === 'share' ? (
        <NumberField
          label="Share, against the others"
          value={size.weight}
          min={0.1}
          max={1000}
          onCommit={(weight) => set({ rule: 'share', weight })}
        />
      ) : null}
    </>
  );
};

/** The least room that the content needs, beside what it has. */
const LeastRoom = ({ id }: { readonly id: string }) => {
  const { fitOut } = useCabinet();
  const units = useUnits();
  const solved = fitOut.openings.find((one) => one.id === id);
  if (!solved || solved.least.every((mm) => mm === 0)) return null;
  return (
    <p className={styles.least}>
      Needs at least{' '}
      {solved.least.map((mm, axis) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the three sizes in their order
        <span key={axis} data-short={mm > (solved.size[axis] ?? 0)}>
          <Length mm={mm} units={units} />
          {axis < 2 ? ' × ' : ''}
        </span>
      ))}{' '}
      {units} across × deep × up.
    </p>
  );
};

const FittingForm = ({ opening, fitting }: FittingFormProps<Fitting>) => {
  // Each form takes its own kind; which one is settled by the same word that chose the form.
  const Form = FITTING_VIEWS[fitting.kind].Form as (props: FittingFormProps<Fitting>) => React.ReactNode;
  return (
    <Suspense fallback={null}>
      <Form opening={opening} fitting={fitting} />
    </Suspense>
  );
};

/** An opening: what it is called, how it is measured, what is in it. */
export const OpeningSettings = ({ opening }: { readonly opening: Opening }) => {
  const { editor } = useCabinet();
  const { content } = opening;
  return (
    <>
      <div className={styles.fields}>
        <TextField
          label="Name"
          value={opening.name}
          onCommit={(name) => editor.getState().edit('rename', (now) => nameOpening(now, opening.id, name))}
        />
        <SizeFields opening={opening} />
      </div>
      <LeastRoom id={opening.id} />
      {content.kind === 'fitted' ? (
        <>
          <FittingForm opening={opening.id} fitting={content.fitting} />
          <Suspense fallback={null}>
            <ScrubsOf origin={opening.id} />
          </Suspense>
        </>
      ) : null}
    </>
  );
};
