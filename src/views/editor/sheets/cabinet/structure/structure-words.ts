import { formatLengthUnit, type LengthUnits } from '../../../../../base/index.ts';
import type { Brace, Carcass, Chamfer, ChamferEdge, Chase, Wheelhouse } from '../../../../../design/index.ts';
import type { FitOut } from '../../../../../fitout/index.ts';

export const EDGE_WORDS: Readonly<Record<ChamferEdge, string>> = {
  'top-left': 'top left',
  'top-right': 'top right',
  'bottom-left': 'bottom left',
  'bottom-right': 'bottom right',
  'back-left': 'left, at the back',
  'back-right': 'right, at the back',
  'top-back': 'top, at the back',
  'bottom-back': 'bottom, at the back',
};

export const PANEL_WORDS: Readonly<Record<Chase['panel'], string>> = {
  left: 'left side',
  right: 'right side',
  top: 'top',
  bottom: 'bottom',
  back: 'back',
};

export const SIDE_WORDS: Readonly<Record<Wheelhouse['side'], string>> = {
  left: 'left side',
  right: 'right side',
  back: 'back',
};

export const chamferWords = ({ corner }: Chamfer): string => `Chamfer, ${EDGE_WORDS[corner]}`;
export const chaseWords = ({ name, panel }: Chase): string =>
  `${name === '' ? 'Wiring chase' : name}, ${PANEL_WORDS[panel]}`;
export const wheelhouseWords = ({ side }: Wheelhouse): string => `Wheelhouse, ${SIDE_WORDS[side]}`;

const DEGREES = 180 / Math.PI;

/** What a chamfer came to: the size of its panel and the tilts that its long edges are sawn at. */
export const chamferResult = (fitOut: FitOut, { id }: Chamfer, units: LengthUnits): string => {
  const panel = fitOut.panels.find((own) => own.id === `${id}/panel`);
  if (!panel) return 'not cut';
  const tilts = [...new Set((panel.bevels ?? []).map(({ tiltRad }) => (tiltRad * DEGREES).toFixed(1)))];
  const size = `${formatLengthUnit(panel.length, units)} × ${formatLengthUnit(panel.width, units)}`;
  return `${size}, sawn at ${tilts.map((tilt) => `${tilt}°`).join(' and ')}`;
};

const CHASE_ROLES: Readonly<Record<Chase['panel'], string>> = {
  left: 'side-left',
  right: 'side-right',
  top: 'top',
  bottom: 'bottom',
  back: 'back',
};

/** What a chase came to: its size, or that no panel takes it. */
export const chaseResult = (fitOut: FitOut, carcass: Carcass, chase: Chase, units: LengthUnits): string => {
  const panel = fitOut.panels.find((own) => own.id === `${carcass.id}/${CHASE_ROLES[chase.panel]}`);
  const why = chase.name === '' ? 'wiring chase' : chase.name;
  const cut = panel?.cuts.some((own) => own.kind === 'cutout' && own.why === why) ?? false;
  const [long, wide] = chase.sizeMm;
  return cut ? `${formatLengthUnit(long, units)} × ${formatLengthUnit(wide, units)}` : 'not cut';
};

/** What a wheelhouse came to: the clear room, and how many boards line it. */
export const wheelhouseResult = (fitOut: FitOut, { id, inMm, upMm }: Wheelhouse, units: LengthUnits): string => {
  const boards = fitOut.panels.filter((own) => own.id.startsWith(`${id}/`)).length;
  const size = `${formatLengthUnit(inMm, units)} in × ${formatLengthUnit(upMm, units)} up`;
  return boards === 0 ? 'not cut' : `${size}, lined with ${boards} boards`;
};

/** What a brace came to: the length of its bar and its bolts, that they do not hold, or that it joins nothing. */
export const braceResult = (fitOut: FitOut, { id }: Brace, units: LengthUnits): string => {
  const brace = fitOut.braces.find((own) => own.id === id);
  if (!brace) return 'joins nothing';
  const length = `${formatLengthUnit(brace.lengthMm, units)} of bar`;
  return brace.sound ? `${length}, ${brace.bolts.length} bolts` : `${length}, holds nothing: see what is wrong`;
};
