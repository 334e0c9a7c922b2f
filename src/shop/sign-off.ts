import type { Design } from '../design/index.ts';
import { revisionStamp } from '../revision/index.ts';
import { sayHash, sayStamp } from '../says/index.ts';

/** Who answers for a design, as every paper prints it. */
export interface SignOff {
  /** `rev B`, `draft after B`, `draft`. */
  readonly state: string;
  /** Head of the hash of this very design, in groups of four. */
  readonly hash: string;
  /** For a title block: `rev B · 1a2b 3c4d · approved by Chief Orr, 2031-04-05`; `draft` before the first letter. */
  readonly mark: string;
  /** The whole record in sentences: this design, then every letter from the newest, who released and who approved it. */
  readonly record: readonly string[];
}

const day = (on: string): string => (on === '' ? '' : ` on ${on}`);

/** Two groups of the hash tell the designs of one job apart. */
const shortHash = (sha256: string): string => sayHash(sha256).slice(0, 9);

const letterLines = ({ revisions, approvals }: Design): readonly string[] =>
  revisions.toReversed().flatMap(({ letter, who, on, why, sha256 }) => {
    const own = approvals.filter((each) => each.letter === letter && each.sha256 === sha256);
    return [
      `${letter} released by ${who}${day(on)}: ${why} (hash ${sayHash(sha256)})`,
      ...(own.length === 0 ? [`${letter}: nobody has approved it.`] : []),
      ...own.map((each) => `${letter} approved by ${each.who}${day(each.on)}.`),
    ];
  });

/** One value for all papers, so that title blocks, sheets and screen never say different things of a signature. */
export const signOffOf = (design: Design): SignOff => {
  const stamp = revisionStamp(design);
  const [state, hash] = [sayStamp(stamp), sayHash(stamp.sha256)];
  const by = stamp.approvals.map(({ who, on }) => (on === '' ? who : `${who}, ${on}`)).join('; ');
  const approved = by === '' ? 'not approved' : `approved by ${by}`;
  return {
    state,
    hash,
    mark: design.revisions.length === 0 ? state : [state, shortHash(stamp.sha256), approved].join(' · '),
    record: [
      `This design: ${state}, hash ${hash}${stamp.draft ? '; nobody has approved exactly this design' : ''}.`,
      ...letterLines(design),
    ],
  };
};
