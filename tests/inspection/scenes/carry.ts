import type { FitOut } from '../../../src/fitout/index.ts';
import { type CarryIn, inspect, planCarryIn } from '../../../src/inspection/index.ts';
import { boxSurvey } from '../../envelope/surveys.ts';
import { body, catalog, designWith, fitOut, node, rules, spaceOf } from '../fixture.ts';

type Corner = readonly [number, number, number];
type Boxes = Readonly<Record<string, readonly [Corner, Corner]>>;

/** A carcass of 40 kg of which only its bodies have a size. */
export const carriedCarcass = (id: string): FitOut['carcasses'][number] => ({
  id: node(id),
  name: id,
  pose: {
    turn: [
      [1, 0, 0],
      [0, 1, 0],
      [0, 0, 1],
    ],
    at: [0, 0, 0],
  },
  size: [1, 1, 1],
  massKg: 40,
});

const carrying = (boxes: Boxes, half: number, high: number, rest: Record<string, unknown>) => {
  const survey = boxSurvey({
    aperture: [
      [-half, 0],
      [half, 0],
      [half, high],
      [-half, high],
    ],
    ...rest,
  });
  const fitout = fitOut({
    carcasses: Object.keys(boxes).map(carriedCarcass),
    bodies: Object.entries(boxes).map(([id, [min, max]]) => body({ id: `${id}/box`, carcass: node(id), min, max })),
  });
  return { design: designWith({ survey }), space: spaceOf(survey), fitout, catalog, rules };
};

/** Carcasses as plain boxes in the box room, carried through an opening as wide and high as given. */
export const carried = (
  boxes: Boxes,
  half: number,
  high: number,
  rest: Record<string, unknown> = {},
  budget = 400,
): CarryIn => planCarryIn(carrying(boxes, half, high, rest), budget);

/** One carcass 500 high and 600 deep, so wide, through an opening 700 high, so wide; inspected with the way found. */
export const carryScene = (openingWide: number, carcassWide: number) => {
  const box: Boxes = {
    box: [
      [60, -carcassWide / 2, 0],
      [660, carcassWide / 2, 500],
    ],
  };
  const input = carrying(box, openingWide / 2, 700, {});
  return inspect({ ...input, carry: planCarryIn(input, 60) });
};
