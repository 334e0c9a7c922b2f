import { readFileSync, writeFileSync } from 'node:fs';
import { afterAll, describe, expect, it } from 'vitest';
import { changeGear, placeGear, printDesign, readDesign } from '../../../src/design/index.ts';
import { printReply, releaseRevision, revisionStamp } from '../../../src/revision/index.ts';
import { demo, inProcess, PATIENCE_MS, scratch } from './command.ts';

const { at, sweep } = scratch();
afterAll(sweep);

const words = { who: 'R. Vane', why: 'first look', on: '2031-04-02' };
const released = releaseRevision(demo('quillmoor'), words);
const [gear] = released.gear;
if (!gear) throw new Error('the demo has no gear');
const edited = placeGear(changeGear(released, gear.id, { massKg: gear.massKg + 2 }), gear.id, null);
const file = at('edited.json');
writeFileSync(file, printDesign(edited));

describe('compare', () => {
  it('finds nothing between a file and itself', async () => {
    const { code, out } = await inProcess(['compare', file, file, '--json']);
    expect(code).toBe(0);
    expect(JSON.parse(out)).toEqual({ changes: [], figures: [], panels: [] });
  });

  it(
    'tells a letter in the file from the file, in words and by number',
    async () => {
      const { out } = await inProcess(['compare', `${file}@A`, file, '--json']);
      const { changes, figures } = JSON.parse(out) as {
        readonly changes: readonly { readonly kind: string; readonly id: string; readonly says: string }[];
        readonly figures: readonly { readonly id: string; readonly before: number; readonly after: number }[];
      };
      expect(changes.map(({ kind, id }) => [kind, id])).toEqual([
        ['rehoused', gear.id],
        ['changed', gear.id],
      ]);
      expect(changes[0]?.says).toContain('now without a place');
      // Taken out of the cabinet, its mass goes from the gear: minus what it weighed at A.
      const mass = figures.find(({ id }) => id === 'gear-mass');
      expect((mass?.before ?? 0) - (mass?.after ?? 0)).toBeCloseTo(gear.massKg, 9);
    },
    PATIENCE_MS,
  );

  it('says which letter is not there', async () => {
    const { code, complaints } = await inProcess(['compare', `${file}@B`, file]);
    expect(code).toBe(2);
    expect(complaints).toMatch(/no revision.*B/);
  });
});

describe('reply', () => {
  const reply = printReply({
    format: 'hatchwright-reply',
    version: 1,
    design: released.title,
    letter: 'A',
    sha256: revisionStamp(released).sha256,
    who: 'Chief Orr',
    on: '2031-04-05',
    remarks: [{ kind: 'note', part: gear.id, name: gear.name, text: '=1+1 <script>' }],
    approved: true,
  });

  it('writes into the design, once', async () => {
    const [design, sent] = [at('design.json'), at('reply.json')];
    writeFileSync(design, printDesign(released));
    writeFileSync(sent, `Hello\n${reply}`);
    const first = await inProcess(['reply', design, sent, '--json']);
    expect(JSON.parse(first.out)).toMatchObject({ added: [{ kind: 'note', node: gear.id }], approved: true });
    const once = readFileSync(design, 'utf8');
    const read = readDesign(once);
    expect(read.ok && read.value.approvals).toMatchObject([{ letter: 'A', who: 'Chief Orr' }]);
    const again = await inProcess(['reply', design, sent]);
    expect(again.out).toContain('there already');
    expect(readFileSync(design, 'utf8')).toBe(once);
  });

  it('refuses what is no reply and writes nothing', async () => {
    const [design, sent] = [at('untouched.json'), at('no-reply.json')];
    writeFileSync(design, printDesign(released));
    writeFileSync(sent, '{"format":"other"}');
    const { code, complaints } = await inProcess(['reply', design, sent]);
    expect(code).toBe(2);
    expect(complaints).toContain(sent);
    expect(readFileSync(design, 'utf8')).toBe(printDesign(released));
  });
});
