import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  changeCarcass,
  changeDocument,
  changeGear,
  type Design,
  divideOpening,
  openingsFrom,
  printDesign,
  readDesign,
  removeGear,
  settleRemark,
} from '../../src/design/index.ts';
import {
  bareDesign,
  mergeReply,
  placedRemarks,
  printReply,
  type Reply,
  readReply,
  releaseRevision,
  revisionStamp,
} from '../../src/revision/index.ts';
import { sayMerged } from '../../src/says/index.ts';
import { editBy } from '../laws/random-edit.ts';

const SEED = 20310403;
const read = readDesign(readFileSync('assets/designs/harrow-fell.json', 'utf8'));
if (!read.ok) throw new Error('the demo does not read');
const released = releaseRevision(read.value, { who: 'R. Vane', why: 'first look', on: '2031-04-02' });
const stamp = revisionStamp(released);
const [gear, other] = released.gear;
const [carcass] = released.cabinet.carcasses;
if (!gear || !other || !carcass) throw new Error('the demo is too small');

const reply = (who: string, change: Partial<Reply> = {}): Reply => ({
  format: 'hatchwright-reply',
  version: 1,
  design: released.title,
  letter: 'A',
  sha256: stamp.sha256,
  who,
  on: '2031-04-05',
  remarks: [{ kind: 'note', part: gear.id, name: gear.name, text: 'too low for me' }],
  approved: false,
  ...change,
});

const nowOf = (design: Design): string => revisionStamp(design).sha256;

describe('a reply', () => {
  it('reads back what it printed, also out of a message around it', () => {
    const sent = reply('Chief Orr');
    expect(readReply(printReply(sent))).toEqual({ ok: true, value: sent });
    expect(readReply(`Hello,\nsee below\n${printReply(sent)}\nRegards`)).toEqual({ ok: true, value: sent });
  });

  it('refuses what is no reply, with the place', () => {
    const codes = (text: string): readonly (readonly [string, string])[] => {
      const result = readReply(text);
      return result.ok ? [] : result.error.map(({ at, code }) => [at, code] as const);
    };
    expect(codes('')).toEqual([['', 'empty-file']]);
    expect(codes('hello')).toEqual([['', 'not-json']]);
    expect(codes('{}')).toEqual([['format', 'not-a-reply']]);
    expect(codes('null')).toEqual([['format', 'not-a-reply']]);
    expect(codes(JSON.stringify({ ...reply('x'), version: 2 }))).toEqual([['version', 'newer-version']]);
    expect(codes(JSON.stringify({ ...reply('x'), remarks: [{ kind: 'run', part: 'a' }] }))[0]?.[0]).toBe(
      'remarks[0].kind',
    );
    expect(codes(JSON.stringify({ ...reply('x'), extra: 1 }))).toEqual([['', 'unknown-key']]);
  });

  it('lands on its part, and comes in only once', () => {
    const held = mergeReply(released, reply('Chief Orr'));
    const [remark] = placedRemarks(held, nowOf(held));
    expect(remark).toMatchObject({ node: gear.id, gone: false, olderLetter: null });
    const settled = settleRemark(held, held.replies[0]?.id ?? '', 0, {
      state: 'not-done',
      who: 'R. Vane',
      on: '',
      because: 'the battery is there',
    });
    expect(mergeReply(settled, reply('Chief Orr'))).toBe(settled);
  });

  it('follows its part through unrelated edits, and says when the part is gone', () => {
    const held = mergeReply(released, reply('Chief Orr'));
    const edits: readonly ((design: Design) => Design)[] = [
      (design) => changeDocument(design, { title: 'another' }),
      (design) => changeGear(design, other.id, { name: 'another' }),
      (design) => changeGear(design, gear.id, { place: null, name: 'moved' }),
      (design) => changeCarcass(design, carcass.id, { size: { ...carcass.size, width: 555 } }),
      (design) => divideOpening(design, carcass.opening.id, 'rows', 2),
      (design) => removeGear(design, other.id),
    ];
    for (const edit of edits) {
      const [remark] = placedRemarks(edit(held), nowOf(edit(held)));
      expect(remark).toMatchObject({ node: gear.id, gone: false });
    }
    const without = removeGear(held, gear.id);
    const [remark] = placedRemarks(without, nowOf(without));
    expect(remark).toMatchObject({ node: null, gone: true, remark: { name: gear.name } });
  });

  it('a remark on a panel lands on the node that the panel comes from', () => {
    const part = `${carcass.id}/side-left`;
    const held = mergeReply(released, reply('x', { remarks: [{ kind: 'note', part, name: 'side', text: 'thin' }] }));
    expect(placedRemarks(held, nowOf(held))[0]?.node).toBe(carcass.id);
  });

  it('to an older letter says so', () => {
    const edited = changeDocument(released, { notes: 'changed' });
    const second = releaseRevision(edited, { who: 'R. Vane', why: 'second look', on: '' });
    const late = mergeReply(second, reply('Chief Orr'));
    expect(placedRemarks(late, nowOf(late))[0]?.olderLetter).toBe('A');
    const intime = mergeReply(edited, reply('Chief Orr'));
    // The working state has changed since A, yet A is still the newest letter.
    expect(placedRemarks(intime, nowOf(intime))[0]?.olderLetter).toBeNull();
  });

  it('approves the letter whose hash it carries and no other', () => {
    const yes = mergeReply(released, reply('Chief Orr', { approved: true }));
    expect(yes.approvals).toEqual([{ letter: 'A', sha256: stamp.sha256, who: 'Chief Orr', on: '2031-04-05' }]);
    const forged = mergeReply(released, reply('Chief Orr', { approved: true, sha256: 'f'.repeat(64) }));
    expect(forged.approvals).toEqual([]);
  });

  it('is told of in words: what came, what was there, what was put down', () => {
    const sent = reply('Chief Orr', { approved: true });
    const held = mergeReply(released, sent);
    expect(sayMerged([sent], released, held)).toBe('1 remark brought in. Chief Orr approves revision A.');
    expect(sayMerged([sent], held, mergeReply(held, sent))).toBe('This reply is there already.');
    const forged = reply('Chief Orr', { approved: true, sha256: 'f'.repeat(64) });
    expect(sayMerged([forged], released, mergeReply(released, forged))).toContain('was not put down');
  });

  it('leaves a sound file', () => {
    const held = mergeReply(released, reply('Chief Orr', { approved: true }));
    expect(readDesign(printDesign(held))).toEqual({ ok: true, value: held });
  });
});

