import { loadSolids } from '../../bodies/index.ts';
import { standardCatalog } from '../../catalog/index.ts';
import { createFlow, type Flow } from '../../flow.ts';

/** The engine without the solid kernel: enough to solve the cabinet, and there at once. */
export const openCabinetFlow = (): Flow => createFlow({ catalog: standardCatalog(), solids: null });

/** The whole engine; loads the solid kernel. */
export const openFlow = async (): Promise<Flow> =>
  createFlow({ catalog: standardCatalog(), solids: await loadSolids() });
