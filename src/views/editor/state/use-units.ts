import type { LengthUnits } from '../../../base/index.ts';
import { useEditor } from './use-editor.ts';

/** What lengths are shown in: the design's own choice. */
export const useUnits = (): LengthUnits => useEditor((editor) => editor.history.design.units);
