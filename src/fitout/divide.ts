import { type Box, ROUNDING_MM } from '../base/index.ts';
import type { DividedPart, OpeningContent } from '../design/index.ts';
import { type Axis, type Direction, hasVolume, RIGHT, TO_FACE, UP, UPWARD, withSpan } from './axes.ts';
import { type Board, faceBand } from './board.ts';
import type { CarcassContext } from './context.ts';
import { DIVISION_AXIS, dividerThickness, partAsks } from './least.ts';
import type { FitProblem } from './parts.ts';
import { badJoint, mmWords, rulesFight } from './problem.ts';
import { type PartAsk, shareOut } from './share-out.ts';
import { type FittingParts, NO_PARTS, type Room, type Side, type Walls } from './solved.ts';

type Divided = Extract<OpeningContent, { readonly kind: 'divided' }>;
type Along = Divided['along'];

interface DividerForm {
  readonly role: string;
  readonly part: string;
  readonly along: Direction;
  readonly face: Direction;
  /** The sides of a part that look towards the part before it and after it. */
  readonly before: Side;
  readonly after: Side;
  /** The sides in which a divider is housed; those of `whenOpen` too in a room that is open above. */
  readonly housed: readonly Side[];
  readonly whenOpen: readonly Side[];
  /** Sides that hold a divider: all of one of these lists must have a wall. */
  readonly heldBy: readonly (readonly Side[])[];
}

const FORMS: { readonly [A in Along]: DividerForm } = {
  columns: {
    role: 'divider',
    part: 'column',
    along: UPWARD,
    face: RIGHT,
    before: 'left',
    after: 'right',
    housed: ['bottom', 'top'],
    whenOpen: ['front', 'back'],
    heldBy: [['bottom'], ['front', 'back']],
  },
  rows: {
    role: 'shelf',
    part: 'row',
    along: RIGHT,
    face: UPWARD,
    before: 'top',
    after: 'bottom',
    housed: ['left', 'right'],
    whenOpen: [],
    heldBy: [['left', 'right']],
  },
  layers: {
    role: 'partition',
    part: 'layer',
    along: RIGHT,
    face: TO_FACE,
    before: 'front',
    after: 'back',
    housed: ['left', 'right', 'bottom', 'top'],
    whenOpen: [],
    heldBy: [['bottom'], ['left', 'right']],
  },
};

type Span = readonly [number, number];

/** Where each part runs along its axis, in the order of the design; the last part ends exactly where the room does. */
const spansOf = (sizes: readonly number[], gap: number, box: Box, axis: Axis): readonly Span[] => {
  const down = axis === UP;
  const spans: Span[] = [];
  let at = down ? box.max[axis] : box.min[axis];
  sizes.forEach((size, i) => {
    const last = i === sizes.length - 1;
    if (down) {
      const low = last ? box.min[axis] : at - size;
      spans.push([Math.min(low, at), at]);
      at = low - gap;
    } else {
      const high = last ? box.max[axis] : at + size;
      spans.push([at, Math.max(at, high)]);
      at = high + gap;
    }
  });
  return spans;
};

const SIDE_OF_AXIS: readonly (readonly [Side, Side])[] = [
  ['left', 'right'],
  ['front', 'back'],
  ['bottom', 'top'],
];

/** A box reaching into the walls on the given sides, by the housing that each wall allows. */
const reaching = (box: Box, walls: Walls, sides: readonly Side[]): Box =>
  SIDE_OF_AXIS.reduce((grown, [low, high], i) => {
    const axis = i as Axis;
    const into = (side: Side): number => (sides.includes(side) ? (walls[side]?.housing ?? 0) : 0);
    return withSpan(grown, axis, box.min[axis] - into(low), box.max[axis] + into(high));
  }, box);

const housedSides = (form: DividerForm, walls: Walls): readonly Side[] =>
  walls.top === null ? [...form.housed, ...form.whenOpen] : form.housed;

