import type { Catalog, HouseRules } from '../catalog/index.ts';
import type { Design } from '../design/index.ts';
import type { CargoSpace } from '../envelope/index.ts';
import type { FitOut, SolvedCarcass } from '../fitout/index.ts';
import { nameOfPart } from '../says/index.ts';
import { type Assembly, assembliesOf, piecesOf } from './assembly/index.ts';
import { assemblyOrder } from './assembly-order.ts';
import { type BraceBar, braceBars } from './brace-bars.ts';
import { type CutListRow, cutList } from './cut-list.ts';
import { assemblyDrawing } from './drawing/assembly-drawing.ts';
import type { Drawing } from './drawing/drawing.ts';
import { explodedView } from './drawing/exploded-view.ts';
import { faceView } from './drawing/face-view.ts';
import { type GeneralViewName, generalView } from './drawing/general-view.ts';
import { orderSheets } from './drawing/order-sheets.ts';
import { type PartWords, panelDrawing } from './drawing/panel-drawing.ts';
import { partDxf } from './dxf/index.ts';
import { type MarkedPart, type Marks, markParts } from './marks.ts';
import { templateDxf, templateFigure, templateSheets } from './template/index.ts';
import { type TitleWords, titleWords } from './title-words.ts';

export interface DrawingsInput {
  readonly design: Design;
  readonly fitout: FitOut;
  readonly catalog: Catalog;
  readonly rules: HouseRules;
  /** The cargo space, drawn behind the general views, or null where the survey does not give one. */
  readonly space: CargoSpace | null;
}

/** What can be drawn of a design, by name. */
export interface Drawings {
  readonly marks: Marks;
  readonly rows: readonly CutListRow[];
  /** A face for each carcass (`face-carcass-1`), `plan`, `side`, each carcass drawn apart, each assembly. */
  readonly views: readonly string[];
  /** `assembly-order`, the anchor template of each carcass that has anchors (`template-carcass-1`), the bar of each brace (`brace-brace-1`). */
  readonly papers: readonly string[];
  /** Marks of the parts: `A1`. */
  readonly parts: readonly string[];
  /**
   * The sheets of a view, a paper or a part; null for a name that is none of them. What takes seconds tells which step
   * of how many comes next, 0 of 0 before they are counted.
   */
  readonly draw: (name: string, tell?: (step: number, of: number) => void) => readonly Drawing[] | null;
  /** What is drilled in the vehicle for each carcass that has anchors, and in each brace, as a file for a machine, by the name of its paper. */
  readonly templateFile: (name: string, held?: string | null) => string | null;
}

const GENERAL: readonly GeneralViewName[] = ['plan', 'side'];
const faceName = ({ id }: SolvedCarcass): string => `face-${id}`;

/** Ids of movers have a stroke in them; names of views and files have none. */
const assemblyName = ({ id }: Assembly): string => `assembly-${id.replaceAll('/', '-')}`;
export const ASSEMBLY_ORDER = 'assembly-order';
const templateName = ({ id }: SolvedCarcass): string => `template-${id}`;
const braceName = ({ brace }: BraceBar): string => `brace-${brace.id}`;
const explodedName = ({ id }: SolvedCarcass): string => `exploded-${id}`;

const wordsOf = (row: CutListRow, title: TitleWords, { rules }: DrawingsInput): PartWords => ({
  ...title,
  name: row.name,
  where: row.where,
  materialName: row.materialName,
  cutLength: row.cutLength,
  cutWidth: row.cutWidth,
  note: row.note,
  cutToleranceMm: rules.value('cut-tolerance'),
  boreToleranceMm: rules.value('bore-tolerance'),
});

const barWords = (
  { brace, part, materialName, note }: BraceBar,
  title: TitleWords,
  { rules }: DrawingsInput,
  names: (id: string) => string,
): PartWords => ({
  ...title,
  name: names(brace.id),
  where: brace.carcasses.map(names).join(' to '),
  materialName,
  cutLength: part.panel.length,
  cutWidth: part.panel.width,
  note,
  cutToleranceMm: rules.value('cut-tolerance'),
  boreToleranceMm: rules.value('bore-tolerance'),
});

