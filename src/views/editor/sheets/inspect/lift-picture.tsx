import { useMemo } from 'react';
import { boxAround, boxCorners, formatMass, placed, type Vec3 } from '../../../../base/index.ts';
import { shapeBox } from '../../../../bodies/index.ts';
import { houseRules } from '../../../../catalog/index.ts';
import { type Lift, liftsOf, standingHeights } from '../../../../inspection/index.ts';
import { DrawingBoard, Heading, Length, Table, tableStyles } from '../../parts/index.ts';
import { useBench } from '../../state/bench.ts';
import { useEditorParts } from '../../state/use-editor.ts';
import { useNames } from '../../state/use-names.ts';
import { useUnits } from '../../state/use-units.ts';
import sheet from '../sheet.module.css';

/** Heights of a person that a lift is read against. */
const MARKS: readonly { readonly small: string; readonly large: string; readonly label: string }[] = [
  { small: 'shoulder-small', large: 'shoulder-large', label: 'shoulder' },
  { small: 'elbow-small', large: 'elbow-large', label: 'elbow' },
  { small: 'fingertip-small', large: 'fingertip-large', label: 'fingertip' },
];

/** Lighter things are taken with one hand and get no index here. */
const inkOf = (index: number | null): string => (index === null || index > 1 ? 'var(--caution)' : 'var(--ink-2)');

const indexText = (index: number | null): string => (index === null ? 'not allowed' : index.toFixed(2));

const useLifts = () => {
  const { catalog } = useBench();
  const { design, fitOut } = useEditorParts((editor) => ({ design: editor.history.design, fitOut: editor.fitOut }));
  return useMemo(() => {
    const rules = houseRules(catalog, design.houseRules);
    const least = rules.value('lifting-least-mass');
    const lifts = liftsOf({ design, fitout: fitOut, catalog, rules });
    return { design, fitOut, rules, lifts: lifts.filter(({ kg }) => kg >= least) };
  }, [catalog, design, fitOut]);
};

const Face = () => {
  const { design, fitOut, rules, lifts } = useLifts();
  const floor = design.vehicle.floorAboveGroundMm ?? 0;
  const boots = rules.value('boots-height');
  // From behind the vehicle: the viewer's right is the low y.
  const flat = ([, y, z]: Vec3): readonly [number, number] => [-y, z + floor];
  const boxes = fitOut.carcasses
    .filter(({ pose }) => pose.turn[1][0] > 0.5)
    .map(({ id, pose, size }) => {
      const { min, max } = boxAround(boxCorners({ min: [0, 0, 0], max: size }).map((corner) => placed(pose, corner)));
      return { id, from: flat([0, max[1], min[2]]), to: flat([0, min[1], max[2]]) };
    });
  const rooms = fitOut.openings
    .filter(({ content }) => content !== 'divided')
    .flatMap(({ id, carcass, from, size }) => {
      const holder = fitOut.carcasses.find((each) => each.id === carcass);
      if (!holder || holder.pose.turn[1][0] <= 0.5) return [];
      const high: Vec3 = [from[0] + size[0], from[1] + size[1], from[2] + size[2]];
      const { min, max } = boxAround([placed(holder.pose, from), placed(holder.pose, high)]);
      return [{ id, from: flat([0, max[1], min[2]]), to: flat([0, min[1], max[2]]) }];
    });
  const [first] = boxes;
  if (!first) return null;
  const left = Math.min(...boxes.map(({ from }) => from[0]));
  const right = Math.max(...boxes.map(({ to }) => to[0]));
  const top = Math.max(...boxes.map(({ to }) => to[1]), rules.value('shoulder-large') + boots);
  const items = lifts
    .filter(({ over }) => over === 'bumper')
    .flatMap((lift) => {
      const body = fitOut.bodies.find(({ origin, kind }) => origin === lift.gear && kind === 'gear');
      if (!body) return [];
      const { min, max } = shapeBox(body.shape);
      return [{ lift, deep: min[0], from: flat([0, max[1], min[2]]), to: flat([0, min[1], max[2]]) }];
    })
    // What stands behind is drawn first and shows through what stands before it.
    .toSorted((a, b) => b.deep - a.deep);
  // Behind another item the figure stands at the foot, where that one leaves room for it.
  const isCovered = (at: number): boolean => {
    const own = items[at];
    return items.some(
      ({ from, to }, i) =>
        i > at &&
        own !== undefined &&
        from[0] < own.to[0] &&
        to[0] > own.from[0] &&
        from[1] < own.to[1] &&
        to[1] > own.from[1],
    );
  };
  const rect = (from: readonly [number, number], to: readonly [number, number]) => ({
    x: from[0],
    y: -to[1],
    width: to[0] - from[0],
    height: to[1] - from[1],
  });
  return (
    <DrawingBoard
      label="Gear in the open face from behind, with its lifting index, against the heights of a small and a large person"
      from={[left, 0]}
      to={[right, top]}
      margin={[8, 8, 96, 8]}
      tallest={420}
    >
      {(text) => (
        <>
          <rect
            {...rect([left, rules.value('heavy-height-min')], [right, rules.value('heavy-height-max')])}
            fill="var(--petrol-soft)"
            opacity={0.6}
          />
          <path d={`M${left} 0H${right}`} stroke="var(--ink)" strokeWidth={1.5} vectorEffect="non-scaling-stroke" />
          {boxes.map(({ id, from, to }) => (
            <rect key={id} {...rect(from, to)} fill="none" stroke="var(--ink)" vectorEffect="non-scaling-stroke" />
          ))}
          {rooms.map(({ id, from, to }) => (
            <rect key={id} {...rect(from, to)} fill="none" stroke="var(--line-2)" vectorEffect="non-scaling-stroke" />
          ))}
          {MARKS.map(({ small, large, label }) => {
            const [low, high] = [rules.value(small) + boots, rules.value(large) + boots];
            return (
              <g key={label}>
                <path
                  d={`M${left} ${-low}H${right}M${left} ${-high}H${right}`}
                  stroke="var(--line-2)"
                  strokeDasharray="8 4"
                  vectorEffect="non-scaling-stroke"
                />
                <text x={right + text * 0.4} y={-(low + high) / 2 + text * 0.3} fontSize={text} fill="var(--ink-2)">
                  {label}
                </text>
              </g>
            );
          })}
          <text
            x={left + text * 0.3}
            y={-rules.value('heavy-height-min') + text * 1.1}
            fontSize={text}
            fill="var(--ink-2)"
          >
            where heavy gear belongs
          </text>
          {items.map(({ lift, from, to }) => (
            <rect
              key={lift.gear}
              {...rect(from, to)}
              fill="var(--sheet)"
              fillOpacity={0.7}
              stroke={inkOf(lift.index)}
              strokeWidth={1.6}
              vectorEffect="non-scaling-stroke"
            />
          ))}
          {items.map(({ lift, from, to }, i) => (
            <text
              key={lift.gear}
              x={(from[0] + to[0]) / 2}
              y={
                isCovered(i)
                  ? -from[1] - text * 0.3
                  : -to[1] + Math.min(text * 1.15, (to[1] - from[1]) / 2 + text * 0.35)
              }
              fontSize={text}
              textAnchor="middle"
              fill="var(--ink)"
              fontWeight={600}
            >
              {lift.index === null ? '×' : lift.index.toFixed(2)}
            </text>
          ))}
        </>
      )}
    </DrawingBoard>
  );
};

