import {
  CanvasTexture,
  DoubleSide,
  FrontSide,
  LinearMipmapLinearFilter,
  type Material,
  MeshLambertMaterial,
  MeshPhongMaterial,
  RepeatWrapping,
  SRGBColorSpace,
  type Texture,
} from 'three';
import { seededRandom } from '../../../../base/index.ts';
import type { Finish } from '../../../../shop/index.ts';

/** How much of a sheet one tile of the grain shows, along and across it. */
const GRAIN_TILE_MM = [960, 320] as const;
const GRAIN_PIXELS = [512, 256] as const;
/** Two plies, one along and one across. */
const PLY_PAIR_MM = 2.8;
const PLY_TILE_MM = 240;

const canvasOf = (width: number, height: number): CanvasRenderingContext2D | null => {
  const canvas = document.createElement('canvas');
  canvas.width = width;
  canvas.height = height;
  return canvas.getContext('2d');
};

const asTexture = (pen: CanvasRenderingContext2D, tile: readonly [number, number]): Texture => {
  const texture = new CanvasTexture(pen.canvas);
  texture.wrapS = RepeatWrapping;
  texture.wrapT = RepeatWrapping;
  texture.repeat.set(1 / tile[0], 1 / tile[1]);
  texture.colorSpace = SRGBColorSpace;
  texture.minFilter = LinearMipmapLinearFilter;
  return texture;
};

/** A wavy line along the grain that meets itself at the seam of the tile. */
const grainLine = (pen: CanvasRenderingContext2D, y: number, sway: number, phase: number): void => {
  const [width] = GRAIN_PIXELS;
  pen.beginPath();
  for (let x = 0; x <= width; x += 8) {
    const turn = (2 * Math.PI * x) / width;
    const up = y + sway * (Math.sin(turn + phase) + 0.4 * Math.sin(2 * turn + 2.3 * phase));
    if (x === 0) pen.moveTo(x, up);
    else pen.lineTo(x, up);
  }
  pen.stroke();
};

/** Rotary-cut birch: pale, with soft broad figure and fine short pores. Multiplies the colour of the sheet. */
const grainTexture = (): Texture | null => {
  const [width, height] = GRAIN_PIXELS;
  const pen = canvasOf(width, height);
  if (!pen) return null;
  const random = seededRandom(29);
  pen.fillStyle = '#fdfbf7';
  pen.fillRect(0, 0, width, height);
  for (let i = 0; i < 46; i++) {
    const y = random() * height;
    pen.strokeStyle = `rgba(120, 84, 44, ${0.025 + random() * 0.05})`;
    pen.lineWidth = 1.5 + random() * 7;
    const [sway, phase] = [3 + random() * 9, random() * 6.3];
    for (const shift of [-height, 0, height]) grainLine(pen, y + shift, sway, phase);
  }
  for (let i = 0; i < 60; i++) {
    const y = random() * height;
    pen.strokeStyle = `rgba(96, 62, 28, ${0.05 + random() * 0.09})`;
    pen.lineWidth = 0.6 + random() * 0.6;
    const [sway, phase] = [2 + random() * 7, random() * 6.3];
    for (const shift of [-height, 0, height]) grainLine(pen, y + shift, sway, phase);
  }
  for (let i = 0; i < 420; i++) {
    pen.fillStyle = `rgba(98, 66, 34, ${0.05 + random() * 0.12})`;
    pen.fillRect(random() * width, random() * height, 4 + random() * 14, 0.7);
  }
  return asTexture(pen, GRAIN_TILE_MM);
};

/** Veneers edge on: the ones along the edge pale, the end-grain ones dark. */
const plyTexture = (): Texture | null => {
  const pen = canvasOf(64, 32);
  if (!pen) return null;
  const random = seededRandom(7);
  pen.fillStyle = '#fffaf0';
  pen.fillRect(0, 0, 64, 32);
  pen.fillStyle = '#cba87a';
  pen.fillRect(0, 16, 64, 15);
  pen.fillStyle = '#94714a';
  pen.fillRect(0, 15, 64, 1);
  pen.fillRect(0, 31, 64, 1);
  for (let i = 0; i < 90; i++) {
    pen.fillStyle = `rgba(70, 44, 20, ${random() * 0.16})`;
    pen.fillRect(random() * 64, 16 + random() * 15, 1, 2 + random() * 4);
  }
  return asTexture(pen, [PLY_TILE_MM, PLY_PAIR_MM]);
};

/** Sheet metal: a broad, soft shine. */
const BRUSHED = { specular: 0x777b80, shininess: 22 } as const;

export type Materials = Readonly<Record<Finish, Material>>;

/** One material a finish; colours come from the corners of the meshes.*/
export const createMaterials = (): Materials => {
  const both = { vertexColors: true } as const;
  return {
    wood: new MeshLambertMaterial({ ...both, map: grainTexture() }),
    ply: new MeshLambertMaterial({ ...both, map: plyTexture() }),
    plain: new MeshLambertMaterial(both),
    metal: new MeshPhongMaterial({ ...both, ...BRUSHED }),
    // Latches and slides lie flush in what they are fixed to: drawn a hair nearer, so that they are not lost in it.
    fittings: new MeshPhongMaterial({
      ...both,
      ...BRUSHED,
      polygonOffset: true,
      // By a fixed step: by slope, a face seen edge on would come through everything before it.
      polygonOffsetFactor: 0,
      polygonOffsetUnits: -8,
    }),
  };
};

/** Cut open, a sheet shows its inside; whole, nobody sees it, and drawing it would cost as much again. */
export const showInsides = (materials: Materials, shown: boolean): void => {
  for (const material of Object.values(materials)) {
    material.side = shown ? DoubleSide : FrontSide;
    material.needsUpdate = true;
  }
};

export const disposeMaterials = (materials: Materials): void => {
  for (const material of Object.values(materials)) {
    if ('map' in material) (material.map as Texture | null)?.dispose();
    material.dispose();
  }
};
