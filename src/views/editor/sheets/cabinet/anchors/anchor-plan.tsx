import type { Vec2 } from '../../../../../base/index.ts';
import type { Carcass } from '../../../../../design/index.ts';
import { DrawingBoard } from '../../../parts/index.ts';
import { useCabinet } from '../use-cabinet.ts';

/** Corners of a zone seen from above, in the axes of the carcass: across to the right, deep up. */
interface PlanBox {
  readonly name: string;
  readonly from: Vec2;
  readonly to: Vec2;
}

const useNoHoles = (carcass: Carcass): readonly PlanBox[] => {
  const { design, fitOut } = useCabinet();
  const pose = fitOut.carcasses.find(({ id }) => id === carcass.id)?.pose;
  if (!pose) return [];
  const local = (x: number, y: number): Vec2 => {
    const [dx, dy] = [x - pose.at[0], y - pose.at[1]];
    const along = (axis: 0 | 1): number => pose.turn[axis][0] * dx + pose.turn[axis][1] * dy;
    return [along(0), along(1)];
  };
  const { width, depth } = carcass.size;
  const within = (value: number, most: number): number => Math.min(most, Math.max(0, value));
  return design.survey.zones.flatMap(({ rule, solid, name }): readonly PlanBox[] => {
    if (rule !== 'no-hole' || solid.shape !== 'box') return [];
    const [a, b] = [local(solid.min[0], solid.min[1]), local(solid.max[0], solid.max[1])];
    const from: Vec2 = [within(Math.min(a[0], b[0]), width), within(Math.min(a[1], b[1]), depth)];
    const to: Vec2 = [within(Math.max(a[0], b[0]), width), within(Math.max(a[1], b[1]), depth)];
    return to[0] > from[0] && to[1] > from[1] ? [{ name, from, to }] : [];
  });
};

interface AnchorPlanProps {
  readonly carcass: Carcass;
  readonly uses: ReadonlyMap<string, number>;
}

/** Where the anchors of a carcass are, seen from above with the open face below, and how hard each works. */
export const AnchorPlan = ({ carcass, uses }: AnchorPlanProps) => {
  const { fitOut, selection } = useCabinet();
  const noHoles = useNoHoles(carcass);
  const pose = fitOut.carcasses.find(({ id }) => id === carcass.id)?.pose;
  const { width, depth } = carcass.size;
  if (!pose) return null;
  const spots = carcass.anchors.flatMap(({ id }, i) => {
    const anchor = fitOut.anchors.find((own) => own.id === id);
    if (!anchor) return [];
    const off = anchor.at.map((value, axis) => value - (pose.at[axis] ?? 0));
    const along = (axis: 0 | 1): number => pose.turn[axis].reduce((sum, value, k) => sum + value * (off[k] ?? 0), 0);
    return [{ id, number: i + 1, on: anchor.on, at: [along(0), along(1)] as const }];
  });
  return (
    <DrawingBoard
      label={`Anchors of ${carcass.name} from above, its open face below`}
      from={[0, 0]}
      to={[width, depth]}
      margin={[14, 14, 14, 14]}
      tallest={380}
    >
      {(text) => (
        <>
          <defs>
            <pattern id={`no-hole-${carcass.id}`} width={text} height={text} patternUnits="userSpaceOnUse">
              <path d={`M0 ${text}L${text} 0`} stroke="var(--caution)" strokeWidth={text / 12} />
            </pattern>
          </defs>
          <rect
            x={0}
            y={-depth}
            width={width}
            height={depth}
            fill="var(--field)"
            stroke="var(--ink)"
            vectorEffect="non-scaling-stroke"
          />
          {noHoles.map(({ name, from, to }) => (
            <g key={name}>
              <rect
                x={from[0]}
                y={-to[1]}
                width={to[0] - from[0]}
                height={to[1] - from[1]}
                fill={`url(#no-hole-${carcass.id})`}
                stroke="var(--caution)"
                vectorEffect="non-scaling-stroke"
              />
              <text
                x={(from[0] + to[0]) / 2}
                y={-(from[1] + to[1]) / 2}
                fontSize={text}
                textAnchor="middle"
                fill="var(--ink)"
                stroke="var(--field)"
                strokeWidth={text / 4}
                paintOrder="stroke"
              >
                <tspan>no hole:</tspan>
                <tspan x={(from[0] + to[0]) / 2} dy={text * 1.1}>
                  {name}
                </tspan>
              </text>
            </g>
          ))}
          {spots.map(({ id, number, on, at }) => {
            const use = uses.get(id) ?? null;
            const ink = use !== null && use > 1 ? 'var(--stop)' : 'var(--ink)';
            return (
              <g key={id}>
                <circle
                  cx={at[0]}
                  cy={-at[1]}
                  r={text * 0.45}
                  fill={selection.includes(id) ? 'var(--petrol)' : 'var(--sheet)'}
                  stroke={ink}
                  strokeWidth={2}
                  vectorEffect="non-scaling-stroke"
                />
                {on === 'floor' ? (
                  <path
                    d={`M${at[0] - text * 0.7} ${-at[1]}h${text * 1.4}M${at[0]} ${-at[1] - text * 0.7}v${text * 1.4}`}
                    stroke={ink}
                    vectorEffect="non-scaling-stroke"
                  />
                ) : null}
                <text
                  // Towards the middle, where there is room for it.
                  x={at[0] + (at[0] > width / 2 ? -text : text) * 0.8}
                  y={-at[1] - text * 0.3}
                  textAnchor={at[0] > width / 2 ? 'end' : 'start'}
                  fontSize={text}
                  fill={ink}
                  stroke="var(--field)"
                  strokeWidth={text / 4}
                  paintOrder="stroke"
                >
                  {number}
                  {use === null ? '' : ` · ${Math.round(use * 100)} %`}
                </text>
              </g>
            );
          })}
        </>
      )}
    </DrawingBoard>
  );
};
