import type { Vec3 } from '../../../src/base/index.ts';
import type { Design } from '../../../src/design/index.ts';
import type { FitOut } from '../../../src/fitout/index.ts';
import { body, inspectScene, mass, node } from '../fixture.ts';
import { sliding } from './vehicle.ts';

type Piece = FitOut['hardware'][number];

/** A piece of the mover `box` as the pick list holds it. */
export const pieceOf = (role: string, item: string, rest: Partial<Piece> = {}): Piece => ({
  id: `box/${role}`,
  origin: node('box'),
  carcass: node('carcass-1'),
  from: 'hardware',
  item,
  name: item,
  quantity: 1,
  lengthMm: null,
  at: null,
  mover: 'box',
  ...rest,
});

interface Slider {
  readonly kg: number;
  readonly travel?: number;
  /** Of its box: along the travel, across, up. Its front stands at the face, x = 0. */
  readonly size?: Vec3;
  /** Middle of what it weighs, behind the front. */
  readonly middle?: number;
  readonly hardware?: readonly Piece[];
  readonly holdTo?: Design['holdTo'];
  readonly rest?: Partial<FitOut>;
}

/** A drawer or tray `box` made by hand: one box that slides to the rear with all that it weighs. */
export const sliderScene = ({
  kg,
  travel = 500,
  size = [500, 500, 200],
  middle = size[0] / 2,
  hardware = [],
  holdTo = ['crew-area'],
  rest = {},
}: Slider) => {
  const [deep, wide, high] = size;
  const { masses = [], ...more } = rest;
  return inspectScene({
    survey: null,
    design: { holdTo },
    fitout: {
      bodies: [
        body({
          id: 'box/panel',
          origin: node('box'),
          mover: 'box',
          min: [0, -wide / 2, 20],
          max: [deep, wide / 2, 20 + high],
        }),
      ],
      movers: [sliding('box', travel)],
      masses: [mass('load', kg, [middle, 0, 100], { kind: 'gear', mover: 'box' }), ...masses],
      hardware,
      ...more,
    },
  });
};
