import { useMemo, useState } from 'react';
import type { Change } from '../../../../../revision/index.ts';
import {
  type CarcassPlaces,
  createGearMap,
  frontOpenings,
  type GearPlace,
  gearPlaces,
} from '../../../../../shop/index.ts';
import { ChoiceField, DrawingBoard, Heading } from '../../../parts/index.ts';
import styles from '../review.module.css';
import { touchedNodes } from './touched-parts.ts';
import type { Side } from './use-sides.ts';

/** The faces of one side, and which opening at a face each opening belongs to. */
interface Faces {
  readonly carcasses: readonly CarcassPlaces[];
  readonly fronts: ReadonlyMap<string, string>;
}

const facesOf = ({ design, fitout }: Side): Faces => {
  const map = createGearMap({ design, fitout, order: { rows: [], gear: [] } });
  return { carcasses: gearPlaces(map), fronts: frontOpenings(map) };
};

const gearIds = (place: GearPlace | undefined): ReadonlySet<string> => new Set((place?.gear ?? []).map(({ id }) => id));

/** Places that differ: of another size, with other gear, or with something touched at or behind them. */
const touchedPlaces = (own: Faces, other: Faces, touched: ReadonlySet<string>): ReadonlySet<string> => {
  const facts = ({ room, gear }: GearPlace): string => JSON.stringify([room.face, gear.map(({ id }) => id).sort()]);
  const others = new Map(
    other.carcasses.flatMap(({ places }) => places.map((place) => [place.room.id, facts(place)] as const)),
  );
  const behind = new Set([...own.fronts].flatMap(([id, front]) => (touched.has(id) ? [front] : [])));
  return new Set(
    own.carcasses.flatMap(({ places }) =>
      places
        .filter(
          (place) =>
            others.get(place.room.id) !== facts(place) ||
            behind.has(place.room.id) ||
            place.gear.some(({ id }) => touched.has(id)),
        )
        .map(({ room }) => room.id),
    ),
  );
};

interface PlaceProps {
  readonly place: GearPlace;
  /** What lives there on the other side. */
  readonly others: ReadonlySet<string>;
  readonly touched: boolean;
  /** What stands before gear that the other side has not got here. */
  readonly sign: string;
  readonly text: number;
}

/** About how wide a letter runs, of its size. */
const LETTER = 0.5;

/** Words in a width, shortened where they would run out of it. */
const within = (words: string, width: number, size: number): string => {
  const most = Math.max(1, Math.floor(width / (size * LETTER)));
  const signs = Array.from(words);
  return signs.length > most ? `${signs.slice(0, most - 1).join('')}…` : words;
};

/** A place with its name and as much of its gear as there is room for: what differs comes first. */
const Place = ({ place: { room, gear }, others, touched, sign, text }: PlaceProps) => {
  if (room.face === null) return null;
  const { from, size } = room.face;
  const [line, pad] = [text * 0.95, text * 0.4];
  const free = size[0] - 2 * pad;
  const lines = Math.max(0, Math.floor((size[1] - pad) / line) - 1);
  const differing = gear.toSorted((a, b) => Number(others.has(a.id)) - Number(others.has(b.id)));
  const shown = gear.length <= lines ? differing : differing.slice(0, Math.max(0, lines - 1));
  return (
    <svg x={from[0]} y={-from[1] - size[1]} width={size[0]} height={size[1]} role="presentation">
      <rect
        width={size[0]}
        height={size[1]}
        fill={touched ? 'var(--petrol-soft)' : 'var(--sheet)'}
        stroke={touched ? 'var(--petrol)' : 'var(--line-2)'}
        strokeWidth={touched ? 3 : 1}
        vectorEffect="non-scaling-stroke"
      />
      <text x={pad} y={line} fontSize={text * 0.85} fontWeight="600" fill="var(--ink)">
        {within(room.name, free, text * 0.85)}
      </text>
      {shown.map(({ id, name }, i) => (
        <text
          key={id}
          x={pad}
          y={line * (i + 2)}
          fontSize={text * 0.8}
          fill={others.has(id) ? 'var(--ink-2)' : 'var(--petrol)'}
          fontWeight={others.has(id) ? '400' : '600'}
        >
          {within(others.has(id) ? name : `${sign} ${name}`, free, text * 0.8)}
        </text>
      ))}
      {shown.length < gear.length ? (
        <text x={pad} y={line * (shown.length + 2)} fontSize={text * 0.8} fill="var(--ink-2)">
          {`and ${gear.length - shown.length} more`}
        </text>
      ) : null}
    </svg>
  );
};