const Row = ({ lift }: { readonly lift: Lift }) => {
  const units = useUnits();
  return (
    <tr>
      <th scope="row">{lift.name}</th>
      <td className={tableStyles.number}>{formatMass(lift.kg, units)}</td>
      <td className={tableStyles.number}>{lift.limitKg > 0 ? formatMass(lift.limitKg, units) : '–'}</td>
      <td className={tableStyles.number}>{indexText(lift.stowedIndex)}</td>
      <td className={tableStyles.number}>{indexText(lift.index)}</td>
      <td className={tableStyles.number}>{indexText(lift.destinationIndex)}</td>
    </tr>
  );
};

/** Pulls and open boards: how high hands go to them. */
const Heights = () => {
  const { catalog } = useBench();
  const units = useUnits();
  const names = useNames();
  const { design, fitOut, rules } = useLifts();
  const rows = useMemo(
    () => standingHeights({ design, fitout: fitOut, catalog, rules }),
    [design, fitOut, catalog, rules],
  );
  if (rows.length === 0) return null;
  return (
    <Table label="Heights of pulls and boards">
      <thead>
        <tr>
          <th scope="col">pulls and open boards</th>
          <th scope="col">above where one stands</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ id, heightMm }) => (
          <tr key={id}>
            <th scope="row">{names.nameOf(id)}</th>
            <td className={tableStyles.number}>
              <Length mm={heightMm} units={units} unit />
            </td>
          </tr>
        ))}
      </tbody>
    </Table>
  );
};

/** What is lifted where, over the face: index at the origin with the tray in and out, and where it is set down. */
export const LiftPicture = () => {
  const { design, lifts } = useLifts();
  return (
    <>
      <Heading level={3} title="Reach and lift" aside="index by the revised lifting equation: 1 and less is the aim" />
      {design.vehicle.floorAboveGroundMm === null ? (
        <p className={sheet.soft}>Lifts need the height of the cargo floor above ground: Survey, Vehicle.</p>
      ) : lifts.length === 0 ? (
        <p className={sheet.soft}>Nothing stowed is heavy enough to be judged.</p>
      ) : (
        <>
          <Face />
          <Table label="Lifts">
            <thead>
              <tr>
                <th scope="col">gear</th>
                <th scope="col">mass</th>
                <th scope="col">limit there</th>
                <th scope="col">tray in</th>
                <th scope="col">as lifted</th>
                <th scope="col">set down</th>
              </tr>
            </thead>
            <tbody>
              {lifts.map((lift) => (
                <Row key={lift.gear} lift={lift} />
              ))}
            </tbody>
          </Table>
          <Heights />
          <p className={sheet.soft}>
            Screening: not for one hand, kneeling, ice or haste. Local rules on lifting decide.
          </p>
        </>
      )}
    </>
  );
};
