import { HOME } from '../base/index.ts';
import type { Catalog } from '../catalog/index.ts';
import { barThickness, type FitOut, type Panel } from '../fitout/index.ts';
import type { MarkedPart } from './marks.ts';

type Brace = FitOut['braces'][number];

/** A brace as a part to cut and drill, with what its drawing says beside it. */
export interface BraceBar {
  readonly brace: Brace;
  readonly part: MarkedPart;
  /** The bar stock. */
  readonly materialName: string;
  readonly note: string;
}

const NO_BANDS: Panel['bands'] = { l1: null, l2: null, w1: null, w2: null };

/**
 * Every brace as a flat part: its length, the width of its stock, its holes on the middle line from the end at its
 * first carcass. Marks BR1, BR2 … follow the design.
 */
export const braceBars = (fitout: FitOut, catalog: Catalog): readonly BraceBar[] =>
  fitout.braces.flatMap((brace, i): readonly BraceBar[] => {
    const record = catalog.hardware.get(brace.item);
    const width = record?.sizeMm?.[1];
    if (!record || width === undefined) return [];
    const thickness = barThickness(record);
    const { lengthMm, holeMm } = brace;
    const panel: Panel = {
      id: brace.id,
      origin: brace.id,
      carcass: brace.carcasses[0],
      role: 'brace',
      name: brace.name,
      material: record.id,
      thickness,
      length: lengthMm,
      width,
      outline: null,
      grain: 'any',
      bands: NO_BANDS,
      hand: null,
      cuts: brace.holesMm
        .toSorted((a, b) => a - b)
        .map((mm) => ({ kind: 'hole', face: 'a', at: [mm, width / 2], diameter: holeMm, depth: null, why: 'brace' })),
      pose: HOME,
      mover: null,
      volumeMm3: lengthMm * width * thickness,
      massKg: (record.massKg * lengthMm) / 1000,
    };
    const part = { mark: `BR${i + 1}`, carcass: brace.carcasses[0], panel, panels: [panel] };
    return [
      {
        brace,
        part,
        materialName: record.name,
        note:
          record.legMm === undefined ? 'break the arrises' : 'the leg that lies on the carcasses; break the arrises',
      },
    ];
  });
