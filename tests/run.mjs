// npm test: every check there is, one after another, ending with one line of totals.
//   npm test -- --only=lint,unit     some stages only
// Plain JavaScript, so that it can start before the packages are there.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { BUILDS, freshen, installPackages, nodeTooOld, PlainFailure, TOP } from '../src/views/ground.mjs';
import { NEEDS, provide } from './needs.mjs';
import { lastLine, tallyOf, totals } from './tally.mjs';

/** @typedef {import('./tally.mjs').Tally} Tally */

/** A stage that takes longer than this hangs (ms). */
const LONGEST_STAGE = 30 * 60_000;

const scratch = mkdtempSync(join(tmpdir(), 'hatchwright-tests-'));
process.on('exit', () => rmSync(scratch, { recursive: true, force: true }));

/** @type {Tally} */
const ONE_PASSED = { passed: 1, failed: 0, notRun: [] };
/** @type {Tally} */
const ONE_FAILED = { passed: 0, failed: 1, notRun: [] };

/**
 * Runs a script of an installed package; its output is seen.
 * @param {string} script path under node_modules
 * @param {readonly string[]} args
 * @returns {boolean} whether it ended well
 */
const runScript = (script, args) => {
  const path = join(TOP, 'node_modules', script);
  return (
    spawnSync(process.execPath, [path, ...args], { cwd: TOP, stdio: 'inherit', timeout: LONGEST_STAGE }).status === 0
  );
};

/**
 * @param {string} title
 * @param {string} script
 * @param {readonly string[]} args
 * @returns {Tally}
 */
const check = (title, script, args) => {
  const well = runScript(script, args);
  console.log(`${well ? 'passed' : 'FAILED'}: ${title}`);
  return well ? ONE_PASSED : ONE_FAILED;
};

/**
 * @param {string} config
 * @returns {Tally}
 */
const runVitest = (config) => {
  const file = join(scratch, `${config}.json`);
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${file}`];
  const well = runScript('vitest/vitest.mjs', ['run', '-c', config, ...reporters]);
  return tallyOf(existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : null, well);
};

/**
 * What vitest would run, by name, for the case that it cannot.
 * @param {string} config
 * @returns {readonly string[]}
 */
const listTests = (config) => {
  const file = join(scratch, `${config}.list.json`);
  spawnSync(process.execPath, [join(TOP, 'node_modules/vitest/vitest.mjs'), 'list', '-c', config, `--json=${file}`], {
    cwd: TOP,
    stdio: 'ignore',
  });
  if (!existsSync(file)) return ['browser tests'];
  return JSON.parse(readFileSync(file, 'utf8')).map((/** @type {{ name: string }} */ test) => test.name);
};

const checkTypes = () =>
  totals([
    check('types', 'typescript/bin/tsc', ['-p', 'tsconfig.json']),
    check('types of the core, without the page', 'typescript/bin/tsc', ['-p', 'src/tsconfig.core.json']),
    check('types of the worker', 'typescript/bin/tsc', ['-p', 'src/views/editor/worker/tsconfig.json']),
  ]);

const checkStyle = () =>
  totals([
    check('style and imports', '@biomejs/biome/bin/biome', ['check', '.']),
    check('typed lint', 'oxlint/bin/oxlint', ['--type-aware', '--deny-warnings', 'src', 'tests']),
  ]);

/** @returns {Tally} */
const buildEditor = () => {
  try {
    console.log(freshen(BUILDS.editor) ? 'passed: the editor builds' : 'passed: the editor is built');
    return ONE_PASSED;
  } catch (error) {
    console.log(`FAILED: the editor builds. ${error instanceof Error ? error.message : ''}`);
    return ONE_FAILED;
  }
};

const BROWSER_CONFIG = 'vitest.browser.config.ts';

const runBrowser = () => {
  const built = buildEditor();
  if (built.failed === 0 && provide(NEEDS.chromium)) return totals([built, runVitest(BROWSER_CONFIG)]);
  return totals([built, { passed: 0, failed: 0, notRun: listTests(BROWSER_CONFIG) }]);
};

/** @type {Readonly<Record<string, () => Tally>>} */
const STAGES = {
  types: checkTypes,
  lint: checkStyle,
  unit: () => {
    // Readers of our papers and router files that are none of ours.
    provide(NEEDS.poppler);
    provide(NEEDS.ezdxf);
    provide(NEEDS.openpyxl);
    return runVitest('vitest.config.ts');
  },
  browser: runBrowser,
};

const askedStages = () => {
  const asked = process.argv.slice(2).flatMap((word) => word.replace(/^--only=/, '').split(','));
  const unknown = asked.find((name) => !Object.hasOwn(STAGES, name));
  if (unknown !== undefined)
    throw new PlainFailure(`"${unknown}" is no stage; there are: ${Object.keys(STAGES).join(', ')}.`);
  return asked.length === 0 ? Object.keys(STAGES) : asked;
};

/**
 * A stage that breaks counts as failed and does not keep the later ones from running.
 * @param {string} name
 * @returns {Tally}
 */
const runStage = (name) => {
  console.log(`\n── ${name} ──`);
  try {
    return STAGES[name]?.() ?? ONE_FAILED;
  } catch (error) {
    console.log(error);
    return ONE_FAILED;
  }
};

/** @returns {Tally} */
const runAll = () => {
  try {
    const tooOld = nodeTooOld(process.versions.node);
    if (tooOld) throw new PlainFailure(tooOld);
    const stages = askedStages();
    installPackages();
    return totals(stages.map(runStage));
  } catch (error) {
    console.log(error instanceof PlainFailure ? error.message : error);
    return ONE_FAILED;
  }
};

const tally = runAll();
console.log('');
for (const name of tally.notRun) console.log(`not run: ${name}`);
console.log(lastLine(tally));
process.exitCode = tally.failed > 0 ? 1 : 0;
