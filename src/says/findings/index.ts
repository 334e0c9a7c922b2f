import type { RuleId } from '../../inspection/index.ts';
import type { SayRule } from '../words.ts';
import { sayDeviceOut, sayFirstDue, sayGearOut, sayHandRoom } from './access.ts';
import {
  sayBodyBody,
  sayBodyInSpace,
  sayBodyObstacle,
  sayBodyZone,
  sayCarcassGap,
  sayHatchClosed,
  sayMovingGap,
} from './fit.ts';
import { sayGearInRoom, sayGearUnplaced } from './gear.ts';
import {
  sayAnchorCount,
  sayAnchorEdge,
  sayAnchorHold,
  sayAnchorNoHole,
  sayBackStop,
  sayGearHold,
  sayGearNeedsBracket,
  sayHoldUnknown,
  sayLatchHold,
  saySeatBackLoad,
} from './hold.ts';
import {
  sayDisclosure,
  sayFiguresMissing,
  sayFrontAxle,
  sayFrontShare,
  sayFrontUnload,
  sayPayload,
  sayRearAxle,
  saySideToSide,
  sayStability,
  sayStabilityLoss,
} from './loads.ts';
import { sayCabinetSolves, sayPartTooBig, sayPartTooSmall } from './making.ts';
import { sayRatingsContradict } from './ratings.ts';
import {
  saySpaceMissing,
  sayStartValues,
  saySurveyClosureError,
  saySurveyMisread,
  saySurveySingleReading,
} from './survey.ts';
import { sayClosureSwing, sayLowRoof, sayMoverPairs, sayMoverTravel, sayWorkingTriple } from './travel.ts';

/** The words of every rule: a new rule asks for its words here. */
export const FINDING_WORDS: { readonly [Id in RuleId]: SayRule } = {
  'cabinet-solves': sayCabinetSolves,
  'space-missing': saySpaceMissing,
  'start-values': sayStartValues,
  'survey-misread': saySurveyMisread,
  'survey-closure-error': saySurveyClosureError,
  'survey-single-reading': saySurveySingleReading,
  'ratings-contradict': sayRatingsContradict,
  'body-in-space': sayBodyInSpace,
  'body-obstacle': sayBodyObstacle,
  'body-zone': sayBodyZone,
  'body-body': sayBodyBody,
  'moving-gap': sayMovingGap,
  'carcass-gap': sayCarcassGap,
  'gear-in-room': sayGearInRoom,
  'gear-unplaced': sayGearUnplaced,
  'hatch-closed': sayHatchClosed,
  'closure-swing': sayClosureSwing,
  'low-roof': sayLowRoof,
  'mover-travel': sayMoverTravel,
  'mover-pairs': sayMoverPairs,
  'working-triple': sayWorkingTriple,
  'hand-room': sayHandRoom,
  'device-out': sayDeviceOut,
  'gear-out': sayGearOut,
  'first-due': sayFirstDue,
  payload: sayPayload,
  'front-axle': sayFrontAxle,
  'rear-axle': sayRearAxle,
  'side-to-side': saySideToSide,
  'front-unload': sayFrontUnload,
  'front-share': sayFrontShare,
  stability: sayStability,
  'stability-loss': sayStabilityLoss,
  'figures-missing': sayFiguresMissing,
  disclosure: sayDisclosure,
  'anchor-count': sayAnchorCount,
  'anchor-hold': sayAnchorHold,
  'anchor-edge': sayAnchorEdge,
  'anchor-no-hole': sayAnchorNoHole,
  'hold-unknown': sayHoldUnknown,
  'latch-hold': sayLatchHold,
  'back-stop': sayBackStop,
  'gear-hold': sayGearHold,
  'gear-needs-bracket': sayGearNeedsBracket,
  'seat-back-load': saySeatBackLoad,
  'part-too-small': sayPartTooSmall,
  'part-too-big': sayPartTooBig,
};
