import { type PointerEvent, useMemo, useRef } from 'react';
import type { Vec2 } from '../../../../base/index.ts';
import { changeSurveyItem, type Station } from '../../../../design/index.ts';
import type { SurveyStation } from '../../../../envelope/index.ts';
import { Dimension, DrawingBoard } from '../../parts/index.ts';
import { useEditor, useEditorParts } from '../../state/use-editor.ts';
import { useUnits } from '../../state/use-units.ts';
import { OutlineShape } from './outline-shape.tsx';
import { boxOutline, carcassBox, FROM_REAR, outlineOf, solidStandsAt } from './outlines.ts';
import { type Side, withCoordinate } from './section-points.ts';
import { showRow, useSurveyView } from './view.ts';

const across = (side: Side, out: number): number => (side === 'left' ? -out : out);

const ring = ({ left, right }: Station): readonly Vec2[] => [
  ...left.map(([out, up]): Vec2 => [across('left', out), up]),
  ...right.toReversed().map(([out, up]): Vec2 => [across('right', out), up]),
];

/** A side as readings leave it, in the terms of the design: out from the centre line, up. */
const sideOf = (read: SurveyStation, side: Side): Station['left'] =>
  read[side].map(({ at }) => [side === 'left' ? at[0] : -at[0], at[1]] as const);

interface PointHandleProps {
  readonly station: Station;
  readonly side: Side;
  readonly row: number;
  readonly held: boolean;
  /** It stands where readings put its mark, and cannot be dragged. */
  readonly follows: boolean;
  /** mm that stand for one line of text on screen. */
  readonly text: number;
}

const roundMm = (mm: number): number => Math.round(mm);

/** A point that can be dragged; the table beside the drawing does the same by keyboard. */
const PointHandle = ({ station, side, row, held, follows, text }: PointHandleProps) => {
  const { beginGesture, previewGesture, commitGesture, cancelGesture } = useEditorParts((editor) => ({
    beginGesture: editor.beginGesture,
    previewGesture: editor.previewGesture,
    commitGesture: editor.commitGesture,
    cancelGesture: editor.cancelGesture,
  }));
  const dragging = useRef(false);
  const point = station[side][row];
  if (!point) return null;
  if (follows)
    return (
      <circle
        cx={across(side, point[0])}
        cy={-point[1]}
        r={held ? text * 0.36 : text * 0.24}
        fill={held ? 'var(--petrol)' : 'var(--ink)'}
        style={{ cursor: 'pointer' }}
        onPointerDown={() => showRow(row)}
      />
    );
  const onMove = (event: PointerEvent<SVGCircleElement>): void => {
    const svg = event.currentTarget.ownerSVGElement;
    const matrix = svg?.getScreenCTM()?.inverse();
    if (!dragging.current || !matrix) return;
    const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix);
    const out = roundMm(Math.max(0, side === 'left' ? -at.x : at.x));
    previewGesture((design) => {
      const before = design.survey.stations.find((one) => one.id === station.id);
      if (!before) return design;
      const moved = withCoordinate(withCoordinate(before[side], row, 0, out), row, 1, roundMm(-at.y));
      return changeSurveyItem(design, 'stations', station.id, { [side]: moved });
    });
  };
  return (
    <circle
      cx={across(side, point[0])}
      cy={-point[1]}
      r={held ? text * 0.42 : text * 0.3}
      fill={held ? 'var(--petrol)' : 'var(--sheet)'}
      stroke="var(--petrol)"
      strokeWidth={2}
      vectorEffect="non-scaling-stroke"
      style={{ cursor: 'grab', touchAction: 'none' }}
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        dragging.current = true;
        showRow(row);
        beginGesture();
      }}
      onPointerMove={onMove}
      onPointerUp={() => {
        dragging.current = false;
        commitGesture('move a point of the section');
      }}
      onPointerCancel={() => {
        dragging.current = false;
        cancelGesture();
      }}
    />
  );
};

