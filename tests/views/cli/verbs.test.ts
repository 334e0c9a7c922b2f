import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { printDesign } from '../../../src/design/index.ts';
import {
  bareVehicle,
  demo,
  demoPath,
  filesUnder,
  inProcess,
  outOfTheVehicle,
  PATIENCE_MS,
  scratch,
} from './command.ts';

const { at, sweep } = scratch();
vi.setConfig({ testTimeout: PATIENCE_MS });
beforeAll(() => {
  writeFileSync(at('out.json'), outOfTheVehicle());
  writeFileSync(at('bare.json'), bareVehicle());
});
afterAll(sweep);

/** The one JSON document on standard output; nothing on standard error. */
const json = async (args: readonly string[]) => {
  const ran = await inProcess([...args, '--json']);
  expect(ran.complaints).toBe('');
  return { code: ran.code, value: JSON.parse(ran.out) };
};

describe('check', () => {
  it('finds the demo jobs sound', async () => {
    for (const name of ['harrow-fell', 'quillmoor']) {
      expect(await json(['check', demoPath(name)])).toEqual({ code: 0, value: { problems: [] } });
      expect((await inProcess(['check', demoPath(name)])).out).toContain(': sound');
    }
  });
});

describe('survey', () => {
  /** The demo job with one reading changed. */
  const changed = (index: number, mm: number): string => {
    const design = demo('harrow-fell');
    const readings = design.survey.readings.map((reading, i) =>
      i === index ? { ...reading, value: reading.value + mm } : reading,
    );
    return printDesign({ ...design, survey: { ...design.survey, readings } });
  };

  it('adjusts readings that agree and says nothing', async () => {
    const { code, value } = await json(['survey', demoPath('harrow-fell')]);
    expect(code).toBe(0);
    expect(value).toMatchObject({ consistent: true, says: [] });
    expect(value.readings.length).toBe(demo('harrow-fell').survey.readings.length);
    for (const { readMm, adjustedMm, residualMm, suspect } of value.readings) {
      expect(readMm - adjustedMm).toBeCloseTo(residualMm, 6);
      expect(suspect).toBe(false);
    }
  });

  it('names the reading that was misread, with exit code 1', async () => {
    // Reading 39 is the diagonal of the floor; 20 mm is thirteen times what a tape is good for.
    writeFileSync(at('misread.json'), changed(38, 20));
    const { code, value } = await json(['survey', at('misread.json')]);
    expect(code).toBe(1);
    expect(value.consistent).toBe(false);
    const named = value.readings.filter(({ suspect }: { suspect: unknown }) => suspect === 'named');
    expect(named.map(({ id }: { id: string }) => id)).toEqual(['reading-39']);
    expect(value.says[0]).toMatch(/^STOP: Reading 39, floor diagonal, rear left to seat right is likely misread/);
    expect((await inProcess(['survey', at('misread.json')])).out).toContain('likely misread');
  });

  it('says so where nobody has entered readings', async () => {
    const { out } = await inProcess(['survey', demoPath('quillmoor')]);
    expect(out).toContain('no readings: sections count as they were typed');
  });
});

