import type { LengthUnits } from '../../../../base/index.ts';
import { MM_PER_INCH } from '../../../../base/index.ts';

const MM3_PER_M3 = 1000 ** 3;
const MM3_PER_CUBIC_FOOT = (12 * MM_PER_INCH) ** 3;

/** A volume as people of either units say it: cubic feet or cubic metres. */
export const volumeText = (mm3: number, units: LengthUnits): string =>
  units === 'in' ? `${(mm3 / MM3_PER_CUBIC_FOOT).toFixed(1)} cu ft` : `${(mm3 / MM3_PER_M3).toFixed(3)} m³`;
