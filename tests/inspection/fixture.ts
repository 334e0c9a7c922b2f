import { HOME, type Pose, type Vec3 } from '../../src/base/index.ts';
import { boxShape, loadSolids } from '../../src/bodies/index.ts';
import { type Catalog, type HouseRules, houseRules, standardCatalog } from '../../src/catalog/index.ts';
import { type Design, designSchema, emptyDesign, type NodeId, type Survey } from '../../src/design/index.ts';
import { type CargoSpace, createCargoSpace } from '../../src/envelope/index.ts';
import type { FitOut } from '../../src/fitout/index.ts';
import type { Finding, Inspection } from '../../src/inspection/index.ts';
import { inspect } from '../../src/inspection/index.ts';
import { boxSurvey } from '../envelope/surveys.ts';

export const node = (id: string): NodeId => id as NodeId;

export const catalog = standardCatalog();
export const rules: HouseRules = houseRules(catalog, []);
const solids = await loadSolids();

export type BodyRow = Partial<FitOut['bodies'][number]> & {
  readonly id: string;
  readonly min: Vec3;
  readonly max: Vec3;
};

/** A body as a box between two corners; a panel of carcass-1 unless the row says otherwise. */
export const body = ({ min, max, ...row }: BodyRow): FitOut['bodies'][number] => ({
  origin: node(row.id),
  carcass: node('carcass-1'),
  kind: 'panel',
  name: row.id,
  mover: null,
  shape: boxShape({ min, max }),
  ...row,
});

export const panel = (id: string, length: number, width: number, row: Partial<FitOut['panels'][number]> = {}) => ({
  id,
  origin: node('carcass-1'),
  carcass: node('carcass-1'),
  role: 'side-left',
  name: id,
  material: 'birch-ply-18',
  thickness: 17.7,
  length,
  width,
  outline: null,
  grain: 'length' as const,
  bands: { l1: null, l2: null, w1: null, w2: null },
  hand: null,
  cuts: [],
  pose: HOME,
  mover: null,
  volumeMm3: length * width * 17.7,
  massKg: 1,
  ...row,
});

export type Anchor = FitOut['anchors'][number];

/** An anchor of carcass-1 through its bottom, M8 with a plate below, unless told otherwise. */
export const anchor = (id: string, at: Vec3, rest: Partial<Anchor> = {}): Anchor => ({
  id: node(id),
  carcass: node('carcass-1'),
  on: 'floor',
  at,
  into: [0, 0, -1],
  panel: 'carcass-1/bottom',
  edgeMm: 50,
  gripMm: 17.7,
  bolt: 'bolt-m8x40',
  insert: null,
  washer: 'washer-m8-30',
  plate: 'backing-plate-80',
  plateBonded: false,
  bracket: null,
  ...rest,
});

export const mass = (
  id: string,
  massKg: number,
  at: Vec3,
  row: Partial<FitOut['masses'][number]> = {},
): FitOut['masses'][number] => ({
  id,
  origin: node(id),
  carcass: node('carcass-1'),
  kind: 'panel',
  name: id,
  massKg,
  sigmaKg: 0,
  at,
  mover: null,
  ...row,
});

export const room = (
  opening: string,
  size: Vec3,
  row: Partial<FitOut['rooms'][number]> & { readonly pose?: Pose } = {},
): FitOut['rooms'][number] => ({
  opening: node(opening),
  level: 0,
  carcass: node('carcass-1'),
  mover: null,
  pose: HOME,
  size,
  keeps: 'nothing',
  ...row,
});

/** A fitted opening of carcass-1 in the corner of it, unless told otherwise. */
export const openingOf = (
  id: string,
  size: Vec3,
  row: Partial<FitOut['openings'][number]> = {},
): FitOut['openings'][number] => ({
  id: node(id),
  carcass: node('carcass-1'),
  parent: null,
  depth: 0,
  content: 'fitted',
  name: '',
  from: [0, 0, 0],
  size,
  least: [0, 0, 0],
  mover: null,
  ...row,
});

export const fitOut = (parts: Partial<FitOut> = {}): FitOut => ({
  carcasses: [],
  openings: [],
  panels: [],
  bodies: [],
  movers: [],
  masses: [],
  hardware: [],
  devices: [],
  rooms: [],
  gear: [],
  anchors: [],
  braces: [],
  problems: [],
  ...parts,
});

export const designWith = (parts: Partial<Design> = {}): Design => ({ ...emptyDesign('Test', 'mm'), ...parts });

/** The vehicle of an empty design with some of its figures, read by the schema. */
export const vehicleWith = (parts: Record<string, unknown>): Design['vehicle'] =>
  (
    designSchema.parse({
      ...emptyDesign('Test', 'mm'),
      vehicle: { ...emptyDesign('Test', 'mm').vehicle, ...parts },
    }) as Design
  ).vehicle;

export const spaceOf = (survey: Survey): CargoSpace => {
  const read = createCargoSpace(survey, rules, solids);
  if (!read.ok) throw new Error(JSON.stringify(read.error));
  return read.value;
};

export interface Scene {
  readonly survey?: Survey | null;
  readonly design?: Partial<Design>;
  readonly fitout?: Partial<FitOut>;
  readonly from?: Catalog;
}

/** The inspection of a scene made by hand; the box room of the envelope tests unless a survey is given or null. */
export const inspectScene = ({ survey = boxSurvey(), design = {}, fitout = {}, from = catalog }: Scene): Inspection => {
  const made = designWith({ ...(survey ? { survey } : {}), ...design });
  return inspect({
    design: made,
    space: survey ? spaceOf(survey) : null,
    fitout: fitOut(fitout),
    catalog: from,
    rules: houseRules(from, made.houseRules),
  });
};

export const findingsOf = (inspection: Inspection, rule: string): readonly Finding[] =>
  inspection.findings.filter((finding) => finding.rule === rule);

/** The rule's findings as short lines: severity, parts, value. */
export const linesOf = (inspection: Inspection, rule: string): readonly string[] =>
  findingsOf(inspection, rule).map(
    ({ severity, parts, value }) => `${severity} ${parts.join('+')} ${Math.round(value * 100) / 100}`,
  );
