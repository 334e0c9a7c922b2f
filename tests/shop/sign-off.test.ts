import { describe, expect, it } from 'vitest';
import { approveRevision, changeDocument, type Design } from '../../src/design/index.ts';
import { releaseRevision } from '../../src/revision/index.ts';
import { createPacket, signOffOf } from '../../src/shop/index.ts';
import { catalog, design, emptyInspection, rules, twoColumns } from './fixture.ts';

const words = { who: 'R. Vane', why: 'for the chief', on: '2031-04-02' };
const released = releaseRevision(design(), words);
const approved = approveRevision(released, 'A', { who: 'Chief Orr', on: '2031-04-05' });
const second = releaseRevision(changeDocument(approved, { notes: 'wider' }), { ...words, why: 'wider' });

const textsOf = async (subject: Design): Promise<ReadonlyMap<string, string>> => {
  const { files } = await createPacket({
    design: subject,
    fitout: twoColumns(),
    catalog,
    rules,
    space: null,
    inspection: emptyInspection,
  });
  return new Map(files.flatMap((file) => ('text' in file ? [[file.path, file.text] as const] : [])));
};

describe('the sign-off record', () => {
  it('says before the first letter that the design is a draft, and its hash', () => {
    const { mark, record, hash } = signOffOf(design());
    expect(mark).toBe('draft');
    expect(hash).toMatch(/^[0-9a-f]{4}( [0-9a-f]{4}){3}$/);
    expect(record).toEqual([`This design: draft, hash ${hash}; nobody has approved exactly this design.`]);
  });

  it('names under exactly the approved design who approved it, and only there', () => {
    expect(signOffOf(released).mark).toMatch(/^rev A · [0-9a-f]{4} [0-9a-f]{4} · not approved$/);
    expect(signOffOf(approved).mark).toMatch(/ · approved by Chief Orr, 2031-04-05$/);
    const edited = signOffOf(changeDocument(approved, { notes: 'x' }));
    expect(edited.mark).toMatch(/^draft after A · .* · not approved$/);
    expect(edited.record[0]).toContain('nobody has approved exactly this design');
  });

  it('keeps who approved which letter, from the newest', () => {
    expect(signOffOf(second).record.slice(1)).toEqual([
      expect.stringMatching(/^B released by R\. Vane on 2031-04-02: wider \(hash /),
      'B: nobody has approved it.',
      expect.stringMatching(/^A released by R\. Vane on 2031-04-02: for the chief \(hash /),
      'A approved by Chief Orr on 2031-04-05.',
    ]);
  });

  it('does not count a name under another text of the same letter', () => {
    const forged = { ...released, approvals: [{ letter: 'A', sha256: 'f'.repeat(64), who: 'Nobody', on: '' }] };
    expect(signOffOf(forged).record.join()).not.toContain('Nobody');
    expect(signOffOf(forged).mark).toContain('not approved');
  });

  it('stands in every title block and on the inspection sheet', async () => {
    const texts = await textsOf(approved);
    const { record, mark } = signOffOf(approved);
    const drawings = [...texts].filter(([path]) => path.endsWith('.svg'));
    expect(drawings.length).toBeGreaterThan(8);
    // A narrow title block may shorten the name, never letter and hash.
    const start = mark.slice(0, 'rev A · 0123 4567 · approved by'.length);
    for (const [path, svg] of drawings) expect([path, svg.includes(start)]).toEqual([path, true]);
    const sheet = texts.get('inspection.txt')?.replace(/\s+/g, ' ');
    for (const line of record) expect(sheet).toContain(line);
    expect((await textsOf(design())).get('inspection.txt')).not.toContain('Revisions');
  });
});
