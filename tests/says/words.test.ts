import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { type Design, emptyDesign, FRESH_FITTINGS, type Opening } from '../../src/design/index.ts';
import { SURVEY_FACTS, VEHICLE_FACTS } from '../../src/envelope/index.ts';
import { CASE_IDS, WAY_KINDS, type WayOut } from '../../src/inspection/index.ts';
import {
  CAUTIONS,
  nameOfPart,
  sayAmount,
  sayCase,
  sayFitProblem,
  sayLength,
  sayPlace,
  sayProblem,
  sayWayOut,
} from '../../src/says/index.ts';
import { isFitProblemCode } from '../../src/says/say-fit-problem.ts';
import { hasProblemWords } from '../../src/says/say-problem.ts';
import { fitOut, node } from '../inspection/fixture.ts';

describe('amounts', () => {
  test.each<[number, string, string, string]>([
    [9.525, 'mm', '3/8 in', '9.5 mm'],
    [-9.525, 'mm', '−3/8 in', '−9.5 mm'],
    [0, 'mm', '0 in', '0 mm'],
    [0.02, 'mm', 'less than 1/16 in', 'less than 0.1 mm'],
    [45.359237, 'kg', '100 lb', '45.4 kg'],
    [0.0417, 'share', '4.2 %', '4.2 %'],
    [12.5, 'deg', '12.5°', '12.5°'],
    [0.929, 'factor', '0.93', '0.93'],
    [38, 'A', '38 A', '38 A'],
  ])('%d %s', (value, unit, inches, millimetres) => {
    expect(sayAmount(value, unit, 'in')).toBe(inches);
    expect(sayAmount(value, unit, 'mm')).toBe(millimetres);
  });
  test('lengths keep their sign and their smallest step', () => {
    expect(sayLength(-365.125, 'in')).toBe('−14 3/8 in');
  });
});

describe('cases and ways out', () => {
  test('every standard case has words, and none is its id', () => {
    for (const id of CASE_IDS) expect(sayCase(id)).not.toBe(id);
    expect(sayCase('night')).toBe('night');
  });

  const way = (kind: string, facts: WayOut['facts']): string =>
    sayWayOut({ kind, facts, design: emptyDesign('x', 'in'), valueAfter: 0, keepsLimit: false }, 'in', (id) =>
      id === 'opening-1' ? 'row 4' : id,
    );
  test('what a person would do', () => {
    expect(way('move-carcass', { carcass: 'left carcass', axis: 'x', mm: 9.525 })).toBe(
      'Move left carcass 3/8 in forward',
    );
    expect(way('move-carcass', { carcass: 'left carcass', axis: 'y', mm: -9.525 })).toBe(
      'Move left carcass 3/8 in to the right',
    );
    expect(way('shrink-carcass', { carcass: 'left carcass', size: 'width', mm: 25.4 })).toBe(
      'Make left carcass 1 in narrower',
    );
    expect(way('grow-carcass', { carcass: 'left carcass', size: 'height', mm: 25.4 })).toBe(
      'Make left carcass 1 in higher',
    );
    expect(way('move-gear', { gear: 'rope bag', axis: 'across', mm: 25.4 })).toBe(
      'Move rope bag 1 in to the right in its opening',
    );
    expect(way('move-gear', { gear: 'rope bag', axis: 'corner', mm: 40 })).toBe(
      'Move rope bag into the near corner of its opening',
    );
    expect(way('turn-gear', { gear: 'rope bag', stance: 'on-side', turnDeg: 0 })).toBe(
      'Turn rope bag: on its side, at 0°',
    );
    expect(way('grow-opening', { opening: 'opening-1', mm: 12.7 })).toBe('Make row 4 1/2 in larger');
    expect(way('move-gear-elsewhere', { gear: 'rope bag', opening: 'opening-1' })).toBe('Move rope bag to row 4');
    expect(way('let-slide-be-chosen', { opening: 'opening-1' })).toBe(
      'Let the slide of row 4 be chosen by load and depth',
    );
    expect(way('saw-in-half', {})).toBe('Saw in half');
  });
  test('every kind has words of its own', () => {
    for (const kind of WAY_KINDS) expect(way(kind, { gear: 'g', carcass: 'c', opening: 'o', mm: 1 })).not.toBe(kind);
  });
});

