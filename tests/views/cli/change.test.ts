import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { afterAll, describe, expect, it, vi } from 'vitest';
import { FITTING_KINDS, findOpening, type NodeId, printDesign, readDesign } from '../../../src/design/index.ts';
import { carcass, designOf, empty } from '../../fitout/designs.ts';
import { demo, demoPath, inProcess, PATIENCE_MS, scratch } from './command.ts';

const { at, sweep } = scratch();
afterAll(sweep);
vi.setConfig({ testTimeout: PATIENCE_MS });

const room = at('room.json');
writeFileSync(room, printDesign(designOf([carcass(empty('opening-1'))], { title: 'One room' })));

interface Told {
  readonly changes: readonly { readonly at: string; readonly before: unknown; readonly after: unknown }[];
  readonly withoutPlace: readonly string[];
  readonly written: string | null;
}

const told = async (...args: readonly string[]): Promise<Told> =>
  JSON.parse((await inProcess(['change', ...args, '--json'])).out) as Told;

const contentIn = (file: string, id: string) => {
  const read = readDesign(readFileSync(file, 'utf8'));
  if (!read.ok) throw new Error(JSON.stringify(read.error));
  return findOpening(read.value, id as NodeId)?.opening.content;
};

describe('openings', () => {
  it('lists each opening once with what it holds, those inside fittings too', async () => {
    const { code, out } = await inProcess(['openings', demoPath('quillmoor'), '--json']);
    const { openings } = JSON.parse(out) as {
      readonly openings: readonly { readonly id: string; readonly holds: string }[];
    };
    expect(code).toBe(0);
    expect(new Set(openings.map(({ id }) => id)).size).toBe(openings.length);
    expect(openings.find(({ id }) => id === 'opening-3')?.holds).toBe('drawer');
    expect(openings.find(({ id }) => id === 'opening-2')?.holds).toBe('empty');
    expect(openings.find(({ id }) => id === 'opening-5')?.holds).toBe('3 rows');
  });
});

describe('change', () => {
  it.each(FITTING_KINDS)('fits %s into an opening and writes it', async (kind) => {
    const to = at(`${kind}.json`);
    expect(await told(room, '--in', 'opening-1', '--fit', kind, '--to', to)).toMatchObject({
      changes: [{ at: 'opening-1', before: 'empty', after: kind }],
      written: to,
    });
    const content = contentIn(to, 'opening-1');
    expect(content?.kind === 'fitted' && content.fitting.kind).toBe(kind);
  });

  it('sets fields of what it has just fitted, in the units that are typed', async () => {
    const to = at('set.json');
    const sets = ['--set', 'front=overlay', '--set', 'slideLengthMm=19 11/16 in'];
    const { changes } = await told(room, '--in', 'opening-1', '--fit', 'drawer', ...sets, '--to', to);
    expect(changes.map(({ after }) => after).slice(0, 2)).toEqual(['drawer', 'overlay']);
    // 19 11/16 in = 19.6875 × 25.4 = 500.0625 mm
    expect(changes[2]?.after).toBeCloseTo(500.0625, 9);
    const content = contentIn(to, 'opening-1');
    expect(content).toMatchObject({ fitting: { kind: 'drawer', front: 'overlay' } });
  });

  it('divides and clears, and names the gear that has lost its place', async () => {
    const to = at('divided.json');
    await told(room, '--in', 'opening-1', '--divide', '3rows', '--to', to);
    expect(contentIn(to, 'opening-1')).toMatchObject({ kind: 'divided', along: 'rows', parts: { length: 3 } });
    const design = demo('quillmoor');
    const [standing] = design.gear.filter(({ place }) => place !== null);
    const around = findOpening(design, standing?.place?.opening ?? ('' as NodeId))?.carcass.opening.id ?? '';
    const { withoutPlace } = await told(demoPath('quillmoor'), '--in', around, '--clear');
    expect(withoutPlace).toContain(standing?.id);
  });

  it('writes nothing unless it is told where', async () => {
    const before = readFileSync(room, 'utf8');
    const { out } = await inProcess(['change', room, '--in', 'opening-1', '--fit', 'drawer']);
    expect(out).toContain('Tried only');
    expect(readFileSync(room, 'utf8')).toBe(before);
  });

  it.each([
    [['--in', 'opening-9', '--clear'], /there is no opening "opening-9"; there is opening-1/],
    [['--in', 'opening-1', '--fit', 'wardrobe'], /--fit takes one of drawer/],
    [['--in', 'opening-1', '--divide', '1rows'], /--divide takes a number from 2 to 40/],
    [['--in', 'opening-1', '--fit', 'drawer', '--clear'], /one of --fit, --divide and --clear at a time/],
    [['--fit', 'drawer'], /--in says which opening/],
    [[], /nothing is to be changed/],
    [['--set', 'title'], /--set takes path=value/],
    [['--set', 'cabinet.carcasses[0].size.width=-5'], /size\.width: Is too small; expected more than 0, found -5/],
    [['--set', 'cabinet.carcasses[0].size.breadth=5'], /does not know, found breadth/],
    [['--set', 'cabinet.shelves.count=5'], /cabinet: nothing of that name stands there; there is carcasses/],
    [['--set', 'version=2'], /version: is not to be typed over/],
    [['--set', 'revisions=[]'], /revisions: is not to be typed over/],
    [['--in', 'opening-1', '--fit', 'drawer', '--set', 'slideLengthMm=NaN'], /slideLengthMm/],
  ])('refuses %j with its place and writes nothing', async (args, words) => {
    const to = at('refused.json');
    const { code, complaints } = await inProcess(['change', room, ...args, '--to', to]);
    expect(code).toBe(2);
    expect(complaints).toMatch(words);
    expect(existsSync(to)).toBe(false);
  });
});
