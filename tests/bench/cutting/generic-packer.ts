import { MaxRectsPacker, type Rect } from 'maxrects-packer';
import type { LayoutJob } from '../../../src/shop/layout/index.ts';
import { roundsNeeded } from '../../../src/shop/layout/validate/guillotine.ts';
import type { Instance } from './instances.ts';

/** Its three rules for the free place to take. */
const RULES = [0, 1, 2] as const;

interface Packed {
  readonly sheets: number;
  /** Sheets whose parts full cuts take apart. */
  readonly sawn: number;
  /** Parts lost, outside the sheet or on top of another. */
  readonly faults: number;
}

interface Box {
  readonly x: number;
  readonly y: number;
  readonly length: number;
  readonly width: number;
}

const overlap = (a: Box, b: Box): boolean =>
  a.x < b.x + b.length && b.x < a.x + a.length && a.y < b.y + b.width && b.y < a.y + a.width;

const faultsOf = (boxes: readonly Box[], length: number, width: number): number => {
  const outside = boxes.filter(
    (box) => box.x < 0 || box.y < 0 || box.x + box.length > length || box.y + box.width > width,
  );
  const clashes = boxes.flatMap((a, i) => boxes.slice(i + 1).filter((b) => overlap(a, b)));
  return outside.length + clashes.length;
};

const pack = ({ parts, stock }: LayoutJob, turned: boolean, logic: number): Packed => {
  const [sheet] = stock;
  if (sheet === undefined) return { sheets: 0, sawn: 0, faults: parts.length };
  const packer = new MaxRectsPacker(sheet.length, sheet.width, 0, {
    smart: false,
    pot: false,
    square: false,
    allowRotation: turned,
    border: 0,
    logic,
  });
  const rects: Rect[] = parts.flatMap(({ length, width, quantity }) =>
    Array.from({ length: quantity }, () => ({ width: length, height: width, x: 0, y: 0 })),
  );
  packer.addArray(rects);
  const sheets = packer.bins.map(({ rects: placed }) =>
    placed.map(({ x, y, width, height, rot }) =>
      rot ? { x, y, length: height, width } : { x, y, length: width, width: height },
    ),
  );
  const placed = sheets.reduce((sum, boxes) => sum + boxes.length, 0);
  return {
    sheets: sheets.length,
    sawn: sheets.filter((boxes) => Number.isFinite(roundsNeeded(boxes, 0))).length,
    faults: rects.length - placed + sheets.reduce((sum, boxes) => sum + faultsOf(boxes, sheet.length, sheet.width), 0),
  };
};

/** A generic packer on the same instances: free packing, the best of its rules for each instance. Prints one table. */
export const printGenericPacker = (instances: readonly Instance[], turned: boolean): void => {
  const start = performance.now();
  const packed = instances.map(({ job }) => RULES.map((rule) => pack(job, turned, rule)));
  const seconds = (performance.now() - start) / 1000;
  const sum = (of: Packed[], value: (one: Packed) => number): number => of.reduce((all, one) => all + value(one), 0);
  const row = (name: string, of: Packed[]): void => {
    const sheets = sum(of, (one) => one.sheets);
    const sawn = ((sum(of, (one) => one.sawn) / sheets) * 100).toFixed(0);
    console.log(`| ${name} | ${sheets} | ${sawn} % | ${sum(of, (one) => one.faults)} |`);
  };
  console.log(`\nmaxrects-packer, free packing, ${seconds.toFixed(1)} s for all rules with the check:`);
  console.log('| rule | sheets | of them a saw can take apart | faults |');
  console.log('|---|---|---|---|');
  for (const rule of RULES)
    row(
      `${rule}`,
      packed.flatMap((by) => by.slice(rule, rule + 1)),
    );
  row(
    'best for each instance',
    packed.flatMap((by) => [...by].sort((a, b) => a.sheets - b.sheets).slice(0, 1)),
  );
};
