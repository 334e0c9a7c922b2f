import { describe, expect, it } from 'vitest';
import { addGear, emptyDesign } from '../../../../src/design/index.ts';
import { findEntries, ranked } from '../../../../src/views/editor/frame/find-entries.ts';
import { NO_FIT_OUT } from '../solve-nothing.ts';

const piece = (name: string) => ({
  name,
  kind: null,
  sizeMm: [300, 200, 100] as const,
  massKg: 3,
  massFrom: 'measured' as const,
  massSigmaKg: 0,
  needs: [],
  firstDue: false,
  user: '',
  note: '',
  place: null,
});

const { design } = addGear(emptyDesign('any', 'in'), [piece('rope bag'), piece('thermal imager'), piece('europe map')]);
const entries = findEntries({
  design,
  fitOut: NO_FIT_OUT,
  findings: [],
  sayFinding: () => '',
  nameOf: (id) => id,
});
const titles = (typed: string) => ranked(entries, typed).map((entry) => entry.title);

describe('finding', () => {
  it('offers the six steps and the commands before anything is typed', () => {
    expect(titles('').slice(0, 6)).toEqual(['Survey', 'Gear', 'Cabinet', 'Inspect', 'Shop', 'Review']);
    expect(titles('')).not.toContain('rope bag');
  });

  it('puts a name that begins with the word before one that only holds it', () => {
    expect(titles('rope')).toEqual(['rope bag', 'europe map']);
  });

  it('wants every word, in any order, and also hears the kind', () => {
    expect(titles('imager therm')).toEqual(['thermal imager']);
    expect(titles('gear map')).toEqual(['europe map']);
    expect(titles('rope imager')).toEqual([]);
  });

  it('leads to the piece itself at its step', () => {
    expect(ranked(entries, 'rope bag')[0]?.plan).toEqual({
      kind: 'select',
      step: 'gear',
      ids: ['gear-1'],
      feeler: null,
    });
  });
});
