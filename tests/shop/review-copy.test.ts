import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { loadSolids } from '../../src/bodies/index.ts';
import { standardCatalog } from '../../src/catalog/index.ts';
import { askQuestion, type Design, readDesign } from '../../src/design/index.ts';
import { createFlow } from '../../src/flow.ts';
import {
  createReviewData,
  DATA_MARK,
  fillReviewPage,
  pageJson,
  type ReviewData,
  SHOP_EXTRAS,
  type ShopExtra,
  STEP_MM,
} from '../../src/shop/index.ts';
import { base64, packCoordinates, packDirections } from '../../src/shop/review-copy/pack.ts';
import { coordinates, directions } from '../../src/views/review/scene/decode.ts';

const read = readDesign(readFileSync('assets/designs/harrow-fell.json', 'utf8'));
if (!read.ok) throw new Error('the demo does not read');
const demo = read.value;
const flow = createFlow({ catalog: standardCatalog(), solids: await loadSolids() });

const dataOf = (design: Design, withShop: readonly ShopExtra[] = []): ReviewData => {
  const space = flow.space(design);
  return createReviewData({
    design,
    fitout: flow.fitOut(design),
    catalog: flow.catalog,
    rules: flow.rules(design),
    space: space.ok ? space.value : null,
    inspection: flow.inspection(design),
    order: flow.openingOrder(design),
    withShop,
  });
};
const data = dataOf(demo);

describe('the data of a review copy', () => {
  it('holds every item of gear with its way to hand', () => {
    expect(data.gear.map(({ id }) => id)).toEqual(demo.gear.map(({ id }) => id));
    const camera = data.gear.find(({ name }) => name === 'Thermal camera');
    expect(camera?.motions).toBe('3 motions');
    expect(camera?.steps.map(({ says }) => says)[0]).toBe('open hatch');
    // Where it is taken, its drawer is out: the picture shows what the sentence says.
    const drawers = data.scene.movers.filter(({ closure }) => !closure).map(({ id }) => id);
    expect(drawers.filter((id) => (camera?.shares[id] ?? 0) > 0)).toHaveLength(1);
  });

  it('can be tapped wherever something stands', () => {
    const touch = new Set(data.scene.touch.map(({ id }) => id));
    for (const gear of demo.gear) expect(touch.has(gear.id)).toBe(gear.place !== null);
  });

  it('holds nothing of the shop unless it is asked for', () => {
    expect(data.shop).toBeNull();
    const text = JSON.stringify(data);
    for (const { id, name } of flow.catalog.materials.values()) {
      expect(text).not.toContain(`"${id}"`);
      expect(text).not.toContain(name);
    }
    for (const extra of SHOP_EXTRAS) {
      const { shop, ...rest } = dataOf(demo, [extra]);
      expect({ ...rest, shop: null }).toEqual(data);
      expect([
        (shop?.parts.length ?? 0) > 10,
        (shop?.hardware.length ?? 0) > 5,
        shop !== null && shop.price !== null,
      ]).toEqual(SHOP_EXTRAS.map((each) => each === extra));
    }
  });

  it('is the same for the same design', () => {
    expect(JSON.stringify(dataOf(structuredClone(demo)))).toBe(JSON.stringify(data));
  });

  it('carries the questions of the shop', () => {
    const { design, id } = askQuestion(demo, { text: 'Tray left or right?', about: 'opening-1' });
    expect(dataOf(design).questions).toEqual([{ id, text: 'Tray left or right?', about: 'opening-1' }]);
  });
});

describe('numbers on their way into the copy', () => {
  it('come back within half a step', () => {
    const mm = [0, -0.2, 1234.56, -3999.9, 12_000];
    const back = coordinates(packCoordinates(mm));
    mm.forEach((value, i) => {
      expect(Math.abs((back[i] ?? Number.NaN) - value)).toBeLessThanOrEqual(STEP_MM / 2);
    });
    const ways = [1, -1, 0, 0.5];
    const turned = directions(packDirections(ways));
    ways.forEach((value, i) => {
      expect(Math.abs((turned[i] ?? Number.NaN) - value)).toBeLessThanOrEqual(0.5 / 127);
    });
    expect(() => packCoordinates([20_000])).toThrow(RangeError);
  });

  it('are written as RFC 4648 does', () => {
    const texts = ['', 'f', 'fo', 'foo', 'foob', 'fooba', 'foobar'];
    expect(texts.map((text) => base64(new TextEncoder().encode(text)))).toEqual([
      '',
      'Zg==',
      'Zm8=',
      'Zm9v',
      'Zm9vYg==',
      'Zm9vYmE=',
      'Zm9vYmFy',
    ]);
  });
});

describe('data in a page', () => {
  const hostile = [
    '</script><script>alert(1)</script>',
    '<!--<script>',
    ']]>',
    `"'\`$\{1}$&$1`,
    '\u202Etxet desrever\u202C',
    '\u2028\u2029',
    '&lt;b&gt;',
    'x'.repeat(10_000),
  ];

  it('reads back the same and holds no sign that a page could take for its own', () => {
    const text = pageJson(hostile);
    expect(JSON.parse(text)).toEqual(hostile);
    expect(text).not.toMatch(/[<>&\u2028\u2029]/);
  });

  it('goes into its one place, whatever it says', () => {
    const evil = { ...data, title: hostile.join(' ') };
    const page = fillReviewPage(`<a>${DATA_MARK}</a>`, evil);
    expect(JSON.parse(page.slice(3, -4))).toEqual(JSON.parse(JSON.stringify(evil)));
    expect(() => fillReviewPage('<a></a>', data)).toThrow('no page');
    expect(() => fillReviewPage(DATA_MARK + DATA_MARK, data)).toThrow('no page');
  });
});
