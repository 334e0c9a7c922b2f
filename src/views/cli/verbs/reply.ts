import { basename, dirname } from 'node:path';
import { printDesign } from '../../../design/index.ts';
import { mergeReply, placedRemarks, readReply, revisionStamp } from '../../../revision/index.ts';
import { nameOfPart, sayOlder, sayProblem, sayRemark } from '../../../says/index.ts';
import { BadInput } from '../bad-input.ts';
import { openCabinetFlow } from '../open-flow.ts';
import type { Outcome } from '../outcome.ts';
import { readDesignFile } from '../read-design-file.ts';
import { readTextFile } from '../read-text-file.ts';
import { writeFiles } from '../write-files.ts';

/** `reply DESIGN REPLY [--to FILE]`: brings a reply into the design file. One that is there already adds nothing. */
export const reply = (path: string, replyPath: string, to: string = path): Outcome => {
  const design = readDesignFile(path);
  const read = readReply(readTextFile(replyPath, 'a reply file'));
  if (!read.ok)
    throw new BadInput(
      read.error.map((problem) => ({
        file: replyPath,
        at: problem.at,
        says: sayProblem({ ...problem, at: '' }),
      })),
    );
  const merged = mergeReply(design, read.value);
  const before = new Set(design.replies.map(({ id }) => id));
  const names = nameOfPart(merged, openCabinetFlow().fitOut(merged));
  const added = placedRemarks(merged, revisionStamp(merged).sha256)
    .filter(({ reply: kept }) => !before.has(kept.id))
    .map((placed) => ({
      kind: placed.remark.kind,
      node: placed.node,
      gone: placed.gone,
      who: placed.reply.who,
      olderLetter: placed.olderLetter,
      says: [sayRemark(placed, names), sayOlder(placed)].filter((words) => words !== '').join('; '),
    }));
  if (merged !== design || to !== path) writeFiles(dirname(to), [{ path: basename(to), content: printDesign(merged) }]);
  const approved = merged.approvals.length > design.approvals.length;
  return {
    lines: [
      merged === design
        ? `${path}: this reply is there already`
        : `${path}: ${added.length} remark${added.length === 1 ? '' : 's'} from ${read.value.who}`,
      ...added.map(({ says }) => `  ${says}`),
      ...(approved ? [`  ${read.value.who} approves revision ${read.value.letter}`] : []),
      ...(read.value.approved && !approved && merged !== design
        ? ['  approves a design that is no released revision of this file: not put down']
        : []),
    ],
    json: { added, approved },
    exitCode: 0,
  };
};
