import { z } from 'zod';

/**
 * The records of the catalog: what can be bought and what the department stows. Lengths mm, masses kg, forces N,
 * currents A, stresses MPa, prices in the shop's currency. Every record says where its figures come from.
 */

const id = z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'lower-case words joined by hyphens');
const name = z.string().min(1).max(120);
const positive = z.number().positive();
const notNegative = z.number().nonnegative();

/** How far a figure can be trusted. */
export const STATUSES = ['standard', 'screening value', 'shop habit'] as const;
export type SourceStatus = (typeof STATUSES)[number];
const source = z.string().min(1);

export const MATERIAL_KINDS = ['plywood', 'faced-plywood', 'plastic', 'aluminium', 'composite'] as const;

export const materialSchema = z.strictObject({
  id,
  name,
  kind: z.enum(MATERIAL_KINDS),
  /** As measured, not as named; the mean of the range. */
  thicknessMm: positive,
  thicknessRangeMm: z.tuple([positive, positive]),
  densityKgM3: positive,
  /** Short-term stiffness along and across the grain. */
  youngMPa: z.strictObject({ along: positive, across: positive }),
  bendingStrengthMPa: z.strictObject({ along: positive, across: positive }).nullable(),
  /** Long-term sag over short-term sag. */
  creepFactor: z.number().min(1),
  /** Sheet metal: what an air bend does. Null where the sheet is not bent. */
  bend: z.strictObject({ insideRadiusMm: positive, kFactor: positive }).nullable(),
  grain: z.enum(['length', 'any']),
  /** Length is along the face grain. */
  sheets: z.array(z.strictObject({ name, lengthMm: positive, widthMm: positive, price: notNegative })).min(1),
  colour: z.string().regex(/^#[0-9a-f]{6}$/),
  source,
});
export type Material = z.infer<typeof materialSchema>;

/** A hole past the end of the chosen length does not exist. Under-mount slides are bolted through their foot: up is 0. */
const holeSchema = z.strictObject({
  /** From the front edge of the member, along the slide. */
  alongMm: notNegative,
  /** Above the lower edge of the slide. */
  upMm: notNegative,
  diameterMm: positive,
});

export const slideSchema = z.strictObject({
  id,
  name,
  mount: z.enum(['side', 'under']),
  /** Room on each side between box and carcass, as measured on the part, not as named. Zero for under-mount. */
  sideSpaceMm: notNegative,
  /** Height of the slide; for under-mount the height that it takes under the tray. */
  heightMm: positive,
  lengthsMm: z.array(positive).min(1),
  /** Travel over length: 1 opens fully, 0.7 opens to seventy per cent. */
  extension: positive,
  /** Rated load of a pair, side-mounted, spread evenly. */
  ratingKg: positive,
  massKgPerMetre: positive,
  /** A side slide that lies flat under what it carries: it bears less than its rating. */
  laidFlat: z.boolean().optional(),
  /** Shut, out, and every so far in between where it does that. */
  locks: z.strictObject({ in: z.boolean(), out: z.boolean(), everyMm: positive.optional() }),
  /** Force that its own detent holds closed; zero where it is not rated. */
  detentN: notNegative,
  carcassHoles: z.array(holeSchema),
  boxHoles: z.array(holeSchema),
  price: notNegative,
  source,
});
export type Slide = z.infer<typeof slideSchema>;

export const HARDWARE_KINDS = [
  'hinge',
  'latch',
  'gas-spring',
  'screw',
  'bolt',
  'insert',
  'plate',
  'bracket',
  'brace',
  'net',
  'strap',
  'pull',
  'lip',
  'mat',
  'edge-band',
  'rivet',
  'cradle',
  'clamp',
  'electrical',
  'vent',
  'arm',
  'ratchet',
  'trim',
  'clip',
  'support',
  'drain',
  'sign',
] as const;

const letInSchema = z.strictObject({
  cutout: z
    .union([
      /** Along the length and the width of the piece. */
      z.strictObject({ sizeMm: z.tuple([positive, positive]), cornerMm: positive }),
      z.strictObject({ boreMm: positive }),
    ])
    .nullable(),
  screws: z.array(
    z.strictObject({
      /** From its middle along its length and its width. */
      atMm: z.tuple([z.number(), z.number()]),
      diameterMm: positive,
      /** A bolt right through; a wood screw in a pilot hole otherwise. */
      through: z.boolean(),
    }),
  ),
});
export type LetIn = z.infer<typeof letInSchema>;

export const hardwareSchema = z.strictObject({
  id,
  name,
  kind: z.enum(HARDWARE_KINDS),
  /** Mass of one piece, or of one metre where `by` is metre. */
  massKg: notNegative,
  by: z.enum(['piece', 'metre']),
  /** What it is rated to hold, in the direction it is meant for; null where it is not rated. */
  ratedN: positive.nullable(),
  /** Fasteners: what they are rated for across their axis, where `ratedN` is along it; absent where not given. */
  acrossN: positive.optional(),
  /** Fasteners: nominal diameter of the thread or shank. */
  threadMm: positive.optional(),
  /** Pulls and releases: room for a hand behind or in it, width × depth. */
  handRoomMm: z.tuple([positive, positive]).optional(),
  /** Cradles and clamps: the thinnest and the thickest thing that they go round. */
  holdsMm: z.tuple([positive, positive]).optional(),
  /** Brackets to a wall: the least and the greatest gap that they bridge, by their slots. */
  reachMm: z.tuple([positive, positive]).optional(),
  /**
   * Latches, locks and pulls: what is cut for one piece in the panel that it sits in, about its middle as one looks at
   * the face: a cut-out right through that its rim covers, or a bore behind which its case stands, or neither where it
   * is only bolted on.
   */
  letIn: letInSchema.optional(),
  /** Drains: the hole that one piece is let into. */
  holeMm: positive.optional(),
  /** Ratchets: the angle between two places that one holds, in degrees. */
  stepDeg: positive.optional(),
  /** Braces of an angle: thickness of the leg that bolts go through; a flat bar is as thick as its height. */
  legMm: positive.optional(),
  /** Bars of braces: yield strength and stiffness of their metal; absent where not known. */
  yieldMPa: positive.optional(),
  youngMPa: positive.optional(),
  /** Vents: free area of one piece. */
  freeMm2: positive.optional(),
  /** Cable: copper area of one conductor. */
  conductorMm2: positive.optional(),
  /** Room that one piece takes, length × width × height; null where it takes none worth counting. */
  sizeMm: z.tuple([positive, positive, positive]).nullable(),
  price: notNegative,
  source,
});
export type Hardware = z.infer<typeof hardwareSchema>;

export const NEEDS = [
  'upright',
  'strapped',
  'bracket',
  'locked',
  'vented',
  'charged',
  'cool',
  'dry',
  'clean',
  'flat',
  'edges-covered',
  'away-from-heat',
  'outside-cabin',
] as const;
export type Need = (typeof NEEDS)[number];

export const GEAR_GROUPS = [
  'breathing',
  'medical',
  'fire',
  'tools',
  'rope',
  'command',
  'radio',
  'light',
  'detection',
  'clothing',
  'traffic',
  'other',
] as const;

export const gearKindSchema = z.strictObject({
  id,
  name,
  group: z.enum(GEAR_GROUPS),
  /** Length × width × height as it stands upright. */
  sizeMm: z.tuple([positive, positive, positive]),
  massKg: positive,
  /** Spread of the class, as a standard deviation. */
  massSigmaKg: notNegative,
  form: z.enum(['box', 'bag', 'cylinder', 'pack', 'long', 'case']),
  needs: z.array(z.enum(NEEDS)),
  source,
});
export type GearKind = z.infer<typeof gearKindSchema>;

export const deviceSchema = z.strictObject({
  id,
  name,
  kind: z.enum([
    'radio',
    'head',
    'deck',
    'speaker',
    'socket',
    'usb',
    'switch',
    'screen',
    'charger',
    'light',
    'blank',
    'hub',
    'fan',
  ]),
  /** What is seen in front of the plate. */
  faceMm: z.strictObject({ width: positive, height: positive }),
  cutout: z.discriminatedUnion('shape', [
    z.strictObject({
      shape: z.literal('rectangle'),
      widthMm: positive,
      heightMm: positive,
      cornerRadiusMm: notNegative,
    }),
    z.strictObject({ shape: z.literal('round'), diameterMm: positive }),
    z.strictObject({ shape: z.literal('none') }),
  ]),
  /** Behind the plate: the body, then the plug, then the bend of the cable. */
  behindMm: z.strictObject({
    width: positive,
    height: positive,
    body: notNegative,
    plug: notNegative,
    bend: notNegative,
  }),
  massKg: positive,
  massSigmaKg: notNegative,
  amps: z.strictObject({ standby: notNegative, run: notNegative, transmit: notNegative }),
  /** Share of the time at the transmit current. */
  transmitShare: z.number().min(0).max(1),
  /** Radio power sent out to the antenna (W), so that it does not count as heat in the bay. */
  radiatedW: notNegative,
  /** Fans: the hole that one blows through, and the air it moves through a bay with open vents (m³/h). */
  holeMm: positive.optional(),
  airM3h: positive.optional(),
  price: notNegative,
  source,
});
export type Device = z.infer<typeof deviceSchema>;

export const houseRuleSchema = z.strictObject({
  id,
  /** What the limit is about, a short phrase without the figure. */
  about: name,
  value: z.number(),
  unit: z.enum([
    'mm',
    'kg',
    'N',
    'A',
    'V',
    'W',
    'deg',
    'g',
    'share',
    'count',
    'K',
    'h',
    'm3/h',
    'MPa',
    'factor',
    'kg/m',
    'money',
    'money/h',
    'min',
    'persons',
    'mm2',
    'kg/m2',
    'mm/m',
    'mm/min',
    'm/s2',
    'N.m',
    'degC',
    'W/m2K',
  ]),
  /** What the value is compared as. */
  sense: z.enum(['at least', 'at most', 'value']),
  source,
  status: z.enum(STATUSES),
});
export type HouseRule = z.infer<typeof houseRuleSchema>;

export const catalogSchema = z.strictObject({
  materials: z.array(materialSchema),
  slides: z.array(slideSchema),
  hardware: z.array(hardwareSchema),
  gear: z.array(gearKindSchema),
  devices: z.array(deviceSchema),
  rules: z.array(houseRuleSchema),
});
