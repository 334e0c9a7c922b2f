import type { LengthUnits, Vec2 } from '../../base/index.ts';
import type { Body, FitOut, SolvedCarcass } from '../../fitout/index.ts';
import type { Marks } from '../marks.ts';
import type { Drawing, Shape } from './drawing.ts';
import { boardMarks, type FaceOnPaper, openingWords } from './face-labels.ts';
import { type OpeningChain, openingChains } from './opening-chains.ts';
import { sizeText } from './paper-words.ts';
import { type Sight, silhouetteOf } from './projection.ts';
import { line, onSheet } from './shapes.ts';
import type { TitleFoot } from './title-foot.ts';
import { dimension, type Surround, viewSheet } from './view-sheet.ts';
import { type Segment, visibleEdges } from './visible-edges.ts';
import { writtenAreas } from './written-areas.ts';

const CHAIN_OFF = 7;
const OVERALL_OFF = 15;
const INSIDE_OFF = 4;
const SURROUND: Surround = { left: 21, right: 13, bottom: 21, top: 13 };

/** Standing before the open face of a carcass. */
export const faceSight = ({ pose }: SolvedCarcass): Sight => ({
  origin: pose.at,
  right: pose.turn[0],
  away: pose.turn[1],
  up: pose.turn[2],
});

/** What is built: boards, devices and hardware; not the gear, and not the air that plugs need. */
const BUILT: readonly Body['kind'][] = ['panel', 'device', 'hardware'];
export const isBuilt = ({ kind }: Body): boolean => BUILT.includes(kind);

const chainShapes = (chain: OpeningChain, { carcass, move, units }: FaceOnPaper): readonly Shape[] => {
  const across = chain.axis === 'across';
  const outer = across ? carcass.size[2] : carcass.size[0];
  const on = (along: number, other: number): Vec2 => move(across ? [along, other] : [other, along]);
  const lineOf = (other: number, off: number): number => on(0, other)[across ? 1 : 0] + off;
  const lineAt =
    chain.side === 'low'
      ? lineOf(0, -CHAIN_OFF)
      : chain.side === 'high'
        ? lineOf(outer, CHAIN_OFF)
        : lineOf(chain.edge, INSIDE_OFF);
  const border = chain.side === 'low' ? 0 : chain.side === 'high' ? outer : chain.edge;
  return chain.spans.map(([low, high]) =>
    dimension(chain.axis, on(low, border), on(high, border), lineAt, sizeText(high - low, units)),
  );
};

const overallShapes = ({ carcass, move, units }: FaceOnPaper): readonly Shape[] => {
  const [width, , height] = carcass.size;
  const low = move([0, 0]);
  return [
    dimension('across', low, move([width, 0]), low[1] - OVERALL_OFF, sizeText(width, units)),
    dimension('up', low, move([0, height]), low[0] - OVERALL_OFF, sizeText(height, units)),
  ];
};

export interface FaceViewInput {
  readonly fitout: FitOut;
  readonly carcass: SolvedCarcass;
  readonly marks: Marks;
  readonly designTitle: string;
  readonly customer: string;
  /** Letter, hash and who approved it. */
  readonly signed: string;
  readonly foot: TitleFoot;
  readonly units: LengthUnits;
}

/** The open face of a carcass: boards, devices, names and clear sizes of the openings, dimension chains, marks. */
export const faceView = (input: FaceViewInput): Drawing => {
  const { fitout, carcass, marks, units } = input;
  const sight = faceSight(carcass);
  const built = fitout.bodies.filter((body) => body.carcass === carcass.id && isBuilt(body));
  const silhouettes = built.map((body) => silhouetteOf(body, body.shape, sight));
  const openings = fitout.openings.filter((opening) => opening.carcass === carcass.id);
  const words = {
    designTitle: input.designTitle,
    customer: input.customer,
    signed: input.signed,
    foot: input.foot,
    view: `face of ${carcass.name === '' ? carcass.id : carcass.name}`,
    seen: 'from before the open face, all closed',
    mark: marks.letterOf.get(carcass.id) ?? '',
  };
  return viewSheet(words, [carcass.size[0], carcass.size[2]], SURROUND, units, (scale, at) => {
    const view: FaceOnPaper = { carcass, move: onSheet(scale, at), scale, units };
    const lines = visibleEdges(silhouettes).map(({ from, to }): Segment => [view.move(from), view.move(to)]);
    const sizes = [...overallShapes(view), ...openingChains(openings).flatMap((chain) => chainShapes(chain, view))];
    const names = openingWords(openings, lines, view, writtenAreas(sizes));
    return [
      ...lines.map(([from, to]) => line('seen', from, to)),
      ...sizes,
      ...names,
      ...boardMarks(silhouettes, marks, lines, view, writtenAreas([...sizes, ...names])),
    ];
  });
};
