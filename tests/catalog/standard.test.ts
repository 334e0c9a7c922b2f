import { describe, expect, test } from 'vitest';
import { type Catalog, SOURCE_NOTES, sourceTags, standardCatalog } from '../../src/catalog/index.ts';

const catalog = standardCatalog();

interface Named {
  readonly id: string;
  readonly words: string;
  readonly source: string;
}

const everything = (from: Catalog): readonly Named[] =>
  [from.materials, from.slides, from.hardware, from.gear, from.devices, from.rules].flatMap((table) =>
    [...table.values()].map((record) => ({
      id: record.id,
      words: 'about' in record ? record.about : record.name,
      source: record.source,
    })),
  );

/** Words with a capital inside a name that are units, abbreviations of the trade, thread sizes, or places whose law is meant. */
const CAPITALS = /^(M\d+|[VWNADE]|MPa|United|States|European)$/;

const properNames = (words: string): readonly string[] =>
  words
    .split(/[\s,;:()/×]+/)
    .slice(1)
    .filter((word) => /^\p{Lu}/u.test(word) && !CAPITALS.test(word));

describe('the standard catalog', () => {
  test('is checked once and remembered', () => {
    expect(standardCatalog()).toBe(catalog);
  });

  test('holds enough to fit out a vehicle', () => {
    expect(catalog.materials.size).toBeGreaterThanOrEqual(20);
    expect(catalog.slides.size).toBeGreaterThanOrEqual(10);
    expect(catalog.hardware.size).toBeGreaterThanOrEqual(45);
    expect(catalog.gear.size).toBeGreaterThanOrEqual(90);
    expect(catalog.devices.size).toBeGreaterThanOrEqual(40);
  });

  test('every table is found by the id that its record carries', () => {
    for (const table of [catalog.materials, catalog.slides, catalog.hardware, catalog.gear, catalog.devices])
      for (const [id, record] of table) expect(record.id).toBe(id);
  });

  test('every name appears once in its table', () => {
    for (const table of [catalog.materials, catalog.slides, catalog.hardware, catalog.gear, catalog.devices]) {
      const names = [...table.values()].map((record) => record.name);
      expect(names.filter((name, row) => names.indexOf(name) !== row)).toEqual([]);
    }
  });

  test('every source is a list of known tags, each once, and every tag is used', () => {
    const known = new Set(SOURCE_NOTES.map((note) => note.tag));
    expect(known.size).toBe(SOURCE_NOTES.length);
    const used = new Set<string>();
    for (const record of everything(catalog)) {
      const tags = sourceTags(record.source);
      expect([record.id, new Set(tags).size]).toEqual([record.id, tags.length]);
      for (const tag of tags) {
        expect([record.id, tag, known.has(tag)]).toEqual([record.id, tag, true]);
        used.add(tag);
      }
    }
    expect([...known].filter((tag) => !used.has(tag))).toEqual([]);
  });

  test('names are trade words: no marks, no proper names, no stray spaces', () => {
    for (const { id, words } of everything(catalog)) {
      expect([id, /[®™©@#]|https?:|\binc\b|\bltd\b|\bgmbh\b| {2}|^ | $/i.test(words)]).toEqual([id, false]);
      expect([id, properNames(words)]).toEqual([id, []]);
    }
  });
});

describe('source tags', () => {
  test('a list of tags is read in its order', () => {
    expect(sourceTags('slide guides; unverified')).toEqual(['slide guides', 'unverified']);
    expect(sourceTags('computed')).toEqual(['computed']);
  });
});
