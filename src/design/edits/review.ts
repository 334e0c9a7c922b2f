import type { Design } from '../design.ts';
import { freshIds } from '../nodes.ts';
import type { NodeId } from '../parts.ts';
import type { Question, RemarkOutcome, Revision, VehicleRecord } from '../review.ts';
import { itemOf } from './change.ts';

/** Notes that sheets were cut from a released letter. Throws when there is no such letter. */
export const recordCut = (design: Design, letter: string, cut: Revision['cut'][number]): Design => {
  if (!design.revisions.some((revision) => revision.letter === letter))
    throw new RangeError(`recordCut: no revision ${letter}`);
  return {
    ...design,
    revisions: design.revisions.map((revision) =>
      revision.letter === letter ? { ...revision, cut: [...revision.cut, cut] } : revision,
    ),
  };
};

/** Puts down who approved a released letter; the hash ties the name to exactly that design. Throws on an unknown letter. */
export const approveRevision = (
  design: Design,
  letter: string,
  by: { readonly who: string; readonly on: string },
): Design => {
  const revision = design.revisions.find((each) => each.letter === letter);
  if (!revision) throw new RangeError(`approveRevision: no revision ${letter}`);
  const others = design.approvals.filter((each) => each.letter !== letter || each.who !== by.who);
  return { ...design, approvals: [...others, { letter, sha256: revision.sha256, who: by.who, on: by.on }] };
};

export const askQuestion = (
  design: Design,
  question: Omit<Question, 'id'>,
): { readonly design: Design; readonly id: NodeId } => {
  const id = freshIds(design)('question');
  return { design: { ...design, questions: [...design.questions, { ...question, id }] }, id };
};

export const withdrawQuestion = (design: Design, id: NodeId): Design => {
  itemOf(design.questions, id, 'question');
  return { ...design, questions: design.questions.filter((question) => question.id !== id) };
};

/** Says what a remark led to: done, or not done and why. Throws when the reply or the remark is not there. */
export const settleRemark = (design: Design, reply: string, index: number, outcome: RemarkOutcome): Design => {
  const kept = itemOf(design.replies, reply, 'reply');
  if (!kept.remarks[index]) throw new RangeError(`settleRemark: reply ${reply} has no remark ${index}`);
  const remarks = kept.remarks.map((each, i) => (i === index ? { ...each, outcome } : each));
  return { ...design, replies: design.replies.map((each) => (each === kept ? { ...kept, remarks } : each)) };
};

export const changeRecord = (design: Design, change: Partial<VehicleRecord>): Design => ({
  ...design,
  record: { ...design.record, ...change },
});
