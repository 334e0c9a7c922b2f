import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  approveRevision,
  changeDocument,
  changeRecord,
  type Design,
  printDesign,
  readDesign,
  recordCut,
} from '../../src/design/index.ts';
import {
  newestCut,
  nextLetter,
  readRevision,
  releaseRevision,
  revisionDesign,
  revisionStamp,
  sha256Of,
} from '../../src/revision/index.ts';

const demo = (name: string): Design => {
  const read = readDesign(readFileSync(`assets/designs/${name}.json`, 'utf8'));
  if (!read.ok) throw new Error(name);
  return read.value;
};
const design = demo('quillmoor');
const words = { who: 'R. Vane', why: 'for the chief', on: '2031-04-02' };

describe('releasing a revision', () => {
  it('hashes as FIPS 180-4 does', () => {
    // The one-block example of the standard.
    expect(sha256Of('abc')).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
    // "ä" is two bytes in UTF-8: c3 a4.
    expect(sha256Of('ä')).not.toBe(sha256Of('a'));
  });

  it('counts letters as drawings do, leaving out those that are misread', () => {
    expect([null, 'A', 'H', 'N', 'P', 'R', 'W', 'Y', 'AA', 'AY'].map(nextLetter)).toEqual([
      'A',
      'B',
      'J',
      'P',
      'R',
      'T',
      'Y',
      'AA',
      'AB',
      'BA',
    ]);
  });

  it('freezes the whole design, which later edits leave alone', () => {
    const released = releaseRevision(design, words);
    const edited = changeDocument(released, { title: 'another title' });
    const back = revisionDesign(edited, 'A');
    expect(back.ok && back.value.title).toBe(design.title);
    expect(back.ok && back.value.cabinet).toEqual(design.cabinet);
    expect(releaseRevision(edited, words).revisions.map(({ letter }) => letter)).toEqual(['A', 'B']);
  });

  it('survives the file, and gives the same hash whatever order the keys came in', () => {
    const released = releaseRevision(design, words);
    const read = readDesign(printDesign(released));
    expect(read).toEqual({ ok: true, value: released });
    const turned = Object.fromEntries(Object.entries(design).toReversed()) as unknown as Design;
    expect(releaseRevision(turned, words).revisions[0]?.sha256).toBe(released.revisions[0]?.sha256);
  });

  it('refuses a revision whose text has been altered', () => {
    const [revision] = releaseRevision(design, words).revisions;
    if (!revision) throw new Error('no revision');
    const altered = { ...revision, text: revision.text.replace(design.title, 'something else') };
    expect(altered.text).not.toBe(revision.text);
    const read = readRevision(altered);
    expect(read.ok).toBe(false);
    expect(!read.ok && read.error[0]?.code).toBe('altered');
  });

  it('is a draft before the first letter and after every edit, not after what is said about it', () => {
    expect(revisionStamp(design)).toMatchObject({ letter: '', draft: true, approvals: [] });
    const released = releaseRevision(design, words);
    expect(revisionStamp(released)).toMatchObject({ letter: 'A', draft: false });
    const said = changeRecord(recordCut(released, 'A', { who: 'saw', on: '', note: '' }), {
      torqueChecks: [{ due: '2031-06-01', doneOn: '', who: '' }],
    });
    expect(revisionStamp(said)).toMatchObject({ letter: 'A', draft: false });
    expect(revisionStamp(changeDocument(said, { notes: 'x' }))).toMatchObject({ letter: 'A', draft: true });
  });

  it('shows a name only under exactly the design that was approved', () => {
    const approved = approveRevision(releaseRevision(design, words), 'A', { who: 'Chief Orr', on: '2031-04-03' });
    expect(revisionStamp(approved).approvals.map(({ who }) => who)).toEqual(['Chief Orr']);
    expect(revisionStamp(changeDocument(approved, { notes: 'x' })).approvals).toEqual([]);
  });

  it('knows the newest letter that sheets were cut from', () => {
    const two = releaseRevision(changeDocument(releaseRevision(design, words), { notes: 'x' }), words);
    expect(newestCut(two)).toBeNull();
    expect(newestCut(recordCut(two, 'A', { who: 'saw', on: '', note: '' }))?.letter).toBe('A');
  });

  it('takes no revision without name or reason, and no letter that is not there', () => {
    expect(() => releaseRevision(design, { ...words, who: ' ' })).toThrow(RangeError);
    expect(() => releaseRevision(design, { ...words, why: '' })).toThrow(RangeError);
    expect(() => recordCut(design, 'A', { who: 'saw', on: '', note: '' })).toThrow('A');
    expect(() => approveRevision(design, 'A', { who: 'x', on: '' })).toThrow('A');
    expect(revisionDesign(design, 'A').ok).toBe(false);
  });
});
