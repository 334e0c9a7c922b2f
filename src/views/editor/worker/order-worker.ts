import { expose } from 'comlink';
import { houseRules, standardCatalog } from '../../../catalog/index.ts';
import { ASSEMBLY_ORDER, createDrawings } from '../../../shop/index.ts';
import type { OrderDesk } from './order-api.ts';

const desk: OrderDesk = {
  sheets: async (design, fitout, tell) => {
    const catalog = standardCatalog();
    const rules = houseRules(catalog, design.houseRules);
    // The order is of the cabinet alone: the vehicle stands on no sheet of it.
    return createDrawings({ design, fitout, catalog, rules, space: null }).draw(ASSEMBLY_ORDER, tell);
  },
};

expose(desk);
