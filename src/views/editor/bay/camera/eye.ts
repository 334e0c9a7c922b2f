import { type CameraState, cameraBetween, eased } from '../../../camera-state.ts';

/** How long a flight takes. */
const FLIGHT_MS = 200;

/** The eye of the bay as it moves: steps at once, or flies. It knows no clock; the frames tell it the time. */
export interface Eye {
  readonly state: () => CameraState;
  /** Where it stands once it has landed. */
  readonly goal: () => CameraState;
  readonly stepTo: (camera: CameraState) => void;
  readonly flyTo: (camera: CameraState, gently: boolean) => void;
  /** Moves on to the time of a frame; true while a flight is under way. */
  readonly advance: (nowMs: number) => boolean;
}

export const createEye = (start: CameraState): Eye => {
  let state = start;
  let flight: { readonly from: CameraState; readonly to: CameraState; since: number | null } | null = null;
  return {
    state: () => state,
    goal: () => flight?.to ?? state,
    stepTo: (camera) => {
      flight = null;
      state = camera;
    },
    flyTo: (camera, gently) => {
      flight = gently ? { from: state, to: camera, since: null } : null;
      if (!gently) state = camera;
    },
    advance: (nowMs) => {
      if (!flight) return false;
      flight.since ??= nowMs;
      const share = (nowMs - flight.since) / FLIGHT_MS;
      state = cameraBetween(flight.from, flight.to, eased(share));
      if (share >= 1) {
        state = flight.to;
        flight = null;
      }
      return flight !== null;
    },
  };
};
