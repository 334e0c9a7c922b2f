import {
  addSectionRow,
  addSurveyItem,
  changeSurveyItem,
  mirrorSection,
  removeSectionRow,
  removeSurveyItem,
  type Station,
  tieSectionPoint,
  tiesOf,
} from '../../../../design/index.ts';
import type { SurveyStation } from '../../../../envelope/index.ts';
import { sayMark } from '../../../../says/index.ts';
import { Button, ChoiceField, Length, LengthField, Row, Table, ToggleChip, tableStyles } from '../../parts/index.ts';
import { useAdd } from '../../state/use-add.ts';
import { useDesk } from '../../state/use-desk.ts';
import { useEditor, useEditorParts } from '../../state/use-editor.ts';
import { useUnits } from '../../state/use-units.ts';
import styles from '../sheet.module.css';
import { PlanDrawing } from './plan-drawing.tsx';
import { SectionDrawing } from './section-drawing.tsx';
import { type Side, startSection, stationAfter, withCoordinate, withPointInserted } from './section-points.ts';
import { StartNote } from './start-values.tsx';
import { useReadings } from './use-readings.ts';
import { showRow, showStation, useSurveyView } from './view.ts';

const SIDES: readonly Side[] = ['left', 'right'];
const AXES = [0, 1] as const;
const AXIS_WORDS = ['out', 'up'] as const;

/** The mark that each side of a row follows, or none. */
const FollowFields = ({ station, row }: { readonly station: Station; readonly row: number }) => {
  const { survey, edit } = useEditorParts((editor) => ({ survey: editor.history.design.survey, edit: editor.edit }));
  const choices = [
    { value: '', label: 'nothing, it is typed' },
    ...survey.marks.map(({ id }) => ({ value: id as string, label: sayMark(survey, id) })),
  ];
  return (
    <div className={styles.card}>
      <div className={styles.fields}>
        {SIDES.filter((side) => station[side][row]).map((side) => (
          <ChoiceField
            key={side}
            label={`Point ${row + 1}, ${side}, follows`}
            value={tiesOf(station, side)[row] ?? ''}
            choices={choices}
            onCommit={(chosen) => {
              const mark = survey.marks.find(({ id }) => id === chosen)?.id ?? null;
              edit('tie a point of the section to a mark', (now) => tieSectionPoint(now, station.id, side, row, mark));
            }}
          />
        ))}
      </div>
      <p className={styles.soft}>A point that follows a mark stands where the readings put the mark.</p>
    </div>
  );
};

const PointTable = ({ station, read }: { readonly station: Station; readonly read: SurveyStation | null }) => {
  const edit = useEditor((editor) => editor.edit);
  const units = useUnits();
  const { row: held } = useSurveyView();
  const rows = Math.max(station.left.length, station.right.length);
  /** Where readings put a point that follows a mark, or null for a typed one. */
  const followed = (side: Side, row: number): readonly [number, number] | null => {
    const point = read?.[side][row];
    return point?.standing === 'adjusted' ? [side === 'left' ? point.at[0] : -point.at[0], point.at[1]] : null;
  };
  const change = (label: string, change: Partial<Omit<Station, 'id'>>): void =>
    edit(label, (design) => changeSurveyItem(design, 'stations', station.id, change));
  return (
    <Table label="Points of the section">
      <thead>
        <tr>
          <th scope="col">point</th>
          <th scope="col">left, out</th>
          <th scope="col">left, up</th>
          <th scope="col">right, out</th>
          <th scope="col">right, up</th>
          <th scope="col">
            <span className={styles.soft}>rows</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {Array.from({ length: rows }, (_, row) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a point is known by its place in the list
          <Row key={row} selected={held === row} onSelect={() => showRow(row)}>
            <th scope="row" className={tableStyles.number}>
              <Button
                look="quiet"
                small
                aria-pressed={held === row}
                aria-label={`Point ${row + 1}: choose what it follows`}
                onClick={() => showRow(held === row ? null : row)}
              >
                {row + 1}
              </Button>
            </th>
            {SIDES.flatMap((side) =>
              AXES.map((axis) => {
                const point = station[side][row];
                const used = followed(side, row);
                return (
                  <td key={`${side}${axis}`}>
                    {point ? (
                      <LengthField
                        bare
                        label={`Point ${row + 1}, ${side}, ${AXIS_WORDS[axis]}`}
                        valueMm={used?.[axis] ?? point[axis]}
                        units={units}
                        disabled={used !== null}
                        onCommit={(mm) =>
                          change('change a point of the section', {
                            [side]: withCoordinate(station[side], row, axis, mm),
                          })
                        }
                      />
                    ) : null}
                  </td>
                );
              }),
            )}
            <td>
              <span style={{ display: 'inline-flex' }}>
                <Button
                  look="quiet"
                  small
                  aria-label={`Add a point after ${row + 1}`}
                  title="Add a point after this one"
                  onClick={() =>
                    edit('add a point', (now) =>
                      addSectionRow(now, station.id, row, (points) => withPointInserted(points, row)),
                    )
                  }
                >
                  +
                </Button>
                <Button
                  look="quiet"
                  small
                  aria-label={`Remove point ${row + 1}`}
                  title="Remove this point on both sides"
                  disabled={rows <= 1}
                  onClick={() => edit('remove a point', (now) => removeSectionRow(now, station.id, row))}
                >
                  −
                </Button>
              </span>
            </td>
          </Row>
        ))}
      </tbody>
    </Table>
  );
};

