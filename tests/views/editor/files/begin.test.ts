import { expect, it } from 'vitest';
import { emptyDesign, printDesign } from '../../../../src/design/index.ts';
import { beginning } from '../../../../src/views/editor/files/begin.ts';
import { memoryVault } from './memory-vault.ts';

const newId = () => 'new';
const kept = (id: string, title: string) => ({ id, title, savedAt: 1, text: printDesign(emptyDesign(title, 'mm')) });

it('finds the design of this tab before that of the browser', async () => {
  const { vault } = memoryVault();
  await vault.put(kept('tab', 'of the tab'));
  await vault.put(kept('browser', 'of the browser'));
  const begun = await beginning(vault, ['tab', 'browser'], newId);
  expect([begun.id, begun.design.title, begun.found]).toEqual(['tab', 'of the tab', true]);
});

it('goes on to the next id when one is gone, and begins empty when all are', async () => {
  const { vault } = memoryVault();
  await vault.put(kept('browser', 'of the browser'));
  expect((await beginning(vault, ['gone', 'browser'], newId)).id).toBe('browser');
  const begun = await beginning(vault, ['gone'], newId);
  expect([begun.id, begun.found, begun.design.survey.stations.length]).toEqual(['new', false, 0]);
});

it('never opens over a kept design that it cannot read: it begins under a new id and says what is wrong', async () => {
  const { vault, held } = memoryVault();
  await vault.put({
    id: 'tab',
    title: 'from the future',
    savedAt: 1,
    text: '{"format":"hatchwright-design","version":99}',
  });
  const begun = await beginning(vault, ['tab'], newId);
  expect(begun.id).toBe('new');
  expect(begun.unreadable?.problems.map((problem) => problem.code)).toEqual(['newer-version']);
  expect(held.get('tab')?.text).toContain('99');
});

it('begins empty where the browser forbids a database', async () => {
  const { vault, breakWith } = memoryVault();
  breakWith(new Error('forbidden'));
  expect((await beginning(vault, ['tab'], newId)).found).toBe(false);
});
