import { changeStock, MOST_OF_ONE_STOCK, removeStock, type StockRow } from '../../../../../design/index.ts';
import {
  Button,
  CheckField,
  type Choice,
  ChoiceField,
  LengthField,
  NumberField,
  TextField,
} from '../../../parts/index.ts';
import { useEditorParts } from '../../../state/use-editor.ts';
import { useUnits } from '../../../state/use-units.ts';
import styles from './stock.module.css';

const LEAST_MM = 1;
const LONGEST_MM = 20_000;

interface StockLineProps {
  readonly row: StockRow;
  readonly choices: readonly Choice<string>[];
  /** How many of it the layouts use. */
  readonly used: number;
}

/** One row of the stock; every field is one undoable step. */
export const StockLine = ({ row, choices, used }: StockLineProps) => {
  const units = useUnits();
  const { edit } = useEditorParts((editor) => ({ edit: editor.edit }));
  const { id, name, offcut } = row;
  const change = (what: string, to: Partial<Omit<StockRow, 'id'>>): void =>
    edit(`change the ${what} of ${name}`, (now) => changeStock(now, id, to));
  const known = choices.some(({ value }) => value === row.material);
  return (
    <tr>
      <th scope="row">
        <div className={styles.name}>
          <div data-stock-name={id}>
            <TextField
              bare
              required
              label={`Name of ${name}`}
              value={name}
              onCommit={(to) => change('name', { name: to })}
            />
          </div>
          <ChoiceField
            bare
            label={`Material of ${name}`}
            value={row.material}
            choices={[
              ...(known ? [] : [{ value: row.material, label: `${row.material}: not in the catalogue` }]),
              ...choices,
            ]}
            onCommit={(material) => change('material', { material })}
          />
        </div>
      </th>
      <td className={styles.size}>
        <LengthField
          bare
          label={`Length of ${name}, along the grain`}
          valueMm={row.lengthMm}
          units={units}
          min={LEAST_MM}
          max={LONGEST_MM}
          onCommit={(lengthMm) => change('length', { lengthMm })}
        />
      </td>
      <td className={styles.size}>
        <LengthField
          bare
          label={`Width of ${name}`}
          valueMm={row.widthMm}
          units={units}
          min={LEAST_MM}
          max={LONGEST_MM}
          onCommit={(widthMm) => change('width', { widthMm })}
        />
      </td>
      <td className={styles.count}>
        <NumberField
          bare
          label={`How many of ${name} there are`}
          value={row.quantity}
          whole
          min={0}
          max={MOST_OF_ONE_STOCK}
          onCommit={(quantity) => change('count', { quantity })}
          onClear={offcut ? undefined : () => change('count', { quantity: null })}
        />
        <small className={styles.used}>{used === 0 ? 'none used' : `${used} used`}</small>
      </td>
      <td className={styles.count}>
        <NumberField
          bare
          label={`Price of one ${name}`}
          value={row.price}
          min={0}
          max={1_000_000}
          onCommit={(price) => change('price', { price })}
          onClear={() => change('price', { price: null })}
        />
        <CheckField
          label="offcut"
          name={`${name} is an offcut in hand`}
          checked={offcut}
          onCommit={(to) => change('kind', { offcut: to })}
        />
      </td>
      <td>
        <Button
          look="quiet"
          small
          aria-label={`Remove ${name}`}
          title="Remove this row"
          onClick={() => edit(`remove ${name} from the stock`, (now) => removeStock(now, id))}
        >
          −
        </Button>
      </td>
    </tr>
  );
};