const Around = ({ x }: { readonly x: number }) => {
  const { survey, carcasses } = useEditorParts((editor) => ({
    survey: editor.history.design.survey,
    carcasses: editor.fitOut.carcasses,
  }));
  const boxes = useMemo(() => carcasses.map((carcass) => ({ id: carcass.id, box: carcassBox(carcass) })), [carcasses]);
  return (
    <>
      {survey.zones
        .filter((zone) => solidStandsAt(zone.solid, x))
        .map((zone) => (
          <OutlineShape
            key={zone.id}
            outline={outlineOf(zone.solid, FROM_REAR)}
            fill="var(--caution-soft)"
            stroke="var(--caution)"
            strokeDasharray="4 3"
          />
        ))}
      {boxes
        .filter(({ box }) => box.min[0] <= x && x <= box.max[0])
        .map(({ id, box }) => (
          <OutlineShape
            key={id}
            outline={boxOutline(box.min, box.max, FROM_REAR)}
            fill="none"
            stroke="var(--line-2)"
            strokeDasharray="7 4"
          />
        ))}
      {survey.obstacles
        .filter((obstacle) => solidStandsAt(obstacle.solid, x))
        .map((obstacle) => (
          <OutlineShape
            key={obstacle.id}
            outline={outlineOf(obstacle.solid, FROM_REAR)}
            fill="var(--line)"
            stroke="var(--ink-2)"
          />
        ))}
    </>
  );
};

const extent = (points: readonly Vec2[]) => {
  const xs = points.map((point) => point[0]);
  const ys = points.map((point) => point[1]);
  return { left: Math.min(...xs), right: Math.max(...xs), low: Math.min(...ys), high: Math.max(...ys) };
};

/** The section at one station in true scale, seen from the rear, with what stands there. */
export const SectionDrawing = ({
  station,
  read,
}: {
  readonly station: Station;
  readonly read: SurveyStation | null;
}) => {
  const units = useUnits();
  const { row } = useSurveyView();
  const aperture = useEditor((editor) => editor.history.design.survey.aperture);
  const follows = (side: Side, row: number): boolean => read?.[side][row]?.standing === 'adjusted';
  const used: Station = read ? { ...station, left: sideOf(read, 'left'), right: sideOf(read, 'right') } : station;
  const corners = ring(used);
  if (corners.length < 3) return <p>Fewer than three points: the section cannot be drawn yet.</p>;
  const around = extent(corners);
  return (
    <DrawingBoard
      label={`Section at ${station.id}, seen from the rear`}
      from={[around.left, Math.min(0, around.low)]}
      to={[around.right, around.high]}
      margin={[14, 44, 84, 14]}
      tallest={330}
    >
      {(text) => (
        <>
          <polygon
            points={corners.map(([x, y]) => `${x},${-y}`).join(' ')}
            fill="var(--field)"
            stroke="var(--ink)"
            strokeWidth={1.6}
            vectorEffect="non-scaling-stroke"
          />
          {station.xMm === 0 && aperture ? (
            <polygon
              points={aperture.map(([y, z]) => `${-y},${-z}`).join(' ')}
              fill="none"
              stroke="var(--ink-2)"
              strokeDasharray="2 3"
              vectorEffect="non-scaling-stroke"
            />
          ) : null}
          <Around x={station.xMm} />
          <line
            x1={0}
            x2={0}
            y1={-around.high - 20}
            y2={-around.low + 20}
            stroke="var(--line-2)"
            strokeDasharray="12 3 2 3"
            vectorEffect="non-scaling-stroke"
          />
          <Dimension
            from={[around.left, around.low]}
            to={[around.right, around.low]}
            offset={-text * 1.7}
            text={text}
            units={units}
          />
          <Dimension
            from={[around.right, around.low]}
            to={[around.right, around.high]}
            offset={-text * 1.7}
            text={text}
            units={units}
          />
          {(['left', 'right'] as const).map((side) =>
            station[side].map((_, i) => (
              <PointHandle
                // biome-ignore lint/suspicious/noArrayIndexKey: a point is known by its place in the list
                key={`${side}${i}`}
                station={used}
                side={side}
                row={i}
                held={row === i}
                follows={follows(side, i)}
                text={text}
              />
            )),
          )}
        </>
      )}
    </DrawingBoard>
  );
};
