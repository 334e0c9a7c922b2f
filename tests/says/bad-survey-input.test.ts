import { describe, expect, it } from 'vitest';
import type { Survey } from '../../src/design/index.ts';
import { checkScan, networkProblems, readScan } from '../../src/envelope/index.ts';
import { sayProblem, sayScanCheck } from '../../src/says/index.ts';
import { rules } from '../envelope/random-survey.ts';
import { asObj, asStl, boxMesh } from '../envelope/scan/meshes.ts';
import { boxSurvey } from '../envelope/surveys.ts';

type Row = Readonly<Record<string, unknown>>;

/** Four posts of a floor 1200 wide and 900 deep, the two at the rear as the frame, each front one held from both. */
const POSTS: readonly Row[] = [
  { id: 'mark-1', name: 'rear left', at: [0, 600, 0], fixed: [true, true, true] },
  { id: 'mark-2', name: 'rear right', at: [0, -600, 0], fixed: [true, true, true] },
  { id: 'mark-3', name: 'front left', at: [900, 600, 0], fixed: [false, false, true] },
  { id: 'mark-4', name: 'front right', at: [900, -600, 0], fixed: [false, false, true] },
];
const SIDE = 900;
/** √(1200² + 900²) */
const DIAGONAL = 1500;
const read = (from: number, to: number, value: number, more: Row = {}): Row => ({
  kind: 'distance',
  from: `mark-${from}`,
  to: `mark-${to}`,
  value,
  ...more,
});
const SOUND: readonly Row[] = [
  read(1, 3, SIDE),
  read(2, 4, SIDE),
  read(2, 3, DIAGONAL),
  read(1, 4, DIAGONAL),
  read(3, 4, 1200),
];
const surveyWith = (readings: readonly Row[], marks: readonly Row[] = POSTS): Survey =>
  boxSurvey({ marks, readings: readings.map((row, i) => ({ id: `reading-${i + 1}`, ...row })) });
const said = (survey: Survey): readonly string[] => networkProblems(survey, rules).map(sayProblem);
const but = (i: number, row: Row): readonly Row[] => SOUND.map((own, k) => (k === i ? row : own));

