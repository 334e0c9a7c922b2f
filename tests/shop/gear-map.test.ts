import { beforeAll, describe, expect, it } from 'vitest';
import { changeGear, type Design } from '../../src/design/index.ts';
import type { Flow } from '../../src/flow.ts';
import { gearPlaces } from '../../src/shop/gear-map/index.ts';
import {
  CARDS,
  createGearMap,
  type Drawing,
  drawingsToPdf,
  drawingToSvg,
  type GearMapData,
} from '../../src/shop/index.ts';
import { demoDesign, wholeFlow } from '../golden/flow.ts';
import { faces, pdfText } from './paper/poppler.ts';

let flow: Flow;
beforeAll(async () => {
  flow = await wholeFlow();
}, 60_000);

const mapOf = (design: Design): GearMapData =>
  createGearMap({ design, fitout: flow.fitOut(design), order: flow.openingOrder(design) });
const pagesOf = (name: (typeof CARDS)[number]['name'], data: GearMapData): readonly Drawing[] =>
  CARDS.find((card) => card.name === name)?.draw(data) ?? [];
const wordsOf = (pages: readonly Drawing[]): string =>
  pdfText(drawingsToPdf(pages, { title: 'x', subject: 'y' }, faces)).replace(/\s+/g, ' ');

const DEMOS = ['harrow-fell', 'ostrel-moor', 'quillmoor', 'skerrow-gap'] as const;

describe('where every item lives, on paper', () => {
  it('numbers the places of the whole cabinet from 1, each item in one of them', () => {
    for (const name of DEMOS) {
      const data = mapOf(demoDesign(name));
      const places = gearPlaces(data).flatMap((each) => each.places);
      expect(places.map(({ number }) => number)).toEqual(places.map((_, i) => i + 1));
      const housed = places.flatMap(({ gear }) => gear.map(({ id }) => id));
      expect(new Set(housed).size).toBe(housed.length);
      const placed = data.gear.filter(({ opening }) => opening !== null).map(({ id }) => id);
      expect([...housed].sort()).toEqual([...placed].sort());
    }
  });

  it('reads from the top left', () => {
    const [left] = gearPlaces(mapOf(demoDesign('harrow-fell')));
    // Five places: the tall one at the left begins highest, then four rows from the top down.
    const names = left?.places.map(({ room }) => room.name);
    expect(names).toEqual(['extinguishers', 'radio face', 'small drawer', 'instrument drawer', 'irons']);
  });

  it('takes one page for each face of the large demo', () => {
    const data = mapOf(demoDesign('harrow-fell'));
    expect(pagesOf('gear-map', data)).toHaveLength(data.carcasses.length);
  });

  it('names every item on the map, the card and the labels, with the place where it is', () => {
    const data = mapOf(demoDesign('harrow-fell'));
    for (const { name } of CARDS) {
      const words = wordsOf(pagesOf(name, data));
      for (const gear of data.gear.filter(({ opening }) => opening !== null))
        expect([name, gear.name, words.includes(gear.name.replace(/\s+/g, ' '))]).toEqual([name, gear.name, true]);
    }
    // The camera lives in the instrument drawer, which is place 4.
    expect(wordsOf(pagesOf('crew-card', data))).toMatch(/Thermal camera 4 Open hatch/);
  });

  it('begins the crew card with what is first due', () => {
    const data = mapOf(demoDesign('harrow-fell'));
    const words = wordsOf(pagesOf('crew-card', data));
    const all = words.indexOf('All gear by name');
    for (const { name, firstDue } of data.gear) expect([name, words.indexOf(name) < all]).toEqual([name, firstDue]);
  });

  it('has a label for each compartment', () => {
    const data = mapOf(demoDesign('quillmoor'));
    const words = wordsOf(pagesOf('compartment-labels', data));
    for (const { number, room } of gearPlaces(data).flatMap((each) => each.places))
      expect(words).toContain(`${number} ${room.name}`.slice(0, 30));
  });

  it('is black lines and words alone, and leaves nothing over the edge of the paper', () => {
    for (const demo of DEMOS)
      for (const card of CARDS)
        for (const { shapes, size } of card.draw(mapOf(demoDesign(demo)))) {
          expect(shapes.some(({ kind }) => kind === 'patch')).toBe(false);
          for (const shape of shapes) {
            const ends =
              shape.kind === 'line'
                ? [shape.from, shape.to]
                : shape.kind === 'polyline'
                  ? shape.corners.map(({ at }) => at)
                  : shape.kind === 'text'
                    ? [shape.at]
                    : [];
            for (const [x, y] of ends) {
              expect(x >= 0 && x <= size[0] && y >= 0 && y <= size[1]).toBe(true);
            }
          }
        }
  });

  it('gives the same bytes for the same design', () => {
    const design = demoDesign('quillmoor');
    for (const card of CARDS) {
      const write = (subject: Design): string =>
        card
          .draw(mapOf(subject))
          .map((page) => drawingToSvg(page))
          .join();
      expect(write(structuredClone(design))).toBe(write(design));
    }
  });

  it('stands a name of ten thousand letters, and a design without anything', () => {
    const design = demoDesign('quillmoor');
    const [item] = design.gear;
    const long = item ? changeGear(design, item.id, { name: 'w'.repeat(10_000) }) : design;
    const bare = { ...design, gear: [], cabinet: { ...design.cabinet, carcasses: [] } };
    for (const card of CARDS) {
      expect(card.draw(mapOf(long)).length).toBeLessThan(4);
      expect(wordsOf(card.draw(mapOf(bare)))).toMatch(/No (carcass|gear|compartment)/);
    }
  });
});
