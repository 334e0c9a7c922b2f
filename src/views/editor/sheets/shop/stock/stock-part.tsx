import type { Material } from '../../../../../catalog/index.ts';
import { addStock, type Design, freshOffcut, freshSheet, type StockRow } from '../../../../../design/index.ts';
import { type SheetLayouts, stockLeft, stockLeftCsv, stockUsed } from '../../../../../shop/index.ts';
import { fileStem } from '../../../files/file-name.ts';
import { Button, type Choice, Heading, Table } from '../../../parts/index.ts';
import { useBench } from '../../../state/bench.ts';
import { useDesk } from '../../../state/use-desk.ts';
import { useEditorParts } from '../../../state/use-editor.ts';
import sheet from '../../sheet.module.css';
import { saveOne } from '../save-packet.ts';
import { ReadList } from './read-list.tsx';
import styles from './stock.module.css';
import { StockLine } from './stock-line.tsx';

const counted = (count: number, one: string): string => `${count} ${one}${count === 1 ? '' : 's'}`;

const asideOf = (stock: readonly StockRow[]): string => {
  const offcuts = stock.filter(({ offcut }) => offcut).length;
  const sizes = stock.length - offcuts;
  return stock.length === 0
    ? 'sheets of the catalogue'
    : [
        ...(sizes > 0 ? [counted(sizes, 'sheet size')] : []),
        ...(offcuts > 0 ? [`${counted(offcuts, 'row')} of offcuts`] : []),
      ].join(', ');
};

/** Materials that this design is cut from stand first. */
const choicesOf = (materials: readonly Material[], cut: ReadonlySet<string>): readonly Choice<string>[] =>
  [...materials]
    .sort((a, b) => Number(cut.has(b.id)) - Number(cut.has(a.id)))
    .map(({ id, name }) => ({ value: id, label: name, group: cut.has(id) ? 'in this design' : 'others' }));

/** Puts the pen into the name of the newest row. */
const penInNewest = (): void => {
  requestAnimationFrame(() => {
    const fields = document.querySelectorAll<HTMLInputElement>('[data-stock-name] input');
    const newest = fields[fields.length - 1];
    newest?.scrollIntoView({ block: 'nearest' });
    newest?.focus({ preventScroll: true });
    newest?.select();
  });
};

interface StockPartProps {
  readonly layouts: SheetLayouts;
  /** The material that a new row is of. */
  readonly material: string | null;
}

/** Sheets that the shop can have and offcuts in its rack: what the layouts above are cut from. */
export const StockPart = ({ layouts, material }: StockPartProps) => {
  const { catalog } = useBench();
  const { design, edit } = useEditorParts((editor) => ({ design: editor.history.design, edit: editor.edit }));
  const tell = useDesk((desk) => desk.tell);
  const { stock } = design;
  const materials = [...catalog.materials.values()];
  const cut = new Set(layouts.boards.map(({ board }) => board.material));
  const choices = choicesOf(materials, cut);
  const used = stockUsed(design, layouts, catalog);
  const left = stockLeft(design, layouts, catalog);
  const first = catalog.materials.get(material ?? choices[0]?.value ?? '') ?? materials[0];
  const add = (what: string, fresh: (now: Design, of: Material) => Omit<StockRow, 'id'>): void => {
    if (first === undefined) return;
    edit(`add ${what}`, (now) => addStock(now, [fresh(now, first)]).design);
    penInNewest();
  };
  const saveLeft = (): void => {
    const path = `${fileStem(design.title)}-stock-left.csv`;
    saveOne({ path, kind: 'list', about: 'stock', text: stockLeftCsv(left, catalog) });
    tell(`${path} saved: read it into the next design.`);
  };
  return (
    <section className={`${sheet.group} ${styles.stock} no-print`} aria-label="Stock in hand">
      <Heading level={3} title="Stock in hand" aside={asideOf(stock)} />
      {stock.length === 0 ? (
        <p className={sheet.soft}>
          Offcuts listed here are used before a sheet is bought. A sheet listed here takes the place of the catalogue’s
          sheets of its material.
        </p>
      ) : (
        <div className={styles.rows}>
          <Table label="Sheets and offcuts">
            <thead>
              <tr>
                <th scope="col">name and material</th>
                <th scope="col">length, with the grain</th>
                <th scope="col">width</th>
                <th scope="col">there are</th>
                <th scope="col">price of one</th>
                <td />
              </tr>
            </thead>
            <tbody>
              {stock.map((row) => (
                <StockLine key={row.id} row={row} choices={choices} used={used.get(row.id) ?? 0} />
              ))}
            </tbody>
          </Table>
        </div>
      )}
      {stock.length === 0 ? null : (
        <p className={`${sheet.soft} ${sheet.small}`}>
          No count: as many as wanted. No price: an offcut costs nothing, a sheet what the catalogue asks for its area.
        </p>
      )}
      <div className={sheet.bar}>
        <Button onClick={() => add('an offcut', freshOffcut)}>Add an offcut</Button>
        <Button onClick={() => add('a sheet size', freshSheet)}>Add a sheet size</Button>
        <ReadList />
        <Button
          disabled={left.length === 0}
          title="Rows less what is used, and the offcuts that these layouts leave: for the next design"
          onClick={saveLeft}
        >
          Save what is left…
        </Button>
      </div>
    </section>
  );
};