describe('inspect', () => {
  let inspected: ReturnType<typeof json>;
  beforeAll(() => {
    inspected = json(['inspect', at('out.json')]);
  });

  it('ends with 1 while a stop stands, with place, value, limit, source and words', async () => {
    const { code, value } = await inspected;
    expect(code).toBe(1);
    const stop = value.findings.find(({ rule }: { rule: string }) => rule === 'body-in-space');
    expect(stop).toMatchObject({ severity: 'stop', unit: 'mm', accepted: null });
    for (const key of ['value', 'limit', 'uncertainty']) expect(stop[key]).toEqual(expect.any(Number));
    for (const key of ['source', 'says', 'remedy']) expect(stop[key]).toEqual(expect.any(String));
    expect(stop.at).toEqual([
      [expect.any(Number), expect.any(Number), expect.any(Number)],
      [expect.any(Number), expect.any(Number), expect.any(Number)],
    ]);
    expect(stop.parts.length).toBeGreaterThan(0);
    for (const key of ['rules', 'bodies', 'pairs', 'movers', 'moverPairs'])
      expect(value.checked[key]).toEqual(expect.any(Number));
    expect(value.ms).toEqual(expect.any(Number));
  });

  it('ends with 0 where nothing is in the way', async () => {
    const { code, value } = await json(['inspect', at('bare.json')]);
    expect(value.findings.filter(({ severity }: { severity: string }) => severity === 'stop')).toEqual([]);
    expect(code).toBe(0);
  });

  it('does not count a stop that a named person lets stand, and still lists it', async () => {
    const { value } = await inspected;
    const design = JSON.parse(readFileSync(at('out.json'), 'utf8'));
    const stops = value.findings.filter(({ severity }: { severity: string }) => severity === 'stop');
    design.accepted = stops.map(({ rule, parts }: { rule: string; parts: string[] }) => ({
      rule,
      parts,
      who: 'R. Mapp',
      why: 'shown on the trestle, not in the vehicle',
      on: '',
    }));
    writeFileSync(at('accepted.json'), JSON.stringify(design));
    const after = await json(['inspect', at('accepted.json')]);
    expect(after.code).toBe(0);
    expect(after.value.findings).toHaveLength(value.findings.length);
    expect((await inProcess(['inspect', at('accepted.json')])).out).toContain('accepted by R. Mapp');
  });

  it('says the same to people', async () => {
    const { code, out } = await inProcess(['inspect', at('out.json')]);
    expect(code).toBe(1);
    expect(out).toMatch(/^STOP {5}\S/m);
    expect(out).toContain('source: ');
    // No colour: nobody sits at a terminal.
    expect(out).not.toContain('\u001b');
  });

  it('leaves the long searches out unless asked, and says so', async () => {
    const rules = ({ findings }: { findings: readonly { rule: string }[] }) => findings.map(({ rule }) => rule);
    const atOnce = await json(['inspect', demoPath('harrow-fell')]);
    expect(atOnce.value.thorough).toBe(false);
    expect(rules(atOnce.value)).not.toContain('carry-in');
    const { out } = await inProcess(['inspect', demoPath('harrow-fell')]);
    expect(out).toContain('Not searched: how carcasses are carried in');
    const thorough = await json(['inspect', demoPath('harrow-fell'), '--thorough']);
    expect(rules(thorough.value)).toContain('carry-in');
  }, 300_000);
});

describe('weigh', () => {
  it('gives every mass and every loading case', async () => {
    const { code, value } = await json(['weigh', demoPath('harrow-fell')]);
    expect([0, 1]).toContain(code);
    expect(value.cases.length).toBeGreaterThan(2);
    for (const load of value.cases) {
      expect(load.frontKg + load.rearKg).toBeCloseTo(load.totalKg, 6);
      for (const key of ['name', 'leftShare', 'cgHeightMm', 'cg', 'ssf', 'margins']) expect(load).toHaveProperty(key);
    }
    const sum = value.masses.reduce((all: number, { kg }: { kg: number }) => all + kg, 0);
    expect(sum).toBeCloseTo(value.total.kg, 6);
    for (const key of ['id', 'name', 'kg', 'at', 'sigmaKg']) expect(value.masses[0]).toHaveProperty(key);
    // As received is the slip. Fitted adds the gear as listed, and everything else with the contingency on it.
    const slip = demo('harrow-fell').vehicle.slip;
    expect(value.cases[0].totalKg).toBeCloseTo((slip?.frontKg ?? 0) + (slip?.rearKg ?? 0), 9);
    const gear = value.masses
      .filter(({ kind }: { kind: string }) => kind === 'gear')
      .reduce((all: number, { kg }: { kg: number }) => all + kg, 0);
    const added = gear + (value.total.kg - gear) * (1 + value.contingencyShare);
    expect(value.cases[1].totalKg - value.cases[0].totalKg).toBeCloseTo(added, 6);
  });

  it('lines its columns up', async () => {
    const { out } = await inProcess(['weigh', demoPath('quillmoor')]);
    const table = out.split('\n\n')[1]?.split('\n') ?? [];
    expect(table.length).toBeGreaterThan(3);
    expect(new Set(table.map((line) => line.length)).size).toBe(1);
  });
});

