import type { MarkedPart } from '../../../../shop/index.ts';
import { type CutListRow, operationsText } from '../../../../shop/index.ts';
import { Length, Row, Table, tableStyles } from '../../parts/index.ts';
import { useEditorParts } from '../../state/use-editor.ts';
import { useUnits } from '../../state/use-units.ts';
import styles from './shop.module.css';
import type { ShopLists } from './shop-lists.ts';

/** Selected or hovered when any of the panels cut to this part is, or the node that they come from. */
const holds = (part: MarkedPart, ids: readonly string[]): boolean =>
  part.panels.some((panel) => ids.includes(panel.id));

/** What the person at the saw must not mix up: hand, bands, notes. */
const asides = ({ hand, bands, note }: CutListRow): readonly string[] => {
  const banded = (['l1', 'l2', 'w1', 'w2'] as const).filter((edge) => bands[edge] !== null);
  return [
    ...(hand === null ? [] : [`${hand} hand`]),
    ...(banded.length === 0 ? [] : [`band ${banded.map((edge) => edge.toUpperCase()).join(' ')}`]),
    ...(note === '' ? [] : [note]),
  ];
};

interface LineProps {
  readonly row: CutListRow;
  readonly part: MarkedPart;
}

const Line = ({ row, part }: LineProps) => {
  const units = useUnits();
  const { selected, hovered, select, setHover } = useEditorParts((editor) => ({
    selected: holds(part, editor.selection),
    hovered: editor.hover !== null && holds(part, [editor.hover]),
    select: editor.select,
    setHover: editor.setHover,
  }));
  const ids = part.panels.map((panel) => panel.id);
  const pick = (add: boolean): void => select(ids, add ? 'add' : 'replace');
  return (
    <Row
      selected={selected}
      hovered={hovered}
      onSelect={pick}
      onHover={(over) => setHover(over ? (ids[0] ?? null) : null)}
    >
      <th scope="row">
        <button type="button" className={styles.mark} aria-pressed={selected} onClick={() => pick(false)}>
          {row.mark}
        </button>
      </th>
      <td className={tableStyles.number}>{row.quantity}</td>
      <td>
        {row.name}
        {asides(row).map((words) => (
          <span key={words} className={styles.grain}>
            {' '}
            · {words}
          </span>
        ))}
      </td>
      <td className={tableStyles.number}>
        <Length mm={row.cutLength} units={units} />
        {row.grain === 'length' ? (
          <span className={styles.grain} title="grain along the length">
            {' '}
            ↔
          </span>
        ) : null}
      </td>
      <td className={tableStyles.number}>
        <Length mm={row.cutWidth} units={units} />
      </td>
      <td className={tableStyles.number}>
        <Length mm={row.thickness} units={units} />
      </td>
      <td className={styles.grain}>{operationsText(row.operations)}</td>
    </Row>
  );
};

const HEADS = ['mark', 'qty', 'part', 'length', 'width', 'thick', 'work'] as const;

/** One line a distinct part, in the order of the stack of sheets. */
export const CutListTable = ({ lists }: { readonly lists: ShopLists }) => {
  const partOf = new Map(lists.drawings.marks.parts.map((part) => [part.mark, part]));
  const materials = [...new Set(lists.drawings.rows.map((row) => row.materialName))];
  return (
    <Table label="Cut list">
      <thead>
        <tr>
          {HEADS.map((head) => (
            <th key={head} scope="col">
              {head}
            </th>
          ))}
        </tr>
      </thead>
      {materials.map((material) => (
        <tbody key={material}>
          <tr>
            <th colSpan={HEADS.length} scope="rowgroup" className={styles.grain}>
              {material}
            </th>
          </tr>
          {lists.drawings.rows
            .filter((row) => row.materialName === material)
            .flatMap((row) => {
              const part = partOf.get(row.mark);
              return part ? [<Line key={row.mark} row={row} part={part} />] : [];
            })}
        </tbody>
      ))}
    </Table>
  );
};
