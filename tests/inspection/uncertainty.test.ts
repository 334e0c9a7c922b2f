import { describe, expect, it } from 'vitest';
import { gapHalfWidth } from '../../src/envelope/index.ts';
import { demoDesign, wholeFlow } from '../golden/flow.ts';
import { GOLDEN_DESIGNS } from '../golden/produce.ts';

const flow = await wholeFlow();

/** Rules about a gap between the built cabinet and the vehicle as measured. */
const TO_THE_VEHICLE = ['body-in-space', 'body-obstacle', 'body-zone', 'hatch-closed', 'closure-swing'];
const FLOOR = 2;

describe.each(GOLDEN_DESIGNS)('%s: every fit and travel margin against the vehicle', (name) => {
  const design = demoDesign(name);
  const made = flow.space(design);
  const { findings, measured } = flow.inspection(design);
  const rules = flow.rules(design);

  it('carries the half width at 95 % of what it is measured to', () => {
    if (!made.ok) throw new Error('no cargo space');
    // Never better than the vehicle's spread and the build's alone: 2 · √(2² + 1²) = 4.47.
    const best = FLOOR * Math.hypot(rules.value('vehicle-allowance-sigma'), rules.value('build-sigma'));
    const worst = Math.max(
      gapHalfWidth(made.value, rules, 'anything'),
      ...Object.keys(made.value.bodySigmaMm).map((body) => gapHalfWidth(made.value, rules, { body })),
    );
    const margins = [...measured, ...findings].filter(({ rule }) => TO_THE_VEHICLE.includes(rule));
    expect(margins.length).toBeGreaterThan(0);
    for (const { rule, parts, uncertainty } of margins) {
      expect(uncertainty, `${rule} ${parts.join(' ')}`).toBeGreaterThanOrEqual(best - 1e-9);
      expect(uncertainty, `${rule} ${parts.join(' ')}`).toBeLessThanOrEqual(worst + 1e-9);
    }
  });

  it('is judged by it: stop beyond the doubt, caution within, nothing above', () => {
    for (const { rule, parts, value, limit, uncertainty } of measured) {
      if (!TO_THE_VEHICLE.includes(rule)) continue;
      const found = findings.find((own) => own.rule === rule && own.parts.join(' ') === parts.join(' '));
      if (value - limit >= uncertainty) expect(found, `${rule} ${parts.join(' ')}`).toBeUndefined();
      if (value - limit < -uncertainty) expect(found?.severity, `${rule} ${parts.join(' ')}`).toBe('stop');
    }
  });
});
