import { expose } from 'comlink';
import wasmAddress from 'manifold-3d/manifold.wasm?url';
import { loadSolids } from '../../../bodies/index.ts';
import { standardCatalog } from '../../../catalog/index.ts';
import { createFlow, type Flow } from '../../../flow.ts';
import { designFigures } from '../../../shop/index.ts';
import type { FiguresDesk } from './figures-api.ts';

let flow: Promise<Flow> | null = null;

const theFlow = (): Promise<Flow> => {
  flow ??= loadSolids(() => wasmAddress).then((solids) => createFlow({ catalog: standardCatalog(), solids }));
  return flow;
};

const desk: FiguresDesk = {
  figures: async (design) => {
    const ready = await theFlow();
    return designFigures({
      design,
      fitout: ready.fitOut(design),
      catalog: ready.catalog,
      rules: ready.rules(design),
      inspection: ready.inspection(design),
    });
  },
};

expose(desk);
