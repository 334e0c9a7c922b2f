import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { bad, compareText, type Result } from '../base/index.ts';
import { type Approval, type Design, type Revision, readDesign } from '../design/index.ts';

/** SHA-256 (FIPS 180-4) of a text in UTF-8, as 64 hexadecimal digits. */
export const sha256Of = (text: string): string => bytesToHex(sha256(utf8ToBytes(text)));

/**
 * The design without what is said about it: revisions, names under them, replies and the record of the vehicle; and
 * without what lies in the rack of the shop, of which the cabinet is the same. This is what a revision freezes, what is
 * hashed, and what two designs are compared by.
 */
export const bareDesign = (design: Design): Design => ({
  ...design,
  stock: [],
  revisions: [],
  approvals: [],
  replies: [],
  record: { asBuilt: [], weighed: [], torqueChecks: [] },
});

/** The same content in the same order of keys, so that one design has one text however it was edited. */
const inOrder = (_key: string, value: unknown): unknown =>
  typeof value === 'object' && value !== null && !Array.isArray(value)
    ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => compareText(a, b)))
    : value;

/** What is frozen and hashed, as text. */
export const frozenText = (design: Design): string => JSON.stringify(bareDesign(design), inOrder);

/** Letters as drawings carry them (ASME Y14.35): without I, O, Q, S, X and Z, which are misread. */
const LETTERS = 'ABCDEFGHJKLMNPRTUVWY';

/** The letter after the given one: A first, AA after Y. */
export const nextLetter = (last: string | null): string => {
  if (last === null) return 'A';
  const at = LETTERS.indexOf(last.at(-1) ?? '');
  const head = last.slice(0, -1);
  const next = LETTERS[at + 1];
  return at >= 0 && next !== undefined ? head + next : `${nextLetter(head === '' ? null : head)}A`;
};

export interface ReleaseWords {
  readonly who: string;
  readonly why: string;
  readonly on: string;
}

/** Freezes the present design under the next letter. Throws when the name or the reason is blank. */
export const releaseRevision = (design: Design, { who, why, on }: ReleaseWords): Design => {
  if (who.trim() === '' || why.trim() === '')
    throw new RangeError('releaseRevision: a revision is released with a name and a reason');
  const text = frozenText(design);
  const letter = nextLetter(design.revisions.at(-1)?.letter ?? null);
  return {
    ...design,
    revisions: [...design.revisions, { letter, who, why, on, text, sha256: sha256Of(text), cut: [] }],
  };
};

/** The design of a revision, or what is wrong with it: `altered` when its text no longer has its hash. */
export const readRevision = ({ text, sha256: hash }: Revision): Result<Design> =>
  sha256Of(text) === hash ? readDesign(text) : bad([{ at: 'text', code: 'altered', expected: hash.slice(0, 12) }]);

/** The design of the letter. */
export const revisionDesign = (design: Design, letter: string): Result<Design> => {
  const revision = design.revisions.find((each) => each.letter === letter);
  return revision ? readRevision(revision) : bad([{ at: 'revisions', code: 'no-such-revision', got: letter }]);
};

/** What paper says of the state of a design. */
export interface RevisionStamp {
  /** The newest letter; empty while none is released. */
  readonly letter: string;
  /** True when the design has been changed since, or was never released. */
  readonly draft: boolean;
  /** Hash of the design as it is now. */
  readonly sha256: string;
  /** Who approved exactly this design. */
  readonly approvals: readonly Approval[];
}

/** True when the text, brought to the present version of the document, is this design. */
const stillHolds = (revision: Revision, text: string): boolean => {
  const read = readRevision(revision);
  return read.ok && frozenText(read.value) === text;
};

export const revisionStamp = (design: Design): RevisionStamp => {
  const text = frozenText(design);
  const newest = design.revisions.at(-1);
  const own = sha256Of(text);
  const draft = newest === undefined || (newest.sha256 !== own && !stillHolds(newest, text));
  const hash = draft ? own : newest.sha256;
  return {
    letter: newest?.letter ?? '',
    draft,
    sha256: hash,
    approvals: draft ? [] : design.approvals.filter((each) => each.sha256 === hash),
  };
};

/** The newest letter from which sheets were cut, or null. */
export const newestCut = (design: Design): Revision | null =>
  design.revisions.findLast((revision) => revision.cut.length > 0) ?? null;
