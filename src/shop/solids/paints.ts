import type { GearKind, Material } from '../../catalog/index.ts';
import type { Colour } from './mesh-data.ts';

/** One channel of sRGB (IEC 61966-2-1) as linear light. */
const linearChannel = (value: number): number => (value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4);

/** A colour as people write it, `#d4b689`, as the linear light that a shader wants. */
export const linear = (hex: string): Colour => {
  const channel = (at: number): number => linearChannel(Number.parseInt(hex.slice(at, at + 2), 16) / 255);
  return [channel(1), channel(3), channel(5)];
};

/** What a surface is drawn as: one material of the scene each. */
export const FINISHES = ['wood', 'ply', 'plain', 'metal', 'fittings'] as const;
export type Finish = (typeof FINISHES)[number];

interface PanelFinish {
  readonly face: Finish;
  readonly edge: Finish;
}

/** Faces and edges by the kind of sheet: only bare plywood shows its grain, every plywood shows its plies. */
export const PANEL_FINISH: Readonly<Record<Material['kind'], PanelFinish>> = {
  plywood: { face: 'wood', edge: 'ply' },
  'faced-plywood': { face: 'plain', edge: 'ply' },
  plastic: { face: 'plain', edge: 'plain' },
  aluminium: { face: 'metal', edge: 'metal' },
  composite: { face: 'plain', edge: 'plain' },
};

/** The edge of a plywood is the raw veneers, whatever its faces are. */
export const RAW_EDGE = linear('#dcc096');

interface GearPaint {
  readonly cloth: Colour;
  readonly accent: Colour;
}

const gearPaint = (cloth: string, accent: string): GearPaint => ({ cloth: linear(cloth), accent: linear(accent) });

/** Dull natural colours, with one accent by which the group is known. */
export const GEAR_PAINT: Readonly<Record<GearKind['group'], GearPaint>> = {
  breathing: gearPaint('#4c5254', '#c9b03a'),
  medical: gearPaint('#8a3a31', '#d9d3c4'),
  fire: gearPaint('#7d2b25', '#a8362b'),
  tools: gearPaint('#5d6266', '#94703f'),
  rope: gearPaint('#33506e', '#c77d3d'),
  command: gearPaint('#6d6a55', '#cfc7b0'),
  radio: gearPaint('#3a3f43', '#7d8a90'),
  light: gearPaint('#4a4d48', '#c2a12f'),
  detection: gearPaint('#5a5f4a', '#b9a24a'),
  clothing: gearPaint('#6b5a42', '#b8b04c'),
  traffic: gearPaint('#a9572c', '#d8d2c2'),
  other: gearPaint('#6f6a5f', '#a59c88'),
};

export const DEVICE_PAINT = { face: linear('#2a2e31'), screen: linear('#16211f'), body: linear('#4b5054') };
export const HARDWARE_PAINT = linear('#4d5357');
