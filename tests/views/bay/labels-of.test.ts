import { describe, expect, test } from 'vitest';
import { boxShape } from '../../../src/bodies/index.ts';
import type { Gear, NodeId } from '../../../src/design/index.ts';
import type { FitOut } from '../../../src/fitout/index.ts';
import { labelsOf } from '../../../src/views/editor/bay/marks/labels-of.ts';
import { NOTHING_SOLVED } from '../cabinet/solved-face.ts';

const body = (id: string, origin: string, kind: FitOut['bodies'][number]['kind']): FitOut['bodies'][number] => ({
  id,
  origin: origin as NodeId,
  carcass: null,
  kind,
  name: id,
  shape: boxShape({ min: [0, 0, 0], max: [10, 20, 30] }),
  mover: null,
});

const gear = (id: string, firstDue: boolean): Gear => ({
  id: id as NodeId,
  name: `the ${id}`,
  kind: null,
  sizeMm: [10, 20, 30],
  massKg: 2,
  massFrom: 'measured',
  massSigmaKg: 0,
  needs: [],
  firstDue,
  user: '',
  note: '',
  place: null,
});

const sources = (selection: readonly string[]) => ({
  fitOut: {
    ...NOTHING_SOLVED,
    bodies: [
      body('gear-1/body', 'gear-1', 'gear'),
      body('gear-2/body', 'gear-2', 'gear'),
      body('device-1/face', 'device-1', 'device'),
      body('device-1/body', 'device-1', 'device'),
      body('device-1/plug', 'device-1', 'plug-room'),
      body('slide', 'opening-1', 'hardware'),
    ],
  },
  space: null,
  selection,
  design: { gear: [gear('gear-1', true), gear('gear-2', false)], units: 'mm' } as const,
});

const texts = (selection: readonly string[]): readonly string[] => labelsOf(sources(selection)).map(({ text }) => text);

describe('labelsOf', () => {
  test('first-due gear is named with its mass, other gear is not', () => {
    expect(texts([])).toEqual(['the gear-1, 2.0 kg']);
  });

  test('what is selected is named, by its node or by its part', () => {
    expect(texts(['gear-2'])).toContain('the gear-2, 2.0 kg');
    expect(texts(['gear-2/body'])).toContain('the gear-2, 2.0 kg');
  });

  test('a device is named once, hardware and the room of a plug never', () => {
    expect(texts(['device-1', 'slide'])).toEqual(['the gear-1, 2.0 kg', 'device-1/face']);
  });

  test('a name points at the middle of what it names', () => {
    expect(labelsOf(sources([]))[0]?.point).toEqual([5, 10, 15]);
  });
});
