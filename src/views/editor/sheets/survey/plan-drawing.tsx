import { useMemo } from 'react';
import type { Vec2 } from '../../../../base/index.ts';
import type { Station } from '../../../../design/index.ts';
import { Dimension, DrawingBoard } from '../../parts/index.ts';
import { useEditorParts } from '../../state/use-editor.ts';
import { useUnits } from '../../state/use-units.ts';
import { OutlineShape } from './outline-shape.tsx';
import { boxOutline, carcassBox, FROM_ABOVE, outlineOf, zoneOutline } from './outlines.ts';
import { showStation } from './view.ts';

/** The floor line of a side, and the widest line, along the stations. */
const edge = (stations: readonly Station[], side: 'left' | 'right', widest: boolean): readonly Vec2[] =>
  stations.flatMap((station): Vec2[] => {
    const outs = station[side].map((point) => point[0]);
    const out = widest ? Math.max(...outs) : outs[0];
    return out === undefined || !Number.isFinite(out) ? [] : [[side === 'left' ? -out : out, station.xMm]];
  });

const closed = (stations: readonly Station[], widest: boolean): string =>
  [...edge(stations, 'left', widest), ...edge(stations, 'right', widest).toReversed()]
    .map(([x, y]) => `${x},${-y}`)
    .join(' ');

interface PlanDrawingProps {
  readonly present: Station | null;
}

/** The cargo space from above, forward up: floor, widest line, stations, what stands in it. */
export const PlanDrawing = ({ present }: PlanDrawingProps) => {
  const units = useUnits();
  const { survey, carcasses } = useEditorParts((editor) => ({
    survey: editor.history.design.survey,
    carcasses: editor.fitOut.carcasses,
  }));
  const boxes = useMemo(() => carcasses.map((carcass) => ({ id: carcass.id, box: carcassBox(carcass) })), [carcasses]);
  const { stations } = survey;
  const [first, last] = [stations[0], stations.at(-1)];
  const widest = Math.max(0, ...stations.flatMap((one) => [...one.left, ...one.right].map((point) => point[0])));
  if (!first || !last || first === last || widest === 0) return null;
  return (
    <DrawingBoard
      label="Plan of the cargo space, forward up"
      from={[-widest, first.xMm]}
      to={[widest, last.xMm]}
      margin={[34, 34, 88, 12]}
      tallest={340}
    >
      {(text) => (
        <>
          <polygon
            points={closed(stations, true)}
            fill="none"
            stroke="var(--line-2)"
            vectorEffect="non-scaling-stroke"
          />
          <polygon
            points={closed(stations, false)}
            fill="var(--field)"
            stroke="var(--ink)"
            strokeWidth={1.6}
            vectorEffect="non-scaling-stroke"
          />
          {survey.zones.map((zone) => (
            <OutlineShape
              key={zone.id}
              outline={zoneOutline(zone, FROM_ABOVE)}
              fill="none"
              stroke="var(--caution)"
              strokeDasharray="4 3"
            />
          ))}
          {survey.obstacles.map((obstacle) => (
            <OutlineShape
              key={obstacle.id}
              outline={outlineOf(obstacle.solid, FROM_ABOVE)}
              fill="var(--line)"
              stroke="var(--ink-2)"
            />
          ))}
          {boxes.map(({ id, box }) => (
            <OutlineShape
              key={id}
              outline={boxOutline(box.min, box.max, FROM_ABOVE)}
              fill="none"
              stroke="var(--line-2)"
              strokeDasharray="7 4"
            />
          ))}
          {stations.map((station, i) => {
            const chosen = station.id === present?.id;
            return (
              // biome-ignore lint/a11y/noStaticElementInteractions: the chips above do the same by keyboard
              <g key={station.id} style={{ cursor: 'pointer' }} onClick={() => showStation(station.id)}>
                <line
                  x1={-widest - text * 0.8}
                  x2={widest + text * 0.8}
                  y1={-station.xMm}
                  y2={-station.xMm}
                  stroke={chosen ? 'var(--petrol)' : 'var(--line-2)'}
                  strokeWidth={chosen ? 2 : 1}
                  vectorEffect="non-scaling-stroke"
                />
                <line
                  x1={-widest - text * 0.8}
                  x2={widest + text * 0.8}
                  y1={-station.xMm}
                  y2={-station.xMm}
                  stroke="transparent"
                  strokeWidth={text * 1.2}
                />
                <text
                  x={-widest - text * 1.1}
                  y={-station.xMm + text * 0.35}
                  fontSize={text}
                  textAnchor="end"
                  fill={chosen ? 'var(--petrol)' : 'var(--ink-2)'}
                  fontWeight={chosen ? 600 : 400}
                >
                  {i + 1}
                </text>
              </g>
            );
          })}
          <Dimension
            from={[widest, first.xMm]}
            to={[widest, last.xMm]}
            offset={-text * 1.8}
            text={text}
            units={units}
          />
          <text x={0} y={-first.xMm + text * 1.6} fontSize={text * 0.9} textAnchor="middle" fill="var(--ink-2)">
            hatch sill
          </text>
        </>
      )}
    </DrawingBoard>
  );
};
