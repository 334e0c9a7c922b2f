import { DESIGN_FORMAT, DESIGN_VERSION, type Design, designSchema } from './design.ts';

/** A design with nothing in it yet: the document behind "new". Whatever has a default in the schema takes it. */
export const emptyDesign = (title: string, units: Design['units']): Design =>
  designSchema.parse({
    format: DESIGN_FORMAT,
    version: DESIGN_VERSION,
    title,
    units,
    vehicle: {
      class: 'large-utility',
      description: '',
      ratings: { grossKg: null, frontAxleKg: null, rearAxleKg: null },
      wheelbaseMm: null,
      trackMm: null,
      sillBehindRearAxleMm: null,
      floorAboveGroundMm: null,
      cgHeightAsReceivedMm: null,
      slip: null,
      seats: [],
    },
    survey: { stations: [], obstacles: [], closures: [], zones: [] },
    cabinet: { carcasses: [], braces: [] },
    gear: [],
  }) as Design;
