import type { GearMapData, ReviewCarcass, ReviewOpening } from '../shop/index.ts';
import styles from './gear-map.module.css';

/** The opening at the face behind which an opening lies. */
const faceOf = (data: GearMapData, id: string | null): ReviewOpening | null => {
  let at = data.openings.find((opening) => opening.id === id);
  for (let guard = 0; at && at.face === null && guard < data.openings.length; guard++) {
    const { parent } = at;
    at = data.openings.find((opening) => opening.id === parent);
  }
  return at?.face ? at : null;
};

const gearBehind = (data: GearMapData, room: ReviewOpening): GearMapData['gear'] =>
  data.gear.filter(({ opening }) => faceOf(data, opening)?.id === room.id);

const roomsOf = (data: GearMapData, carcass: string): readonly ReviewOpening[] =>
  data.openings.filter((opening) => opening.carcass === carcass && opening.face !== null);

const LINE = { fill: 'none', stroke: '#000', strokeWidth: 6 } as const;

const Face = ({ carcass, rooms }: { readonly carcass: ReviewCarcass; readonly rooms: readonly ReviewOpening[] }) => {
  const [width, height] = carcass.size;
  return (
    <svg viewBox={`-10 -10 ${width + 20} ${height + 20}`} role="img" aria-label={`Face of ${carcass.name}`}>
      <rect x={0} y={0} width={width} height={height} {...LINE} />
      {rooms.map(({ id, face }, i) =>
        face === null ? null : (
          <g key={id}>
            <rect
              x={face.from[0]}
              y={height - face.from[1] - face.size[1]}
              width={face.size[0]}
              height={face.size[1]}
              {...LINE}
              strokeWidth={3}
            />
            <text
              x={face.from[0] + face.size[0] / 2}
              y={height - face.from[1] - face.size[1] / 2}
              fontSize={Math.min(90, face.size[1] * 0.7)}
              textAnchor="middle"
              dominantBaseline="central"
            >
              {i + 1}
            </text>
          </g>
        ),
      )}
    </svg>
  );
};

/** On paper only: one page a face, black on white, every item of gear by the number of its place. */
export const GearMap = ({ data }: { readonly data: GearMapData }) => (
  <div className={styles.paper}>
    {data.carcasses.map((carcass) => {
      const rooms = roomsOf(data, carcass.id);
      return (
        <section key={carcass.id} className={styles.page}>
          <h1>
            <bdi>{data.title}</bdi>, <bdi>{carcass.name}</bdi>
          </h1>
          <p>
            Gear map, {data.stamp}
            {data.customer === '' ? null : (
              <>
                , <bdi>{data.customer}</bdi>
              </>
            )}
          </p>
          <Face carcass={carcass} rooms={rooms} />
          <ol>
            {rooms.map((room) => (
              <li key={room.id}>
                <strong>
                  <bdi>{room.name}</bdi>
                </strong>
                {gearBehind(data, room).map((gear) => (
                  <div key={gear.id}>
                    {gear.firstDue ? '★ ' : ''}
                    <bdi>{gear.name}</bdi>
                    {gear.motions === '' ? '' : ` (${gear.motions})`}
                  </div>
                ))}
              </li>
            ))}
          </ol>
          <p>★ first due. Screening figures: local codes and licensed practice decide.</p>
        </section>
      );
    })}
  </div>
);

/** On paper only: a label for each compartment, to cut out and hang beside it; what is first due stands first. */
export const CompartmentLabels = ({ data }: { readonly data: GearMapData }) => (
  <div className={styles.paper}>
    <section className={styles.labels}>
      {data.carcasses.flatMap((carcass) =>
        roomsOf(data, carcass.id).map((room, i) => (
          <div key={room.id} className={styles.label}>
            <strong>
              {i + 1} <bdi>{room.name}</bdi>
            </strong>
            <small>
              <bdi>{carcass.name}</bdi>, {data.stamp}
            </small>
            {gearBehind(data, room)
              .toSorted((a, b) => Number(b.firstDue) - Number(a.firstDue))
              .map((gear) => (
                <div key={gear.id}>
                  {gear.firstDue ? '★ ' : ''}
                  <bdi>{gear.name}</bdi>
                </div>
              ))}
          </div>
        )),
      )}
    </section>
  </div>
);
