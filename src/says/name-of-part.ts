import { childOpenings, type Design, type FittingKind, type Opening } from '../design/index.ts';
import type { FitOut } from '../fitout/index.ts';
import { sayFigure } from './findings/loads.ts';
import { sayCase } from './say-case.ts';
import { sayMark, sayReading } from './say-reading.ts';

const FITTING_NAMES: { readonly [Kind in FittingKind]: string } = {
  drawer: 'drawer',
  'slide-out': 'slide-out',
  'open-storage': 'bay',
  faceplate: 'faceplate',
  'apparatus-bracket': 'apparatus bracket',
  door: 'door',
  board: 'command board',
  'extinguisher-cradle': 'extinguisher cradle',
  'cylinder-clamp': 'cylinder clamp',
  'tool-clamp': 'tool clamp',
  'pass-through': 'pass-through',
  'charger-bay': 'charger bay',
  valuables: 'locked slide-out',
  'map-slot': 'map slots',
  'tablet-mount': 'tablet mount',
  trim: 'drink and board trim',
};

const PART_WORDS = { columns: 'column', rows: 'row', layers: 'layer' } as const;

const ROOM = 'opening';

interface Naming {
  readonly names: Map<string, string>;
  /** How many of each kind have been met in this carcass. */
  readonly counts: Map<string, number>;
  /** The carcass, where there are several to tell apart. */
  readonly suffix: string;
}

const kindOf = ({ content }: Opening): string =>
  content.kind === 'fitted' ? FITTING_NAMES[content.fitting.kind] : ROOM;

const ownName = (opening: Opening, where: readonly string[], { counts, suffix }: Naming): string => {
  const kind = kindOf(opening);
  const number = (counts.get(kind) ?? 0) + 1;
  counts.set(kind, number);
  if (opening.name !== '') return opening.name;
  const place = kind === ROOM && where.length > 0 ? where : [`${kind} ${number}`, ...where];
  return `${place.join(', ')}${suffix}`;
};

/** The rooms of an opening by their place in it, each with what lies around it behind: `row 2, column 1`. */
const nameRooms = (opening: Opening, where: readonly string[], naming: Naming): void => {
  const { content } = opening;
  if (content.kind !== 'divided') return;
  content.parts.forEach((part, i) => {
    nameOpening(part.opening, [`${PART_WORDS[content.along]} ${i + 1}`, ...where], naming);
  });
};

/** Names an opening and everything inside it; `where` is its place among the columns, rows and layers around it. */
const nameOpening = (opening: Opening, where: readonly string[], naming: Naming): void => {
  const name = ownName(opening, where, naming);
  naming.names.set(opening.id, name);
  nameRooms(opening, where, naming);
  if (opening.content.kind === 'fitted') for (const inside of childOpenings(opening)) nameInside(inside, name, naming);
};

/** The room that a fitting carries, named after it unless it has a name. */
const nameInside = (inside: Opening, carrier: string, naming: Naming): void => {
  naming.names.set(inside.id, inside.name === '' ? `inside ${carrier}` : inside.name);
  nameRooms(inside, [`in ${carrier}`], { ...naming, suffix: '' });
  if (inside.content.kind === 'fitted')
    for (const deeper of childOpenings(inside)) nameInside(deeper, `inside ${carrier}`, naming);
};

const openingNames = (design: Design): ReadonlyMap<string, string> => {
  const names = new Map<string, string>();
  const several = design.cabinet.carcasses.length > 1;
  for (const carcass of design.cabinet.carcasses) {
    const name = carcass.name === '' ? carcass.id : carcass.name;
    names.set(carcass.id, name);
    nameOpening(carcass.opening, [], { names, counts: new Map(), suffix: several ? `, ${name}` : '' });
  }
  return names;
};

/** Anchors by their number in their carcass: `anchor 2 of left carcass`. */
const anchorNames = (design: Design) =>
  design.cabinet.carcasses.flatMap(({ id, name, anchors }) =>
    anchors.map((anchor, i) => [anchor.id, `anchor ${i + 1} of ${name === '' ? id : name}`] as const),
  );

const listed = (items: readonly { readonly id: string; readonly name: string }[]) =>
  items.flatMap(({ id, name }) => (name === '' ? [] : [[id, name] as const]));

/** Bought pieces are named by what they are and by what they belong to: `paddle latch of small drawer`. */
const boughtNames = (fitout: FitOut, owners: ReadonlyMap<string, string>) =>
  [...fitout.hardware, ...fitout.bodies.filter(({ kind }) => kind === 'hardware' || kind === 'device')].flatMap(
    ({ id, origin, name }) => {
      const owner = owners.get(origin);
      return name === '' ? [] : [[id, owner === undefined ? name : `${name} of ${owner}`] as const];
    },
  );

/**
 * What people call each part and node: `drawer 2, row 1, column 1` for an opening without a name, a panel's or a
 * body's own name, gear, obstacles, closures and seats as they were named. An id that nobody knows names itself.
 */
export const nameOfPart = (design: Design, fitout: FitOut | null): ((id: string) => string) => {
  const { survey, vehicle } = design;
  const openings = openingNames(design);
  const names = new Map<string, string>([
    ...listed(fitout?.bodies ?? []),
    ...(fitout ? boughtNames(fitout, openings) : []),
    ...listed(fitout?.movers ?? []),
    ...listed(fitout?.panels ?? []),
    ...listed(vehicle.seats),
    ...listed(vehicle.ownCases),
    ...listed(vehicle.antennas),
    ...survey.marks.map(({ id }) => [id, sayMark(survey, id)] as const),
    ...survey.readings.map((reading, i) => [reading.id, `reading ${i + 1}, ${sayReading(survey, reading)}`] as const),
    ...survey.stations.map(({ id }, i) => [id, `station ${i + 1}`] as const),
    ...listed(survey.obstacles),
    ...listed(survey.closures),
    ...listed(survey.zones),
    ...design.cabinet.braces.map(({ id, name }, i) => [id, name === '' ? `brace ${i + 1}` : name] as const),
    ...listed(design.mounts),
    ...anchorNames(design),
    ...listed(design.gear),
    ...openings,
  ]);
  // A device in a plate is a node of its own, known by the record that it is.
  const devices = new Map<string, string>(
    fitout?.devices.flatMap(({ id, origin }) => {
      const name = fitout.hardware.find((piece) => piece.id === id || piece.origin === origin)?.name;
      return name === undefined ? [] : [[origin, name] as const];
    }),
  );
  return (id) => names.get(id) ?? devices.get(id) ?? sayCase(sayFigure(id));
};
