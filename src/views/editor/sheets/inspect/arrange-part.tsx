import { useState } from 'react';
import type { Design } from '../../../../design/index.ts';
import type { Arrangement, ArrangePlan } from '../../../../inspection/index.ts';
import { arrangeRows, sayArrangeFirst, sayArrangement, sayArrangePlan, sayStaying } from '../../../../says/index.ts';
import { Button, CheckField, Heading, Table } from '../../parts/index.ts';
import { useEditor, useEditorStore } from '../../state/use-editor.ts';
import { useNames } from '../../state/use-names.ts';
import { useUnits } from '../../state/use-units.ts';
import { shareUnchanged } from '../../worker/share.ts';
import sheet from '../sheet.module.css';
import styles from './arrange.module.css';
import { useSearch } from './use-search.ts';

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

interface KeepsProps {
  readonly keep: ReadonlySet<string>;
  readonly onChange: (id: string, stays: boolean) => void;
}

/** Which of the stowed gear may change places. */
const Keeps = ({ keep, onChange }: KeepsProps) => {
  const gear = useEditor((editor) => editor.history.design.gear);
  const stowed = gear.filter(({ place }) => place !== null);
  return (
    <details>
      <summary>
        Gear that may change places: {stowed.filter(({ id }) => !keep.has(id)).length} of {stowed.length}
      </summary>
      <div className={styles.keeps}>
        {stowed.map(({ id, name }) => (
          <CheckField key={id} label={name} checked={!keep.has(id)} onCommit={(moves) => onChange(id, !moves)} />
        ))}
      </div>
    </details>
  );
};

const Choice = ({ choice, fresh }: { readonly choice: Arrangement; readonly fresh: boolean }) => {
  const store = useEditorStore();
  const { nameOf } = useNames();
  const title = sayArrangeFirst(choice.first);
  return (
    <section className={styles.choice} aria-label={capital(title)}>
      <div className={styles.head}>
        <strong>{capital(title)}</strong>
        <Button
          disabled={!fresh}
          title="One step, which undo takes back"
          onClick={() =>
            store.getState().edit(`arrange with ${title}`, (design) => shareUnchanged(design, choice.design))
          }
        >
          Take this arrangement
        </Button>
      </div>
      <ul>
        {sayArrangement(choice, nameOf).map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </section>
  );
};

const Compared = ({
  plan,
  of,
  design,
}: {
  readonly plan: ArrangePlan;
  readonly of: Design;
  readonly design: Design;
}) => {
  const units = useUnits();
  const { nameOf } = useNames();
  const { choices, now } = plan;
  if (choices.length === 0) return <p>Nothing better was found: it stands well as it is.</p>;
  return (
    <>
      <Table label="Arrangements compared">
        <thead>
          <tr>
            <th scope="col">figure</th>
            <th scope="col">as it is</th>
            {choices.map(({ first }) => (
              <th key={first[0]} scope="col">
                {sayArrangeFirst(first)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {arrangeRows(units, nameOf).map(({ what, said }) => (
            <tr key={what}>
              <th scope="row">{what}</th>
              <td>{said(now)}</td>
              {choices.map(({ first, figures }) => (
                <td key={first[0]} className={said(figures) === said(now) ? styles.same : styles.other}>
                  {said(figures)}
                </td>
              ))}
            </tr>
          ))}
          <tr>
            <th scope="row">open cautions</th>
            <td>{plan.cautions}</td>
            {choices.map(({ first, cautions }) => (
              <td key={first[0]} className={cautions === plan.cautions ? styles.same : styles.other}>
                {cautions}
              </td>
            ))}
          </tr>
        </tbody>
      </Table>
      {choices.map((choice) => (
        <Choice key={choice.first[0]} choice={choice} fresh={of === design} />
      ))}
    </>
  );
};

/** Other places for what is stowed and for the carcasses: searched when asked for, taken by choice, never by itself. */
export const ArrangePart = () => {
  const design = useEditor((editor) => editor.history.design);
  const units = useUnits();
  const { nameOf } = useNames();
  const { search, start, cancel } = useSearch<ArrangePlan>();
  const [keep, setKeep] = useState<ReadonlySet<string>>(new Set());
  const [carcasses, setCarcasses] = useState(true);
  const change = (id: string, stays: boolean): void =>
    setKeep(new Set(stays ? [...keep, id] : [...keep].filter((one) => one !== id)));
  if (!design.gear.some(({ place }) => place !== null)) return null;
  const wishes = { keep: [...keep], keepCarcasses: !carcasses };
  return (
    <section className={styles.part} aria-label="Arrange for balance">
      <Heading
        level={3}
        title="Arrange for balance"
        aside="what is stowed, in other places that fit it; nothing changes until you take one"
        actions={
          search.kind === 'searching' ? (
            <Button small onClick={cancel}>
              Stop searching
            </Button>
          ) : (
            <Button small onClick={() => start(design, (engine) => engine.arrange(design, wishes))}>
              Look for a better arrangement
            </Button>
          )
        }
      />
      <Keeps keep={keep} onChange={change} />
      <CheckField label="Carcasses may change sides" checked={carcasses} onCommit={setCarcasses} />
      <div role="status">
        {search.kind === 'searching' ? <p>Weighing arrangements and trying them on copies…</p> : null}
        {search.kind === 'broke' ? <p>The search broke off. Try once more.</p> : null}
        {search.kind === 'done' && search.of !== design ? (
          <p>The design has changed since this search: look once more.</p>
        ) : null}
      </div>
      {search.kind === 'done' ? (
        <>
          <Compared plan={search.found} of={search.of} design={design} />
          {[...sayArrangePlan(search.found, units), ...sayStaying(search.found, nameOf)].map((line) => (
            <p key={line} className={sheet.soft}>
              {line}
            </p>
          ))}
        </>
      ) : null}
    </section>
  );
};
