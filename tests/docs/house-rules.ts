import { type HouseRule, SOURCE_NOTES, sourceTags } from '../../src/catalog/index.ts';

/** The groups of the page, each from the first of its rules on in the order of the data file. A title may come again. */
const GROUPS: readonly (readonly [first: string, title: string])[] = [
  ['gap-trim', 'Gaps'],
  ['gap-sigma-factor', 'Survey'],
  ['reveal-front', 'Drawers and trays'],
  ['dado-depth-share', 'Making'],
  ['saw-kerf', 'Cutting'],
  ['min-web-cutout', 'Plates and cutouts'],
  ['payload-reserve-share', 'Weight'],
  ['standard-gravity', 'Hold'],
  ['anchor-partial-factor', 'Bolts, nuts, screws and the floor'],
  ['shelf-sag-visible', 'Slides, shelves, springs'],
  ['screw-8-lateral', 'Bolts, nuts, screws and the floor'],
  ['bracket-release-stroke', 'Gear'],
  ['hand-bare-depth', 'Reach and sight'],
  ['supply-volts', 'Power'],
  ['heat-rise', 'Heat'],
  ['rf-power-7w', 'Radio'],
  ['burn-rate', 'Making'],
  ['rate-labour', 'Price'],
  ['device-face-depth', 'Fittings and small pieces'],
  ['density-sigma-share', 'Weight'],
  ['shelf-spare', 'Fittings and small pieces'],
];

const STATUSES: readonly HouseRule['status'][] = ['standard', 'screening value', 'shop habit'];

/** Where each rule is used, by its id. */
export interface RuleUse {
  /** Checks that looked it up in the demo designs. */
  readonly checks: ReadonlyMap<string, readonly string[]>;
  /** Rooms of src whose code names it. */
  readonly rooms: ReadonlyMap<string, readonly string[]>;
}

const code = (ids: readonly string[]): string => ids.map((id) => `\`${id}\``).join(', ');
const listed = (ids: readonly string[] | undefined, none: string): string => (ids?.length ? code(ids) : none);
const row = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;
const table = (head: readonly string[], rows: readonly (readonly string[])[]): readonly string[] => [
  row(head),
  `|${'---|'.repeat(head.length)}`,
  ...rows.map(row),
];

/** The rules under their titles, in the order in which a title first comes. Throws for a first rule out of order. */
const grouped = (rules: readonly HouseRule[]): ReadonlyMap<string, readonly HouseRule[]> => {
  const starts = GROUPS.map(([first]) => rules.findIndex(({ id }) => id === first));
  starts.forEach((start, i) => {
    if (start !== 0 && start <= (starts[i - 1] ?? 0)) throw new Error(`no group begins at ${GROUPS[i]?.[0]}`);
  });
  const groups = new Map<string, readonly HouseRule[]>();
  GROUPS.forEach(([, title], i) => {
    groups.set(title, [...(groups.get(title) ?? []), ...rules.slice(starts[i], starts[i + 1])]);
  });
  return groups;
};

const HEAD = ['id', 'what it is', 'value', 'unit', 'source', 'status', 'checks that consult it', 'read in'];

const cellsOf = ({ id, about, value, unit, sense, source, status }: HouseRule, { checks, rooms }: RuleUse) => [
  `\`${id}\``,
  about,
  sense === 'value' ? String(value) : `${sense} ${value}`,
  unit,
  sourceTags(source).join('; '),
  status,
  listed(checks.get(id), 'not consulted by the demos'),
  listed(rooms.get(id), 'nothing'),
];

/** docs/house-rules.md: every house rule with its figure, where that comes from, and what looks it up. */
export const houseRulesPage = (rules: readonly HouseRule[], use: RuleUse): string => {
  const counts = STATUSES.map((status) => `${rules.filter((rule) => rule.status === status).length} ${status}`);
  const unread = rules.filter(({ id }) => !use.rooms.get(id)?.length).length;
  const tags = new Set(rules.flatMap(({ source }) => sourceTags(source)));
  return [
    '# House rules',
    '',
    'Every figure that a shop can argue about, from `assets/rules/house-rules.json`. `npm run docs` prints this page and a test holds it.',
    'How one is changed, and what the fields mean: [catalog.md](catalog.md). What the checks do with them: [checks.md](checks.md).',
    '',
    'No figure here is an approval, a crash rating or legal advice: local codes, the vehicle builder’s guidance and licensed practice decide.',
    '',
    `There are ${rules.length}: ${counts.join(', ')}. A **standard** is a definition of an open standard. A **screening value** came from public pages,`,
    'summaries or trade knowledge and is checked against the document itself before it is relied on. A **shop habit** is judgement for the shop to replace.',
    '',
    '- **value**: `at least` and `at most` are limits; a figure alone goes into a sum. A share is a part of one: 0.05 is five per cent.',
    '- **checks that consult it**: those that looked it up while the demo designs were inspected. Sums that several checks share, such as the loading cases,',
    '  are made before them and stand in the last column only; and a check looks up no figure for what a design does not have.',
    '- **read in**: the rooms of `src` whose code names it.',
    `  **nothing** (${unread} of them): kept for reference; to change it changes no answer.`,
    ...[...grouped(rules)].flatMap(([title, members]) => [
      '',
      `## ${title}`,
      ...table(
        HEAD,
        members.map((rule) => cellsOf(rule, use)),
      ),
    ]),
    '',
    '## Sources',
    'The tags of the column source that the house rules use, as in [catalog.md](catalog.md#sources).',
    '',
    ...table(
      ['tag', 'stands for'],
      SOURCE_NOTES.filter(({ tag }) => tags.has(tag)).map(({ tag, about }) => [`\`${tag}\``, about]),
    ),
    '',
  ].join('\n');
};

const MARK = '; status: ';

/** What the rules named are: one status for all of them, or each with the rules that it is of. */
const statusesOf = (named: readonly HouseRule[]): string => {
  const groups = STATUSES.flatMap((status) => {
    const ids = named.filter((rule) => rule.status === status).map(({ id }) => id);
    return ids.length === 0 ? [] : [{ status, ids }];
  });
  return groups.map(({ status, ids }) => (groups.length === 1 ? status : `${status} for ${code(ids)}`)).join('; ');
};

/** docs/checks.md with, at the end of each limit in its tables, the status of the house rules that the row names. */
export const withStatuses = (page: string, rules: ReadonlyMap<string, HouseRule>): string =>
  page
    .split('\n')
    .map((line) => {
      const [checks, what, limit, ...rest] = line.split(' | ');
      if (!line.startsWith('| `') || what === undefined || limit === undefined || rest.length !== 2) return line;
      const stated = limit.split(MARK)[0] ?? '';
      const ids = [...`${what} ${stated}`.matchAll(/`([a-z0-9-]+)`/g)].map(([, id = '']) => id);
      const named = [...new Set(ids)].flatMap((id) => rules.get(id) ?? []);
      const told = named.length === 0 ? stated : `${stated}${MARK}${statusesOf(named)}`;
      return [checks, what, told, ...rest].join(' | ');
    })
    .join('\n');