describe('laws of replies', () => {
  it('come in in any order with the same result', () => {
    const someReply = fc.record({
      who: fc.constantFrom('Chief Orr', 'Capt. Lindqvist', 'Eng. Abara'),
      on: fc.constantFrom('2031-04-05', '2031-04-06', ''),
      text: fc.string({ maxLength: 20 }),
      approved: fc.boolean(),
      part: fc.constantFrom(...released.gear.slice(0, 5).map(({ id }) => id as string)),
    });
    fc.assert(
      fc.property(
        fc
          .array(someReply, { minLength: 2, maxLength: 5 })
          .chain((list) =>
            fc.tuple(fc.constant(list), fc.shuffledSubarray(list, { minLength: list.length, maxLength: list.length })),
          ),
        ([list, shuffled]) => {
          const all = (replies: typeof list): string =>
            printDesign(
              replies.reduce<Design>(
                (design, { who, on, text, approved, part }) =>
                  mergeReply(design, reply(who, { on, approved, remarks: [{ kind: 'note', part, name: '', text }] })),
                released,
              ),
            );
          expect(all(shuffled)).toBe(all(list));
        },
      ),
      { seed: SEED, numRuns: 60 },
    );
  });

  it('stay with their parts through any run of edits, and say when the part is gone', () => {
    const inside = openingsFrom(carcass.opening).at(-1)?.id ?? carcass.opening.id;
    const part = `${carcass.id}/side-left`;
    const remarks: Reply['remarks'] = [
      { kind: 'note', part: gear.id, name: gear.name, text: 'too low' },
      { kind: 'swap', part: other.id, name: '', with: gear.id, withName: '', text: '' },
      { kind: 'move', part: gear.id, name: '', to: inside, toName: '', text: 'here' },
      { kind: 'note', part, name: 'side', text: 'rounder' },
      { kind: 'note', part: inside, name: '', text: 'wider' },
    ];
    const abouts = [gear.id, other.id, gear.id, carcass.id, inside];
    const start = mergeReply(released, reply('Chief Orr', { remarks }));
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.nat(1000), fc.nat(1000)), { minLength: 1, maxLength: 12 }), (picks) => {
        let design = start;
        for (const [which, where] of picks) {
          const after = editBy(design, which, where)?.after ?? design;
          expect(after.replies).toBe(start.replies);
          design = after;
          // The plain twin: an id that stands anywhere in the text of the design is still there.
          const text = JSON.stringify(bareDesign(design));
          const there = abouts.map((id) => text.includes(`"id":"${id}"`));
          const placed = placedRemarks(design, nowOf(design));
          expect(placed.map(({ node, gone }) => [node, gone])).toEqual(
            abouts.map((id, i) => (there[i] ? [id, false] : [null, true])),
          );
          expect(placed.map(({ remark }) => remark)).toEqual(remarks);
        }
        expect(readDesign(printDesign(design))).toMatchObject({ ok: true, value: { replies: start.replies } });
      }),
      { seed: SEED, numRuns: 60 },
    );
  });
});
