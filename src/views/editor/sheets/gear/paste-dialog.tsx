import { useId, useMemo, useState } from 'react';
import { addGear } from '../../../../design/index.ts';
import { Button, Dialog, Length, Mass, Table, tableStyles } from '../../parts/index.ts';
import { useBench } from '../../state/bench.ts';
import { useDesk } from '../../state/use-desk.ts';
import { useEditor } from '../../state/use-editor.ts';
import { useUnits } from '../../state/use-units.ts';
import sheet from '../sheet.module.css';
import styles from './gear.module.css';
import { type PastedRow, readPasted } from './read-pasted.ts';

const Preview = ({ rows }: { readonly rows: readonly PastedRow[] }) => {
  const units = useUnits();
  return (
    <Table label="What was read">
      <thead>
        <tr>
          <th scope="col">row</th>
          <th scope="col">gear</th>
          <th scope="col">size</th>
          <th scope="col">mass</th>
          <th scope="col">count</th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) =>
          row.ok ? (
            <tr key={row.line}>
              <td>{row.line}</td>
              <th scope="row">{row.gear.name}</th>
              <td className={styles.size}>
                <Length mm={row.gear.sizeMm[0]} units={units} /> × <Length mm={row.gear.sizeMm[1]} units={units} /> ×{' '}
                <Length mm={row.gear.sizeMm[2]} units={units} />
              </td>
              <td className={tableStyles.number}>
                <Mass kg={row.gear.massKg} units={units} />
              </td>
              <td className={tableStyles.number}>{row.count}</td>
            </tr>
          ) : (
            <tr key={row.line} className={styles.bad}>
              <td>{row.line}</td>
              <th scope="row">{row.name === '' ? '–' : row.name}</th>
              <td colSpan={3}>{row.says}</td>
            </tr>
          ),
        )}
      </tbody>
    </Table>
  );
};

/** Rows from a spreadsheet: looked at first, then added in one step; rows that cannot be read stay in the text. */
export const PasteDialog = ({ onClose }: { readonly onClose: () => void }) => {
  const id = useId();
  const units = useUnits();
  const { catalog } = useBench();
  const edit = useEditor((editor) => editor.edit);
  const tell = useDesk((desk) => desk.tell);
  const [text, setText] = useState('');
  const rows = useMemo(() => readPasted(text, units, catalog.gear), [text, units, catalog]);
  const good = rows.flatMap((row) => (row.ok ? Array.from({ length: row.count }, () => row.gear) : []));
  const bad = rows.filter((row) => !row.ok).length;
  const add = (): void => {
    edit(`add ${good.length} pieces of gear`, (design) => addGear(design, good).design);
    tell(bad === 0 ? `${good.length} pieces added.` : `${good.length} pieces added; ${bad} rows could not be read.`);
    onClose();
  };
  return (
    <Dialog
      title="Paste a list of gear"
      wide
      onClose={onClose}
      foot={
        <>
          <Button onClick={onClose}>Cancel</Button>
          <Button look="main" disabled={good.length === 0} onClick={add}>
            Add {good.length} {good.length === 1 ? 'piece' : 'pieces'}
          </Button>
        </>
      }
    >
      <label htmlFor={id}>
        Copy the rows in your spreadsheet and paste them here: name, length, width, height, mass, how many. A first row
        with heads may name the columns and their units. Bare numbers are{' '}
        {units === 'in' ? 'inches and pounds' : 'millimetres and kilograms'}; a name of the catalogue needs no size.
      </label>
      <textarea
        id={id}
        className={styles.paste}
        value={text}
        spellCheck={false}
        placeholder={'halligan tool\t30\t6\t4\t11 lb\t1'}
        onChange={(event) => setText(event.target.value)}
      />
      {rows.length > 0 ? <Preview rows={rows} /> : <p className={sheet.soft}>Nothing to read yet.</p>}
    </Dialog>
  );
};
