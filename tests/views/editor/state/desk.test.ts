import { expect, it } from 'vitest';
import { createDesk } from '../../../../src/views/editor/state/desk.ts';

it('keeps the three newest facts and says the same thing once', () => {
  const desk = createDesk();
  for (const says of ['one', 'two', 'three', 'two', 'four']) desk.getState().tell(says);
  expect(desk.getState().briefs.map((brief) => brief.says)).toEqual(['three', 'two', 'four']);
});

it('forgets the fact that is sent away', () => {
  const desk = createDesk();
  desk.getState().tell('one');
  desk.getState().tell('two', 'trouble');
  const [first] = desk.getState().briefs;
  if (first) desk.getState().forget(first.id);
  expect(desk.getState().briefs.map((brief) => [brief.says, brief.tone])).toEqual([['two', 'trouble']]);
});
