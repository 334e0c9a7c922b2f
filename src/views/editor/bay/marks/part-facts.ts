import { formatLength, formatMass, type LengthUnits } from '../../../../base/index.ts';
import type { Catalog } from '../../../../catalog/index.ts';
import type { Design } from '../../../../design/index.ts';
import type { CargoSpace } from '../../../../envelope/index.ts';
import type { FitOut } from '../../../../fitout/index.ts';

/** What is said of a part that is pointed at: its name, and its size and mass where it has them. */
export interface PartFacts {
  readonly name: string;
  readonly size: string | null;
  readonly mass: string | null;
}

export interface FactSources {
  readonly fitOut: FitOut;
  readonly space: CargoSpace | null;
  readonly design: Design;
  readonly catalog: Catalog;
}

const times = (sizes: readonly number[], units: LengthUnits): string =>
  `${sizes.map((mm) => formatLength(mm, units)).join(' × ')} ${units}`;

/** Name, size and mass of a part, by its own id. */
export const partFacts = (id: string, sources: FactSources): PartFacts | null => {
  const { fitOut, space, design, catalog } = sources;
  const { units } = design;
  const panel = fitOut.panels.find((candidate) => candidate.id === id);
  if (panel)
    return {
      name: panel.name,
      size: times([panel.length, panel.width, panel.thickness], units),
      mass: formatMass(panel.massKg, units),
    };
  const body = fitOut.bodies.find((candidate) => candidate.id === id);
  const gear = body && design.gear.find((candidate) => candidate.id === body.origin);
  if (gear) return { name: gear.name, size: times(gear.sizeMm, units), mass: formatMass(gear.massKg, units) };
  if (body) {
    const placed = fitOut.devices.find((candidate) => candidate.origin === body.origin);
    const device = placed && catalog.devices.get(placed.device);
    const weighed = fitOut.masses.find((candidate) => candidate.id === body.id || candidate.origin === body.origin);
    return {
      name: body.name,
      size: device ? times([device.faceMm.width, device.faceMm.height], units) : null,
      mass: weighed ? formatMass(weighed.massKg, units) : null,
    };
  }
  const solid = space?.bodies.find((candidate) => candidate.id === id);
  return solid ? { name: solid.name, size: null, mass: null } : null;
};
