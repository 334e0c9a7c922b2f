import type { Stroke } from '../../../../shop/index.ts';

/** Work on the face that lies down is broken, as on the paper drawing. */
const dashOf = (layer: string): string | undefined => (layer.endsWith('-b') ? '4 3' : undefined);

type Polyline = Extract<Stroke, { kind: 'polyline' }>;
type Arc = Extract<Stroke, { kind: 'arc' }>;

/** One edge: straight, or an arc whose bulge is the tangent of a quarter of its angle. */
const edgeTo = (from: Polyline['corners'][number], to: Polyline['corners'][number]): string => {
  const [x, y] = to.at;
  if (from.bulge === 0) return `L${x} ${-y}`;
  const chord = Math.hypot(x - from.at[0], y - from.at[1]);
  const radius = (chord * (1 + from.bulge ** 2)) / (4 * Math.abs(from.bulge));
  return `A${radius} ${radius} 0 ${Math.abs(from.bulge) > 1 ? 1 : 0} ${from.bulge > 0 ? 0 : 1} ${x} ${-y}`;
};

const polylinePath = ({ corners, closed }: Polyline): string => {
  const [first] = corners;
  if (!first) return '';
  const edges = corners.slice(1).map((corner, i) => edgeTo(corners[i] ?? first, corner));
  const last = corners.at(-1);
  return [`M${first.at[0]} ${-first.at[1]}`, ...edges, closed && last ? `${edgeTo(last, first)}Z` : ''].join('');
};

const arcPath = ({ at, radius, fromRad, toRad }: Arc): string => {
  const point = (rad: number): string => `${at[0] + radius * Math.cos(rad)} ${-(at[1] + radius * Math.sin(rad))}`;
  const sweep = (((toRad - fromRad) % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI);
  return `M${point(fromRad)}A${radius} ${radius} 0 ${sweep > Math.PI ? 1 : 0} 0 ${point(toRad)}`;
};

interface StrokeShapeProps {
  readonly stroke: Stroke;
  readonly width?: number;
}

/** One stroke of a neutral drawing on a drawing board, in ink; lettering is left to the board. */
export const StrokeShape = ({ stroke, width = 1 }: StrokeShapeProps) => {
  const pen = {
    fill: 'none',
    stroke: 'var(--ink)',
    strokeWidth: width,
    strokeDasharray: dashOf(stroke.layer),
    vectorEffect: 'non-scaling-stroke',
  } as const;
  if (stroke.kind === 'line')
    return <path {...pen} d={`M${stroke.from[0]} ${-stroke.from[1]}L${stroke.to[0]} ${-stroke.to[1]}`} />;
  if (stroke.kind === 'polyline') return <path {...pen} d={polylinePath(stroke)} />;
  if (stroke.kind === 'circle') return <circle {...pen} cx={stroke.at[0]} cy={-stroke.at[1]} r={stroke.radius} />;
  return stroke.kind === 'arc' ? <path {...pen} d={arcPath(stroke)} /> : null;
};
