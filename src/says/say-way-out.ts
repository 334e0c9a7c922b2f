import type { LengthUnits } from '../base/index.ts';
import { type Finding, WAY_KINDS, type WayKind, type WayOut } from '../inspection/index.ts';
import { sayAmount } from './amounts.ts';
import { type Speech, sentence, speechFor } from './words.ts';

type Facts = WayOut['facts'];
type SayWay = (facts: Facts, speech: Speech) => string;

const text = (facts: Facts, key: string): string => String(facts[key] ?? '');
const mm = (facts: Facts): number => Number(facts.mm ?? 0);

/** Which way a shift goes, by its axis and sign. Vehicle axes: x forward, y left, z up. Room axes as the viewer sees. */
const TOWARDS: Readonly<Record<string, readonly [less: string, more: string]>> = {
  x: ['rearward', 'forward'],
  y: ['to the right', 'to the left'],
  z: ['down', 'up'],
  across: ['to the left in its opening', 'to the right in its opening'],
  deep: ['towards the face', 'deeper in'],
  up: ['down', 'up'],
};

const towards = (facts: Facts): string => {
  const [less, more] = TOWARDS[text(facts, 'axis')] ?? ['', ''];
  return mm(facts) < 0 ? less : more;
};

const SMALLER: Readonly<Record<string, string>> = { width: 'narrower', height: 'lower', depth: 'shallower' };
const LARGER: Readonly<Record<string, string>> = { width: 'wider', height: 'higher', depth: 'deeper' };

const STANCE_WORDS: Readonly<Record<string, string>> = {
  upright: 'upright',
  'on-side': 'on its side',
  'on-back': 'on its back',
};

const by = (facts: Facts, speech: Speech): string => speech.length(Math.abs(mm(facts)));

/** Pieces that ways out fit, in the words of the shop. */
const PIECE_WORDS: Readonly<Record<string, string>> = {
  'backing-plate-50': 'plates 50 × 50 mm',
  'backing-plate-80': 'plates 80 × 80 mm',
  'bolt-m10x50': 'M10 bolts',
  'bolt-m12x60': 'M12 bolts',
  'latch-slam': 'a slam latch',
  'latch-paddle': 'a paddle latch',
  'latch-rotary': 'a rotary latch',
  'latch-two-point-bar': 'a two-point latch with through bars',
  'stop-angle-18': 'a pair of back stops',
  'net-large': 'a large net',
  'strap-ratchet-25': 'a ratchet strap',
  'strap-quick-50': 'a 50 mm quick-release strap',
};

const piece = (facts: Facts): string => PIECE_WORDS[text(facts, 'item')] ?? text(facts, 'item');

const fitAnchors: Readonly<Record<string, (facts: Facts, carcass: string) => string>> = {
  through: (_facts, carcass) => `bolt ${carcass} through to nuts behind plates instead of inserts`,
  plate: (facts, carcass) => `put ${piece(facts)} behind the anchors of ${carcass}`,
  bond: (_facts, carcass) => `bond the plates behind the anchors of ${carcass} to the sheet`,
  proud: (_facts, carcass) => `leave the bolt heads proud in ${carcass} and bond the plates behind the sheet`,
  'proud-bolt': (facts, carcass) =>
    `bolt ${carcass} down with ${piece(facts)}, heads proud, through plates bonded to the sheet`,
  washer: (facts, carcass) => `put ${piece(facts)} under the heads in ${carcass}`,
  bolt: (facts, carcass) => `bolt ${carcass} down with ${piece(facts)}`,
};