/** The boards between neighbouring parts. */
const dividersOf = (room: Room, form: DividerForm, axis: Axis, spans: readonly Span[], context: CarcassContext) =>
  spans.slice(1).map((span, i): Board => {
    const before = spans[i] ?? span;
    const [low, high] = axis === UP ? [span[1], before[0]] : [before[1], span[0]];
    const { opening, walls, material, mover } = room;
    const owner = opening.name === '' ? context.carcass.name : opening.name;
    const atFace = mover === null && walls.front === null && room.box.min[1] <= ROUNDING_MM;
    return {
      id: `${opening.id}/${form.role}-${i + 1}`,
      origin: opening.id,
      role: form.role,
      name: `${owner} ${form.role} ${i + 1}`.trim(),
      material,
      box: reaching(withSpan(room.box, axis, low, high), walls, housedSides(form, walls)),
      along: form.along,
      face: form.face,
      seat: 'dado',
      side: null,
      band: atFace ? faceBand(context.carcass.edgeBand) : null,
    };
  });

const askWords = (ask: PartAsk, part: DividedPart, name: string): string => {
  if (ask.rule.rule === 'fixed') return `${name} fixed ${mmWords(ask.rule.mm)}`;
  if (ask.rule.rule === 'share') return `${name} shares`;
  const { content } = part.opening;
  const what = content.kind === 'fitted' ? ` (${content.fitting.kind})` : '';
  return ask.need > ROUNDING_MM ? `${name} hugs ${mmWords(ask.need)}${what}` : `${name} hugs nothing`;
};

/** Names every rule of the division and what there is. */
const fightOf = (
  room: Room,
  content: Divided,
  asks: readonly PartAsk[],
  fight: { readonly need: number; readonly have: number },
): FitProblem => {
  const { part } = FORMS[content.along];
  const words = content.parts.flatMap((each, i) => {
    const ask = asks[i];
    return ask ? [askWords(ask, each, `${part} ${i + 1}`)] : [];
  });
  const because = [...words, `there are ${mmWords(Math.max(0, fight.have))}`];
  return rulesFight(room.opening.id, DIVISION_AXIS[content.along], fight.need, fight.have, because);
};

/** A divider that nothing holds: neither pair of sides of its form has its walls. */
const unheld = (room: Room, form: DividerForm): readonly FitProblem[] => {
  const held = form.heldBy.some((sides) => sides.every((side) => room.walls[side] !== null));
  const missing = form.heldBy.map((sides) => sides.filter((side) => room.walls[side] === null).join(' and '));
  return held ? [] : [badJoint(room.opening.id, [`${form.role} meets no panel at its ${missing.join(', nor ')}`])];
};

/** A divided room: its parts laid out by their rules, with the boards between them. */
export const divide = (room: Room, content: Divided, context: CarcassContext): FittingParts => {
  const form = FORMS[content.along];
  const axis = DIVISION_AXIS[content.along];
  const asks = partAsks(content, context, 'built', room.material);
  const length = room.box.max[axis] - room.box.min[axis];
  const wished = dividerThickness(content, room.material);
  const available = length - wished * (content.parts.length - 1);
  const { sizes, fight } = shareOut(asks, available);
  const gap = available > ROUNDING_MM ? wished : 0;
  const laid = gap === wished ? sizes : sizes.map(() => length / sizes.length);
  const spans = spansOf(laid, gap, room.box, axis);
  const boards = gap > 0 ? dividersOf(room, form, axis, spans, context).filter(({ box }) => hasVolume(box)) : [];
  const wallAt = (i: number): Walls[Side] => {
    const board = boards[i];
    return board ? { board, housing: room.housing } : null;
  };
  const inner = content.parts.map(({ opening }, i): Room => {
    const span = spans[i] ?? [room.box.min[axis], room.box.min[axis]];
    const walls: Walls = {
      ...room.walls,
      ...(i > 0 ? { [form.before]: wallAt(i - 1) } : {}),
      ...(i < content.parts.length - 1 ? { [form.after]: wallAt(i) } : {}),
    };
    const box = withSpan(room.box, axis, span[0], span[1]);
    return { ...room, opening, parent: room.opening.id, depth: room.depth + 1, box, walls };
  });
  return {
    ...NO_PARTS,
    assemblies: boards.length > 0 ? [{ assembly: room.assembly, mover: room.mover, boards }] : [],
    inner,
    problems: [
      ...(fight ? [fightOf(room, content, asks, fight)] : []),
      ...(boards.length > 0 ? unheld(room, form) : []),
    ],
  };
};
