import { capsuleShape } from '../../../src/bodies/index.ts';
import { body, inspectScene, mass, node } from '../fixture.ts';
import { pieceOf } from './sliders.ts';
import { moving } from './vehicle.ts';

interface Lid {
  readonly kg: number;
  readonly middle: number;
  /** From the hinge to where a spring takes hold of the lid; its other end is so far forward of the hinge and below it. */
  readonly arm: number;
  readonly forward: number;
  readonly below: number;
}

/** A lid 600 long hung along its top at 600 up, on two gas springs, opened by a right angle to the rear. */
export const lidScene = ({ kg, middle, arm, forward, below }: Lid) => {
  const springs = [-100, 100].map((y) => ({
    id: `lid/spring-${y}`,
    shape: capsuleShape([forward, y, 600 - below], [0, y, 600 - arm], 1),
  }));
  return inspectScene({
    survey: null,
    fitout: {
      movers: [moving('lid', { kind: 'turn', point: [0, 0, 600], axis: [0, 1, 0], travelRad: Math.PI / 2 })],
      masses: [mass('load', kg, [0, 0, 600 - middle], { kind: 'gear', mover: 'lid' })],
      bodies: [
        body({ id: 'lid/leaf', origin: node('lid'), mover: 'lid', min: [-6, -300, 0], max: [6, 300, 600] }),
        ...springs.map(({ id, shape }) => ({
          ...body({ id, origin: node('lid'), kind: 'hardware', min: [0, 0, 0], max: [1, 1, 1] }),
          shape,
        })),
      ],
      hardware: springs.map(({ id }) => pieceOf('spring', 'gas-spring-200', { id, origin: node('lid'), mover: null })),
    },
  });
};
