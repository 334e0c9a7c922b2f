import { z } from 'zod';
import { bad, compareText, good, type Problem, pathText, type Result } from '../base/index.ts';
import {
  approveRevision,
  type Design,
  designNodes,
  type KeptReply,
  type Remark,
  remarkSchema,
} from '../design/index.ts';
import { sha256Of } from './release.ts';

export const REPLY_FORMAT = 'hatchwright-reply';
const REPLY_VERSION = 1;
/** Far more than a person writes. */
const MOST_REPLY_CHARACTERS = 4_000_000;

const replySchema = z.strictObject({
  format: z.literal(REPLY_FORMAT),
  version: z.literal(REPLY_VERSION),
  /** The title of the design, for people only. */
  design: z.string().max(200),
  /** The letter that was looked at; empty for a draft. */
  letter: z.union([z.string().regex(/^[A-Z]{1,3}$/), z.literal('')]),
  /** Hash of the design that was looked at. */
  sha256: z.string().regex(/^[0-9a-f]{64}$/),
  who: z.string().min(1).max(200),
  on: z.string().max(200),
  remarks: z.array(remarkSchema).max(2000),
  approved: z.boolean(),
});
/** What one person sends back on a review copy. */
export interface Reply {
  readonly format: typeof REPLY_FORMAT;
  readonly version: typeof REPLY_VERSION;
  readonly design: string;
  readonly letter: string;
  readonly sha256: string;
  readonly who: string;
  readonly on: string;
  readonly remarks: readonly Remark[];
  readonly approved: boolean;
}

/** The text between the lines that a text block is pasted with, or the text itself. */
const inner = (text: string): string => {
  const from = text.indexOf('{');
  const to = text.lastIndexOf('}');
  return from >= 0 && to > from ? text.slice(from, to + 1) : text;
};

const got = (value: unknown): string => {
  const text = JSON.stringify(value) ?? 'nothing';
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
};

const problemAt = ({ path, code, message }: z.core.$ZodIssue, document: unknown): Problem => {
  const value = path.reduce<unknown>(
    (held, key) =>
      typeof held === 'object' && held !== null ? (held as Record<PropertyKey, unknown>)[key] : undefined,
    document,
  );
  if (code === 'unrecognized_keys') return { at: pathText(path), code: 'unknown-key' };
  return { at: pathText(path), code: 'not-allowed', expected: message, got: got(value) };
};

/** Reads a reply file, or a text block pasted from a message with other words around it. */
export const readReply = (text: string): Result<Reply> => {
  if (text.length > MOST_REPLY_CHARACTERS) return bad([{ at: '', code: 'too-large' }]);
  if (text.trim() === '') return bad([{ at: '', code: 'empty-file' }]);
  let document: unknown;
  try {
    document = JSON.parse(inner(text));
  } catch {
    return bad([{ at: '', code: 'not-json' }]);
  }
  const raw = (typeof document === 'object' ? document : null) as Readonly<Record<string, unknown>> | null;
  if (raw?.format !== REPLY_FORMAT) return bad([{ at: 'format', code: 'not-a-reply', got: got(raw?.format) }]);
  if (typeof raw.version === 'number' && raw.version > REPLY_VERSION)
    return bad([{ at: 'version', code: 'newer-version', got: String(raw.version) }]);
  const read = replySchema.safeParse(document);
  return read.success
    ? good(read.data)
    : bad(read.error.issues.slice(0, 50).map((issue) => problemAt(issue, document)));
};

/** The text of a reply file. */
export const printReply = (reply: Reply): string => `${JSON.stringify(reply, null, 2)}\n`;

const keptOf = (reply: Reply): KeptReply => ({
  id: sha256Of(printReply(reply)),
  letter: reply.letter,
  sha256: reply.sha256,
  who: reply.who,
  on: reply.on,
  remarks: reply.remarks.map((remark) => ({ remark, outcome: { state: 'open' } })),
});

const inOrder = (a: KeptReply, b: KeptReply): number =>
  compareText(a.on, b.on) || compareText(a.who, b.who) || compareText(a.id, b.id);

const approvalOrder = (a: Design['approvals'][number], b: Design['approvals'][number]): number =>
  compareText(a.letter, b.letter) || compareText(a.who, b.who);

/**
 * Brings a reply into the design. In whatever order replies come in, the design ends up the same; one that is there
 * already changes nothing, so that what became of its remarks is kept. An approval counts for the letter whose hash
 * it carries, and for none when that design was never released. Of two approvals of a person the later day counts.
 */
export const mergeReply = (design: Design, reply: Reply): Design => {
  const kept = keptOf(reply);
  if (design.replies.some(({ id }) => id === kept.id)) return design;
  const held: Design = { ...design, replies: [...design.replies, kept].sort(inOrder) };
  const revision = design.revisions.find((each) => each.letter === reply.letter && each.sha256 === reply.sha256);
  if (!reply.approved || !revision) return held;
  const earlier = design.approvals.find((each) => each.letter === revision.letter && each.who === reply.who);
  if (earlier && compareText(earlier.on, reply.on) >= 0) return held;
  const approved = approveRevision(held, revision.letter, { who: reply.who, on: reply.on });
  return { ...approved, approvals: [...approved.approvals].sort(approvalOrder) };
};

/** Where a remark stands now. */
export interface PlacedRemark {
  readonly reply: KeptReply;
  readonly index: number;
  readonly remark: Remark;
  readonly outcome: KeptReply['remarks'][number]['outcome'];
  /** The node that it is about; null when that is no longer there, or the remark answers a question about nothing. */
  readonly node: string | null;
  /** True when the part that it was about has gone from the design. */
  readonly gone: boolean;
  /** The letter that was reviewed when it is not the newest; null when it is. A draft's letter is empty. */
  readonly olderLetter: string | null;
}

const partsOf = (remark: Remark, questions: Design['questions']): readonly string[] => {
  if (remark.kind === 'answer') {
    const about = questions.find(({ id }) => id === remark.question)?.about;
    return about === null || about === undefined ? [] : [about];
  }
  return [remark.part];
};

/** A panel or a body is named `opening-4/side-left`: when the part is gone, its node may still be there. */
const nodeOf = (part: string, known: ReadonlySet<string>): string | null => {
  if (known.has(part)) return part;
  const node = part.split('/')[0] ?? part;
  return known.has(node) ? node : null;
};

/** Every remark with the part that it lands on, however the design has changed since. `now` is the hash of the present design. */
export const placedRemarks = (design: Design, now: string): readonly PlacedRemark[] => {
  const known = new Set<string>(designNodes(design).map(({ id }) => id));
  return design.replies.flatMap((reply) =>
    reply.remarks.map(({ remark, outcome }, index) => {
      const parts = partsOf(remark, design.questions);
      const node = parts.map((part) => nodeOf(part, known)).find((id) => id !== null) ?? null;
      const newest = design.revisions.at(-1);
      const current = reply.sha256 === now || (newest !== undefined && reply.sha256 === newest.sha256);
      return {
        reply,
        index,
        remark,
        outcome,
        node,
        gone: parts.length > 0 && node === null,
        olderLetter: current ? null : reply.letter,
      };
    }),
  );
};
