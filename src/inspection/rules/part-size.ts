import { ROUNDING_MM } from '../../base/index.ts';
import { type StockPiece, stockOfMaterial } from '../../design/index.ts';
import type { FitOut } from '../../fitout/index.ts';
import type { Finding } from '../finding.ts';
import type { Job } from '../job.ts';
import { found, type Limit, NOTHING, ruleLimit, type Verdict } from '../verdict.ts';

type Panel = FitOut['panels'][number];

const factsOf = (panel: Panel) => ({
  panel: panel.name,
  length: panel.length,
  width: panel.width,
  material: panel.material,
});

/** Parts whose long or short side is too small to be held at the saw. */
export const partTooSmall = (job: Job): Verdict => {
  const [long, short] = [ruleLimit(job.rules, 'min-part-length'), ruleLimit(job.rules, 'min-part-width')];
  const findings = job.fitout.panels.flatMap((panel): readonly Finding[] => {
    const sides = [
      { value: Math.max(panel.length, panel.width), limit: long, side: 'long' },
      { value: Math.min(panel.length, panel.width), limit: short, side: 'short' },
    ].filter(({ value, limit }) => value < limit.value - ROUNDING_MM);
    const [worst] = sides.toSorted((a, b) => a.value - a.limit.value - (b.value - b.limit.value));
    if (!worst) return [];
    const { value, limit, side } = worst;
    const facts = { ...factsOf(panel), side };
    return [found('part-too-small', { severity: 'caution', parts: [panel.id], value, limit, facts })];
  });
  return { ...NOTHING, findings };
};

interface Shortfall {
  readonly value: number;
  readonly limit: number;
  readonly sheet: StockPiece;
  readonly trim: number;
}

/** By how much the part fails to fit the sheet the way it would lie, on its worse side. */
const shortOf = (length: number, width: number, sheet: StockPiece, trim: number): Shortfall => {
  const [long, wide] = [sheet.lengthMm - 2 * trim, sheet.widthMm - 2 * trim];
  return length - long >= width - wide
    ? { value: length, limit: long, sheet, trim }
    : { value: width, limit: wide, sheet, trim };
};

/** The sheet and lie that comes nearest to holding the part; turned only where the grain lets it. */
const nearestSheet = (panel: Panel, stock: readonly StockPiece[], edges: number): Shortfall | null => {
  const lies = stock.flatMap((sheet) => {
    // An offcut has no factory edges to lose.
    const trim = sheet.offcut ? 0 : edges;
    return [
      shortOf(panel.length, panel.width, sheet, trim),
      ...(panel.grain === 'any' ? [shortOf(panel.width, panel.length, sheet, trim)] : []),
    ];
  });
  const [best] = lies.toSorted((a, b) => a.value - a.limit - (b.value - b.limit));
  return best ?? null;
};

/** Parts that nothing in stock of their material holds, once sheets are trimmed and the grain is kept. */
export const partTooBig = (job: Job): Verdict => {
  const findings = job.fitout.panels.flatMap((panel): readonly Finding[] => {
    const material = job.catalog.materials.get(panel.material);
    if (!material) return [];
    const edges = job.rules.value(material.kind === 'aluminium' ? 'sheet-trim-metal' : 'sheet-trim');
    const best = nearestSheet(panel, stockOfMaterial(job.design.stock, material), edges);
    if (!best || best.value <= best.limit + ROUNDING_MM) return [];
    const { sheet, trim } = best;
    const source = sheet.id !== null ? 'stock of the design' : material.source;
    const limit: Limit = { value: best.limit, unit: 'mm', source, status: 'stock sheet less trim' };
    const facts = { ...factsOf(panel), sheet: sheet.name, trim };
    return [found('part-too-big', { severity: 'stop', parts: [panel.id], value: best.value, limit, facts })];
  });
  return { ...NOTHING, findings };
};
