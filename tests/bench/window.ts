// npm run bench:window: the built window in a real browser: bytes at start, first paint, script time of a drag step.
import { gzipSync } from 'node:zlib';
import { openStand } from '../browser/harness.ts';

/** Moves of the hand in a lap to and fro, and laps; the first one warms up. */
const MOVES = 40;
const LAPS = 6;

const stand = await openStand();
try {
  const { page } = await stand.freshPage({ width: 1440, height: 900 });
  const bytes = { page: 0, worker: 0 };
  const reading: Promise<void>[] = [];
  page.on('response', (response) => {
    if (!response.url().endsWith('.js')) return;
    reading.push(
      response.body().then(
        (body) => {
          bytes[/worker|manifold/.test(response.url()) ? 'worker' : 'page'] += gzipSync(body).length;
        },
        () => undefined,
      ),
    );
  });
  await page.goto(stand.address);
  await page
    .getByRole('button', { name: /cabinet/i })
    .first()
    .click({ timeout: 120_000 });
  await page.locator('[data-face-board]').waitFor({ timeout: 120_000 });
  await page.locator('[role="application"] canvas').waitFor({ timeout: 120_000 });
  await Promise.all(reading);
  const paint = await page.evaluate(() =>
    performance.getEntriesByType('paint').map(({ name, startTime }) => ({ name, startTime })),
  );
  console.log(
    `script of the page: ${(bytes.page / 1000).toFixed(0)} kB gzip; of its worker: ${(bytes.worker / 1000).toFixed(0)} kB gzip`,
  );
  for (const { name, startTime } of paint) console.log(`${name}: ${startTime.toFixed(0)} ms`);

  // By the clock, and in processor time of the page's own thread: on a shared machine that draws in software the clock
  // counts the waits for a core as well.
  const scriptOf = async (timeDomain: 'timeTicks' | 'threadTicks'): Promise<() => Promise<number>> => {
    const session = await page.context().newCDPSession(page);
    await session.send('Performance.enable', { timeDomain });
    return async () => {
      const { metrics } = await session.send('Performance.getMetrics');
      return metrics.find(({ name }) => name === 'ScriptDuration')?.value ?? 0;
    };
  };
  const divider = page.getByRole('separator', { name: /^between row/ }).first();
  const box = await divider.boundingBox();
  if (!box) throw new Error('the large demo shows no divider between rows');
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  const drag = async (scriptSeconds: () => Promise<number>): Promise<readonly number[]> => {
    const laps: number[] = [];
    for (let lap = 0; lap < LAPS; lap++) {
      const before = await scriptSeconds();
      for (let move = 1; move <= MOVES; move++) await page.mouse.move(x, y + Math.min(move, MOVES - move));
      laps.push((((await scriptSeconds()) - before) / MOVES) * 1000);
    }
    return laps;
  };
  for (const [domain, words] of [
    ['threadTicks', "in processor time of the page's thread"],
    ['timeTicks', 'by the clock'],
  ] as const) {
    const [first = 0, ...warm] = await drag(await scriptOf(domain));
    const middle = [...warm].sort((a, b) => a - b)[Math.floor(warm.length / 2)] ?? 0;
    console.log(
      `a step of dragging a divider: ${middle.toFixed(1)} ms of script ${words}, ${first.toFixed(1)} ms in the first lap`,
    );
  }
  await page.keyboard.press('Escape');
  await page.mouse.up();
} finally {
  await stand.close();
}
