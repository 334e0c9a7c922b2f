import { useId, useState } from 'react';
import { addReadings, readReadingRows } from '../../../../design/index.ts';
import { sayProblem } from '../../../../says/index.ts';
import { Button, Dialog } from '../../parts/index.ts';
import { useEditorParts } from '../../state/use-editor.ts';
import sheet from '../sheet.module.css';
import styles from './readings.module.css';

const EXAMPLE = 'kind,from,to,value\ndistance,rear floor left,front floor right,80 1/16';

/** Readings from a spreadsheet or a CSV file: all of them, or none with every fault and its row. */
export const PasteReadings = ({ onClose }: { readonly onClose: () => void }) => {
  const id = useId();
  const { design, edit } = useEditorParts((editor) => ({ design: editor.history.design, edit: editor.edit }));
  const [text, setText] = useState('');
  const read = text.trim() === '' ? null : readReadingRows(text, design);
  const rows = read?.ok ? read.value : [];
  return (
    <Dialog
      title="Paste readings"
      wide
      onClose={onClose}
      foot={
        <>
          <Button onClick={onClose}>Cancel</Button>
          <Button
            look="main"
            disabled={rows.length === 0}
            onClick={() => {
              edit(`paste ${rows.length} readings`, (now) => addReadings(now, rows).design);
              onClose();
            }}
          >
            Add {rows.length} {rows.length === 1 ? 'reading' : 'readings'}
          </Button>
        </>
      }
    >
      <label htmlFor={id}>
        Columns kind, from, to, value, and instrument, note, at where there are any. Marks by name; lengths as you write
        them, angles in degrees. Kinds: distance, along, across, height, offset, level, angle.
      </label>
      <textarea
        id={id}
        className={styles.paste}
        value={text}
        spellCheck={false}
        placeholder={EXAMPLE}
        onChange={(event) => setText(event.target.value)}
      />
      {read && !read.ok ? (
        <ul className={sheet.problems} aria-label="What could not be read">
          {read.error.map((problem) => (
            <li key={`${problem.at} ${problem.code}`}>{sayProblem(problem)}.</li>
          ))}
        </ul>
      ) : null}
    </Dialog>
  );
};
