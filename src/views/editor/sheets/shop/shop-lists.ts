import { type Catalog, houseRules } from '../../../../catalog/index.ts';
import type { Design } from '../../../../design/index.ts';
import type { CargoSpace } from '../../../../envelope/index.ts';
import type { FitOut } from '../../../../fitout/index.ts';
import {
  ASSEMBLY_ORDER,
  createDrawings,
  type Drawings,
  type DrawingsInput,
  type HardwareRow,
  hardwareList,
  type MassTable,
  massTable,
} from '../../../../shop/index.ts';
import { knownOrder } from '../../worker/connect-order.ts';

/** Everything of the packet that this sheet shows; drawings are made when they are asked for. */
export interface ShopLists {
  readonly input: DrawingsInput;
  readonly drawings: Drawings;
  readonly hardware: readonly HardwareRow[];
  readonly masses: MassTable;
}

export const shopLists = (design: Design, fitout: FitOut, catalog: Catalog, space: CargoSpace | null): ShopLists => {
  const rules = houseRules(catalog, design.houseRules);
  const input: DrawingsInput = { design, fitout, catalog, rules, space };
  const made = createDrawings(input);
  // The order of assembly takes seconds: what the worker has drawn of it is not drawn again.
  const drawings: Drawings = {
    ...made,
    draw: (name, tell) => (name === ASSEMBLY_ORDER ? knownOrder(input) : null) ?? made.draw(name, tell),
  };
  return {
    input,
    drawings,
    hardware: hardwareList({ fitout, catalog, rules, units: design.units }),
    masses: massTable(fitout, drawings.marks),
  };
};
