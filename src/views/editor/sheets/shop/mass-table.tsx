import type { MassSum } from '../../../../shop/index.ts';
import { Heading, Length, Mass, Table, tableStyles } from '../../parts/index.ts';
import { useUnits } from '../../state/use-units.ts';
import styles from './shop.module.css';
import type { ShopLists } from './shop-lists.ts';

const AXES = ['forward', 'left', 'up'] as const;

const Sums = ({ title, sums }: { readonly title: string; readonly sums: readonly MassSum[] }) => {
  const units = useUnits();
  return (
    <Table label={title}>
      <thead>
        <tr>
          <th scope="col">{title}</th>
          <th scope="col">mass</th>
          <th scope="col">± (1σ)</th>
          {AXES.map((axis) => (
            <th key={axis} scope="col">
              {axis}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {sums.map((sum) => (
          <tr key={sum.name} className={sum.name === 'total' ? styles.total : undefined}>
            <th scope="row">{sum.name}</th>
            <td className={tableStyles.number}>
              <Mass kg={sum.massKg} units={units} />
            </td>
            <td className={tableStyles.number}>
              <Mass kg={sum.sigmaKg} units={units} />
            </td>
            {AXES.map((axis, i) => (
              <td key={axis} className={tableStyles.number}>
                {sum.at === null ? '' : <Length mm={sum.at[i] ?? 0} units={units} />}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </Table>
  );
};

/** What the fit-out weighs, by carcass and by kind, and where that acts. */
export const MassTables = ({ lists }: { readonly lists: ShopLists }) => (
  <div className={styles.pair}>
    <Heading level={3} title="What it weighs" aside="centres from the sill, the middle and the floor" />
    <Sums title="carcass" sums={[...lists.masses.carcasses, lists.masses.total]} />
    <Sums title="kind" sums={lists.masses.kinds} />
  </div>
);