interface FaceProps {
  readonly title: string;
  readonly own: Faces;
  readonly other: Faces;
  readonly carcass: string;
  readonly touched: ReadonlySet<string>;
  readonly sign: string;
}

const Face = ({ title, own, other, carcass, touched, sign }: FaceProps) => {
  const face = own.carcasses.find((each) => each.carcass.id === carcass);
  const marked = touchedPlaces(own, other, touched);
  const opposite = new Map(
    other.carcasses.flatMap(({ places }) => places.map((place) => [place.room.id, gearIds(place)] as const)),
  );
  return (
    <figure>
      <figcaption>{title}</figcaption>
      {face ? (
        <DrawingBoard
          label={`Face of ${face.carcass.name}, ${title}`}
          from={[0, 0]}
          to={face.carcass.size}
          margin={[4, 4, 4, 4]}
          tallest={340}
        >
          {(text) => (
            <>
              <rect
                x={0}
                y={-face.carcass.size[1]}
                width={face.carcass.size[0]}
                height={face.carcass.size[1]}
                fill="var(--field)"
                stroke="var(--ink)"
                vectorEffect="non-scaling-stroke"
              />
              {face.places.map((place) => (
                <Place
                  key={place.room.id}
                  place={place}
                  others={opposite.get(place.room.id) ?? new Set()}
                  touched={marked.has(place.room.id)}
                  sign={sign}
                  text={text}
                />
              ))}
            </>
          )}
        </DrawingBoard>
      ) : (
        <p>This carcass is not in it.</p>
      )}
    </figure>
  );
};

interface FacePairProps {
  readonly before: Side;
  readonly after: Side;
  readonly changes: readonly Change[];
}

/** The face map of both sides: places that differ are framed, gear that left or came carries a sign. */
export const FacePair = ({ before, after, changes }: FacePairProps) => {
  const [was, is] = useMemo(() => [facesOf(before), facesOf(after)], [before, after]);
  const touched = useMemo(() => touchedNodes(changes), [changes]);
  const [chosen, setChosen] = useState<string | null>(null);
  const all = new Map([...was.carcasses, ...is.carcasses].map(({ carcass }) => [carcass.id, carcass.name]));
  const marked = [touchedPlaces(was, is, touched), touchedPlaces(is, was, touched)];
  const differs = ({ carcass, places }: CarcassPlaces): boolean =>
    touched.has(carcass.id) || places.some(({ room }) => marked.some((ids) => ids.has(room.id)));
  const usual = [...is.carcasses, ...was.carcasses].find(differs)?.carcass.id ?? [...all.keys()][0];
  const carcass = chosen !== null && all.has(chosen) ? chosen : usual;
  if (carcass === undefined) return null;
  return (
    <>
      <Heading level={3} title="On the face" aside="− left its place, + came to it" />
      {all.size > 1 ? (
        <ChoiceField
          label="Carcass"
          value={carcass}
          choices={[...all].map(([value, label]) => ({ value, label }))}
          onCommit={setChosen}
        />
      ) : null}
      <div className={styles.pair}>
        <Face title={before.title} own={was} other={is} carcass={carcass} touched={touched} sign="−" />
        <Face title={after.title} own={is} other={was} carcass={carcass} touched={touched} sign="+" />
      </div>
    </>
  );
};
