import { describe, expect, it } from 'vitest';
import type { Change } from '../../src/revision/index.ts';
import {
  sayChange,
  sayCutWarning,
  sayFigureChange,
  sayFigureRow,
  sayHash,
  sayOlder,
  sayOutcome,
  sayRemark,
  sayStamp,
} from '../../src/says/index.ts';

const names: Readonly<Record<string, string>> = {
  'gear-4': 'thermal camera',
  'gear-5': 'helmet bag',
  'opening-2': 'drawer 2',
  'opening-7': 'tray 1',
  'carcass-1': 'left carcass',
};
const name = (id: string): string => names[id] ?? id;
const speech = { units: 'in', before: name, after: name } as const;

const change = (kind: Change['kind'], id: string, fields: Change['fields'] = []): Change => ({
  kind,
  id,
  node: 'gear',
  name: '',
  fields,
});

describe('what changed, in words', () => {
  it('says where gear went', () => {
    const moved = change('rehoused', 'gear-4', [
      { field: 'place.at', before: [0, 0, 0], after: [1, 0, 0] },
      { field: 'place.opening', before: 'opening-2', after: 'opening-7' },
    ]);
    expect(sayChange(moved, speech)).toBe('Thermal camera: stowed elsewhere, from drawer 2 to tray 1');
    const out = change('rehoused', 'gear-4', [
      { field: 'place', before: undefined, after: null },
      { field: 'place.opening', before: 'opening-2', after: undefined },
    ]);
    expect(sayChange(out, speech)).toBe('Thermal camera: stowed elsewhere, was in drawer 2, now without a place');
  });

  it('says sizes in the units of the reader', () => {
    // 600 mm is 23 5/8 in, 609.6 mm is 24 in.
    const wider = change('resized', 'carcass-1', [{ field: 'size.width', before: 600, after: 609.6 }]);
    expect(sayChange(wider, speech)).toBe('Left carcass: another size, width 23 5/8 in → 24 in');
    expect(sayChange(change('added', 'gear-5'), speech)).toBe('Helmet bag: added');
  });

  it('says figures before and after', () => {
    // 45.359237 kg is 100 lb.
    expect(sayFigureChange({ id: 'rear-axle crew', unit: 'kg', before: 45.359237, after: null }, 'in')).toBe(
      'Rear axle, full crew: 100 lb → not known',
    );
  });
});

describe('figures in a table', () => {
  it('says by how much a figure went up or down', () => {
    // 2 kg are 4.4 lb; 3 sheets less; money to the cent.
    const row = (id: string, unit: string, before: number | null, after: number | null) =>
      sayFigureRow({ id, unit, before, after }, 'in');
    expect(row('gear-mass', 'kg', 10, 12)).toEqual({
      name: 'Gear',
      before: '22.0 lb',
      after: '26.5 lb',
      change: '+4.4 lb',
    });
    expect(row('sheets', 'count', 8, 5)).toMatchObject({ before: '8', after: '5', change: '−3' });
    expect(row('price', 'money', 1200, 1234.5)).toMatchObject({ after: '1234.50', change: '+34.50' });
    expect(row('sheets', 'count', 5, 5).change).toBe('');
    expect(row('price', 'money', null, 5)).toMatchObject({ before: 'not known', change: '' });
  });
});

describe('revisions and replies, in words', () => {
  it('names the state of a design', () => {
    expect(sayStamp({ letter: 'B', draft: false })).toBe('rev B');
    expect(sayStamp({ letter: 'B', draft: true })).toBe('draft after B');
    expect(sayStamp({ letter: '', draft: true })).toBe('draft');
    expect(sayHash('0123456789abcdef0000')).toBe('0123 4567 89ab cdef');
  });

  it('warns of sheets cut from an older letter, and is silent where nothing is cut again', () => {
    const panel = (id: string) => ({ id, name: id, how: 'changed' as const });
    expect(sayCutWarning('A', ['top', 'shelf'].map(panel))).toBe('Cut from A: these 2 panels changed: top, shelf.');
    expect(
      sayCutWarning(
        'A',
        Array.from({ length: 8 }, (_, i) => panel(`p${i}`)),
      ),
    ).toBe('Cut from A: these 8 panels changed: p0, p1, p2, p3, p4, p5 and 2 more.');
    expect(sayCutWarning('A', [])).toBe('');
  });

  it('says what was asked and what became of it', () => {
    const reply = { id: 'x', letter: 'A', sha256: 'y', who: 'Chief Orr', on: '', remarks: [] };
    const base = {
      reply,
      index: 0,
      node: 'gear-4',
      gone: false,
      olderLetter: null,
      outcome: { state: 'open' },
    } as const;
    const swap = { kind: 'swap', part: 'gear-4', name: '', with: 'gear-5', withName: '', text: 'reach' } as const;
    expect(sayRemark({ ...base, remark: swap }, name)).toBe('Swap thermal camera and helmet bag: reach');
    const note = { kind: 'note', part: 'gear-9', name: 'old saw', text: 'heavy' } as const;
    expect(sayRemark({ ...base, gone: true, node: null, remark: note }, name)).toBe(
      'Old saw (no longer in the design): heavy',
    );
    expect(sayOutcome({ outcome: { state: 'not-done', who: 'R. Vane', on: '', because: 'no room' } })).toBe(
      'not done because no room (R. Vane)',
    );
    expect(sayOlder({ olderLetter: 'A' })).toContain('revision A');
    expect(sayOlder({ olderLetter: null })).toBe('');
  });
});
