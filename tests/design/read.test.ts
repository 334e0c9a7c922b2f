import { describe, expect, it } from 'vitest';
import type { NodeId } from '../../src/design/index.ts';
import {
  addCarcass,
  DESIGN_VERSION,
  divideOpening,
  emptyDesign,
  fitOpening,
  freshCarcass,
  MOST_OPENINGS,
  printDesign,
  readDesign,
} from '../../src/design/index.ts';

const base = () => {
  const empty = emptyDesign('Marrow Hill', 'in');
  return addCarcass(empty, freshCarcass(empty));
};
const text = (change: (raw: Record<string, unknown>) => void): string => {
  const raw = JSON.parse(printDesign(base())) as Record<string, unknown>;
  change(raw);
  return JSON.stringify(raw);
};
const faults = (source: string) => {
  const read = readDesign(source);
  return read.ok ? [] : read.error;
};
const carcass = (raw: Record<string, unknown>): Record<string, unknown> =>
  (raw.cabinet as { carcasses: Record<string, unknown>[] }).carcasses[0] ?? {};

describe('readDesign', () => {
  it('reads back what it prints', () => {
    const design = fitOpening(base(), 'opening-1' as NodeId, 'drawer');
    expect(readDesign(printDesign(design))).toEqual({ ok: true, value: design });
  });

  it('places a truncated file at the line where it stops', () => {
    const cut = printDesign(base()).slice(0, 200);
    expect(faults(cut)).toMatchObject([
      { at: `line ${cut.split('\n').length}, column ${cut.length - cut.lastIndexOf('\n')}`, code: 'cut-short' },
    ]);
  });

  it('places a slip of the pen at its line and column', () => {
    expect(faults('{\n  "format": oops\n}')).toMatchObject([{ at: 'line 2, column 13', code: 'not-json' }]);
    expect(faults('{"width": NaN}')).toMatchObject([{ code: 'not-json', at: 'line 1, column 11' }]);
  });

  it('refuses what is no design, and a newer version, rather than half understand it', () => {
    expect(faults('[1]')).toMatchObject([{ code: 'not-a-design' }]);
    expect(faults('   ')).toMatchObject([{ code: 'empty-file' }]);
    expect(faults('{"format":"something"}')).toMatchObject([{ at: 'format', code: 'not-a-design' }]);
    const newer = text((raw) => {
      raw.version = DESIGN_VERSION + 1;
    });
    expect(faults(newer)).toMatchObject([{ at: 'version', code: 'newer-version', got: String(DESIGN_VERSION + 1) }]);
  });

  it('names an unknown fitting with its place and the kinds there are', () => {
    const odd = text((raw) => {
      carcass(raw).opening = { id: 'opening-1', name: '', content: { kind: 'fitted', fitting: { kind: 'hammock' } } };
    });
    expect(faults(odd)).toMatchObject([
      {
        at: 'cabinet.carcasses[0].opening.content.fitting.kind',
        code: 'unknown-fitting',
        got: '"hammock"',
        expected: expect.stringContaining('drawer'),
      },
    ]);
  });

  it('places a negative width, a missing material, an infinite number and a wrong key', () => {
    const negative = text((raw) => {
      carcass(raw).size = { width: -600, height: 500, depth: 700 };
    });
    expect(faults(negative)).toMatchObject([
      { at: 'cabinet.carcasses[0].size.width', code: 'too-small', expected: 'more than 0', got: '-600' },
    ]);
    const missing = text((raw) => {
      carcass(raw).material = undefined;
    });
    expect(faults(missing)).toMatchObject([{ at: 'cabinet.carcasses[0].material', code: 'missing' }]);
    expect(faults(text((raw) => void Object.assign(raw, { colour: 1 })))).toMatchObject([
      { at: '', code: 'unknown-key', got: 'colour' },
    ]);
    const infinite = printDesign(base()).replace('"width": 600', '"width": 1e999');
    expect(faults(infinite)).toMatchObject([{ at: 'cabinet.carcasses[0].size.width' }]);
  });

  it('finds ids used twice and gear that stands in no opening', () => {
    const twice = text((raw) => {
      const { carcasses } = raw.cabinet as { carcasses: object[] };
      carcasses.push({ ...carcasses[0], anchors: [] });
    });
    expect(faults(twice)).toMatchObject([
      { at: 'cabinet.carcasses[1].id', code: 'duplicate-id', got: 'carcass-1' },
      { at: 'cabinet.carcasses[1].opening.id', code: 'duplicate-id', got: 'opening-1' },
    ]);
    const lost = text((raw) => {
      raw.gear = [
        {
          id: 'gear-1',
          name: 'axe',
          sizeMm: [900, 300, 40],
          massKg: 4,
          massFrom: 'estimated',
          place: { opening: 'opening-9', at: [0, 0, 0] },
        },
      ];
    });
    expect(faults(lost)).toMatchObject([
      { at: 'gear[0].place.opening', code: 'no-such-node', got: '"opening-9"'.slice(1, -1) },
    ]);
  });

  it('answers a tree of ten thousand openings, wide or deep, without a hang', () => {
    const raw = JSON.parse(printDesign(base())) as Record<string, unknown>;
    carcass(raw).opening = 'HERE';
    // JSON.stringify recurses; the text is put together by hand from the outside in.
    let openText = '';
    let closeText = '';
    for (let i = 9_999; i >= 2; i--) {
      openText += `{"id":"opening-${i}","name":"","content":{"kind":"divided","along":"rows","divider":"panel","parts":[{"size":{"rule":"share","weight":1},"opening":`;
      closeText += '}]}}';
    }
    const deepText = JSON.stringify(raw).replace(
      '"HERE"',
      `${openText}{"id":"x","name":"","content":{"kind":"empty"}}${closeText}`,
    );
    expect(faults(deepText)).toMatchObject([{ code: 'too-deep' }]);

    carcass(raw).opening = {
      id: 'opening-1',
      name: '',
      content: {
        kind: 'divided',
        along: 'rows',
        divider: 'panel',
        parts: Array.from({ length: 10_000 }, (_, i) => ({
          size: { rule: 'share', weight: 1 },
          opening: { id: `o-${i}`, name: '', content: { kind: 'empty' } },
        })),
      },
    };
    expect(faults(JSON.stringify(raw))).toMatchObject([
      { at: 'cabinet.carcasses', code: 'too-many', expected: `at most ${MOST_OPENINGS} openings`, got: '10001' },
    ]);
  });

  it('refuses a file of fifty million characters before it parses it', () => {
    expect(faults(' '.repeat(50_000_000))).toMatchObject([{ code: 'too-large' }]);
  });
});

describe('divideOpening', () => {
  it('keeps what the opening held in the first room', () => {
    const fitted = fitOpening(base(), 'opening-1' as NodeId, 'faceplate');
    const divided = divideOpening(fitted, 'opening-1' as NodeId, 'rows', 3);
    const content = divided.cabinet.carcasses[0]?.opening.content;
    expect(content).toMatchObject({ kind: 'divided', parts: [{ opening: { content: { kind: 'fitted' } } }, {}, {}] });
  });
});