describe('readings that cannot be used are answered by what to measure or mend', () => {
  it('a sound net draws no word', () => {
    expect(said(surveyWith(SOUND))).toEqual([]);
  });

  it.each<readonly [string, Survey, readonly string[]]>([
    [
      'negative',
      surveyWith(but(0, read(1, 3, -900))),
      [
        'Survey, reading 1, value: is below zero; expected a length, or a depth, width or height reading with its sign, found -900 mm',
      ],
    ],
    [
      'zero',
      surveyWith(but(0, read(1, 3, 0))),
      ['Survey, reading 1, value: is zero; expected the reading itself; a blank row stays out, found 0 mm'],
    ],
    [
      'feet and inches swapped: 4 ft 11 1/16 in (1500 mm) written as 11 ft 4 1/16 in',
      // 59.055 in = 4 ft 11.055 in; the other way round 11 ft 4.055 in = 136.055 in = 3455.8 mm.
      surveyWith([
        ...but(2, read(2, 3, 136.0551 * 25.4)),
        { kind: 'along', from: 'mark-1', to: 'mark-3', value: SIDE },
        { kind: 'offset', from: 'mark-3', value: 600 },
      ]),
      [
        'Survey, reading 3, value: may be feet and inches that changed places; expected about 1500 mm; read it again, found 3455.8 mm',
      ],
    ],
    [
      'duplicate',
      surveyWith([...SOUND, read(1, 3, SIDE)]),
      [
        'Survey, reading 6: stands there twice; expected each reading once; a note where it was taken a second time, found reading-1',
      ],
    ],
    [
      'disconnected',
      surveyWith(
        [...SOUND, read(5, 6, 300)],
        [
          ...POSTS,
          { id: 'mark-5', name: 'lamp', at: [200, 0, 800] },
          { id: 'mark-6', name: 'hook', at: [500, 0, 800] },
        ],
      ),
      [
        'Survey, mark 5: hangs together with nothing else of the survey; expected a reading from one of these marks to a mark of the rest, and two more in other directions, found lamp, hook',
      ],
    ],
    [
      'rank-deficient: one mark that nothing holds upward',
      surveyWith(
        [
          ...SOUND,
          { kind: 'offset', from: 'mark-5', value: 10 },
          { kind: 'along', from: 'mark-1', to: 'mark-5', value: 200 },
        ],
        [...POSTS, { id: 'mark-5', name: 'lamp', at: [200, 0, 800] }],
      ),
      [
        'Survey, mark 5: is held by no reading; expected a height or a level reading of this mark, or a distance to a mark well above or below it, found lamp, up',
      ],
    ],
    [
      'rank-deficient: a net without a frame',
      surveyWith(
        SOUND,
        POSTS.map((post) => ({ ...post, fixed: [false, false, true] })),
      ),
      [
        'Survey, marks: these marks can still give together; expected 3 more readings in other directions, or marks fixed as the frame, found rear left, rear right, front left, front right',
      ],
    ],
    [
      'between a mark and itself',
      surveyWith(but(0, read(1, 1, SIDE))),
      ['Survey, reading 1, to: begins and ends at the same mark; expected two different marks, found mark-1'],
    ],
    [
      'to a mark that is not there',
      surveyWith(but(0, read(1, 9, SIDE))),
      ['Survey, reading 1, to: names a mark that is not there; expected a mark of the survey, found mark-9'],
    ],
  ])('%s', (_, survey, sentences) => {
    expect(said(survey)).toEqual(sentences);
  });
});

describe('bad meshes are told plainly', () => {
  const box = boxMesh([0, -600, 0], [1500, 600, 900], 3);
  const toldOf = (bytes: Uint8Array, unitMm = 1): readonly string[] => {
    const mesh = readScan(bytes);
    return mesh.ok
      ? sayScanCheck({ check: checkScan(mesh.value), unitMm, longestTapedMm: 1500 }, 'mm')
      : mesh.error.map(sayProblem);
  };
  const [first = [0, 0, 0]] = box.triangles;

  it('a sound one draws no word', () => {
    expect(toldOf(asStl(box))).toEqual([]);
  });

  it.each<readonly [string, () => readonly string[], readonly string[]]>([
    [
      'open',
      () => toldOf(asObj({ ...box, triangles: box.triangles.slice(1) })),
      ['It is open along 3 edges: where there is a hole it says nothing of the room.'],
    ],
    [
      'flipped',
      () => toldOf(asObj({ ...box, triangles: [[first[0], first[2], first[1]], ...box.triangles.slice(1)] })),
      ['Along 3 edges neighbouring triangles look to opposite sides: some of it is turned inside out.'],
    ],
    [
      'inside out',
      () => toldOf(asObj({ ...box, triangles: box.triangles.map(([a, b, c]) => [a, c, b]) })),
      ['It is closed and turned inside out.'],
    ],
    [
      'wrong unit',
      () => toldOf(asObj(box), 25.4),
      // 1500 inches are 38.1 m.
      [
        'In this unit it is 38100 mm long, the taped room 1500 mm: the unit is wrong, or it shows more than the cargo area.',
      ],
    ],
    [
      'not a mesh',
      () => toldOf(new TextEncoder().encode('width,height\n1200,900\n')),
      ['Scan: is not a scan that can be read; expected a GLB, PLY, STL or OBJ file, found width,height'],
    ],
    [
      'empty',
      () => toldOf(new Uint8Array()),
      ['Scan: is not a scan that can be read; expected a file with something in it, found 0 bytes'],
    ],
  ])('%s', (_, told, sentences) => {
    expect(told()).toEqual(sentences);
  });
});
