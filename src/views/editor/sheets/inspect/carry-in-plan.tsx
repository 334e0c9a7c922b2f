import { useEffect, useRef, useState } from 'react';
import type { Design } from '../../../../design/index.ts';
import type { CarryIn } from '../../../../inspection/index.ts';
import { sayCarryIn } from '../../../../says/index.ts';
import { Button, Heading } from '../../parts/index.ts';
import { useEditor } from '../../state/use-editor.ts';
import { useNames } from '../../state/use-names.ts';
import type { Connection } from '../../worker/client.ts';
import { connectWorker } from '../../worker/connect.ts';
import sheet from '../sheet.module.css';
import styles from './opening-order.module.css';

type Plan =
  | { readonly kind: 'none' }
  | { readonly kind: 'searching' }
  | { readonly kind: 'broke' }
  | { readonly kind: 'done'; readonly of: Design; readonly carry: CarryIn | null };

/** How each carcass is carried in: asked for by hand, searched by a worker of its own that is ended to stop it. */
export const CarryInPlan = () => {
  const design = useEditor((editor) => editor.history.design);
  const { nameOf } = useNames();
  const [plan, setPlan] = useState<Plan>({ kind: 'none' });
  const running = useRef<Connection | null>(null);
  const stop = (): void => {
    running.current?.end();
    running.current = null;
  };
  useEffect(
    () => () => {
      running.current?.end();
    },
    [],
  );
  const search = (): void => {
    stop();
    const mine = connectWorker(() => {
      if (running.current === mine) setPlan({ kind: 'broke' });
    });
    running.current = mine;
    setPlan({ kind: 'searching' });
    const finish = (next: Plan): void => {
      if (running.current !== mine) return;
      stop();
      setPlan(next);
    };
    mine.engine.carryIn(design).then(
      (carry) => finish({ kind: 'done', of: design, carry }),
      () => finish({ kind: 'broke' }),
    );
  };
  const cancel = (): void => {
    stop();
    setPlan({ kind: 'none' });
  };
  return (
    <section className={styles.order} aria-label="Carrying in">
      <Heading
        level={3}
        title="Carrying in"
        actions={
          plan.kind === 'searching' ? (
            <Button small onClick={cancel}>
              Stop searching
            </Button>
          ) : (
            <Button small onClick={search}>
              Find a way in
            </Button>
          )
        }
      />
      <div role="status">
        {plan.kind === 'none' ? (
          <p className={sheet.soft}>
            Through the opening, over sill and bumper, past striker and struts, each carcass in turn.
          </p>
        ) : null}
        {plan.kind === 'searching' ? <p>Searching for a way in…</p> : null}
        {plan.kind === 'broke' ? <p>The search broke off. Try once more.</p> : null}
        {plan.kind === 'done' && plan.of !== design ? <p>The design has changed since this search.</p> : null}
        {plan.kind === 'done' && plan.carry === null ? <p>The survey does not make a cargo space yet.</p> : null}
      </div>
      {plan.kind === 'done' && plan.carry !== null ? (
        <ul className={styles.steps}>
          {sayCarryIn(plan.carry, design.units, nameOf).map((line, i) => (
            // Two carcasses may be carried by the same words.
            // biome-ignore lint/suspicious/noArrayIndexKey: lines of one answer never move
            <li key={i}>{line.trim().replace(/^- /, '')}</li>
          ))}
        </ul>
      ) : null}
    </section>
  );
};
