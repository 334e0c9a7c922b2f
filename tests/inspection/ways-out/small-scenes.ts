import { type Design, designSchema, emptyDesign } from '../../../src/design/index.ts';
import { createFitOutSolver } from '../../../src/fitout/index.ts';
import { type Finding, findWaysOut, type Inspection, inspect } from '../../../src/inspection/index.ts';
import { boxSurvey } from '../../envelope/surveys.ts';
import { catalog, rules, spaceOf } from '../fixture.ts';

type Plain = Readonly<Record<string, unknown>>;
type Corner = readonly [number, number, number];

const at = (mm: number): Plain => ({ rule: 'at', mm });

/** A carcass 600 wide, 400 high and 500 deep that looks out of the back, at a place in the box room. */
export const carcassAt = (id: string, [x, y, z]: Corner, opening: Plain, rest: Plain = {}): Plain => ({
  id,
  name: id,
  place: { x: at(x), y: at(y), z: at(z) },
  facing: 'rear',
  size: { width: 600, height: 400, depth: 500 },
  material: 'birch-ply-18',
  backMaterial: 'birch-ply-6',
  joints: { corner: 'dado', dadoDepthMm: 6, back: { kind: 'groove', grooveDepthMm: 6, setbackMm: 12 } },
  opening,
  ...rest,
});

export const drawer = (id: string, rest: Plain = {}): Plain => ({
  id,
  name: id,
  content: {
    kind: 'fitted',
    fitting: {
      kind: 'drawer',
      boxMaterial: 'birch-ply-12',
      bottomMaterial: 'birch-ply-6',
      latch: null,
      inside: { id: `${id}-in`, content: { kind: 'empty' } },
      ...rest,
    },
  },
});

export const door = (id: string, rest: Plain = {}): Plain => ({
  id,
  name: id,
  content: {
    kind: 'fitted',
    fitting: {
      kind: 'door',
      material: 'birch-ply-18',
      hinge: 'hinge-piano-32',
      latch: null,
      inside: { id: `${id}-in`, content: { kind: 'empty' } },
      ...rest,
    },
  },
});

/** A post, striker or beam of the vehicle as a box between two corners. */
export const post = (min: Corner, max: Corner): Plain => ({
  id: 'post',
  name: 'post',
  kind: 'other',
  solid: { shape: 'box', min, max },
});

export interface SmallScene {
  readonly carcasses: readonly Plain[];
  readonly obstacles?: readonly Plain[];
  readonly closures?: readonly Plain[];
  readonly rest?: Plain;
}

export const sceneDesign = ({ carcasses, obstacles = [], closures = [], rest = {} }: SmallScene): Design =>
  designSchema.parse({
    ...emptyDesign('Test', 'mm'),
    survey: boxSurvey({ obstacles, closures }),
    cabinet: { carcasses },
    ...rest,
  }) as Design;

/** Inspects designs whatever their survey, as the whole engine would. */
export const lookAt = (): ((design: Design) => Inspection) => {
  const solve = createFitOutSolver(catalog);
  return (design) => inspect({ design, space: spaceOf(design.survey), fitout: solve(design, rules), catalog, rules });
};

export interface Looked {
  readonly design: Design;
  readonly look: (design: Design) => Inspection;
  readonly before: Inspection;
  /** The same with the ways out. */
  readonly found: Inspection;
}

export const lookedAt = (scene: SmallScene): Looked => {
  const design = sceneDesign(scene);
  const look = lookAt();
  const before = look(design);
  return { design, look, before, found: findWaysOut(before, design, look) };
};

export const same = (a: Pick<Finding, 'rule' | 'parts'>, b: Pick<Finding, 'rule' | 'parts'>): boolean =>
  a.rule === b.rule && a.parts.join() === b.parts.join();

export const share: Plain = { rule: 'share', weight: 1 };
export const fixed = (mm: number): Plain => ({ rule: 'fixed', mm });
export const empty = (id: string): Plain => ({ id, name: id, content: { kind: 'empty' } });

/** An opening divided by panels, its rows from the top. */
export const split = (
  id: string,
  along: 'rows' | 'columns',
  parts: readonly (readonly [size: Plain, opening: Plain])[],
): Plain => ({
  id,
  content: { kind: 'divided', along, divider: 'panel', parts: parts.map(([size, opening]) => ({ size, opening })) },
});
