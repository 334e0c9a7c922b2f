import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readCatalog, standardCatalog } from '../../src/catalog/index.ts';

/** The standard catalog as plain data, fresh for each test. */
const plain = () => {
  const catalog = standardCatalog();
  return structuredClone({
    materials: [...catalog.materials.values()],
    slides: [...catalog.slides.values()],
    hardware: [...catalog.hardware.values()],
    gear: [...catalog.gear.values()],
    devices: [...catalog.devices.values()],
    rules: [...catalog.rules.values()],
  });
};

const placesOf = (data: unknown): readonly string[] => {
  const read = readCatalog(data);
  return read.ok ? [] : read.error.map((problem) => problem.at);
};

describe('reading a catalog', () => {
  test('what was read can be written and read again', () => {
    const read = readCatalog(JSON.parse(JSON.stringify(plain())));
    expect(read).toEqual({ ok: true, value: standardCatalog() });
  });

  test('a negative mass is refused at its place', () => {
    const data = plain();
    const broken = { ...data, gear: data.gear.map((kind, row) => (row === 3 ? { ...kind, massKg: -1 } : kind)) };
    expect(placesOf(broken)).toEqual(['gear[3].massKg']);
  });

  test('every fault of several is named', () => {
    const data = plain();
    const broken = {
      ...data,
      rules: data.rules.map((rule, row) => (row === 0 ? { ...rule, source: '', value: Number.NaN } : rule)),
      slides: data.slides.map((slide, row) => (row === 1 ? { ...slide, lengthsMm: [] } : slide)),
    };
    expect([...placesOf(broken)].sort()).toEqual(['rules[0].source', 'rules[0].value', 'slides[1].lengthsMm']);
  });

  test('two records of one id are refused at the second', () => {
    const data = plain();
    const twice = { ...data, materials: [...data.materials, ...data.materials.slice(0, 1)] };
    const read = readCatalog(twice);
    expect(read.ok ? [] : read.error).toEqual([
      { at: `materials[${data.materials.length}].id`, code: 'duplicate-id', got: data.materials[0]?.id },
    ]);
  });

  test('a field that no record has is refused, not dropped', () => {
    const data = plain();
    const broken = {
      ...data,
      devices: data.devices.map((device, row) => (row === 2 ? { ...device, watts: 5 } : device)),
    };
    expect(placesOf(broken)).toEqual(['devices[2]']);
  });

  test.each(['Birch-18', 'birch_18', 'aluminium-2.03', '-birch', 'birch-', ''])('the id "%s" is refused', (id) => {
    const data = plain();
    const broken = {
      ...data,
      materials: data.materials.map((record, row) => (row === 0 ? { ...record, id } : record)),
    };
    expect(placesOf(broken)).toEqual(['materials[0].id']);
  });

  test('a missing table is refused by its name', () => {
    const { gear: _without, ...rest } = plain();
    expect(placesOf(rest)).toEqual(['gear']);
  });

  test('nothing that is not a catalog is taken for one, and nothing throws', () => {
    fc.assert(
      fc.property(fc.anything(), (data) => {
        expect(readCatalog(data).ok).toBe(false);
      }),
      { seed: 20260, numRuns: 200 },
    );
  });
});
