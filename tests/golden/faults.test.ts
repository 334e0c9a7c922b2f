import { expect, it } from 'vitest';
import { demoDesign, wholeFlow } from './flow.ts';

/** The ten ways in which the design is wrong, each with the rule that finds it, the part it names and how grave it is. */
const FAULTS = [
  ['body-in-space', 'carcass-2', 'stop'],
  ['carcass-gap', 'carcass-1', 'caution'],
  ['gear-in-room', 'gear-12', 'stop'],
  ['body-body', 'gear-19', 'stop'],
  ['cabinet-solves', 'opening-8', 'stop'],
  ['cabinet-solves', 'opening-5', 'stop'],
  ['rear-axle', '', 'stop'],
  ['payload', '', 'stop'],
  ['hatch-closed', 'carcass-3', 'stop'],
  ['body-zone', 'carcass-4', 'stop'],
] as const;

it('every one of the ten faults is found, and its notes name the same ten rules', async () => {
  const design = demoDesign('ten-faults');
  const { findings } = (await wholeFlow()).inspection(design);
  for (const [rule, part, severity] of FAULTS) {
    const hit = findings.filter((finding) => finding.rule === rule && (part === '' || finding.parts.includes(part)));
    expect(hit.length, `${rule} ${part}`).toBeGreaterThan(0);
    expect(
      hit.some((finding) => finding.severity === severity),
      `${rule} ${part} is a ${severity}`,
    ).toBe(true);
  }
  const named = design.notes.split('\n').flatMap((line) => /^\d+\. ([a-z-]+):/.exec(line)?.[1] ?? []);
  expect([...named].sort()).toEqual(FAULTS.map(([rule]) => rule).sort());
});
