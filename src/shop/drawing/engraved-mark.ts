import type { Vec2 } from '../../base/index.ts';
import type { Panel } from '../../fitout/index.ts';
import type { Stroke } from './drawing.ts';
import { lettering, letteringWidth } from './lettering.ts';
import { noteAreas } from './panel-annotations.ts';
import { emblemPlace } from './panel-emblem.ts';
import { noteTables } from './panel-notes.ts';
import { crowding } from './place-tags.ts';

const LETTER_MM = 8;
/** Left free round the mark. */
const AROUND_MM = 3;

/** The mark of a part in strokes to engrave on face a, clear of every cut; nothing where no place is free. */
export const engravedMark = (panel: Panel, mark: string): readonly Stroke[] => {
  const long = letteringWidth(mark, LETTER_MM);
  const flat = { panel, move: (at: Vec2): Vec2 => at, scale: 1, units: 'mm' } as const;
  const notes = noteTables(panel, () => '', 'mm').flatMap((table) => table.notes);
  const cuts = noteAreas(notes, flat);
  const size: Vec2 = [long + 2 * AROUND_MM, LETTER_MM + 2 * AROUND_MM];
  const area = emblemPlace(flat, size, cuts);
  if (area === null || crowding(area, cuts) > 0) return [];
  const [left, low] = [area.from[0] + AROUND_MM, area.from[1] + AROUND_MM];
  return lettering('engrave', mark, [left, low], LETTER_MM);
};
