import { formatLength } from '../../../../base/index.ts';
import { changeReading, leaveOutReading, removeReading } from '../../../../design/index.ts';
import { Button, LengthField, NumberField, Row, SeverityMark, Table, tableStyles } from '../../parts/index.ts';
import { useEditorParts } from '../../state/use-editor.ts';
import { useUnits } from '../../state/use-units.ts';
import styles from './readings.module.css';
import type { ReadingRow } from './readings-rows.ts';

/** Half width of the bar in tolerances; what lies further off is cut at its end. */
const REACH = 4;
const TICKS = [-2, 0, 2] as const;
const HALF = 62;
const BASE = 13;

/** Degrees to a tenth, and nothing never written as less than nothing. */
const degreesText = (degrees: number): string => (Number(degrees.toFixed(1)) + 0).toFixed(1).replace('-', '−');

/** Read less adjusted on a small scale: ticks at nothing and at two tolerances to each side. */
const DifferenceBar = ({ row }: { readonly row: ReadingRow }) => {
  if (row.adjusted === null) return null;
  const x = (tolerances: number): number => (Math.max(-REACH, Math.min(REACH, tolerances)) / REACH) * HALF;
  const end = x(row.tolerances);
  return (
    <svg
      className={styles.bar}
      viewBox={`${-HALF - 4} 0 ${2 * HALF + 8} 18`}
      role="img"
      aria-label={`${row.tolerances.toFixed(1)} tolerances off`}
    >
      <path
        d={`M${-HALF} ${BASE}H${HALF}${TICKS.map((at) => `M${x(at)} ${BASE}v${at === 0 ? -11 : -5}`).join('')}`}
        fill="none"
        stroke="var(--line-2)"
      />
      <rect
        x={Math.min(0, end)}
        y={BASE - 8}
        width={Math.max(1, Math.abs(end))}
        height={6}
        fill={row.suspect ? 'var(--caution)' : 'var(--petrol)'}
      />
    </svg>
  );
};

const About = ({ row }: { readonly row: ReadingRow }) => {
  const { leftOut, note } = row.reading;
  const words = [
    row.suspect === 'named' ? 'likely misread' : row.suspect === 'doubt' ? 'in doubt' : '',
    leftOut ? `left out by ${leftOut.who}: ${leftOut.why}` : '',
    row.alone && !row.suspect ? 'checked by no other' : '',
    note,
  ].filter((one) => one !== '');
  return (
    <>
      <span className={styles.what}>{row.words}</span>
      {words.length > 0 ? <span className={styles.why}> · {words.join(' · ')}</span> : null}
    </>
  );
};

const ReadingLine = ({ row }: { readonly row: ReadingRow }) => {
  const units = useUnits();
  const { id, value, leftOut } = row.reading;
  const { selected, hovered, select, setHover, edit } = useEditorParts((editor) => ({
    selected: editor.selection.includes(id),
    hovered: editor.hover === id,
    select: editor.select,
    setHover: editor.setHover,
    edit: editor.edit,
  }));
  const label = `Reading ${row.number}, ${row.words}`;
  const set = (next: number): void =>
    edit(`change reading ${row.number}`, (now) => changeReading(now, id, { value: next }));
  return (
    <Row
      selected={selected}
      hovered={hovered}
      onSelect={() => select([id])}
      onHover={(over) => setHover(over ? id : null)}
    >
      <th
        scope="row"
        className={tableStyles.number}
        data-suspect={row.suspect ?? undefined}
        data-out={leftOut !== null}
      >
        <button type="button" className={styles.pick} aria-pressed={selected} onClick={() => select([id])}>
          {row.suspect ? <SeverityMark severity="caution" /> : null}
          {row.number}
        </button>
      </th>
      <td>
        <About row={row} />
      </td>
      <td className={styles.tape} data-reading={id}>
        {row.angle ? (
          <NumberField bare label={label} value={value} unit="°" decimals={1} onCommit={set} />
        ) : (
          <LengthField bare label={label} valueMm={value} units={units} onCommit={set} />
        )}
      </td>
      <td className={tableStyles.number}>
        {row.adjusted === null ? '–' : row.angle ? `${degreesText(row.adjusted)}°` : formatLength(row.adjusted, units)}
      </td>
      <td>
        <DifferenceBar row={row} />
      </td>
      <td style={{ whiteSpace: 'nowrap' }}>
        {leftOut ? (
          <Button
            small
            onClick={() => edit(`take reading ${row.number} back in`, (now) => leaveOutReading(now, id, null))}
          >
            Take back in
          </Button>
        ) : null}
        <Button
          look="quiet"
          small
          aria-label={`Remove reading ${row.number}`}
          title="Remove this reading"
          onClick={() => edit(`remove reading ${row.number}`, (now) => removeReading(now, id))}
        >
          −
        </Button>
      </td>
    </Row>
  );
};

/** Puts the pen into the field of a reading. */
export const focusReading = (id: string): void => {
  const field = document.querySelector(`[data-reading="${CSS.escape(id)}"] input`);
  if (!(field instanceof HTMLInputElement)) return;
  field.scrollIntoView({ block: 'nearest' });
  field.focus({ preventScroll: true });
  field.select();
};

/** Every reading: what was written, what the whole makes of it, and how far the two are apart. */
export const ReadingsTable = ({ rows }: { readonly rows: readonly ReadingRow[] }) => (
  <div className={styles.rows}>
    <Table label="Readings">
      <thead>
        <tr>
          <th scope="col">no.</th>
          <th scope="col">reading</th>
          <th scope="col">tape</th>
          <th scope="col">{rows.some(({ suspect }) => suspect === 'named') ? 'adjusted without it' : 'adjusted'}</th>
          <th scope="col">difference, in tolerances</th>
          <th scope="col">
            <span className={styles.why}>rows</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <ReadingLine key={row.reading.id} row={row} />
        ))}
      </tbody>
    </Table>
  </div>
);
