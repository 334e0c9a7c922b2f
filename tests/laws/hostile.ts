import { pathText } from '../../src/base/index.ts';
import { standardCatalog } from '../../src/catalog/index.ts';
import {
  approveRevision,
  askQuestion,
  type Design,
  placeGear,
  printDesign,
  readDesign,
  recordCut,
  settleRemark,
} from '../../src/design/index.ts';
import {
  mergeReply,
  REPLY_FORMAT,
  type Reply,
  readReply,
  releaseRevision,
  revisionStamp,
} from '../../src/revision/index.ts';

/** Words that would like to be more than words: to a page, to a drawing, to a list, to a writer. */
export const HOSTILE: readonly string[] = [
  '<script>document.title="run"</script>',
  '</script><img src=x onerror="document.title=\'run\'">',
  '</title></svg><script>document.title="run"</script>',
  `"'\`$\{1}$&$1\\`,
  '\u202Egnirts desrever\u2066',
  '=HYPERLINK("x","run")',
  '@SUM(A1)',
  ' +1+1',
  'first\n  0\nSECTION\r\n999',
  ']]>&lt;b&gt;<!--<script>',
  `<b>${'w'.repeat(10_000)}</b>`,
  `long ${'a b '.repeat(2_500)}`,
];

type Step = string | number;

interface Leaf {
  readonly path: readonly Step[];
  readonly value: string;
}

const leavesOf = (value: unknown, path: readonly Step[] = []): readonly Leaf[] => {
  if (typeof value === 'string') return [{ path, value }];
  if (Array.isArray(value)) return value.flatMap((item, i) => leavesOf(item, [...path, i]));
  if (typeof value === 'object' && value !== null)
    return Object.entries(value).flatMap(([key, held]) => leavesOf(held, [...path, key]));
  return [];
};

const put = (document: unknown, path: readonly Step[], value: string): void => {
  const last = path.at(-1);
  const holder = path
    .slice(0, -1)
    .reduce<unknown>((held, step) => (held as Record<Step, unknown>)[step], document) as Record<Step, unknown>;
  if (last !== undefined) holder[last] = value;
};

/** What the catalog calls its things is no free text: another word there is another thing. */
const idsOfCatalog = (): ReadonlySet<string> => {
  const { materials, slides, hardware, devices, gear, rules } = standardCatalog();
  return new Set([materials, slides, hardware, devices, gear, rules].flatMap((list) => [...list.keys()]));
};

export interface Hostile<T> {
  readonly value: T;
  /** Fields that took the words: `gear[3].note`. */
  readonly fields: readonly string[];
}

/**
 * A document with hostile words in every field that takes free text, as long as the field allows. Which fields those
 * are is not written down anywhere but asked of the reader: what it refuses gets its own word back.
 */
const fillWith = <T>(
  text: string,
  read: (
    text: string,
  ) =>
    | { readonly ok: true; readonly value: T }
    | { readonly ok: false; readonly error: readonly { readonly at: string }[] },
): Hostile<T> => {
  const document: unknown = JSON.parse(text);
  const known = idsOfCatalog();
  const leaves = leavesOf(document).filter(({ value }) => !known.has(value));
  const tries = new Map(
    leaves.map(({ path, value }, i) => {
      const words = HOSTILE[i % HOSTILE.length] ?? '';
      const left: string[] = [words, words.slice(0, 200), value];
      return [pathText(path), { path, left, own: value }] as const;
    }),
  );
  for (const { path, left } of tries.values()) put(document, path, left[0] ?? '');
  for (let round = 0; round < 3_000; round++) {
    const result = read(JSON.stringify(document));
    if (result.ok)
      return {
        value: result.value,
        fields: [...tries].flatMap(([at, { left, own }]) => (left[0] === own ? [] : [at])),
      };
    let stepped = 0;
    for (const at of new Set(result.error.map((problem) => problem.at))) {
      // A union names the place where it begins: everything of it steps back.
      for (const [name, each] of tries)
        if ((name === at || name.startsWith(`${at}.`) || name.startsWith(`${at}[`)) && each.left.length > 1) {
          each.left.shift();
          put(document, each.path, each.left[0] ?? '');
          stepped++;
        }
    }
    if (stepped === 0) throw new Error(`nothing more to take back at ${result.error[0]?.at}`);
  }
  throw new Error('the hostile document does not become readable');
};