const WAYS: { readonly [Kind in WayKind]: SayWay } = {
  'move-gear': (facts, speech) =>
    text(facts, 'axis') === 'corner'
      ? `move ${text(facts, 'gear')} into the near corner of its opening`
      : `move ${text(facts, 'gear')} ${by(facts, speech)} ${towards(facts)}`,
  'turn-gear': (facts) => {
    const stance = STANCE_WORDS[text(facts, 'stance')] ?? '';
    return `turn ${text(facts, 'gear')}: ${stance}, at ${text(facts, 'turnDeg')}°`;
  },
  'fit-piece': (facts, speech) => `fit ${piece(facts)} to ${speech.name(text(facts, 'opening'))}`,
  'fit-anchors': (facts, speech) =>
    fitAnchors[text(facts, 'how')]?.(facts, speech.name(text(facts, 'carcass'))) ?? 'change the anchors',
  'add-anchors': (facts, speech) =>
    mm(facts) === 0
      ? `bolt ${speech.name(text(facts, 'carcass'))} down at its ${text(facts, 'count')} corners`
      : `add ${text(facts, 'count')} anchors to ${speech.name(text(facts, 'carcass'))}, ${speech.length(mm(facts))} from its face`,
  'move-anchor': (facts, speech) =>
    `move ${speech.name(text(facts, 'anchor'))} to ${speech.length(mm(facts))} from the face`,
  'let-slide-be-chosen': (facts, speech) =>
    `let the slide of ${speech.name(text(facts, 'opening'))} be chosen by load and depth`,
  'shorten-slide': (facts, speech) =>
    `put a ${speech.length(mm(facts))} slide under ${speech.name(text(facts, 'opening'))}`,
  'other-hinge': (facts, speech) => `hang ${speech.name(text(facts, 'opening'))} on the ${text(facts, 'side')}`,
  'lower-stop': (facts, speech) => `let ${speech.name(text(facts, 'opening'))} turn to ${text(facts, 'deg')}° only`,
  'raise-row': (facts, speech) => `raise ${speech.name(text(facts, 'opening'))} by ${by(facts, speech)}`,
  'lower-row': (facts, speech) => `lower ${speech.name(text(facts, 'opening'))} by ${by(facts, speech)}`,
  'share-part': (facts, speech) => `give ${speech.name(text(facts, 'opening'))} what the others leave`,
  'move-carcass': (facts, speech) => `move ${text(facts, 'carcass')} ${by(facts, speech)} ${towards(facts)}`,
  'grow-opening': (facts, speech) => `make ${speech.name(text(facts, 'opening'))} ${by(facts, speech)} larger`,
  'shrink-carcass': (facts, speech) =>
    `make ${text(facts, 'carcass')} ${by(facts, speech)} ${SMALLER[text(facts, 'size')] ?? 'smaller'}`,
  'grow-carcass': (facts, speech) =>
    `make ${text(facts, 'carcass')} ${by(facts, speech)} ${LARGER[text(facts, 'size')] ?? 'larger'}`,
  'move-gear-elsewhere': (facts, speech) => `move ${text(facts, 'gear')} to ${speech.name(text(facts, 'opening'))}`,
};

const isWayKind = (kind: string): kind is WayKind => WAY_KINDS.some((known) => known === kind);

/** The margin before and after an edit: `now 28 mm, then 950 mm; 950 mm is wanted`; empty where nothing is measured. */
export const sayWayMargin = (finding: Finding, way: WayOut, units: LengthUnits): string => {
  const { value, limit, unit } = finding;
  if (
    value === limit ||
    unit === '' ||
    (unit === 'count' && limit === 1) ||
    (unit === 'mm' && limit === 0 && value === 0)
  )
    return '';
  const amount = (of: number): string => sayAmount(of, unit, units);
  if (finding.rule === 'mover-travel' && finding.facts.what === 'meets')
    return `now ${amount(value)} of ${amount(limit)}, then the whole ${amount(way.valueAfter)}`;
  const bound = !way.keepsLimit ? '' : value < limit ? 'at least ' : 'at most ';
  return `now ${amount(value)}, then ${bound}${amount(way.valueAfter)}; limit ${amount(limit)}`;
};

/** An edit that clears a finding, as what a person would do: `Move left carcass 3/8 in forward`. */
export const sayWayOut = (way: WayOut, units: LengthUnits, names: (id: string) => string): string =>
  sentence(isWayKind(way.kind) ? WAYS[way.kind](way.facts, speechFor(units, names)) : way.kind.replaceAll('-', ' '));
