import { describe, expect, test } from 'vitest';
import type { NodeId } from '../../../src/design/index.ts';
import {
  type DeviceRows,
  movedDevice,
  withDevice,
  withoutDevice,
} from '../../../src/views/editor/fittings/device-rows.ts';
import { withShelf } from '../../../src/views/editor/fittings/shelves.ts';

const id = (text: string): NodeId => text as NodeId;
const device = (name: string) => ({ id: id(name), device: 'radio-25' });
const rows: DeviceRows = [[device('a'), device('b')], [device('c')]];
const names = (list: DeviceRows): string => list.map((row) => row.map((one) => one.id).join('')).join('/');

describe('devices of a faceplate', () => {
  test('are added to a row or below the last one', () => {
    expect(names(withDevice(rows, 0, device('d')))).toBe('abd/c');
    expect(names(withDevice(rows, 2, device('d')))).toBe('ab/c/d');
  });

  test('a row that becomes empty goes', () => {
    expect(names(withoutDevice(rows, id('c')))).toBe('ab');
  });

  test('move along their row, to another row, and to a new one', () => {
    expect(names(movedDevice(rows, id('a'), 'right'))).toBe('ba/c');
    expect(names(movedDevice(rows, id('a'), 'down'))).toBe('b/ca');
    expect(names(movedDevice(rows, id('c'), 'up'))).toBe('abc');
    expect(names(movedDevice([[device('a'), device('b')]], id('b'), 'down'))).toBe('a/b');
  });

  test('stay where there is no way on', () => {
    expect(names(movedDevice(rows, id('a'), 'left'))).toBe('ab/c');
    expect(names(movedDevice(rows, id('c'), 'down'))).toBe('ab/c');
    expect(names(movedDevice(rows, id('nobody'), 'left'))).toBe('ab/c');
  });
});

describe('withShelf', () => {
  test('halves the tallest room', () => {
    expect(withShelf([], 600)).toEqual([300]);
    // rooms 100, 300, 200: the middle of 100 … 400
    expect(withShelf([100, 400], 600)).toEqual([100, 250, 400]);
  });
});
