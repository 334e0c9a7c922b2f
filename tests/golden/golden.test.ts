import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { FITTING_KINDS, openingsFrom } from '../../src/design/index.ts';
import { demoDesign, wholeFlow } from './flow.ts';
import { GOLDEN_DESIGNS, goldenUrl, produced } from './produce.ts';

const flow = await wholeFlow();

describe.each(GOLDEN_DESIGNS)('%s', (name) => {
  it('gives the lists, the price and the findings that were read and kept', async () => {
    for (const [file, text] of await produced(flow, name))
      expect(text, file).toBe(readFileSync(goldenUrl(name, file), 'utf8'));
  });

  it('has no stop', () => {
    const { findings } = flow.inspection(demoDesign(name));
    expect(findings.filter(({ severity }) => severity === 'stop')).toEqual([]);
  });

  it('comes out the same from an engine started anew', async () => {
    const again = await wholeFlow();
    expect(JSON.stringify(again.fitOut(demoDesign(name)))).toBe(JSON.stringify(flow.fitOut(demoDesign(name))));
    expect(JSON.stringify(again.inspection(demoDesign(name)))).toBe(JSON.stringify(flow.inspection(demoDesign(name))));
  });
});

describe('the demo designs', () => {
  it('use every kind of fitting in the pickup and the van alone', () => {
    const used = new Set(
      (['skerrow-gap', 'ostrel-moor'] as const).flatMap((name) =>
        demoDesign(name).cabinet.carcasses.flatMap(({ opening }) =>
          openingsFrom(opening).flatMap(({ content }) => (content.kind === 'fitted' ? [content.fitting.kind] : [])),
        ),
      ),
    );
    expect([...used].sort()).toEqual([...FITTING_KINDS].sort());
  });

  it('leave no gear without a place', () => {
    for (const name of GOLDEN_DESIGNS) expect(demoDesign(name).gear.filter(({ place }) => place === null)).toEqual([]);
  });
});
