import type { Vec3 } from '../../../src/base/index.ts';
import { boxSurvey, HATCH } from '../../envelope/surveys.ts';
import { body, inspectScene, node } from '../fixture.ts';
import { obstacle, sliding } from './vehicle.ts';

/** A drawer whose box begins at a depth and a height and slides out over the sill, where a striker stands. */
export const strikerScene = (lip: { readonly x: number; readonly z: number }, travel: number, striker: Vec3) => {
  const [x, y, z] = striker;
  return inspectScene({
    survey: boxSurvey({
      closures: [{ ...HATCH, hinge: { from: [-40, -550, 900], to: [-40, 550, 900] } }],
      obstacles: [obstacle('striker', 'latch', [x - 40, -y, 0], [x, y, z])],
    }),
    fitout: {
      bodies: [
        body({ id: 'box', origin: node('box'), mover: 'box', min: [lip.x, -200, lip.z], max: [lip.x + 600, 200, 200] }),
      ],
      movers: [sliding('box', travel)],
    },
  });
};