const StationBar = ({ stations, present }: { readonly stations: readonly Station[]; readonly present: Station }) => {
  const edit = useEditor((editor) => editor.edit);
  const add = useAdd();
  const units = useUnits();
  const index = stations.findIndex((station) => station.id === present.id);
  const change = (label: string, change: Partial<Omit<Station, 'id'>>): void =>
    edit(label, (design) => changeSurveyItem(design, 'stations', present.id, change));
  return (
    <div className={styles.bar} style={{ alignItems: 'end' }}>
      <div style={{ width: 150 }}>
        <LengthField
          label={`Station ${index + 1}, from the sill`}
          valueMm={present.xMm}
          units={units}
          onCommit={(mm) => change('move a station', { xMm: mm })}
        />
      </div>
      <Button
        title="A station halfway to the next one, or as far again behind the last"
        onClick={() =>
          showStation(
            add('add a station', (design) => addSurveyItem(design, 'stations', stationAfter(stations, index))),
          )
        }
      >
        Add a station
      </Button>
      <Button
        title="The right side takes the points of the left"
        onClick={() => edit('make the right side like the left', (now) => mirrorSection(now, present.id))}
      >
        Right like left
      </Button>
      <Button
        disabled={stations.length <= 1}
        onClick={() => {
          showStation(null);
          edit('remove a station', (design) => removeSurveyItem(design, 'stations', present.id));
        }}
      >
        Remove
      </Button>
    </div>
  );
};

const FirstStation = () => {
  const lay = useDesk((desk) => desk.lay);
  const edit = useEditor((editor) => editor.edit);
  return (
    <div className={styles.first}>
      <h2>Begin with the hatch sill</h2>
      <p>
        Lay the tape across the floor at the sill, then go up both sides: at each height write how far the trim stands
        out from the centre line. That is the first station. Then do the same at every depth where the shape changes:
        before and behind the wheelhouses, at the seat back.
      </p>
      <Button
        look="main"
        onClick={() =>
          edit('add the first station', (design) => {
            const first = addSurveyItem(design, 'stations', { xMm: 0, ...startSection(), startValues: true }).design;
            return addSurveyItem(first, 'stations', { xMm: 900, ...startSection(), startValues: true }).design;
          })
        }
      >
        Add two stations to start from
      </Button>
      <p className={styles.soft}>They hold start values of a plain box. Overwrite every one of them with your tape.</p>
      <Button onClick={() => lay({ kind: 'designs' })}>Look at a demo design, or open one of yours…</Button>
    </div>
  );
};

/** Sections and plan: the drawing above, the points of the chosen station below it. */
export const Sections = () => {
  const stations = useEditor((editor) => editor.history.design.survey.stations);
  const units = useUnits();
  const view = useSurveyView();
  const present = stations.find((station) => station.id === view.station) ?? stations[0] ?? null;
  const readings = useReadings();
  if (!present) return <FirstStation />;
  const read = readings.read.stations.find(({ id }) => id === present.id) ?? null;
  return (
    <>
      <fieldset className={styles.chips} style={{ border: 0, padding: 0, margin: 0 }}>
        <legend className={styles.small}>Stations, from the sill forward</legend>
        {stations.map((station, i) => (
          <ToggleChip key={station.id} pressed={station.id === present.id} onClick={() => showStation(station.id)}>
            {i + 1} · <Length mm={station.xMm} units={units} />
          </ToggleChip>
        ))}
      </fieldset>
      <StartNote list="stations" id={present.id} what={`station ${stations.indexOf(present) + 1}`} />
      {present.source === 'scan' ? (
        <p className={styles.soft}>
          This station is taken from a scan; a point counts as good as the house rules say of one.
        </p>
      ) : null}
      <SectionDrawing station={present} read={read} />
      <StationBar stations={stations} present={present} />
      <PointTable station={present} read={read} />
      {view.row !== null && present.left.length + present.right.length > 0 ? (
        <FollowFields station={present} row={view.row} />
      ) : null}
      <PlanDrawing present={present} />
    </>
  );
};
