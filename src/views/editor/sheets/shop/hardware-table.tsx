import { Length, Mass, Table, tableStyles } from '../../parts/index.ts';
import { useUnits } from '../../state/use-units.ts';
import styles from './shop.module.css';
import type { ShopLists } from './shop-lists.ts';

const BY_WORDS = { piece: '', pair: 'pairs', metre: 'm' } as const;

/** What is fetched from the shelf or bought. */
export const HardwareTable = ({ lists }: { readonly lists: ShopLists }) => {
  const units = useUnits();
  return (
    <Table label="Hardware">
      <thead>
        <tr>
          <th scope="col">item</th>
          <th scope="col">fetch</th>
          <th scope="col">length</th>
          <th scope="col">mass</th>
          <th scope="col">where</th>
        </tr>
      </thead>
      <tbody>
        {lists.hardware.map((row) => (
          <tr key={`${row.from} ${row.item} ${row.lengthMm ?? ''}`}>
            <th scope="row">
              {row.name}
              {row.note === '' ? null : <span className={styles.grain}> · {row.note}</span>}
            </th>
            <td className={tableStyles.number}>
              {Number(row.fetch.toFixed(1))} {BY_WORDS[row.by]}
              {row.spares > 0 ? <span className={styles.grain}> ({row.spares} spare)</span> : null}
            </td>
            <td className={tableStyles.number}>
              {row.lengthMm === null ? '' : <Length mm={row.lengthMm} units={units} />}
            </td>
            <td className={tableStyles.number}>
              <Mass kg={row.massKg} units={units} />
            </td>
            <td className={styles.grain}>{row.where}</td>
          </tr>
        ))}
      </tbody>
    </Table>
  );
};
