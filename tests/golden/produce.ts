import type { Flow } from '../../src/flow.ts';
import { createPacket } from '../../src/shop/index.ts';
import { demoDesign } from './flow.ts';

/** The demo designs whose results are kept, and the files of the packet that are worth a person's reading. */
export const GOLDEN_DESIGNS = ['harrow-fell', 'quillmoor', 'skerrow-gap', 'ostrel-moor'] as const;
export const GOLDEN_FILES = ['cut-list.csv', 'masses.csv', 'hardware.csv', 'inspection.txt'] as const;

/** Those files as the engine makes them now. */
export const produced = async (flow: Flow, name: string): Promise<ReadonlyMap<string, string>> => {
  const design = demoDesign(name);
  const space = flow.space(design);
  const { files } = await createPacket({
    design,
    space: space.ok ? space.value : null,
    fitout: flow.fitOut(design),
    inspection: flow.inspection(design),
    catalog: flow.catalog,
    rules: flow.rules(design),
  });
  return new Map(
    GOLDEN_FILES.map((path) => {
      const file = files.find((candidate) => candidate.path === path);
      if (!file || !('text' in file)) throw new Error(`the packet of ${name} holds no ${path}`);
      return [path, file.text];
    }),
  );
};

export const goldenUrl = (name: string, file: string): URL => new URL(`./${name}/${file}`, import.meta.url);