describe('packet', () => {
  it('writes what it lists, the same bytes every time, and ends with 1 while a stop stands', async () => {
    const first = await json(['packet', at('out.json'), '--to', at('one')]);
    await json(['packet', at('out.json'), '--to', at('two')]);
    expect(first.code).toBe(1);
    const [one, two] = [filesUnder(at('one')), filesUnder(at('two'))];
    expect([...one.keys()].sort()).toEqual(first.value.files.map(({ path }: { path: string }) => path).sort());
    expect(two).toEqual(one);
    // Two sides, top, bottom and back.
    expect(first.value.parts).toBe(5);
    expect(first.value).toHaveProperty('sheets');
    expect(first.value).toHaveProperty('price');
    for (const { path, kind, about } of first.value.files) {
      expect(one.get(path)).not.toBe('');
      expect([typeof kind, typeof about]).toEqual(['string', 'string']);
    }
  });

  it('takes away drawings of an earlier packet that are not in this one, and nothing else', async () => {
    await inProcess(['packet', demoPath('quillmoor'), '--to', at('again')]);
    writeFileSync(at('again', 'my-notes.txt'), 'keep');
    expect(existsSync(at('again', 'drawings', 'A1.svg'))).toBe(true);
    const { code } = await inProcess(['packet', at('bare.json'), '--to', at('again')]);
    expect(code).toBe(0);
    expect(existsSync(at('again', 'drawings', 'A1.svg'))).toBe(false);
    expect(readFileSync(at('again', 'my-notes.txt'), 'utf8')).toBe('keep');
  });

  it('removes nothing outside its folder, whatever a manifest there says', async () => {
    await inProcess(['packet', at('bare.json'), '--to', at('odd')]);
    writeFileSync(at('precious.csv'), 'keep');
    const manifest = JSON.parse(readFileSync(at('odd', 'manifest.json'), 'utf8'));
    manifest.files.push({ path: '../precious.csv' }, { path: at('precious.csv') });
    writeFileSync(at('odd', 'manifest.json'), JSON.stringify(manifest));
    await inProcess(['packet', at('bare.json'), '--to', at('odd')]);
    expect(existsSync(at('precious.csv'))).toBe(true);
  });
});

describe('draw', () => {
  it.each(['face-carcass-1', 'plan', 'side', 'A1'])('writes the view %s', async (view) => {
    const { code, value } = await json(['draw', demoPath('quillmoor'), '--view', view, '--to', at('view.svg')]);
    expect(code).toBe(0);
    expect(value.files[0]).toMatchObject({ path: 'view.svg', kind: 'svg' });
    for (const { path } of value.files) {
      expect(readFileSync(at(path), 'utf8')).toMatch(/^<\?xml[\s\S]*<svg [\s\S]*<\/svg>\n$/);
      rmSync(at(path));
    }
  });

  it('writes all sheets of a part into one PDF', async () => {
    const { code, value } = await json(['draw', demoPath('quillmoor'), '--view', 'A1', '--to', at('a1.pdf')]);
    expect(code).toBe(0);
    expect(value.files).toEqual([{ path: 'a1.pdf', kind: 'pdf', about: 'A1 side left' }]);
    const pdf = readFileSync(at('a1.pdf'), 'latin1');
    expect(pdf.startsWith('%PDF-')).toBe(true);
    // The part with its tables takes two sheets.
    expect(pdf.match(/\/Type \/Page\b/g)).toHaveLength(2);
  });

  it('makes the folder that it writes to', async () => {
    const { code } = await inProcess([
      'draw',
      demoPath('quillmoor'),
      '--view',
      'plan',
      '--to',
      at('new', 'deep', 'p.svg'),
    ]);
    expect(code).toBe(0);
    expect(existsSync(at('new', 'deep', 'p.svg'))).toBe(true);
  });
});
