import type { SVGProps } from 'react';
import type { Outline } from './outlines.ts';

interface OutlineShapeProps extends SVGProps<SVGGElement> {
  readonly outline: Outline;
}

/** An outline in a drawing whose y runs down. */
export const OutlineShape = ({ outline, ...rest }: OutlineShapeProps) => (
  <g {...rest}>
    {outline.shape === 'polygon' ? (
      <polygon points={outline.corners.map(([x, y]) => `${x},${-y}`).join(' ')} vectorEffect="non-scaling-stroke" />
    ) : (
      <line
        x1={outline.from[0]}
        y1={-outline.from[1]}
        x2={outline.to[0]}
        y2={-outline.to[1]}
        strokeWidth={2 * outline.radius}
        strokeLinecap="round"
        opacity={0.55}
      />
    )}
  </g>
);
