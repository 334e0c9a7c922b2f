import type { Job } from '../job.ts';
import { notedRules } from '../noted-rules.ts';
import { RULE_IDS, type RuleId } from '../rule-ids.ts';
import type { Verdict } from '../verdict.ts';
import { anchorCount, anchorEdge, anchorHold, anchorNoHole, holdUnknown } from './anchors.ts';
import { frontShare, frontUnload, sideToSide, stability, stabilityLoss } from './balance.ts';
import { bodyBody } from './body-body.ts';
import { bodyInSpace } from './body-in-space.ts';
import { bodyObstacle } from './body-obstacle.ts';
import { bodyZone } from './body-zone.ts';
import { bracketReach } from './bracket-reach.ts';
import { cabinetSolves } from './cabinet-solves.ts';
import { carcassGap } from './carcass-gap.ts';
import { carryIn } from './carry-in.ts';
import { closureSwing, lowRoof } from './closure-swing.ts';
import { deviceOut } from './device-out.ts';
import { disclosure } from './disclosure.ts';
import { figuresMissing } from './figures-missing.ts';
import { gasSpring } from './gas-springs.ts';
import { gearHold, gearNeedsBracket } from './gear-hold.ts';
import { gearInRoom } from './gear-in-room.ts';
import { firstDue, gearOut } from './gear-to-hand.ts';
import { gearUnplaced } from './gear-unplaced.ts';
import { handRoom } from './hand-room.ts';
import { hatchClosed } from './hatch-closed.ts';
import { headClear, pullHeight, seeIn, writeHeight } from './heights.ts';
import { backStop, latchHold } from './latches.ts';
import { mirrorView } from './mirror-view.ts';
import { mountHeight, mountOff } from './mounts.ts';
import { moverPairs } from './mover-pairs.ts';
import { moverTravel } from './mover-travel.ts';
import { movingGap } from './moving-gap.ts';
import { partTooBig, partTooSmall } from './part-size.ts';
import { alternator, batteryHours, bayHeat, powerUnknown, wireAndFuse } from './power.ts';
import { frontAxle, payload, rearAxle } from './ratings.ts';
import { ratingsContradict } from './ratings-contradict.ts';
import { controls, heavyGear, lifting, reachFar } from './reach.ts';
import { rfDistance } from './rf-distance.ts';
import { seatBackLoad } from './seat-back.ts';
import { drawerBottoms, shelfSags } from './shelves.ts';
import { slideLoad, trayLeg, trayTip } from './slides.ts';
import { surveyClosureError, surveyMisread, surveySingleReading } from './survey-readings.ts';
import { spaceMissing, startValues } from './survey-state.ts';
import { weighDifference } from './weigh-difference.ts';
import { workingTriple } from './working-triple.ts';

/** One check. It looks at the job and at nothing else, and says what it found and measured. */
export type Rule = (job: Job) => Verdict;

/** What a function that judges two things at once says of one of them. */
const only =
  (id: RuleId, rule: Rule): Rule =>
  (job) => {
    const { findings, measured, pairs } = rule(job);
    return {
      findings: findings.filter((finding) => finding.rule === id),
      measured: measured.filter((taken) => taken.rule === id),
      pairs,
    };
  };

/** Every rule by its id: a new id asks here for its function, and in the room `says` for its words. */
export const RULES: { readonly [Id in RuleId]: Rule } = {
  'cabinet-solves': cabinetSolves,
  'space-missing': spaceMissing,
  'start-values': startValues,
  'survey-misread': surveyMisread,
  'survey-closure-error': surveyClosureError,
  'survey-single-reading': surveySingleReading,
  'ratings-contradict': ratingsContradict,
  'body-in-space': bodyInSpace,
  'body-obstacle': bodyObstacle,
  'body-zone': bodyZone,
  'body-body': bodyBody,
  'moving-gap': movingGap,
  'carcass-gap': carcassGap,
  'gear-in-room': gearInRoom,
  'gear-unplaced': gearUnplaced,
  'hatch-closed': hatchClosed,
  'closure-swing': closureSwing,
  'low-roof': lowRoof,
  'mover-travel': moverTravel,
  'mover-pairs': moverPairs,
  'working-triple': workingTriple,
  'hand-room': handRoom,
  'device-out': deviceOut,
  'mount-off': mountOff,
  'mount-height': mountHeight,
  'gear-out': gearOut,
  'first-due': firstDue,
  'carry-in': carryIn,
  payload,
  'front-axle': frontAxle,
  'rear-axle': rearAxle,
  'side-to-side': sideToSide,
  'front-unload': frontUnload,
  'front-share': frontShare,
  stability,
  'stability-loss': stabilityLoss,
  'figures-missing': figuresMissing,
  disclosure,
  'weigh-difference': weighDifference,
  'anchor-count': anchorCount,
  'anchor-hold': anchorHold,
  'anchor-edge': anchorEdge,
  'anchor-no-hole': anchorNoHole,
  'bracket-reach': bracketReach,
  'hold-unknown': holdUnknown,
  'latch-hold': latchHold,
  'back-stop': backStop,
  'gear-hold': gearHold,
  'gear-needs-bracket': gearNeedsBracket,
  'seat-back-load': seatBackLoad,
  'slide-load': slideLoad,
  'tray-leg': trayLeg,
  'tray-tip': trayTip,
  'shelf-sag': shelfSags,
  'drawer-bottom-sag': drawerBottoms,
  'gas-spring': gasSpring,
  lifting,
  'heavy-gear': heavyGear,
  'reach-far': reachFar,
  'control-height': only('control-height', controls),
  'reading-angle': only('reading-angle', controls),
  'head-clear': headClear,
  'pull-height': pullHeight,
  'see-in': seeIn,
  'write-height': writeHeight,
  'mirror-view': mirrorView,
  'rf-distance': rfDistance,
  'battery-hours': batteryHours,
  alternator,
  'wire-fuse': only('wire-fuse', wireAndFuse),
  'wire-drop': only('wire-drop', wireAndFuse),
  'bay-heat': bayHeat,
  'power-unknown': powerUnknown,
  'part-too-small': partTooSmall,
  'part-too-big': partTooBig,
};

export interface RuleRun {
  readonly rule: RuleId;
  readonly verdict: Verdict;
  /** House rules that it looked up, each once, in the order met. */
  readonly consulted: readonly string[];
}

/** The verdict of every rule, in the order of the rule ids. */
export const runRules = (job: Job): readonly RuleRun[] =>
  RULE_IDS.map((rule) => {
    const { rules, met } = notedRules(job.rules);
    const verdict = RULES[rule]({ ...job, rules });
    return { rule, verdict, consulted: [...met] };
  });
