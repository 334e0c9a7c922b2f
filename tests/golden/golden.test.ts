import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { demoDesign, wholeFlow } from './flow.ts';
import { GOLDEN_DESIGNS, goldenUrl, produced } from './produce.ts';

const flow = await wholeFlow();

describe.each(GOLDEN_DESIGNS)('%s', (name) => {
  it('gives the cut list, masses, hardware and findings that were read and kept', () => {
    for (const [file, text] of produced(flow, name))
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
