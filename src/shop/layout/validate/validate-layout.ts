import { groupBy } from '../../../base/index.ts';
import { type LayoutJob, type LayoutPart, materialOf } from '../job.ts';
import type { Layout, PlacedPart } from '../layout.ts';
import { isKept } from '../offcuts.ts';
import { sheetPattern } from '../sheet-pattern.ts';
import { type LayoutFault, NEAR, rightOf, same, topOf } from './fault.ts';
import { checkSheet } from './sheet.ts';

const whole = (code: LayoutFault['code'], about: string): LayoutFault => ({ code, sheet: -1, about });

const checkCounts = (job: LayoutJob, layout: Layout): readonly LayoutFault[] => {
  const placed = new Map<string, number>();
  for (const { parts } of layout.sheets) for (const { mark } of parts) placed.set(mark, (placed.get(mark) ?? 0) + 1);
  for (const { mark, count } of layout.unplaced) placed.set(mark, (placed.get(mark) ?? 0) + count);
  const asked = groupBy(job.parts, ({ mark }) => mark);
  return [...asked].flatMap(([mark, parts]) => {
    const bad = parts.some(({ quantity }) => !Number.isInteger(quantity) || quantity < 1);
    const count = parts.reduce((sum, { quantity }) => sum + quantity, 0);
    if (bad || (placed.get(mark) ?? 0) === count) return [];
    return [whole('count', `${mark}: ${placed.get(mark) ?? 0} of ${count}`)];
  });
};

const checkStock = (job: LayoutJob, layout: Layout): readonly LayoutFault[] => {
  const used = groupBy(layout.sheets, ({ stock, material }) => `${stock}\n${material}`);
  return [...used].flatMap(([key, sheets]) => {
    const kinds = job.stock.filter((each) => `${each.name}\n${materialOf(each)}` === key);
    const there = kinds.reduce((sum, { quantity }) => sum + (quantity ?? Number.POSITIVE_INFINITY), 0);
    const odd = sheets.find(
      (sheet) =>
        !kinds.some((kind) => kind.length === sheet.length && kind.width === sheet.width && kind.price === sheet.price),
    );
    return [
      ...(sheets.length > there ? [whole('stock', `${sheets.length} of ${there} ${key}`)] : []),
      ...(odd === undefined ? [] : [whole('stock', `no such sheet: ${key}`)]),
    ];
  });
};

/** Matched parts lie end to end along the grain, level with each other, nothing but the blade between them. */
const checkMatched = (job: LayoutJob, layout: Layout): readonly LayoutFault[] => {
  const split = new Set(layout.notes.filter(({ code }) => code === 'matched-group-split').map(({ about }) => about));
  const grouped = job.parts.filter((part) => part.group !== undefined && part.group !== '');
  return [...groupBy(grouped, (part) => `${materialOf(part)}\n${part.group}\n${part.grain}`).values()].flatMap(
    (members) => {
      const name = members[0]?.group ?? '';
      if (split.has(name)) return [];
      const marks = new Set(members.map(({ mark }) => mark));
      if (layout.unplaced.some(({ mark }) => marks.has(mark))) return [];
      const count = members.reduce((sum, { quantity }) => sum + quantity, 0);
      const homes = layout.sheets
        .map(({ parts }) => parts.filter(({ mark }) => marks.has(mark)))
        .filter((parts) => parts.length > 0);
      const only = homes[0] ?? [];
      if (homes.length !== 1 || only.length !== count) return [whole('matched', `${name} on ${homes.length} sheets`)];
      return inOneRow(only, job) ? [] : [whole('matched', `${name} not in one strip`)];
    },
  );
};

const inOneRow = (parts: readonly PlacedPart[], job: LayoutJob): boolean => {
  const kerf = job.cut === 'shear' ? 0 : job.kerf;
  const row = (
    low: (p: PlacedPart) => number,
    high: (p: PlacedPart) => number,
    level: (p: PlacedPart) => number,
  ): boolean => {
    const sorted = [...parts].sort((a, b) => low(a) - low(b));
    return sorted.every((part, i) => {
      const before = sorted[i - 1];
      // Each box is rounded up to a whole unit.
      return (
        before === undefined ||
        (same(low(part), high(before) + kerf, 1 / 100) && same(level(part), level(before), NEAR))
      );
    });
  };
  return (
    row(
      (p) => p.x,
      rightOf,
      (p) => p.y,
    ) ||
    row(
      (p) => p.y,
      topOf,
      (p) => p.x,
    )
  );
};

const checkRepeats = (layout: Layout): readonly LayoutFault[] => {
  const seen = layout.repeats.flat().sort((a, b) => a - b);
  const odd = layout.repeats.find(
    (group) => new Set(group.map((at) => layout.sheets[at]).map((s) => (s ? sheetPattern(s) : ''))).size > 1,
  );
  return [
    ...(seen.some((at, i) => at !== i) || seen.length !== layout.sheets.length
      ? [whole('repeats', 'not every sheet once')]
      : []),
    ...(odd === undefined ? [] : [whole('repeats', `sheets ${odd.join(', ')} differ`)]),
  ];
};

const checkTotals = (job: LayoutJob, layout: Layout): readonly LayoutFault[] => {
  const area = (r: { length: number; width: number }): number => r.length * r.width;
  const sheets = layout.sheets.reduce((sum, sheet) => sum + area(sheet), 0);
  const parts = layout.sheets.flatMap((sheet) => sheet.parts).reduce((sum, part) => sum + area(part), 0);
  const price = layout.sheets.reduce((sum, sheet) => sum + sheet.price, 0);
  const share = sheets === 0 ? 0 : parts / sheets;
  const { proof } = layout;
  return [
    ...(same(price, layout.price, NEAR * (1 + price)) ? [] : [whole('totals', `price ${layout.price}, not ${price}`)]),
    ...(same(share, layout.usedShare, NEAR) ? [] : [whole('totals', `share ${layout.usedShare}, not ${share}`)]),
    ...(layout.usedShare > 1 + NEAR ? [whole('totals', 'more parts than sheet')] : []),
    ...(proof.lowerBoundSheets > layout.sheets.length ? [whole('bound', 'bound above the layout')] : []),
    ...(proof.lowerBoundPrice > price + NEAR * (1 + price) ? [whole('bound', 'price below its bound')] : []),
    ...layout.sheets.flatMap((sheet, at) =>
      sheet.offcuts.every((offcut) => isKept(job.keep, offcut))
        ? []
        : [{ code: 'totals' as const, sheet: at, about: 'kept against the rule' }],
    ),
  ];
};

const byMark = (parts: readonly LayoutPart[]): ReadonlyMap<string, readonly LayoutPart[]> =>
  groupBy(parts, ({ mark }) => mark);

/**
 * The one judge of every layout. Works from the rectangles and, separately, from the cut tree; shares no arithmetic
 * with the engine. An empty list means: the layout can be cut as drawn and serves the job.
 */
export const validateLayout = (job: LayoutJob, layout: Layout): readonly LayoutFault[] => {
  const parts = byMark(job.parts);
  return [
    ...layout.sheets.flatMap((sheet, at) => checkSheet(job, sheet, at, parts)),
    ...checkCounts(job, layout),
    ...checkStock(job, layout),
    ...checkMatched(job, layout),
    ...checkRepeats(layout),
    ...checkTotals(job, layout),
  ];
};
