import { houseRules, standardCatalog } from '../../src/catalog/index.ts';
import { type Design, designSchema, emptyDesign } from '../../src/design/index.ts';
import { type FitOut, type Panel, solveFitOut } from '../../src/fitout/index.ts';

/** Parts of a design document as plain data; the schema checks them and fills in what has a default. */
type Plain = Readonly<Record<string, unknown>>;

export const empty = (id: string): Plain => ({ id, content: { kind: 'empty' } });

export const fitted = (id: string, fitting: Plain): Plain => ({ id, name: id, content: { kind: 'fitted', fitting } });

export const divided = (
  id: string,
  along: 'columns' | 'rows' | 'layers',
  parts: readonly (readonly [rule: Plain, opening: Plain])[],
  divider: 'panel' | 'none' = 'panel',
): Plain => ({
  id,
  content: { kind: 'divided', along, divider, parts: parts.map(([size, opening]) => ({ size, opening })) },
});

export const share = (weight = 1): Plain => ({ rule: 'share', weight });
export const fixed = (mm: number): Plain => ({ rule: 'fixed', mm });
export const hug: Plain = { rule: 'hug' };

const AT = (mm: number): Plain => ({ rule: 'at', mm });

/** 900 × 700 × 600 of 18 mm birch (17.7 as measured), dados of 6 mm, the back grooved in 12 mm from the rear. */
export const carcass = (opening: Plain, rest: Plain = {}): Plain => ({
  id: 'carcass-1',
  name: 'Bay',
  place: { x: AT(0), y: AT(0), z: AT(0) },
  facing: 'right',
  size: { width: 900, height: 700, depth: 600 },
  material: 'birch-ply-18',
  backMaterial: 'birch-ply-6',
  joints: { corner: 'dado', dadoDepthMm: 6, back: { kind: 'groove', grooveDepthMm: 6, setbackMm: 12 } },
  opening,
  ...rest,
});

export const designOf = (carcasses: readonly Plain[], rest: Plain = {}): Design =>
  designSchema.parse({ ...emptyDesign('Test', 'mm'), cabinet: { carcasses }, ...rest }) as Design;

export const solved = (carcasses: readonly Plain[], rest: Plain = {}): FitOut => {
  const design = designOf(carcasses, rest);
  const catalog = standardCatalog();
  return solveFitOut(design, catalog, houseRules(catalog, design.houseRules));
};

export const panelOf = (fitOut: FitOut, id: string): Panel => {
  const panel = fitOut.panels.find((each) => each.id === id);
  if (!panel) throw new Error(`no panel ${id} among ${fitOut.panels.map((each) => each.id).join(', ')}`);
  return panel as Panel;
};

export const openingOf = (fitOut: FitOut, id: string) => {
  const opening = fitOut.openings.find((each) => each.id === id);
  if (!opening) throw new Error(`no opening ${id}`);
  return opening;
};
