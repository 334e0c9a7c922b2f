import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { standardCatalog } from '../../src/catalog/index.ts';
import { demoDesign, wholeFlow } from '../golden/flow.ts';
import { houseRulesPage, withStatuses } from './house-rules.ts';
import { consultedByDemos, roomsThatRead } from './house-rules-use.ts';

const { rules } = standardCatalog();
const page = (name: string): string => readFileSync(new URL(`../../docs/${name}`, import.meta.url), 'utf8');
const use = { checks: await consultedByDemos(), rooms: roomsThatRead([...rules.keys()]) };

describe('docs/house-rules.md', () => {
  it('is what npm run docs prints', () => {
    expect(page('house-rules.md')).toBe(houseRulesPage([...rules.values()], use));
  });

  it('has one row for each house rule', () => {
    const rows = [
      ...page('house-rules.md').matchAll(/^\| `([a-z0-9-]+)` \| .* \| .* \| .* \| .* \| .* \| .* \| .* \|$/gm),
    ];
    const listed = rows.map(([, id]) => id ?? '');
    expect(listed).toHaveLength(rules.size);
    expect(new Set(listed)).toEqual(new Set(rules.keys()));
  });

  it('finds in the source, whole or put together of pieces, every rule that a check looked up', () => {
    expect(use.checks.size).toBeGreaterThan(100);
    expect([...use.checks.keys()].filter((id) => !use.rooms.get(id)?.length)).toEqual([]);
  });

  it('tells truly that what nothing reads changes no answer', async () => {
    const flow = await wholeFlow();
    const design = demoDesign('harrow-fell');
    const answersWith = (changed: readonly string[]): string => {
      const houseRules = changed.map((rule) => ({
        rule,
        value: 2 * (rules.get(rule)?.value ?? 0) + 1,
        who: 'test',
        why: 'test',
      }));
      const other = { ...design, houseRules: [...design.houseRules, ...houseRules] };
      return JSON.stringify([flow.fitOut(other), flow.inspection(other)]);
    };
    const unread = [...rules.keys()].filter((id) => !use.rooms.get(id)?.length);
    expect(unread.length).toBeGreaterThan(0);
    expect(answersWith(unread) === answersWith([])).toBe(true);
    // The comparison can tell: a gap that is read does change the answer.
    expect(answersWith(['gap-trim']) === answersWith([])).toBe(false);
  });

  it('tells ids put together of pieces from those that only look like them', () => {
    // The pieces are an instrument and "-sigma"; "suspect-reading" is none. Gauge 10 is read, the engine bay's is not.
    expect(use.rooms.get('angle-gauge-sigma')).toContain('envelope');
    expect(use.rooms.get('suspect-reading-sigma')).toEqual([]);
    expect(use.rooms.get('wire-amps-10')).toEqual(['inspection']);
    expect(use.rooms.get('wire-amps-engine-10')).toEqual([]);
  });
});

describe('docs/checks.md', () => {
  it('says the status of the house rules of each row', () => {
    expect(page('checks.md')).toBe(withStatuses(page('checks.md'), rules));
    expect(page('checks.md').match(/; status: /g)?.length).toBeGreaterThan(50);
  });

  it('says one status for all, or each with its rules; and says it anew when the data changes', () => {
    // Two habits; then a habit beside a screening value, whose earlier words go.
    const row = (limit: string): string => `| \`payload\` | the whole | ${limit} | stop | 1 of 2 |`;
    const limits = '`gap-trim` 6, `gap-strut` 15';
    expect(withStatuses(row(limits), rules)).toBe(row(`${limits}; status: shop habit`));
    const mixed = '`side-imbalance-share` 0.04; `side-imbalance-stop-share` 0.07';
    expect(withStatuses(row(`${mixed}; status: standard`), rules)).toBe(
      row(
        `${mixed}; status: screening value for \`side-imbalance-stop-share\`; shop habit for \`side-imbalance-share\``,
      ),
    );
  });
});
