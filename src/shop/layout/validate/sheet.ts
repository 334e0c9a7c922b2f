import { kerfOf, type LayoutJob, type LayoutPart, materialOf } from '../job.ts';
import type { CutPiece, LaidSheet, PlacedPart } from '../layout.ts';
import { type LayoutFault, type LayoutFaultCode, liesWithin, NEAR, rightOf, same, topOf } from './fault.ts';
import { roundsNeeded } from './guillotine.ts';
import { checkTree } from './tree.ts';

const allows = (part: LayoutPart, turned: boolean): boolean =>
  part.grain === 'any' || (part.grain === 'width') === turned || same(part.length, part.width, 0);

const sizeFits = (placed: PlacedPart, part: LayoutPart): boolean => {
  const [along, across] = placed.turned ? [part.width, part.length] : [part.length, part.width];
  return same(placed.length, along, NEAR) && same(placed.width, across, NEAR);
};

/** True when a blade of width kerf does not fit between the two; exactly kerf apart is enough. */
const tooClose = (a: PlacedPart, b: PlacedPart, kerf: number): boolean =>
  a.x < rightOf(b) + kerf - NEAR &&
  b.x < rightOf(a) + kerf - NEAR &&
  a.y < topOf(b) + kerf - NEAR &&
  b.y < topOf(a) + kerf - NEAR;

const partsIn = (piece: CutPiece): readonly PlacedPart[] =>
  piece.kind === 'divided' ? piece.pieces.flatMap(partsIn) : piece.kind === 'part' ? [piece] : [];

const placeKey = ({ mark, x, y, length, width }: PlacedPart): string => `${mark} ${x} ${y} ${length} ${width}`;

const throughPart = (sheet: LaidSheet, kerf: number): string | null => {
  for (const cut of sheet.cuts.filter(({ stage }) => stage > 0)) {
    const rip = cut.by === 'rip';
    const hit = sheet.parts.find((part) => {
      const [low, high] = rip ? [part.y, topOf(part)] : [part.x, rightOf(part)];
      const [from, to] = rip ? [part.x, rightOf(part)] : [part.y, topOf(part)];
      return low < cut.at + kerf - NEAR && high > cut.at + NEAR && from < cut.to - NEAR && to > cut.from + NEAR;
    });
    if (hit !== undefined) return `${cut.by} at ${cut.at} runs through ${hit.mark}`;
  }
  return null;
};

/** Everything that can be judged on one sheet alone. */
export const checkSheet = (
  job: LayoutJob,
  sheet: LaidSheet,
  at: number,
  parts: ReadonlyMap<string, readonly LayoutPart[]>,
): readonly LayoutFault[] => {
  const faults: LayoutFault[] = [];
  const report = (code: LayoutFaultCode, about: string): void => void faults.push({ code, sheet: at, about });
  const kerf = kerfOf(job);
  for (const placed of sheet.parts) {
    const known = parts.get(placed.mark) ?? [];
    if (known.length === 0) report('unknown-part', placed.mark);
    else if (!known.some((part) => sizeFits(placed, part))) report('wrong-size', placed.mark);
    else if (!known.some((part) => sizeFits(placed, part) && allows(part, placed.turned)))
      report('against-grain', placed.mark);
    if (!known.some((part) => materialOf(part) === sheet.material)) report('wrong-material', placed.mark);
    if (!liesWithin(placed, sheet.usable)) report('outside', placed.mark);
  }
  sheet.parts.forEach((a, i) => {
    for (const b of sheet.parts.slice(i + 1)) if (tooClose(a, b, kerf)) report('too-close', `${a.mark} and ${b.mark}`);
  });
  if (job.cut === 'router') return faults;
  const rounds = roundsNeeded(sheet.parts, kerf);
  if (rounds === Number.POSITIVE_INFINITY) report('not-guillotine', 'no full cut takes the parts apart');
  else if (job.stages !== 'any' && rounds > job.stages)
    report('too-many-stages', `${rounds} rounds from the rectangles`);
  if (sheet.tree === null) return [...faults, { code: 'tree', sheet: at, about: 'a sawn sheet without a cut tree' }];
  faults.push(...checkTree(sheet.tree, job, at));
  const inTree = partsIn(sheet.tree).map(placeKey).sort();
  if (inTree.join() !== sheet.parts.map(placeKey).sort().join()) report('tree', 'tree and parts differ');
  const hit = throughPart(sheet, kerf);
  if (hit !== null) report('cut-through-part', hit);
  return faults;
};
