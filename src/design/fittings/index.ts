import { z } from 'zod';
import type { Opening } from '../cabinet.ts';
import type { NodeId } from '../parts.ts';
import { type ApparatusBracket, apparatusBracketSchema, freshApparatusBracket } from './apparatus-bracket.ts';
import { boardSchema, type CommandBoard, freshBoard } from './board.ts';
import { type ChargerBay, chargerBaySchema, freshChargerBay } from './charger-bay.ts';
import { type CylinderClamp, cylinderClampSchema, freshCylinderClamp } from './cylinder-clamp.ts';
import { type Door, doorSchema, freshDoor } from './door.ts';
import { type Drawer, drawerSchema, freshDrawer } from './drawer.ts';
import { type ExtinguisherCradle, extinguisherCradleSchema, freshExtinguisherCradle } from './extinguisher-cradle.ts';
import { type Faceplate, faceplateSchema, freshFaceplate } from './faceplate.ts';
import type { FreshFitting } from './fresh.ts';
import { LYINGS, type Lying } from './lying.ts';
import { freshMapSlot, type MapSlot, mapSlotSchema } from './map-slot.ts';
import { freshOpenStorage, type OpenStorage, openStorageSchema } from './open-storage.ts';
import { freshPassThrough, type PassThrough, passThroughSchema } from './pass-through.ts';
import { freshSlideOut, type SlideOut, slideOutSchema } from './slide-out.ts';
import { freshTabletMount, type TabletMount, tabletMountSchema } from './tablet-mount.ts';
import { freshToolClamp, type ToolClamp, toolClampSchema } from './tool-clamp.ts';
import { freshTrim, type Trim, trimSchema } from './trim.ts';
import { freshValuables, type Valuables, valuablesSchema } from './valuables.ts';

/** Every kind of fitting with what it says in the file. A new kind is added here; the compiler lists what it still owes. */
export interface FittingByKind {
  readonly drawer: Drawer;
  readonly 'slide-out': SlideOut;
  readonly 'open-storage': OpenStorage;
  readonly faceplate: Faceplate;
  readonly 'apparatus-bracket': ApparatusBracket;
  readonly door: Door;
  readonly board: CommandBoard;
  readonly 'extinguisher-cradle': ExtinguisherCradle;
  readonly 'cylinder-clamp': CylinderClamp;
  readonly 'tool-clamp': ToolClamp;
  readonly 'pass-through': PassThrough;
  readonly 'charger-bay': ChargerBay;
  readonly valuables: Valuables;
  readonly 'map-slot': MapSlot;
  readonly 'tablet-mount': TabletMount;
  readonly trim: Trim;
}
export type FittingKind = keyof FittingByKind;
export type Fitting = FittingByKind[FittingKind];

export const FRESH_FITTINGS: { readonly [Kind in FittingKind]: FreshFitting<FittingByKind[Kind]> } = {
  drawer: freshDrawer,
  'slide-out': freshSlideOut,
  'open-storage': freshOpenStorage,
  faceplate: freshFaceplate,
  'apparatus-bracket': freshApparatusBracket,
  door: freshDoor,
  board: freshBoard,
  'extinguisher-cradle': freshExtinguisherCradle,
  'cylinder-clamp': freshCylinderClamp,
  'tool-clamp': freshToolClamp,
  'pass-through': freshPassThrough,
  'charger-bay': freshChargerBay,
  valuables: freshValuables,
  'map-slot': freshMapSlot,
  'tablet-mount': freshTabletMount,
  trim: freshTrim,
};

export const FITTING_KINDS = Object.keys(FRESH_FITTINGS) as readonly FittingKind[];

/** A fitting of the kind with sensible defaults. */
export const freshFitting = (kind: FittingKind, newId: (prefix: string) => NodeId): Fitting =>
  FRESH_FITTINGS[kind](newId);

/** Any fitting; fittings that move hold an opening, whose schema is handed in because openings hold fittings in turn. */
export const fittingSchema = (opening: z.ZodType<Opening>): z.ZodType<Fitting> =>
  z.discriminatedUnion('kind', [
    drawerSchema(opening),
    slideOutSchema(opening),
    openStorageSchema,
    faceplateSchema,
    apparatusBracketSchema,
    doorSchema(opening),
    boardSchema(opening),
    extinguisherCradleSchema,
    cylinderClampSchema,
    toolClampSchema,
    passThroughSchema,
    chargerBaySchema,
    valuablesSchema(opening),
    mapSlotSchema,
    tabletMountSchema,
    trimSchema,
  ]) as unknown as z.ZodType<Fitting>;

export type {
  ApparatusBracket,
  ChargerBay,
  CommandBoard,
  CylinderClamp,
  Door,
  Drawer,
  ExtinguisherCradle,
  Faceplate,
  FreshFitting,
  Lying,
  MapSlot,
  OpenStorage,
  PassThrough,
  SlideOut,
  TabletMount,
  ToolClamp,
  Trim,
  Valuables,
};
export { LYINGS };
