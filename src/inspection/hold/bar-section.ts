/** A rectangle of a section: [low, high] across the bar and out from the faces that it lies on (mm). */
export interface SectionPiece {
  readonly across: readonly [number, number];
  readonly out: readonly [number, number];
}

/** Area, middle and second moments about the middle of a section of rectangles. */
export interface BarSection {
  readonly pieces: readonly SectionPiece[];
  readonly areaMm2: number;
  readonly middle: readonly [number, number];
  readonly acrossMm4: number;
  readonly outMm4: number;
  readonly mixedMm4: number;
  /** Of an open section of thin legs: Σ l t² / 3. */
  readonly torsionMm3: number;
}

const span = ([low, high]: readonly [number, number]): number => high - low;
const centre = ([low, high]: readonly [number, number]): number => (low + high) / 2;

export const barSection = (pieces: readonly SectionPiece[]): BarSection => {
  const parts = pieces.map(({ across, out }) => ({
    area: span(across) * span(out),
    x: centre(across),
    z: centre(out),
    xx: span(across) ** 2 / 12,
    zz: span(out) ** 2 / 12,
    thin: Math.min(span(across), span(out)),
    long: Math.max(span(across), span(out)),
  }));
  const sum = (of: (part: (typeof parts)[number]) => number): number => parts.reduce((all, part) => all + of(part), 0);
  const areaMm2 = sum(({ area }) => area);
  const middle = [sum(({ area, x }) => area * x) / areaMm2, sum(({ area, z }) => area * z) / areaMm2] as const;
  return {
    pieces,
    areaMm2,
    middle,
    acrossMm4: sum(({ area, x, xx }) => area * (xx + (x - middle[0]) ** 2)),
    outMm4: sum(({ area, z, zz }) => area * (zz + (z - middle[1]) ** 2)),
    mixedMm4: sum(({ area, x, z }) => area * (x - middle[0]) * (z - middle[1])),
    torsionMm3: sum(({ long, thin }) => (long * thin ** 2) / 3),
  };
};

/** The smallest second moment about any line through the middle: what a bar buckles about. */
export const leastMm4 = ({ acrossMm4: a, outMm4: b, mixedMm4: m }: BarSection): number =>
  (a + b) / 2 - Math.hypot((a - b) / 2, m);

/**
 * A flat bar, or an angle with its other leg standing at one edge, with the hole of a bolt in the middle of what lies on
 * the faces. `leg` is the thickness where the bolts go through, `high` how far it stands out.
 */
export const holedBar = (wide: number, leg: number, high: number, hole: number): BarSection =>
  barSection([
    { across: [-wide / 2, -hole / 2], out: [0, leg] },
    { across: [hole / 2, wide / 2], out: [0, leg] },
    ...(high > leg ? [{ across: [-wide / 2, leg - wide / 2] as const, out: [leg, high] as const }] : []),
  ]);

/** What a cut through the bar takes: newtons along, across and out; N mm about the same, at the middle of the section. */
export interface SectionLoad {
  readonly along: number;
  readonly across: number;
  readonly out: number;
  readonly aboutAlong: number;
  readonly aboutAcross: number;
  readonly aboutOut: number;
}

/** The most that a section sees, by von Mises (MPa): direct and bending stress at its corners, even shear, torsion of thin legs. */
export const barStress = (section: BarSection, load: SectionLoad): number => {
  const { areaMm2, middle, acrossMm4: xx, outMm4: zz, mixedMm4: xz, torsionMm3 } = section;
  const det = xx * zz - xz ** 2;
  // ∫σ x = −M out, ∫σ z = M across.
  const byX = (-load.aboutOut * zz - load.aboutAcross * xz) / det;
  const byZ = (load.aboutAcross * xx + load.aboutOut * xz) / det;
  const corners = section.pieces.flatMap(({ across, out }) => across.flatMap((x) => out.map((z) => [x, z] as const)));
  const most = Math.max(
    ...corners.map(([x, z]) => Math.abs(load.along / areaMm2 + byX * (x - middle[0]) + byZ * (z - middle[1]))),
  );
  const shear = Math.hypot(load.across, load.out) / areaMm2 + Math.abs(load.aboutAlong) / torsionMm3;
  return Math.sqrt(most ** 2 + 3 * shear ** 2);
};
