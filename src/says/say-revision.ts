import type { Design } from '../design/index.ts';
import type { ChangedPanel, PlacedRemark, Reply, RevisionStamp } from '../revision/index.ts';
import { sentence } from './words.ts';

/** The state of a design as a title block has it: `rev B`, `draft after B`, `draft`. */
export const sayStamp = ({ letter, draft }: Pick<RevisionStamp, 'letter' | 'draft'>): string =>
  draft ? (letter === '' ? 'draft' : `draft after ${letter}`) : `rev ${letter}`;

/** Enough of the hash to tell two designs apart by eye, in groups of four. */
export const sayHash = (sha256: string): string => (sha256.slice(0, 16).match(/.{4}/g) ?? []).join(' ');

const MOST_NAMED = 6;

/** Sheets that were cut from an older letter, and what must be cut anew. Empty where nothing is to be cut again. */
export const sayCutWarning = (letter: string, panels: readonly ChangedPanel[]): string => {
  if (panels.length === 0) return '';
  const names = panels.slice(0, MOST_NAMED).map(({ name, how }) => (how === 'changed' ? name : `${name} (${how})`));
  const more = panels.length - names.length;
  const tail = more > 0 ? ` and ${more} more` : '';
  const these = panels.length === 1 ? 'this panel changed' : `these ${panels.length} panels changed`;
  return `Cut from ${letter}: ${these}: ${names.join(', ')}${tail}.`;
};

/** What a person wrote on a review copy, in a line. */
export const sayRemark = ({ remark, gone }: PlacedRemark, name: (id: string) => string): string => {
  const called = (id: string, then: string): string => {
    const now = name(id);
    return now === id && then !== '' ? then : now;
  };
  const words = remark.text === '' ? '' : `: ${remark.text}`;
  const end = gone ? ' (no longer in the design)' : '';
  switch (remark.kind) {
    case 'note':
      return sentence(`${called(remark.part, remark.name)}${end}${words}`);
    case 'swap':
      return `Swap ${called(remark.part, remark.name)} and ${called(remark.with, remark.withName)}${end}${words}`;
    case 'move':
      return `Move ${called(remark.part, remark.name)} to ${called(remark.to, remark.toName)}${end}${words}`;
    case 'answer':
      return `${remark.asked === '' ? 'Answer' : remark.asked} — ${remark.text}`;
  }
};

/** What became of it. */
export const sayOutcome = ({ outcome }: Pick<PlacedRemark, 'outcome'>): string => {
  if (outcome.state === 'open') return 'open';
  const day = outcome.on === '' ? '' : `, ${outcome.on}`;
  return outcome.state === 'done'
    ? `done (${outcome.who}${day})`
    : `not done because ${outcome.because} (${outcome.who}${day})`;
};

/** Said of a reply to something else than the newest letter; empty for one that is up to date. */
export const sayOlder = ({ olderLetter }: Pick<PlacedRemark, 'olderLetter'>): string => {
  if (olderLetter === null) return '';
  return olderLetter === '' ? 'written on a draft' : `written on revision ${olderLetter} or a draft after it`;
};

/** What bringing replies in came to: how many remarks came, what was there already, what approvals were put down. */
export const sayMerged = (replies: readonly Reply[], before: Design, after: Design): string => {
  const known = new Set(before.replies.map(({ id }) => id));
  const added = after.replies.filter(({ id }) => !known.has(id));
  if (added.length === 0)
    return replies.length === 1 ? 'This reply is there already.' : 'These replies are there already.';
  const remarks = added.reduce((sum, each) => sum + each.remarks.length, 0);
  const signed = after.approvals.filter((each) => !before.approvals.includes(each));
  const unsigned = replies.some(
    ({ approved, letter, sha256, who }) =>
      approved && !after.approvals.some((each) => each.letter === letter && each.sha256 === sha256 && each.who === who),
  );
  return [
    `${remarks} ${remarks === 1 ? 'remark' : 'remarks'} brought in.`,
    ...signed.map(({ letter, who }) => `${who} approves revision ${letter}.`),
    ...(unsigned ? ['An approval of a design that is no released revision here was not put down.'] : []),
  ].join(' ');
};
