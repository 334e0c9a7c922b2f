import type { Vec3 } from '../../../src/base/index.ts';
import {
  addCarcass,
  type Carcass,
  type Design,
  divideOpening,
  emptyDesign,
  findOpening,
  freshCarcass,
  type NodeId,
  setPartSize,
} from '../../../src/design/index.ts';
import type { FitOut } from '../../../src/fitout/index.ts';

type Solved = FitOut['openings'][number];

/**
 * A carcass 600 × 500 with sides of 20: two columns of 270, the left one in three rows of 140 with dividers of 20. The
 * solved openings are written out by hand: across 20 … 580, up 20 … 480.
 */
export const workedFace = (): { readonly design: Design; readonly carcass: Carcass; readonly fitOut: FitOut } => {
  const empty = emptyDesign('worked face', 'mm');
  const first = freshCarcass(empty);
  let design = addCarcass(empty, first);
  design = divideOpening(design, first.opening.id, 'columns', 2);
  const content = findOpening(design, first.opening.id)?.opening.content;
  const left = content?.kind === 'divided' ? content.parts[0]?.opening.id : undefined;
  if (!left) throw new Error('the carcass was not divided');
  design = divideOpening(design, left, 'rows', 3);
  design = setPartSize(design, left, 0, { rule: 'fixed', mm: 140 });
  const carcass = design.cabinet.carcasses[0];
  if (!carcass) throw new Error('no carcass');
  return { design, carcass, fitOut: withOpenings(solvedFor(carcass)) };
};

export const NOTHING_SOLVED: FitOut = {
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
};

export const withOpenings = (openings: readonly Solved[]): FitOut => ({ ...NOTHING_SOLVED, openings });

export const solvedOpening = (carcass: Carcass, id: NodeId, from: Vec3, size: Vec3): Solved => ({
  id,
  carcass: carcass.id,
  parent: null,
  depth: 0,
  content: 'empty',
  name: '',
  from,
  size,
  least: [0, 0, 0],
  mover: null,
});

const solvedFor = (carcass: Carcass): readonly Solved[] => {
  const { content } = carcass.opening;
  if (content.kind !== 'divided') throw new Error('not divided');
  const [left, right] = content.parts.map((part) => part.opening);
  if (!left || !right || left.content.kind !== 'divided') throw new Error('not divided as expected');
  const rows = left.content.parts.map((part, i) =>
    solvedOpening(carcass, part.opening.id, [20, 0, 480 - 140 - i * 160], [270, 700, 140]),
  );
  return [
    solvedOpening(carcass, carcass.opening.id, [20, 0, 20], [560, 700, 460]),
    solvedOpening(carcass, left.id, [20, 0, 20], [270, 700, 460]),
    solvedOpening(carcass, right.id, [310, 0, 20], [270, 700, 460]),
    ...rows,
  ];
};
