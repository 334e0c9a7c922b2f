import type { Fault, House, HouseRule, SourceFile } from './house.ts';

/** The rooms in the order in which data passes through them; each may use those before it. */
export const ROOMS = [
  'base',
  'bodies',
  'catalog',
  'design',
  'envelope',
  'fitout',
  'inspection',
  'revision',
  'says',
  'shop',
  'flow.ts',
  'views',
] as const;
export type Room = (typeof ROOMS)[number];

/** The room a path under src belongs to, or null for a path of no room. */
export const roomOf = (path: string): Room | null => {
  const [top, name] = path.split('/');
  return top === 'src' ? (ROOMS.find((room) => room === name) ?? null) : null;
};

/** Everything but the views: no page, no clock, no disk. */
export const isCore = (path: string): boolean => {
  const room = roomOf(path);
  return room !== null && room !== 'views';
};

/** The one file through which others may come in; null for the views, which nothing imports. */
const doorOf = (room: Room): string | null =>
  room === 'views' ? null : room.endsWith('.ts') ? `src/${room}` : `src/${room}/index.ts`;

const judgeImports = (
  { sources }: House,
  judge: (file: SourceFile, target: string, specifier: string) => string | null,
): readonly Fault[] =>
  sources.flatMap((file) =>
    file.imports.flatMap(({ target, specifier, line }) => {
      const says = target === null ? null : judge(file, target, specifier);
      return says === null ? [] : [{ at: `${file.path}:${line}`, says }];
    }),
  );

/** Every file of src stands in a room. */
export const filesStandInRooms: HouseRule = ({ files }) =>
  files
    .filter(({ path }) => path.startsWith('src/') && !path.endsWith('.json') && roomOf(path) === null)
    .map(({ path }) => ({ at: path, says: 'belongs to no room' }));

/** A room imports only rooms before it. */
export const importsFlowOneWay: HouseRule = (house) =>
  judgeImports(house, (file, target) => {
    const [here, there] = [roomOf(file.path), roomOf(target)];
    if (here === null || there === null || ROOMS.indexOf(there) <= ROOMS.indexOf(here)) return null;
    return `${here} imports ${there}, which comes after it`;
  });

/** Another room is entered at its door. */
export const roomsEnteredAtDoors: HouseRule = (house) =>
  judgeImports(house, (file, target) => {
    const [here, there] = [roomOf(file.path), roomOf(target)];
    if (here === null || there === null || here === there || target === doorOf(there)) return null;
    return `enters ${there} at ${target} instead of ${doorOf(there) ?? 'nowhere: nothing imports the views'}`;
  });

/** Outside src there is only data to import: assets, and for the views the package's own record. */
export const nothingOutsideButAssets: HouseRule = (house) =>
  judgeImports(house, (file, target) => {
    if (target.startsWith('src/') || target.startsWith('assets/')) return null;
    // A view may name the top folder itself, to find what was built there.
    if (!isCore(file.path) && /^(?:\.\/?|package\.json)$/.test(target)) return null;
    return `reaches outside src: ${target}`;
  });

const viewOf = (path: string): string | null => /^src\/views\/([^/]+)\/./.exec(path)?.[1] ?? null;

/** The views do not know each other; what they share stands in a room, or directly under views. */
export const viewsKeepApart: HouseRule = (house) =>
  judgeImports(house, (file, target) => {
    const [here, there] = [viewOf(file.path), viewOf(target)];
    if (there === null || roomOf(file.path) !== 'views' || here === there) return null;
    return here === null ? `shared by the views, yet imports the view ${there}` : `the view ${here} imports ${there}`;
  });

/** A room's door begins by saying what the room takes, gives and knows. */
export const doorsAreHeaded: HouseRule = ({ sources }) => {
  const present = ROOMS.filter((room) => room !== 'flow.ts' && sources.some(({ path }) => roomOf(path) === room));
  return present.flatMap((room) => {
    const door = doorOf(room);
    if (door === null) return [];
    const lines = sources.find(({ path }) => path === door)?.text.split('\n') ?? [];
    return (['takes', 'gives', 'knows'] as const)
      .filter((word, i) => !new RegExp(`^// ${word}: \\S`).test(lines[i] ?? ''))
      .map((word) => ({ at: door, says: `line "// ${word}: …" is missing from its head` }));
  });
};

/** No file imports itself by way of others. Types alone may look back: they are gone after compiling. */
export const noImportCycles: HouseRule = ({ sources }) => {
  const next = new Map(
    sources.map((file) => [
      file.path,
      file.imports.flatMap(({ target, typeOnly }) => (target === null || typeOnly ? [] : [target])),
    ]),
  );
  const done = new Set<string>();
  const faults: Fault[] = [];
  const visit = (path: string, trail: readonly string[]): void => {
    const back = trail.indexOf(path);
    if (back !== -1) faults.push({ at: path, says: `imports itself: ${[...trail.slice(back), path].join(' → ')}` });
    if (back !== -1 || done.has(path)) return;
    for (const target of next.get(path) ?? []) visit(target, [...trail, path]);
    done.add(path);
  };
  for (const { path } of sources) visit(path, []);
  return faults;
};
