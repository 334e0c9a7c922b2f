import { type Box, boxSize } from '../base/index.ts';
import type { NodeId } from '../design/index.ts';
import { UP, withSpan } from './axes.ts';
import type { CarcassContext } from './context.ts';
import { hardwareOf, pieceOf } from './hardware.ts';
import type { PartId } from './parts.ts';
import { type FittingParts, NO_PARTS } from './solved.ts';

const MM_PER_METRE = 1000;

/** How thick a mat lies; nothing for none. */
export const matThick = (context: CarcassContext, item: string | null): number =>
  (item === null ? null : context.catalog.hardware.get(item)?.sizeMm?.[2]) ?? 0;

/** A mat over the whole floor of a box, by the metre of its roll. */
export const matParts = (
  context: CarcassContext,
  { id, origin, item }: { readonly id: PartId; readonly origin: NodeId; readonly item: string | null },
  box: Box,
  mover: PartId | null,
): FittingParts => {
  if (item === null) return NO_PARTS;
  const rollWidth = hardwareOf(context, item, origin).record?.sizeMm?.[1] ?? 0;
  const [across, deep] = boxSize(box);
  const quantity = rollWidth > 0 ? (across * deep) / rollWidth / MM_PER_METRE : 0;
  const at = withSpan(box, UP, box.min[UP], box.min[UP] + matThick(context, item));
  return pieceOf(context, { id, origin, item, quantity, at, mover });
};
