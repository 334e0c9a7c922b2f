import { type MouseEvent, useMemo } from 'react';
import type { Box, Vec2 } from '../../../../../base/index.ts';
import { shapeBox } from '../../../../../bodies/index.ts';
import type { CargoSpace } from '../../../../../envelope/index.ts';
import { DrawingBoard } from '../../../parts/index.ts';
import { OutlineShape } from '../../survey/outline-shape.tsx';
import { boxOutline, carcassBox, FROM_ABOVE } from '../../survey/outlines.ts';
import { useCabinet } from '../use-cabinet.ts';

interface SpotPlanProps {
  readonly space: CargoSpace;
  readonly spot: readonly [number, number];
  readonly found: Box | null;
  readonly insteadOf: string | null;
  readonly onSpot: (at: readonly [number, number]) => void;
}

/** Where the pointer is, in mm of the drawing; null while the drawing is not laid out. */
const pressedAt = (event: MouseEvent<SVGElement>): Vec2 | null => {
  const svg = event.currentTarget.ownerSVGElement;
  const matrix = svg?.getScreenCTM()?.inverse();
  if (!matrix) return null;
  const { x, y } = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix);
  return [x, -y];
};

const floorRing = ({ sections }: CargoSpace): readonly Vec2[] => {
  const edge = (pick: (ys: readonly number[]) => number): readonly Vec2[] =>
    sections.map(({ x, ring }) => FROM_ABOVE([x, pick(ring.map(([y]) => y)), 0]));
  return [...edge((ys) => Math.max(...ys)), ...edge((ys) => Math.min(...ys)).toReversed()];
};

/** The room from above with what stands there; a press chooses the spot, and the box found lies on it. */
export const SpotPlan = ({ space, spot, found, insteadOf, onSpot }: SpotPlanProps) => {
  const { fitOut } = useCabinet();
  const ring = useMemo(() => floorRing(space), [space]);
  const [low, high] = [FROM_ABOVE(space.bounds.max), FROM_ABOVE(space.bounds.min)];
  const [u, v] = FROM_ABOVE([spot[0], spot[1], 0]);
  return (
    <DrawingBoard
      label="Plan of the cargo space, forward up: the spot and the largest carcass over it"
      from={[low[0], high[1]]}
      to={[high[0], low[1]]}
      margin={[12, 26, 12, 10]}
      tallest={300}
    >
      {(text) => (
        // biome-ignore lint/a11y/noStaticElementInteractions: the two fields above do the same by keyboard
        <g
          style={{ cursor: 'crosshair' }}
          onClick={(event) => {
            const at = pressedAt(event);
            if (at) onSpot([Math.round(at[1]), Math.round(-at[0])]);
          }}
        >
          <polygon
            points={ring.map(([x, y]) => `${x},${-y}`).join(' ')}
            fill="var(--field)"
            stroke="var(--ink)"
            strokeWidth={1.6}
            vectorEffect="non-scaling-stroke"
          />
          {space.bodies
            .filter(({ closure }) => closure === null)
            .map(({ id, shape }) => {
              const box = shapeBox(shape);
              return (
                <OutlineShape
                  key={id}
                  outline={boxOutline(box.min, box.max, FROM_ABOVE)}
                  fill="var(--line)"
                  stroke="var(--ink-2)"
                />
              );
            })}
          {fitOut.carcasses.map((carcass) => {
            const box = carcassBox(carcass);
            return (
              <OutlineShape
                key={carcass.id}
                outline={boxOutline(box.min, box.max, FROM_ABOVE)}
                fill="none"
                stroke={carcass.id === insteadOf ? 'var(--line)' : 'var(--ink-2)'}
                strokeDasharray="7 4"
              />
            );
          })}
          {found ? (
            <OutlineShape
              outline={boxOutline(found.min, found.max, FROM_ABOVE)}
              fill="var(--petrol-soft)"
              fillOpacity={0.6}
              stroke="var(--petrol)"
              strokeWidth={2}
            />
          ) : null}
          <path
            d={`M${u - text * 0.6} ${-v}h${text * 1.2}M${u} ${-v - text * 0.6}v${text * 1.2}`}
            stroke="var(--petrol)"
            strokeWidth={2}
            vectorEffect="non-scaling-stroke"
          />
          <text x={0} y={-high[1] + text * 1.4} fontSize={text * 0.9} textAnchor="middle" fill="var(--ink-2)">
            hatch sill
          </text>
        </g>
      )}
    </DrawingBoard>
  );
};
