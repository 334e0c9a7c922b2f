import type { RuleId } from '../inspection/index.ts';

/** What each rule checks, for the list of what was looked at. */
export const RULE_NAMES: { readonly [Id in RuleId]: string } = {
  'cabinet-solves': 'sizes of the cabinet hold together',
  'space-missing': 'there is a cargo space',
  'start-values': 'the vehicle was measured',
  'body-in-space': 'clear of the trim',
  'body-obstacle': 'clear of obstacles',
  'body-zone': 'clear of zones',
  'body-body': 'nothing in the same place',
  'moving-gap': 'moving parts apart',
  'carcass-gap': 'carcasses apart',
  'gear-in-room': 'gear fits where it stands',
  'gear-unplaced': 'all gear has a place',
  'hatch-closed': 'closures close',
  payload: 'gross rating',
  'front-axle': 'front axle rating',
  'rear-axle': 'rear axle rating',
  'side-to-side': 'left against right',
  'front-unload': 'front axle keeps its load',
  'front-share': 'share of the front axle',
  stability: 'static stability factor',
  'stability-loss': 'loss of stability',
  'figures-missing': 'figures of the vehicle',
  disclosure: 'disclosure of added mass',
  'part-too-small': 'parts large enough for the saw',
  'part-too-big': 'parts within the sheet',
};
