import { useMemo, useState } from 'react';
import { formatLength, type LengthUnits, type Vec2 } from '../../../../base/index.ts';
import type { SurveyStation } from '../../../../envelope/index.ts';
import { DrawingBoard, Length, ToggleChip } from '../../parts/index.ts';
import { useEditorParts } from '../../state/use-editor.ts';
import { useUnits } from '../../state/use-units.ts';
import sheet from '../sheet.module.css';
import { FROM_ABOVE, FROM_REAR } from './outlines.ts';
import styles from './readings.module.css';
import type { ReadingRow } from './readings-rows.ts';
import { placeLabels, type ReadingView, readingViews, segmentOf } from './readings-views.ts';
import type { Readings } from './use-readings.ts';

const valueText = ({ reading, angle }: ReadingRow, units: LengthUnits): string =>
  angle ? `${reading.value.toFixed(1)}°` : formatLength(reading.value, units);

/** The floor from above, or the section nearest to a depth; from the side the readings speak for themselves. */
const outlineOfView = ({ plane, xMm }: ReadingView, stations: readonly SurveyStation[]): readonly Vec2[] => {
  if (plane === FROM_ABOVE) {
    const edge = (side: 'left' | 'right'): readonly Vec2[] =>
      stations.flatMap((station): Vec2[] => {
        const first = station[side][0];
        return first ? [[-first.at[0], station.xMm]] : [];
      });
    return [...edge('left'), ...edge('right').toReversed()];
  }
  if (plane !== FROM_REAR || xMm === null) return [];
  const [nearest] = stations.toSorted((a, b) => Math.abs(a.xMm - xMm) - Math.abs(b.xMm - xMm));
  return nearest ? [...nearest.left, ...nearest.right.toReversed()].map(({ at }): Vec2 => [-at[0], at[1]]) : [];
};

const path = (points: readonly Vec2[]): string => points.map(([x, y]) => `${x},${-y}`).join(' ');

/** Shares of a line of lettering: a letter's width, a mark's radius. */
const LETTER = 0.5;
const DOT = 0.24;

interface LinesProps {
  readonly view: ReadingView;
  readonly readings: Readings;
  readonly text: number;
}

const Lines = ({ view, readings, text }: LinesProps) => {
  const units = useUnits();
  const { selection, hover, select, setHover } = useEditorParts((editor) => ({
    selection: editor.selection,
    hover: editor.hover,
    select: editor.select,
    setHover: editor.setHover,
  }));
  const { points } = readings.read;
  const lines = view.rows.flatMap((row) => {
    const segment = segmentOf(row.reading, points);
    if (!segment) return [];
    const [from, to] = [view.plane(segment.from), view.plane(segment.to)];
    const [chosen, pointed] = [selection.includes(row.reading.id), hover === row.reading.id];
    const weight = (row.suspect ? 4 : 0) + (chosen ? 2 : 0) + (pointed ? 1 : 0);
    return Math.hypot(to[0] - from[0], to[1] - from[1]) < text ? [] : [{ row, from, to, weight }];
  });
  const sorted = lines.toSorted((a, b) => a.weight - b.weight);
  const labels = placeLabels(
    sorted.toReversed().map(({ row, from, to }) => ({
      id: row.reading.id,
      text: `${row.number} · ${valueText(row, units)}`,
      from,
      to,
    })),
    text * 1.2,
    text * LETTER,
  );
  const look = (id: string): string | undefined => {
    const row = view.rows.find(({ reading }) => reading.id === id);
    return row?.suspect ? 'suspect' : selection.includes(id) || hover === id ? 'chosen' : undefined;
  };
  return (
    <>
      {sorted.map(({ row: { reading }, from, to }) => (
        <g
          key={reading.id}
          className={styles.line}
          data-look={look(reading.id)}
          data-out={reading.leftOut !== null}
          onPointerEnter={() => setHover(reading.id)}
          onPointerLeave={() => setHover(null)}
          onPointerDown={() => select([reading.id])}
        >
          <line x1={from[0]} y1={-from[1]} x2={to[0]} y2={-to[1]} vectorEffect="non-scaling-stroke" />
          <circle cx={from[0]} cy={-from[1]} r={text * DOT} />
          <circle cx={to[0]} cy={-to[1]} r={text * DOT} />
        </g>
      ))}
      {labels.map(({ id, text: words, at }) => (
        <text
          key={id}
          className={styles.figure}
          data-look={look(id)}
          x={at[0]}
          y={-at[1] + text * 0.35}
          fontSize={text * 1.1}
          strokeWidth={text * 0.7}
          textAnchor="middle"
        >
          {words}
        </text>
      ))}
    </>
  );
};

/** Words along the edges of the floor. */
const PlanWords = ({ outline, text }: { readonly outline: readonly Vec2[]; readonly text: number }) => {
  const ys = outline.map((point) => point[1]);
  return outline.length === 0 ? null : (
    <g className={styles.words} fontSize={text} textAnchor="middle">
      <text x={0} y={-Math.max(...ys) - text * 1.2}>
        seat back at the floor
      </text>
      <text x={0} y={-Math.min(...ys) + text * 2}>
        hatch sill
      </text>
    </g>
  );
};

const VIEW_WORDS: Readonly<Record<string, string>> = { plan: 'floor from above', side: 'from the side' };

/** The readings as lines on the floor, on each section and from the side, with the figures that were written. */
export const ReadingsDrawing = ({ readings }: { readonly readings: Readings }) => {
  const units = useUnits();
  const { rows, read } = readings;
  const [wanted, setWanted] = useState('plan');
  const views = useMemo(() => readingViews(rows, read.points), [rows, read]);
  const view = views.find(({ key }) => key === wanted) ?? views[0];
  if (!view) return null;
  const outline = outlineOfView(view, read.stations);
  const marks = view.rows.flatMap(({ reading }): readonly Vec2[] => {
    const segment = segmentOf(reading, read.points);
    return segment ? [view.plane(segment.from), view.plane(segment.to)] : [];
  });
  const all = [...outline, ...marks];
  const low = (axis: 0 | 1): number => Math.min(...all.map((point) => point[axis]));
  const high = (axis: 0 | 1): number => Math.max(...all.map((point) => point[axis]));
  if (high(0) <= low(0) || high(1) <= low(1)) return null;
  return (
    <>
      <fieldset className={sheet.chips} style={{ border: 0, padding: 0, margin: 0 }} aria-label="View of the readings">
        {views.map(({ key, xMm }) => (
          <ToggleChip key={key} pressed={key === view.key} onClick={() => setWanted(key)}>
            {xMm === null ? (
              VIEW_WORDS[key]
            ) : (
              <>
                from the rear, at <Length mm={xMm} units={units} />
              </>
            )}
          </ToggleChip>
        ))}
      </fieldset>
      <DrawingBoard
        label={`Readings, ${VIEW_WORDS[view.key] ?? 'from the rear'}`}
        from={[low(0), low(1)]}
        to={[high(0), high(1)]}
        margin={[30, 34, 30, 30]}
        tallest={330}
      >
        {(text) => (
          <>
            <polygon
              points={path(outline)}
              fill="var(--field)"
              stroke="var(--ink)"
              strokeWidth={1.6}
              vectorEffect="non-scaling-stroke"
            />
            {view.plane === FROM_ABOVE ? <PlanWords outline={outline} text={text} /> : null}
            <Lines view={view} readings={readings} text={text} />
          </>
        )}
      </DrawingBoard>
    </>
  );
};