/** Sheets as the catalog has them, and an offcut too small for any part: the layouts stay as they were. */
const stockRows = (): readonly unknown[] => {
  const row = { material: 'birch-ply-18', name: 'x', quantity: null, price: null, offcut: false };
  const sheets = standardCatalog().materials.get(row.material)?.sheets ?? [];
  const rows = sheets.map(({ lengthMm, widthMm }) => ({ ...row, lengthMm, widthMm }));
  const scrap = { ...row, lengthMm: 30, widthMm: 30, quantity: 1, offcut: true };
  return [...rows, scrap].map((each, i) => ({ id: `stock-${i + 1}`, ...each }));
};

/** Every kind of field that a design may have beside what the demo has. */
const enriched = (demo: Design): Design => {
  const gear = demo.gear[0]?.id ?? null;
  const asked = askQuestion(demo, { text: 'left or right?', about: gear }).design;
  return {
    ...asked,
    customer: 'x',
    notes: 'x',
    stock: stockRows() as never,
    gear: asked.gear.map((item) => ({ ...item, note: 'x', user: 'x' })),
    houseRules: [{ rule: 'moving-gap', value: 9, who: 'x', why: 'x' } as never],
    accepted: [{ rule: 'reach-high', parts: ['x'], who: 'x', why: 'x', on: 'x' } as never],
    record: {
      asBuilt: [{ who: 'x', on: 'x', part: 'x', text: 'x' }],
      weighed: [{ who: 'x', on: 'x', frontKg: 1000, rearKg: 1000, note: 'x' }],
      torqueChecks: [{ due: 'x', doneOn: 'x', who: 'x' }],
    },
  };
};

const safely = (design: Design, change: (design: Design) => Design): Design => {
  const read = readDesign(printDesign(change(design)));
  return read.ok ? read.value : design;
};

/** A reply with every kind of remark, hostile throughout. */
export const hostileReply = (design: Design): Hostile<Reply> => {
  const stamp = revisionStamp(design);
  const [one, other] = design.gear;
  const part = one?.id ?? 'x';
  const reply: Reply = {
    format: REPLY_FORMAT,
    version: 1,
    design: 'x',
    letter: stamp.draft ? '' : stamp.letter,
    sha256: stamp.sha256,
    who: 'x',
    on: 'x',
    approved: true,
    remarks: [
      { kind: 'note', part, name: 'x', text: 'x' },
      { kind: 'swap', part, name: 'x', with: other?.id ?? 'x', withName: 'x', text: 'x' },
      { kind: 'move', part: 'gone', name: 'x', to: 'gone', toName: 'x', text: 'x' },
      ...design.questions.map(({ id }) => ({ kind: 'answer', question: id, asked: 'x', text: 'x' }) as const),
    ],
  };
  return fillWith(JSON.stringify(reply), readReply);
};

/** The demo with hostile words in every free field, released, approved, cut from, replied to and settled in such words. */
export const hostileDesign = (demo: Design): Hostile<Design> => {
  const rich = [
    (design: Design) => ({ ...enriched(design), houseRules: design.houseRules, accepted: design.accepted }),
    (design: Design) => ({ ...design, houseRules: enriched(design).houseRules }),
    (design: Design) => ({ ...design, accepted: enriched(design).accepted }),
  ].reduce(safely, demo);
  const filled = fillWith(printDesign(rich), readDesign);
  const [who = '', why = ''] = HOSTILE;
  const released = releaseRevision(filled.value, { who, why, on: '=1+1' });
  const reply = hostileReply(released);
  const merged = mergeReply(
    approveRevision(recordCut(released, 'A', { who, on: why, note: HOSTILE[10] ?? '' }), 'A', { who: why, on: who }),
    reply.value,
  );
  const settled = settleRemark(merged, merged.replies[0]?.id ?? '', 0, {
    state: 'not-done',
    who,
    on: why,
    because: HOSTILE[10] ?? '',
  });
  const [item] = settled.gear;
  // A draft after the letter, so that paper warns of what was cut.
  return {
    value: item ? placeGear(settled, item.id, item.place) : settled,
    fields: [...filled.fields, ...reply.fields],
  };
};
