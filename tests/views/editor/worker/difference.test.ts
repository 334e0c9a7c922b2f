import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Design } from '../../../../src/design/index.ts';
import type { Answer, EngineWorker } from '../../../../src/views/editor/worker/api.ts';
import { engineOf } from '../../../../src/views/editor/worker/connect.ts';
import {
  changedBy,
  createReceiver,
  createSender,
  type Difference,
  difference,
} from '../../../../src/views/editor/worker/difference.ts';
import { demoDesign } from '../../../golden/flow.ts';

const SEED = 71;
const plain = fc.jsonValue({ maxDepth: 4 });

/** As a message crosses: a copy that shares nothing with what was sent. */
const crossed = (change: Difference): Difference => structuredClone(change);

it('says nothing of what is the same, however deep a copy it is', () => {
  const design = demoDesign('harrow-fell');
  expect(difference(design, design)).toBeNull();
  expect(difference(design, structuredClone(design))).toBeNull();
});

it('tells one moved size of a whole design in a few words, and leaves all else the very same object', () => {
  const before = demoDesign('harrow-fell');
  const after = structuredClone(before) as unknown as { cabinet: { carcasses: { size: { width: number } }[] } };
  const first = after.cabinet.carcasses[0];
  if (!first) throw new Error('the demo has no carcass');
  first.size.width += 25;
  const change = difference(before, after);
  // Five steps down to one number, against tens of thousands of letters of the design.
  expect(JSON.stringify(change).length).toBeLessThan(200);
  const made = changedBy(before, crossed(change)) as Design;
  expect(made).toEqual(after);
  expect(made.survey).toBe(before.survey);
  expect(made.gear).toBe(before.gear);
  expect(made.cabinet.carcasses[1]).toBe(before.cabinet.carcasses[1]);
  expect(made.cabinet.carcasses[0]?.opening).toBe(before.cabinet.carcasses[0]?.opening);
});

it('law: what it makes of the one value is the other, whatever the two are', () => {
  fc.assert(
    fc.property(plain, plain, (before, after) => {
      expect(changedBy(before, crossed(difference(before, after)))).toEqual(after);
    }),
    { seed: SEED, numRuns: 500 },
  );
});

it('law: along a line of values each is heard as it was told', () => {
  fc.assert(
    fc.property(
      fc.array(fc.record({ a: fc.array(fc.nat(3), { maxLength: 6 }), b: plain }), { maxLength: 8 }),
      (values) => {
        const [sender, receiver] = [createSender<unknown>(), createReceiver<unknown>()];
        expect(values.map((value) => receiver.hear(crossed(sender.tell(value))))).toEqual(values);
      },
    ),
    { seed: SEED, numRuns: 200 },
  );
});

it('lists that grow, shrink and change in the middle', () => {
  for (const [before, after] of [
    [
      [1, 2, 3],
      [1, 2],
    ],
    [
      [1, 2],
      [1, 2, 3],
    ],
    [[], [1]],
    [[1], []],
    [
      [{ a: 1 }, { a: 2 }, { a: 3 }],
      [{ a: 1 }, { a: 5 }, { a: 3 }],
    ],
    [
      [undefined, null, NaN, -0],
      [null, undefined, NaN, 0],
    ],
  ] as const)
    expect(changedBy(before, crossed(difference(before, after)))).toEqual(after);
});

it('a typed array crosses whole, and a field that went makes the group another one', () => {
  expect(difference(new Float32Array([1]), new Float32Array([1]))).toEqual({ whole: new Float32Array([1]) });
  expect(changedBy({ a: 1, b: 2 }, difference({ a: 1, b: 2 }, { a: 1 }))).toEqual({ a: 1 });
});

it('the page asks and hears whole values while only what changed crosses', async () => {
  const [designs, answers] = [createReceiver<Design>(), createSender<Answer>()];
  const heard: Design[] = [];
  const sizes: number[] = [];
  const judge = async (change: Difference, edit: number): Promise<Difference> => {
    sizes.push(JSON.stringify(change).length);
    heard.push(designs.hear(crossed(change)));
    const findings = [
      { rule: 'a', edit: 0 },
      { rule: 'b', edit },
    ];
    return crossed(answers.tell({ edit, inspection: { findings } } as unknown as Answer));
  };
  const nobody = (): never => {
    throw new Error('nobody asks for it here');
  };
  const worker: EngineWorker = {
    start: async () => undefined,
    judge,
    judgeWithWaysOut: judge,
    carryIn: nobody,
    largestBox: nobody,
    arrange: nobody,
  };
  const engine = engineOf(worker);
  const first = demoDesign('harrow-fell');
  const second = { ...first, title: 'another' };
  const one = await engine.judge(first, 1);
  const two = await engine.judge(second, 2);
  expect(heard).toEqual([first, second]);
  expect(heard[1]?.survey).toBe(heard[0]?.survey);
  expect(sizes[1]).toBeLessThan((sizes[0] ?? 0) / 100);
  expect([one.edit, two.edit]).toEqual([1, 2]);
  expect(two.inspection.findings[0]).toBe(one.inspection.findings[0]);
  expect(two.inspection.findings[1]).toEqual({ rule: 'b', edit: 2 });
});
