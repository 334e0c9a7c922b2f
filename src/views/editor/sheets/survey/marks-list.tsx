import { formatLengthUnit } from '../../../../base/index.ts';
import { addMarks, changeMark, type Mark, removeMark } from '../../../../design/index.ts';
import { Button, CheckField, Heading, LengthField, Table, TextField, tableStyles } from '../../parts/index.ts';
import { useEditor } from '../../state/use-editor.ts';
import { useUnits } from '../../state/use-units.ts';
import sheet from '../sheet.module.css';
import styles from './readings.module.css';
import type { Readings } from './use-readings.ts';

const AXES = ['forward', 'left', 'up'] as const;
type Axis = 0 | 1 | 2;
/** Places of the variances of x, y, z in a covariance. */
const VARIANCES = [0, 3, 5] as const;

const replaced = <T,>([x, y, z]: readonly [T, T, T], axis: number, value: T): [T, T, T] => [
  axis === 0 ? value : x,
  axis === 1 ? value : y,
  axis === 2 ? value : z,
];

interface MarkRowProps {
  readonly mark: Mark;
  readonly readings: Readings;
}

const MarkRow = ({ mark, readings: { read } }: MarkRowProps) => {
  const units = useUnits();
  const edit = useEditor((editor) => editor.edit);
  const name = mark.name === '' ? mark.id : mark.name;
  const held = read.points.get(mark.id);
  const spread = held ? read.verdict?.adjustment.covarianceOf(mark.id) : undefined;
  const worst = spread ? 2 * Math.sqrt(Math.max(...VARIANCES.map((i) => spread[i]))) : null;
  return (
    <tr>
      <th scope="row" className={styles.named}>
        <TextField
          bare
          label={`Name of ${name}`}
          value={mark.name}
          onCommit={(next) => edit('name a mark', (now) => changeMark(now, mark.id, { name: next }))}
        />
      </th>
      {AXES.map((axis, i) => (
        <td key={axis} className={styles.tape}>
          <LengthField
            bare
            label={`${name}, ${axis}`}
            valueMm={held?.[i as Axis] ?? mark.at[i as Axis]}
            units={units}
            disabled={held !== undefined && !mark.fixed[i as Axis]}
            onCommit={(mm) => edit('move a mark', (now) => changeMark(now, mark.id, { at: replaced(mark.at, i, mm) }))}
          />
          <CheckField
            label="set"
            name={`${name}, ${axis}, set by hand`}
            checked={mark.fixed[i as Axis]}
            onCommit={(fixed) =>
              edit(fixed ? 'set a mark by hand' : 'let readings place a mark', (now) =>
                changeMark(now, mark.id, { fixed: replaced(mark.fixed, i, fixed) }),
              )
            }
          />
        </td>
      ))}
      <td className={tableStyles.number}>{worst === null ? 'not held' : `± ${formatLengthUnit(worst, units)}`}</td>
      <td>
        <Button
          look="quiet"
          small
          aria-label={`Remove ${name} with its readings`}
          title="Remove it with the readings that touch it"
          onClick={() => edit('remove a mark', (now) => removeMark(now, mark.id))}
        >
          −
        </Button>
      </td>
    </tr>
  );
};

/** The marks stuck on the vehicle: where readings put each, how well, and marks of one's own beside those of the plan. */
export const MarksList = ({ readings }: { readonly readings: Readings }) => {
  const edit = useEditor((editor) => editor.edit);
  const { marks } = readings.survey;
  return (
    <>
      <Heading
        level={3}
        title={`${marks.length} marks`}
        aside={`${readings.read.points.size} held by readings`}
        actions={
          <Button
            small
            onClick={() =>
              edit(
                'add a mark',
                (now) =>
                  addMarks(now, [{ name: `mark ${marks.length + 1}`, at: [0, 0, 0], fixed: [false, false, false] }])
                    .design,
              )
            }
          >
            Add a mark
          </Button>
        }
      />
      <p className={sheet.soft}>
        A mark of your own takes readings like those of the plan; a section point can follow it. “Set” holds a
        coordinate as it is written: the frame, or the depth of a section. ± is at 95 %.
      </p>
      {marks.length === 0 ? null : (
        <div className={styles.steps}>
          <Table label="Marks">
            <thead>
              <tr>
                <th scope="col">mark</th>
                {AXES.map((axis) => (
                  <th key={axis} scope="col">
                    {axis}
                  </th>
                ))}
                <th scope="col">known to</th>
                <th scope="col">
                  <span className={sheet.soft}>rows</span>
                </th>
              </tr>
            </thead>
            <tbody>
              {marks.map((mark) => (
                <MarkRow key={mark.id} mark={mark} readings={readings} />
              ))}
            </tbody>
          </Table>
        </div>
      )}
    </>
  );
};
