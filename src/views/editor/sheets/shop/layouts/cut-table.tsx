import { cutRows, type MarkedPart, sequenceOf } from '../../../../../shop/index.ts';
import { Row, Table, tableStyles } from '../../../parts/index.ts';
import { useEditorParts } from '../../../state/use-editor.ts';
import { useUnits } from '../../../state/use-units.ts';
import type { ListedSheet } from './sheet-list.ts';

interface CutTableProps {
  readonly listed: ListedSheet;
  readonly parts: ReadonlyMap<string, MarkedPart>;
}

/** What the person at the saw does with this sheet, line by line; a line that gives selected parts is lit. */
export const CutTable = ({ listed: { laid, at }, parts }: CutTableProps) => {
  const units = useUnits();
  const { selection, hover, select } = useEditorParts((editor) => ({
    selection: editor.selection,
    hover: editor.hover,
    select: editor.select,
  }));
  const place = sequenceOf(laid.sequences, at);
  if (place === null) return null;
  const panelsOf = (marks: readonly string[]) =>
    marks.flatMap((mark) => (parts.get(mark)?.panels ?? []).map(({ id }) => id));
  return (
    <Table label={`Cuts of sheet ${at + 1}`}>
      <thead>
        <tr>
          <td />
          <th scope="col">cut</th>
          <th scope="col">set to</th>
          <th scope="col">gives</th>
          <td />
        </tr>
      </thead>
      <tbody>
        {cutRows(place.sequence, place.place, units).map((row) => {
          const panels = panelsOf(row.marks);
          return (
            <Row
              key={row.number}
              selected={panels.some((id) => selection.includes(id))}
              hovered={hover !== null && panels.some((id) => id === hover)}
              onSelect={panels.length === 0 ? undefined : (add) => select(panels, add ? 'add' : 'replace')}
            >
              <th scope="row">{row.number}</th>
              <td>{row.cut}</td>
              <td className={tableStyles.number}>{row.setTo}</td>
              <td>{row.gives}</td>
              <td className={tableStyles.number}>{row.repeats > 1 ? `× ${row.repeats}` : ''}</td>
            </Row>
          );
        })}
      </tbody>
    </Table>
  );
};
