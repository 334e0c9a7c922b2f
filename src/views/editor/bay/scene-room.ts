import { type Box, boxAround, boxCorners, placed } from '../../../base/index.ts';
import type { CargoSpace } from '../../../envelope/index.ts';
import type { FitOut } from '../../../fitout/index.ts';

/** Stands in for a cargo space while there is neither a survey nor a cabinet: about that of a large utility vehicle. */
const USUAL_ROOM: Box = { min: [0, -640, 0], max: [1150, 640, 900] };

/** What the eye looks at: the cargo space, or the cabinet while there is none. */
export const sceneRoom = (space: CargoSpace | null, carcasses: FitOut['carcasses']): Box => {
  if (space) return space.bounds;
  const corners = carcasses.flatMap(({ pose, size }) =>
    boxCorners({ min: [0, 0, 0], max: size }).map((corner) => placed(pose, corner)),
  );
  return corners.length > 0 ? boxAround([...corners, ...boxCorners(USUAL_ROOM)]) : USUAL_ROOM;
};
