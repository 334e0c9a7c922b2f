import { useMemo } from 'react';
import { clearHouseRule, setHouseRule } from '../../../../design/index.ts';
import { countText, moneyText, type Price, type PriceGroup, type PriceMover, priceOf } from '../../../../shop/index.ts';
import { Heading, NumberField, Table, tableStyles } from '../../parts/index.ts';
import { useBench } from '../../state/bench.ts';
import { useEditorParts } from '../../state/use-editor.ts';
import sheet from '../sheet.module.css';
import { useSheetLayouts } from './layouts/use-sheet-layouts.ts';
import styles from './price.module.css';
import type { ShopLists } from './shop-lists.ts';

/** What a shop asks for its time and for buying; each is a house rule of the design. */
const RATES = [
  { rule: 'rate-labour', label: 'Shop hour', scale: 1, unit: undefined },
  { rule: 'rate-electrical', label: 'Electrical hour', scale: 1, unit: undefined },
  { rule: 'rate-design', label: 'Design hour', scale: 1, unit: undefined },
  { rule: 'markup-share', label: 'Mark-up', scale: 100, unit: '%' },
] as const;

const Rates = ({ lists }: { readonly lists: ShopLists }) => {
  const { edit } = useEditorParts((editor) => ({ edit: editor.edit }));
  const { catalog } = useBench();
  const { rules } = lists.input;
  const set = (rule: string, value: number): void =>
    edit('change a rate of the price', (now) =>
      value === catalog.rules.get(rule)?.value
        ? clearHouseRule(now, rule)
        : setHouseRule(now, { rule, value, who: 'the shop', why: 'its own rates' }),
    );
  return (
    <div className={`${styles.rates} no-print`}>
      {RATES.map(({ rule, label, scale, unit }) => (
        <NumberField
          key={rule}
          label={label}
          value={rules.value(rule) * scale}
          min={0}
          unit={unit}
          onCommit={(value) => set(rule, value / scale)}
        />
      ))}
    </div>
  );
};

/** What changes the total most stands first; the bar is its share of the greatest. */
const Movers = ({ movers }: { readonly movers: readonly PriceMover[] }) => {
  const most = Math.max(...movers.map(({ delta }) => delta));
  return (
    <section className={sheet.group} aria-label="What moves the price">
      <Heading level={3} title="What moves it" />
      <ul className={styles.movers}>
        {movers.map(({ id, what, delta }) => (
          <li key={id}>
            <span>{what}</span>
            <span className={styles.track} aria-hidden="true">
              <span className={styles.bar} style={{ width: `${(100 * delta) / most}%` }} />
            </span>
            <strong>+ {moneyText(delta)}</strong>
          </li>
        ))}
      </ul>
    </section>
  );
};

const HEADS = ['what', 'count', 'hours', 'each', 'amount'] as const;

const Group = ({ price, group }: { readonly price: Price; readonly group: PriceGroup }) => {
  const sum = price.groups.find((one) => one.group === group);
  return (
    <tbody>
      <tr className={styles.group}>
        <th scope="rowgroup" colSpan={2}>
          {group}
        </th>
        <td className={tableStyles.number}>{sum?.hours == null ? '' : countText(sum.hours)}</td>
        <td />
        <td className={tableStyles.number}>{moneyText(sum?.amount ?? 0)}</td>
      </tr>
      {price.lines
        .filter((line) => line.group === group)
        .map((line) => (
          <tr key={`${line.what} ${line.from}`}>
            <th scope="row">
              {line.what}
              <span className={styles.from}>{line.from}</span>
            </th>
            <td className={tableStyles.number}>
              {countText(line.count)} {line.unit}
            </td>
            <td className={tableStyles.number}>{line.hours === null ? '' : countText(line.hours)}</td>
            <td className={tableStyles.number}>{moneyText(line.each)}</td>
            <td className={tableStyles.number}>{moneyText(line.amount)}</td>
          </tr>
        ))}
    </tbody>
  );
};

const Lines = ({ price }: { readonly price: Price }) => (
  <Table label="Lines of the price">
    <thead>
      <tr>
        {HEADS.map((head) => (
          <th key={head} scope="col" className={head === 'what' ? undefined : styles.right}>
            {head}
          </th>
        ))}
      </tr>
    </thead>
    {price.groups.map(({ group }) => (
      <Group key={group} price={price} group={group} />
    ))}
    <tbody>
      <tr className={styles.group}>
        <th scope="row" colSpan={4}>
          total
        </th>
        <td className={tableStyles.number}>{moneyText(price.total)}</td>
      </tr>
    </tbody>
  </Table>
);

/** What the cabinet costs, what would change that, and every line with the place where it can be looked up. */
export const PricePart = ({ lists }: { readonly lists: ShopLists }) => {
  const { layouts } = useSheetLayouts(lists);
  const price = useMemo(
    () => layouts && priceOf({ ...lists.input, layouts, hardware: lists.hardware }),
    [lists, layouts],
  );
  if (price === null) return <p role="status">Laying out the sheets.</p>;
  return (
    <section className={sheet.group} aria-label="Price">
      <p className={styles.total}>
        <strong>{moneyText(price.total)}</strong> ± {moneyText(price.sigma)}, one standard deviation; stands for{' '}
        {countText(price.validDays)} days. Without taxes, freight, the vehicle and the gear.
      </p>
      {price.inHand === '' ? null : <p>{price.inHand}</p>}
      {price.missing.map((words) => (
        <p key={words} className={styles.remark}>
          {words}
        </p>
      ))}
      <Rates lists={lists} />
      <Movers movers={price.movers} />
      <Lines price={price} />
    </section>
  );
};
