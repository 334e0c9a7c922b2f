import type { HouseRule } from './house.ts';
import {
  coreImportsComputeOnly,
  coreIsRepeatable,
  everyTestRuns,
  nothingLeftForLater,
  smallnessHasNames,
} from './quiet.ts';
import {
  doorsAreHeaded,
  filesStandInRooms,
  importsFlowOneWay,
  noImportCycles,
  nothingOutsideButAssets,
  roomsEnteredAtDoors,
  viewsKeepApart,
} from './rooms.ts';
import {
  dependenciesArePinned,
  dependenciesHaveReasons,
  filesStayShort,
  noMachinePaths,
  noPackageHosts,
} from './tidy.ts';

/** Every rule of the house by name. */
export const HOUSE_RULES = {
  filesStandInRooms,
  importsFlowOneWay,
  roomsEnteredAtDoors,
  nothingOutsideButAssets,
  viewsKeepApart,
  doorsAreHeaded,
  noImportCycles,
  coreImportsComputeOnly,
  coreIsRepeatable,
  smallnessHasNames,
  everyTestRuns,
  nothingLeftForLater,
  filesStayShort,
  noMachinePaths,
  noPackageHosts,
  dependenciesArePinned,
  dependenciesHaveReasons,
} as const satisfies Record<string, HouseRule>;

export type HouseRuleName = keyof typeof HOUSE_RULES;
export const HOUSE_RULE_NAMES = Object.keys(HOUSE_RULES) as readonly HouseRuleName[];
