import type { RuleId } from '../rule-ids.ts';
import { NO_WAY, type WayFinder } from './candidate.ts';
import { carcassWays, twoCarcassWays } from './carcass-ways.ts';
import { gearWays, roomWays, secondGearWays } from './gear-ways.ts';
import { anchorCountWays, anchorPlaceWays, anchorWays, backStopWays, gearHoldWays, latchWays } from './hold-ways.ts';
import { largerRoomWays, solvingWays } from './opening-ways.ts';
import { otherHingeWays, raiseWays, shorterSlideWays } from './travel-ways.ts';

const anyOf =
  (...finders: readonly WayFinder[]): WayFinder =>
  (finding, design) =>
    finders.flatMap((find) => find(finding, design));

const offTheVehicle = anyOf(gearWays, carcassWays);

/** What may clear the findings of each rule by an edit; many can only be cleared by a person's decision. */
export const WAYS: { readonly [Id in RuleId]: WayFinder } = {
  'cabinet-solves': solvingWays,
  'space-missing': NO_WAY,
  'start-values': NO_WAY,
  'survey-misread': NO_WAY,
  'survey-closure-error': NO_WAY,
  'survey-single-reading': NO_WAY,
  'ratings-contradict': NO_WAY,
  'body-in-space': offTheVehicle,
  'body-obstacle': offTheVehicle,
  'body-zone': offTheVehicle,
  'body-body': anyOf(gearWays, secondGearWays, twoCarcassWays),
  'moving-gap': NO_WAY,
  'carcass-gap': NO_WAY,
  'gear-in-room': anyOf(roomWays, largerRoomWays),
  'gear-unplaced': NO_WAY,
  'hatch-closed': offTheVehicle,
  'closure-swing': offTheVehicle,
  'low-roof': NO_WAY,
  'mover-travel': anyOf(shorterSlideWays, otherHingeWays, raiseWays),
  'mover-pairs': anyOf(otherHingeWays, shorterSlideWays),
  'working-triple': anyOf(otherHingeWays, shorterSlideWays),
  'hand-room': NO_WAY,
  'device-out': NO_WAY,
  'mount-off': NO_WAY,
  'mount-height': NO_WAY,
  'gear-out': gearWays,
  'first-due': NO_WAY,
  'carry-in': NO_WAY,
  payload: NO_WAY,
  'front-axle': NO_WAY,
  'rear-axle': NO_WAY,
  'side-to-side': NO_WAY,
  'front-unload': NO_WAY,
  'front-share': NO_WAY,
  stability: NO_WAY,
  'stability-loss': NO_WAY,
  'figures-missing': NO_WAY,
  disclosure: NO_WAY,
  'weigh-difference': NO_WAY,
  'anchor-count': anchorCountWays,
  'anchor-hold': anchorWays,
  'anchor-edge': anchorPlaceWays,
  'anchor-no-hole': anchorPlaceWays,
  'hold-unknown': NO_WAY,
  'latch-hold': latchWays,
  'back-stop': backStopWays,
  'gear-hold': gearHoldWays,
  'gear-needs-bracket': NO_WAY,
  'seat-back-load': NO_WAY,
  'slide-load': NO_WAY,
  'tray-leg': NO_WAY,
  'tray-tip': NO_WAY,
  'shelf-sag': NO_WAY,
  'drawer-bottom-sag': NO_WAY,
  'gas-spring': NO_WAY,
  lifting: NO_WAY,
  'heavy-gear': NO_WAY,
  'reach-far': NO_WAY,
  'control-height': NO_WAY,
  'reading-angle': NO_WAY,
  'head-clear': NO_WAY,
  'pull-height': NO_WAY,
  'see-in': NO_WAY,
  'write-height': NO_WAY,
  'mirror-view': NO_WAY,
  'rf-distance': NO_WAY,
  'battery-hours': NO_WAY,
  alternator: NO_WAY,
  'wire-fuse': NO_WAY,
  'wire-drop': NO_WAY,
  'bay-heat': NO_WAY,
  'power-unknown': NO_WAY,
  'part-too-small': NO_WAY,
  'part-too-big': NO_WAY,
};
