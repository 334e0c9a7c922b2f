import type { Vec3 } from '../../../src/base/index.ts';
import type { Survey } from '../../../src/design/index.ts';
import type { FitOut } from '../../../src/fitout/index.ts';
import { BOX_ROOM, boxSurvey, HATCH, surveyOf, wall } from '../../envelope/surveys.ts';
import { type BodyRow, body, inspectScene, node, vehicleWith } from '../fixture.ts';

/** An obstacle as a box, as a survey holds it. */
export const obstacle = (id: string, kind: string, min: Vec3, max: Vec3, movesWith: string | null = null) => ({
  id,
  name: id,
  kind,
  solid: { shape: 'box', min, max },
  movesWith,
});

/** A zone as a box, as a survey holds it. */
export const zone = (id: string, rule: string, min: Vec3, max: Vec3) => ({
  id,
  name: id,
  rule,
  solid: { shape: 'box', min, max },
});

export const inspectBoxes = (rows: readonly BodyRow[], survey: Survey = boxSurvey()) =>
  inspectScene({ survey, fitout: { bodies: rows.map(body) } });

/** A room of boards with its walls so far from the middle. */
export const roomTo = (wallMm: number): Survey =>
  surveyOf([0, BOX_ROOM.depth].map((xMm) => ({ xMm, left: wall(wallMm, BOX_ROOM.height) })));

/** A box between 300 and 900 forward; obstacles and zones are put around it. */
export const BLOCK: BodyRow = { id: 'block', min: [300, -300, 0], max: [900, 300, 600] };

/** The box room with the hatch, a plain mover of its own name that slides to the rear. */
export const hatched = boxSurvey({ closures: [HATCH] });

export const moving = (id: string, motion: FitOut['movers'][number]['motion']): FitOut['movers'][number] => ({
  id,
  origin: node(id),
  name: id,
  motion,
  carriedBy: null,
  rests: [
    { name: 'stowed', share: 0 },
    { name: 'open', share: 1 },
  ],
});
export const sliding = (id: string, travel = 400) => moving(id, { kind: 'slide', direction: [-1, 0, 0], travel });

/** A beacon on the roof, its underside so high, behind the hinge of a hatch. */
export const beaconScene = (low: number, hatch: object = HATCH) =>
  inspectScene({
    survey: boxSurvey({ closures: [hatch] }),
    fitout: {
      bodies: [body({ id: 'beacon', carcass: null, kind: 'device', min: [-300, -50, low], max: [-200, 50, low + 60] })],
    },
  });

/** A hatch that swings up under the roof of an old station. */
export const roofScene = (roofMm: number, floorAboveGroundMm = 800, hatch: object = HATCH) =>
  inspectScene({
    survey: boxSurvey({ closures: [hatch] }),
    design: {
      vehicle: vehicleWith({ floorAboveGroundMm }),
      houseRules: [{ rule: 'roof-height-station', value: roofMm, who: 'A. Shop', why: 'the old station' }],
    },
  });
