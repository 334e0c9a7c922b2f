// npm run bench:window: the built window in a real browser: bytes at start, first paint, script time of a drag step.
import { gzipSync } from 'node:zlib';
import { openStand } from '../browser/harness.ts';

const MOVES = 40;

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

  const session = await page.context().newCDPSession(page);
  await session.send('Performance.enable');
  const scriptSeconds = async (): Promise<number> => {
    const { metrics } = await session.send('Performance.getMetrics');
    return metrics.find(({ name }) => name === 'ScriptDuration')?.value ?? 0;
  };
  const divider = page.getByRole('separator', { name: /^between row/ }).first();
  const box = await divider.boundingBox();
  if (!box) throw new Error('the large demo shows no divider between rows');
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  const before = await scriptSeconds();
  for (let move = 1; move <= MOVES; move++) await page.mouse.move(x, y + move / 2);
  const spent = (await scriptSeconds()) - before;
  await page.keyboard.press('Escape');
  await page.mouse.up();
  console.log(`a step of dragging a divider: ${((spent / MOVES) * 1000).toFixed(1)} ms of script`);
} finally {
  await stand.close();
}
