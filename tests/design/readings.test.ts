import { describe, expect, it } from 'vitest';
import {
  addMarks,
  addReadings,
  addSurveyItem,
  changeMark,
  changeReading,
  type Design,
  emptyDesign,
  leaveOutReading,
  type NodeId,
  printDesign,
  readDesign,
  readReadingRows,
  removeMark,
  removeReading,
  tieStation,
} from '../../src/design/index.ts';

const FREE = [false, false, false] as const;
const marked = (): Design =>
  addMarks(emptyDesign('Marrow Hill', 'in'), [
    { name: 'sill left', at: [0, 600, 0], fixed: FREE },
    { name: 'sill right', at: [0, -600, 0], fixed: FREE },
    { name: 'roof left', at: [0, 500, 900], fixed: FREE },
  ]).design;

const sound = (design: Design): Design => {
  const read = readDesign(printDesign(design));
  if (!read.ok) throw new Error(JSON.stringify(read.error));
  expect(read.value).toEqual(design);
  return design;
};
const rowsOf = (text: string) => {
  const read = readReadingRows(text, marked());
  if (!read.ok) throw new Error(JSON.stringify(read.error));
  return read.value;
};
const faults = (text: string): readonly string[] => {
  const read = readReadingRows(text, marked());
  return read.ok ? [] : read.error.map(({ at, code }) => `${at} ${code}`);
};

describe('readReadingRows', () => {
  it('reads a headed sheet with tabs, marks by name, lengths as people type them', () => {
    const rows = rowsOf(
      'kind\tfrom\tto\tvalue\tinstrument\nacross\tsill right\tsill left\t47 1/4\tstick\nlevel\tsill right\tsill left\t-0,4°\n',
    );
    expect(rows).toHaveLength(2);
    // 47.25 in = 1200.15 mm.
    expect(rows[0]).toMatchObject({
      kind: 'across',
      from: 'mark-2',
      to: 'mark-1',
      instrument: 'stick',
      sigma: null,
      leftOut: null,
    });
    expect(rows[0]?.value).toBeCloseTo(1200.15, 9);
    expect(rows[1]).toMatchObject({ kind: 'level', value: -0.4, instrument: 'level' });
  });

  it('reads rows without a head in the stated order, quotes and blank lines included', () => {
    const rows = rowsOf('distance,mark-1,mark-3,"906 mm",tape,"second, careful"\n\noffset,mark-2,,-600 mm\n');
    expect(rows.map(({ kind, value, note }) => [kind, value, note])).toEqual([
      ['distance', 906, 'second, careful'],
      ['offset', -600, ''],
    ]);
  });

  it('brings nothing in by half: every fault with its row', () => {
    expect(faults('')).toEqual([' missing']);
    const told = faults('kind,from,to,value\nacross,sill right,sill left,600\nwidth,sill right,nobody,x\n');
    expect(told.toSorted()).toEqual(['row 3.kind not-allowed', 'row 3.to no-such-mark', 'row 3.value not-a-number']);
    expect(faults('kind,from,to,value,instrument\nacross,sill right,sill left,600,ruler')).toEqual([
      'row 2.instrument not-allowed',
    ]);
  });
});

describe('edits of marks and readings', () => {
  const reading = {
    kind: 'across',
    from: 'mark-2' as NodeId,
    to: 'mark-1' as NodeId,
    at: null,
    value: 1200,
    instrument: 'tape',
    sigma: null,
    note: '',
    leftOut: null,
  } as const;

  it('leave a sound document', () => {
    const { design, ids } = addReadings(marked(), [reading, { ...reading, note: 'again', value: 1203 }]);
    expect(ids).toEqual(['reading-1', 'reading-2']);
    const changed = sound(changeReading(design, 'reading-1' as NodeId, { value: 1201 }));
    expect(changed.survey.readings[0]?.value).toBe(1201);
    expect(sound(changeMark(changed, 'mark-1' as NodeId, { at: [0, 610, 0] })).survey.marks[0]?.at).toEqual([
      0, 610, 0,
    ]);
    const aside = sound(
      leaveOutReading(changed, 'reading-2' as NodeId, { who: 'J. Orrin', why: 'read from the wrong edge' }),
    );
    expect(aside.survey.readings[1]?.leftOut?.who).toBe('J. Orrin');
    expect(sound(removeReading(aside, 'reading-1' as NodeId)).survey.readings.map(({ id }) => id)).toEqual([
      'reading-2',
    ]);
  });

  it('removing a mark takes its readings along and unties section points', () => {
    const points = [
      [600, 0],
      [600, 400],
      [500, 900],
    ] as const;
    const station = addSurveyItem(addReadings(marked(), [reading]).design, 'stations', {
      xMm: 0,
      left: points,
      right: points,
    }).design;
    const none = [null, null, null];
    const tied = sound(
      tieStation(station, 'station-1' as NodeId, ['mark-1' as NodeId, null, 'mark-3' as NodeId], none),
    );
    const without = sound(removeMark(tied, 'mark-1' as NodeId));
    expect(without.survey.readings).toEqual([]);
    expect(without.survey.stations[0]?.leftMarks).toEqual([null, null, 'mark-3']);
    expect(() => tieStation(tied, 'station-1' as NodeId, [null], none)).toThrow('tieStation');
    expect(() => removeMark(tied, 'mark-9' as NodeId)).toThrow('mark-9');
  });

  it('a reading of a mark that is not there is refused with its place', () => {
    const { design } = addReadings(marked(), [{ ...reading, to: 'mark-9' as NodeId }]);
    const read = readDesign(printDesign(design));
    expect(read.ok ? '' : read.error[0]).toMatchObject({ at: 'survey.readings[0].to', code: 'no-such-node' });
  });
});