describe('problems', () => {
  test('a place in the document as people say it', () => {
    expect(sayPlace('survey.stations[2].left')).toBe('survey, station 3, left');
    expect(sayPlace('survey.closures[0].innerProfile')).toBe('survey, closure 1, inner profile');
    expect(sayPlace('cabinet.carcasses[1].size.width')).toBe('cabinet, carcass 2, size, width');
    expect(sayPlace('')).toBe('');
  });
  test('where, what, expected and found', () => {
    expect(
      sayProblem({
        at: 'survey.stations[1].xMm',
        code: 'out-of-order',
        expected: 'more than 700 mm, the station before',
        got: '300 mm',
      }),
    ).toBe(
      'Survey, station 2, x: does not stand forward of the station before; expected more than 700 mm, the station before, found 300 mm',
    );
    expect(sayProblem({ at: '', code: 'empty-file' })).toBe('The file is empty');
    expect(sayProblem({ at: 'x', code: 'odd-thing' })).toBe('X: odd thing');
  });
  test('every code that the rooms write has words', () => {
    const rooms = ['base', 'catalog', 'design', 'envelope'];
    const texts = rooms.flatMap((room) =>
      readdirSync(`src/${room}`, { recursive: true, encoding: 'utf8' })
        .filter((path) => path.endsWith('.ts'))
        .map((path) => readFileSync(`src/${room}/${path}`, 'utf8')),
    );
    const codes = texts.flatMap((text) =>
      [...text.matchAll(/(?:code: |\bfault\(|problem\(i, [^,]+, )'([a-z]+(?:-[a-z]+)*)'/g)].map(
        ([, code]) => code ?? '',
      ),
    );
    expect(codes.length).toBeGreaterThan(15);
    // Facts of survey and vehicle are no problems of a document: the inspection says them.
    const facts = new Set<string>([...SURVEY_FACTS, ...VEHICLE_FACTS]);
    const silent = [...new Set(codes)].filter(
      (code) => !hasProblemWords(code) && !isFitProblemCode(code) && !facts.has(code),
    );
    expect(silent).toEqual([]);
  });
  test('a problem of the fit-out', () => {
    const problem = {
      code: 'rules-fight',
      at: node('opening-1'),
      axis: 'up',
      needMm: 320,
      haveMm: 280,
      because: ['a'],
    } as const;
    expect(sayFitProblem(problem, 'mm', () => 'row 4')).toBe(
      'Sizes in row 4 cannot all hold: needs 320 mm high, has 280 mm',
    );
  });
});

describe('cautions', () => {
  test('each has a line for the screen and more for paper', () => {
    expect(new Set(CAUTIONS.map(({ id }) => id)).size).toBe(CAUTIONS.length);
    for (const { short, long } of CAUTIONS) {
      expect(short.length).toBeLessThanOrEqual(90);
      expect(long.length).toBeGreaterThan(short.length - 1);
    }
  });
});

describe('nameOfPart', () => {
  const empty = (id: string, name = ''): Opening => ({ id: node(id), name, content: { kind: 'empty' } });
  const drawer = (id: string, inside: Opening): Opening => ({
    id: node(id),
    name: '',
    content: {
      kind: 'fitted',
      fitting: {
        ...FRESH_FITTINGS.drawer(() => inside.id),
        inside,
      },
    },
  });
  const divided = (id: string, along: 'rows' | 'columns', ...openings: readonly Opening[]): Opening => ({
    id: node(id),
    name: '',
    content: {
      kind: 'divided',
      along,
      divider: 'panel',
      parts: openings.map((opening) => ({ size: { rule: 'share', weight: 1 }, opening })),
    },
  });
  const design: Design = {
    ...emptyDesign('x', 'in'),
    cabinet: {
      braces: [],
      carcasses: [
        {
          id: node('carcass-1'),
          name: 'left carcass',
          place: { x: { rule: 'at', mm: 0 }, y: { rule: 'at', mm: 0 }, z: { rule: 'at', mm: 0 } },
          facing: 'rear',
          size: { width: 1, height: 1, depth: 1 },
          material: 'm',
          backMaterial: 'm',
          joints: { corner: 'butt', dadoDepthMm: 0, back: { kind: 'none' } },
          edgeBand: null,
          chamfers: [],
          chases: [],
          wheelhouses: [],
          stand: { kind: 'none' },
          anchors: [],
          opening: divided(
            'opening-1',
            'columns',
            divided(
              'opening-2',
              'rows',
              drawer('opening-3', empty('opening-4')),
              drawer('opening-5', divided('opening-6', 'columns', empty('opening-7'), empty('opening-8'))),
            ),
            empty('opening-9', 'irons'),
          ),
        },
      ],
    },
  };
  test('openings by what fits them and where they stand', () => {
    const name = nameOfPart(design, null);
    expect(
      ['carcass-1', 'opening-1', 'opening-3', 'opening-4', 'opening-5', 'opening-7', 'opening-9'].map(name),
    ).toEqual([
      'left carcass',
      'opening 1',
      'drawer 1, row 1, column 1',
      'inside drawer 1, row 1, column 1',
      'drawer 2, row 2, column 1',
      'column 1, in drawer 2, row 2, column 1',
      'irons',
    ]);
  });
  test('parts by their own names, bought pieces with what they belong to, unknown ids by themselves', () => {
    const name = nameOfPart(
      design,
      fitOut({
        hardware: [
          {
            id: 'opening-3/latch',
            origin: node('opening-3'),
            carcass: null,
            from: 'hardware',
            item: 'latch-paddle',
            name: 'paddle latch',
            quantity: 1,
            lengthMm: null,
            at: null,
            mover: null,
          },
        ],
      }),
    );
    expect(name('opening-3/latch')).toBe('paddle latch of drawer 1, row 1, column 1');
    expect(name('wheelbase')).toBe('the wheelbase');
    expect(name('no-such-thing')).toBe('no-such-thing');
  });
});
