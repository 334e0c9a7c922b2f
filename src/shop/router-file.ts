import type { LengthUnits } from '../base/index.ts';
import type { Inspection } from '../inspection/index.ts';
import type { Drawings } from './drawings.ts';
import { partDxf } from './dxf/index.ts';
import { heldWords } from './release.ts';

/**
 * What a machine follows of one drawing, as a DXF file: the part of that mark, or what is drilled for an anchor
 * template; null for a drawing that no machine follows. While the packet is held back the file says so.
 */
export const routerFile = (
  drawings: Drawings,
  name: string,
  units: LengthUnits,
  inspection: Inspection,
): string | null => {
  const held = heldWords(inspection);
  const part = drawings.marks.parts.find(({ mark }) => mark === name);
  return part ? partDxf(part.panel, units, part.mark, held) : drawings.templateFile(name, held);
};