/** Everything that can be drawn of a fit-out; nothing is drawn before it is asked for. */
export const createDrawings = (input: DrawingsInput): Drawings => {
  const { design, fitout, catalog, rules, space } = input;
  const marks = markParts(fitout);
  const names = nameOfPart(design, fitout);
  const rows = cutList({ fitout, marks, catalog, rules, names });
  const rowOf = new Map(rows.map((row) => [row.mark, row]));
  const partOf = new Map<string, MarkedPart>(marks.parts.map((part) => [part.mark, part]));
  const faceOf = new Map(fitout.carcasses.map((carcass) => [faceName(carcass), carcass]));
  const title = titleWords(design);
  const common = { fitout, marks, ...title, units: design.units };
  const assemblies = assembliesOf(fitout);
  const assemblyOf = new Map(assemblies.map((assembly) => [assemblyName(assembly), assembly]));
  const drawnAssembly = (assembly: Assembly): readonly Drawing[] | null => {
    const carcass = fitout.carcasses.find(({ id }) => id === assembly.carcass);
    return carcass === undefined
      ? null
      : assemblyDrawing({
          ...common,
          assembly,
          carcass,
          rows,
          name: names(assembly.id),
          hardware: piecesOf(fitout, catalog, assembly),
        });
  };
  const letterOf = (carcass: SolvedCarcass): string => marks.letterOf.get(carcass.id) ?? '';
  const templateOf = new Map(
    fitout.carcasses
      .filter(({ id }) => fitout.anchors.some(({ carcass }) => carcass === id))
      .map((carcass) => [templateName(carcass), carcass]),
  );
  const barOf = new Map(braceBars(fitout, catalog).map((bar) => [braceName(bar), bar]));
  const explodedOf = new Map(fitout.carcasses.map((carcass) => [explodedName(carcass), carcass]));
  return {
    marks,
    rows,
    views: [...faceOf.keys(), ...GENERAL, ...explodedOf.keys(), ...assemblyOf.keys()],
    papers: [...(fitout.panels.length > 0 ? [ASSEMBLY_ORDER] : []), ...templateOf.keys(), ...barOf.keys()],
    parts: [...partOf.keys()],
    templateFile: (name, held = null) => {
      const [anchored, bar] = [templateOf.get(name), barOf.get(name)];
      if (bar) return partDxf(bar.part.panel, design.units, bar.part.mark, held);
      return anchored ? templateDxf(templateFigure(anchored, input), design.units, held) : null;
    },
    draw: (name, tell) => {
      const carcass = faceOf.get(name);
      if (carcass) return [faceView({ ...common, carcass })];
      const assembly = assemblyOf.get(name);
      if (assembly) return drawnAssembly(assembly);
      const anchored = templateOf.get(name);
      if (anchored)
        return templateSheets(templateFigure(anchored, input), {
          ...title,
          name: names(anchored.id),
          letter: letterOf(anchored),
          units: design.units,
        });
      if (name === ASSEMBLY_ORDER && fitout.panels.length > 0) {
        tell?.(0, 0);
        const steps = assemblyOrder({ fitout, catalog, rules, marks, names });
        return orderSheets(steps, { ...title, units: design.units }, tell);
      }
      const bar = barOf.get(name);
      if (bar) return panelDrawing(bar.part, barWords(bar, title, input, names), design.units);
      const exploded = explodedOf.get(name);
      if (exploded) return [explodedView({ ...common, carcass: exploded, assemblies })];
      const general = GENERAL.find((each) => each === name);
      if (general) return [generalView(general, { ...common, space })];
      const [part, row] = [partOf.get(name), rowOf.get(name)];
      return part && row ? panelDrawing(part, wordsOf(row, title, input), design.units) : null;
    },
  };
};
