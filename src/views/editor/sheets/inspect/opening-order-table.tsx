import type { GearReach, OpeningOrder } from '../../../../inspection/index.ts';
import { sayMotions, sayOrderRow, sayReach } from '../../../../says/index.ts';
import { Button, Heading } from '../../parts/index.ts';
import { useEditorParts } from '../../state/use-editor.ts';
import { useNames } from '../../state/use-names.ts';
import styles from './opening-order.module.css';

interface OpeningOrderTableProps {
  readonly order: OpeningOrder;
  /** On paper nothing can be shown in the bay. */
  readonly onPaper?: boolean;
}

/** First-due gear first, then what takes the most motions. */
const inTurn = (gear: readonly GearReach[]): readonly GearReach[] =>
  gear.toSorted((a, b) => Number(b.firstDue) - Number(a.firstDue) || (b.count ?? Infinity) - (a.count ?? Infinity));

const ShowInBay = ({ reach, name }: { readonly reach: GearReach; readonly name: string }) => {
  const { setShare, stowAll, select } = useEditorParts((editor) => ({
    setShare: editor.setShare,
    stowAll: editor.stowAll,
    select: editor.select,
  }));
  const show = (): void => {
    stowAll();
    for (const [mover, share] of Object.entries(reach.shares)) setShare(mover, share);
    select([reach.gear]);
  };
  return (
    <Button small onClick={show} aria-label={`Show in the bay how ${name} comes to hand`}>
      Show
    </Button>
  );
};

/** What must be closed or open before what, and for each item of gear its motions from the closed vehicle to hand. */
export const OpeningOrderTable = ({ order, onPaper = false }: OpeningOrderTableProps) => {
  const { nameOf } = useNames();
  return (
    <section className={styles.order} aria-label="Opening order">
      <Heading level={3} title="Opening order" />
      {order.rows.length === 0 ? (
        <p>Nothing that moves is in the way of anything else.</p>
      ) : (
        <ul className={styles.rows}>
          {order.rows.map((row) => (
            <li key={`${row.mover} ${row.other}`}>{sayOrderRow(row, nameOf)}</li>
          ))}
        </ul>
      )}
      {order.gear.length === 0 ? null : (
        <table className={styles.gear}>
          <caption>Gear to hand, from the closed vehicle</caption>
          <thead>
            <tr>
              <th scope="col">gear</th>
              <th scope="col">motions</th>
              <th scope="col">in this order</th>
              {onPaper ? null : <th scope="col">bay</th>}
            </tr>
          </thead>
          <tbody>
            {inTurn(order.gear).map((reach) => (
              <tr key={reach.gear} data-first={reach.firstDue}>
                <th scope="row">
                  {nameOf(reach.gear)}
                  {reach.firstDue ? <span className={styles.due}> first due</span> : null}
                </th>
                <td className={styles.count}>{reach.count ?? sayMotions(reach)}</td>
                <td>{sayReach(reach, nameOf)}</td>
                {onPaper ? null : <td>{reach.found ? <ShowInBay reach={reach} name={nameOf(reach.gear)} /> : null}</td>}
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
};
