/** Small pieces of the standard catalog that the fit-out picks by itself, by what they are for. */
export const PIECES = {
  /** Joints of carcass panels. */
  joint: 'wood-screw-5x50',
  /** Joints of drawer boxes and lips of trays. */
  box: 'wood-screw-4x40',
  /** A drawer front on its box. */
  front: 'wood-screw-4x30',
  /** A plate on its cleats. */
  plate: 'machine-screw-m5x20',
  /** A flange of a hinge. */
  hinge: 'wood-screw-4x16',
  /** What a command board turns on, by the metre. */
  boardHinge: 'hinge-piano-32',
  /** A bracket through its panel. */
  bracket: 'bolt-m8x40',
  /** A clamp, a cradle or an arm through its panel. */
  clamp: 'bolt-m6x30',
  /** A brace through the panel of a carcass: the shorter where it reaches, its washer and nut inside. */
  brace: 'bolt-m8x40',
  braceLong: 'bolt-m8x70',
  braceWasher: 'washer-m8-30',
  braceNut: 'lock-nut-m8',
  /** Under an adjustable shelf. */
  shelfPin: 'shelf-pin-lock-5',
} as const;

/** Fasteners for slides: the first whose hole is at least as wide as the slide's. */
const SLIDE_FASTENERS = [
  { upToMm: 5, item: 'wood-screw-4x16', blind: true },
  { upToMm: 6, item: 'machine-screw-m5x20', blind: false },
  { upToMm: 7, item: 'bolt-m6x30', blind: false },
  { upToMm: Infinity, item: 'bolt-m8x40', blind: false },
] as const;

/** What goes through a hole of this diameter in a slide, and whether its own hole stays blind. */
export const slideFastener = (diameterMm: number): { readonly item: string; readonly blind: boolean } =>
  SLIDE_FASTENERS.find(({ upToMm }) => diameterMm <= upToMm) ?? SLIDE_FASTENERS[3];
