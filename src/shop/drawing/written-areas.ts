import { strokesOf } from './dimensions.ts';
import type { Shape } from './drawing.ts';
import type { Area } from './sheet.ts';
import { textWidth } from './text-width.ts';

/** Where words stand on paper, the figures of dimensions with them: so that no others are written there. Words lie or stand upright. */
export const writtenAreas = (shapes: readonly Shape[]): readonly Area[] =>
  strokesOf(shapes).flatMap((stroke): readonly Area[] => {
    if (stroke.kind !== 'text') return [];
    const { at, height, align, turnRad, within } = stroke;
    const long = Math.min(within ?? Number.POSITIVE_INFINITY, textWidth(stroke.text, height));
    const start = align === 'left' ? 0 : align === 'middle' ? -long / 2 : -long;
    const [x, y] = at;
    return turnRad === 0
      ? [{ from: [x + start, y], to: [x + start + long, y + height] }]
      : [{ from: [x - height, y + start], to: [x, y + start + long] }];
  });
