import { describe, expect, test } from 'vitest';
import { houseRules, standardCatalog } from '../../src/catalog/index.ts';

const catalog = standardCatalog();
const change = (rule: string, value: number, who = 'A. Shop') => ({ rule, value, who, why: 'measured on the bench' });

describe('house rules', () => {
  test('without changes every limit is the catalog’s own and nobody changed it', () => {
    const rules = houseRules(catalog, []);
    expect(rules.value('gap-trim')).toBe(6);
    expect(rules.record('gap-trim').changedBy).toBeNull();
    expect([...rules.all.keys()]).toEqual([...catalog.rules.keys()]);
    expect(rules.unknown).toEqual([]);
  });

  test('a change gives its value and its person, and leaves unit and source alone', () => {
    const rules = houseRules(catalog, [change('gap-trim', 9)]);
    const own = catalog.rules.get('gap-trim');
    expect(rules.record('gap-trim')).toEqual({
      ...own,
      value: 9,
      changedBy: { who: 'A. Shop', why: 'measured on the bench' },
    });
    expect(own?.value).toBe(6);
    expect(rules.value('gap-hatch-trim')).toBe(15);
  });

  test('of two changes of one rule the later holds', () => {
    const rules = houseRules(catalog, [change('gap-trim', 9), change('gap-trim', 7, 'B. Shop')]);
    expect(rules.value('gap-trim')).toBe(7);
    expect(rules.record('gap-trim').changedBy?.who).toBe('B. Shop');
  });

  test('an unknown id is refused by name', () => {
    const rules = houseRules(catalog, []);
    expect(() => rules.value('gap-nowhere')).toThrow(new RangeError('No house rule has the id "gap-nowhere"'));
    expect(() => rules.record('constructor')).toThrow(RangeError);
  });

  test('a change of a rule that does not exist is set aside, not applied', () => {
    const stale = change('gap-nowhere', 1);
    const rules = houseRules(catalog, [stale, change('gap-trim', 8)]);
    expect(rules.unknown).toEqual([stale]);
    expect(rules.all.has('gap-nowhere')).toBe(false);
    expect(rules.value('gap-trim')).toBe(8);
  });
});
