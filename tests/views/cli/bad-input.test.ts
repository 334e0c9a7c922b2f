import { existsSync, mkdirSync, truncateSync, writeFileSync } from 'node:fs';
import { afterAll, describe, expect, it } from 'vitest';
import { printDesign } from '../../../src/design/index.ts';
import { demo, demoPath, inProcess, scratch } from './command.ts';

const { at, sweep } = scratch();
afterAll(sweep);

const file = (name: string, text: string | Uint8Array): string => {
  writeFileSync(at(name), text);
  return at(name);
};
const good = (): string => printDesign(demo('quillmoor'));

/** The verb refuses the file: exit code 2, nothing on standard output, and words that name file and fault. */
const refuses = async (path: string, ...words: readonly RegExp[]): Promise<void> => {
  const { code, out, complaints } = await inProcess(['check', path]);
  expect(code).toBe(2);
  expect(out).toBe('');
  expect(complaints).toContain(path);
  for (const word of words) expect(complaints).toMatch(word);
};

describe('a file that cannot be a design', () => {
  it('is not there', () => refuses(at('nowhere.json'), /no such file/));
  it('lies under a file', () => refuses(`${file('plain.txt', 'x')}/design.json`, /not a folder/));
  it('is a folder', async () => {
    mkdirSync(at('folder'));
    await refuses(at('folder'), /folder/);
  });
  it('is far too large, and is not read to find that out', async () => {
    const path = file('large.json', '');
    truncateSync(path, 3_000_000_000);
    const begun = performance.now();
    await refuses(path, /3000 MB; a design file has at most 20 MB/);
    // Three gigabytes could not be read and parsed in this time; a string cannot even hold them.
    expect(performance.now() - begun).toBeLessThan(10_000);
  });
  it('is empty', () => refuses(file('empty.json', ''), /empty/));
  it('is not text', () => refuses(file('picture.json', Uint8Array.of(0x89, 0x50, 0xff, 0xfe, 0x00)), /not text/));
  it('is another kind of JSON', () =>
    refuses(file('other.json', '{"format": "letter"}'), /format/, /hatchwright-design/));
  it('is cut short: the line and column are named', async () => {
    const text = good();
    const cut = text.slice(0, text.indexOf('"survey"') + 20);
    const line = cut.split('\n').length;
    await refuses(file('cut.json', cut), new RegExp(`line ${line}, column \\d+`));
  });
  it('has a comma too many: the line and column are named', () =>
    // The second line holds four blanks less than the fault's column: `  "a": 1,,` fails at its tenth character.
    refuses(file('comma.json', '{\n  "a": 1,,\n}'), /line 2, column 10/));
  it('was saved by a newer program', () =>
    refuses(file('newer.json', good().replace('"version": 1', '"version": 99')), /version: .*newer/));
  it('holds a size that cannot be: every place is named, with what was expected', async () => {
    const design = demo('quillmoor');
    const [carcass] = design.cabinet.carcasses;
    const broken = {
      ...design,
      units: 'furlong',
      cabinet: { carcasses: [{ ...carcass, size: { width: -5, height: 400, depth: 600 } }] },
    };
    await refuses(
      file('size.json', JSON.stringify(broken)),
      /size\.json: cabinet\.carcasses\[0\]\.size\.width: .*more than 0.*-5/,
      /size\.json: units: .*in, mm.*furlong/,
    );
  });
  it('names a node that is not there', async () => {
    const design = demo('quillmoor');
    const gear = design.gear.map((item, i) =>
      i === 0 && item.place ? { ...item, place: { ...item.place, opening: 'opening-999' } } : item,
    );
    await refuses(file('stray.json', JSON.stringify({ ...design, gear })), /gear\[0\]\.place\.opening/, /opening-999/);
  });
});

describe('a command line that cannot be', () => {
  it.each([
    ['an unknown verb', ['polish', 'x.json'], /polish/],
    ['a copy that is no page', ['copy', demoPath('quillmoor'), '--to', 'x.txt'], /html/],
    ['an unknown option', ['check', demoPath('quillmoor'), '--loud'], /--loud/],
    ['no design', ['check'], /design/],
    ['one design too many', ['check', demoPath('quillmoor'), demoPath('quillmoor')], /argument/],
    ['no folder for the packet', ['packet', demoPath('quillmoor')], /--to/],
    ['no view to draw', ['draw', demoPath('quillmoor'), '--to', 'x.svg'], /--view/],
  ])('%s ends with 2 and says so', async (_, args, words) => {
    const { code, out, complaints } = await inProcess(args);
    expect([code, out]).toEqual([2, '']);
    expect(complaints).toMatch(words);
  });

  it('nothing at all shows how to use it, and ends with 2', async () => {
    const { code, complaints } = await inProcess([]);
    expect(code).toBe(2);
    for (const verb of ['check', 'inspect', 'weigh', 'packet', 'draw']) expect(complaints).toContain(verb);
  });

  it('a call for help ends with 0', async () => {
    expect(await inProcess(['--help'])).toMatchObject({ code: 0, complaints: '' });
    expect((await inProcess(['draw', '--help'])).out).toContain('--view');
  });
});

describe('with --json', () => {
  it('bad input is one JSON document too, beside the words', async () => {
    const { code, out, complaints } = await inProcess(['inspect', at('nowhere.json'), '--json']);
    expect(code).toBe(2);
    expect(JSON.parse(out)).toEqual({ problems: [{ at: '', says: 'there is no such file' }] });
    expect(complaints).toContain('nowhere.json');
  });

  it('so is a command line that cannot be', async () => {
    const { code, out } = await inProcess(['polish', '--json']);
    expect(code).toBe(2);
    expect(JSON.parse(out).problems).toHaveLength(1);
  });
});

describe('bad input', () => {
  it('leaves nothing behind, whatever should have been written', async () => {
    const broken = file('broken.json', '{');
    expect((await inProcess(['packet', broken, '--to', at('packet')])).code).toBe(2);
    expect((await inProcess(['draw', broken, '--view', 'plan', '--to', at('plan.svg')])).code).toBe(2);
    expect((await inProcess(['draw', demoPath('quillmoor'), '--view', 'nope', '--to', at('nope.svg')])).code).toBe(2);
    for (const path of ['packet', 'plan.svg', 'nope.svg']) expect(existsSync(at(path))).toBe(false);
  });

  it('names the views there are when one is asked for that is not', async () => {
    const { complaints } = await inProcess(['draw', demoPath('quillmoor'), '--view', 'nope', '--to', at('nope.svg')]);
    for (const name of ['nope', 'face-carcass-1', 'plan', 'side', 'A1']) expect(complaints).toContain(name);
  });

  it('is an ending that cannot be drawn', async () => {
    const { code, complaints } = await inProcess([
      'draw',
      demoPath('quillmoor'),
      '--view',
      'plan',
      '--to',
      at('plan.bmp'),
    ]);
    expect(code).toBe(2);
    expect(complaints).toContain('.svg');
  });

  it('is a file where a folder should be', async () => {
    const path = file('in-the-way', '');
    const { code, complaints } = await inProcess(['packet', demoPath('quillmoor'), '--to', path]);
    expect(code).toBe(2);
    expect(complaints).toContain('in-the-way');
  });
});
