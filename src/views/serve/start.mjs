// npm start: brings everything up to date, serves the editor to this machine and opens it.
import { spawn } from 'node:child_process';
import { dirname, join } from 'node:path';
import { parseArgs } from 'node:util';
import { BUILDS, begin, freshen, installPackages, isStale, PlainFailure, TOP } from '../ground.mjs';
import { serveFolder } from './server.mjs';

const USUAL_PORT = 4173;
const PORTS_TRIED = 50;

const HELP = `npm start [-- OPTIONS]
  --port N     serve on this port and no other (also: PORT=N npm start); 0 takes any free one
  --no-open    do not open a browser
`;

/**
 * @param {string | undefined} text
 * @returns {number | null} null when no port was asked for
 */
const askedPort = (text) => {
  if (text === undefined || text === '') return null;
  const port = Number(text);
  if (!Number.isInteger(port) || port < 0 || port > 65535)
    throw new PlainFailure(`"${text}" is not a port: a whole number from 0 to 65535 is expected.`);
  return port;
};

const readOptions = () => {
  try {
    const { values } = parseArgs({
      options: { port: { type: 'string' }, 'no-open': { type: 'boolean' }, help: { type: 'boolean', short: 'h' } },
    });
    return { port: askedPort(values.port ?? process.env.PORT), open: !values['no-open'], help: values.help ?? false };
  } catch (error) {
    if (error instanceof PlainFailure) throw error;
    throw new PlainFailure(`${error instanceof Error ? error.message : String(error)}\n${HELP}`);
  }
};

/**
 * The command that opens an address on this desktop, or null where there is none.
 * @param {NodeJS.Platform} platform
 * @param {NodeJS.ProcessEnv} env
 * @returns {readonly string[] | null}
 */
const opener = (platform, env) => {
  if (platform === 'darwin') return ['open'];
  if (platform === 'win32') return ['cmd', '/c', 'start', ''];
  return env.DISPLAY || env.WAYLAND_DISPLAY ? ['xdg-open'] : null;
};

/** @param {string} address */
const openBrowser = (address) => {
  const [command, ...args] = opener(process.platform, process.env) ?? [];
  if (command === undefined) return;
  const child = spawn(command, [...args, address], { stdio: 'ignore', detached: true });
  child.on('error', () => console.log('No browser could be opened from here; open the address by hand.'));
  child.unref();
};

await begin(async () => {
  const { port, open, help } = readOptions();
  if (help) return console.log(HELP);
  installPackages();
  if (isStale(BUILDS.editor)) {
    console.log('Building the editor…');
    freshen(BUILDS.editor);
  }
  const ports = port === null ? Array.from({ length: PORTS_TRIED }, (_, i) => USUAL_PORT + i) : [port];
  const served = await serveFolder({ root: join(TOP, dirname(BUILDS.editor.main)), ports });
  if (!served)
    throw new PlainFailure(
      port === null ? 'No free port was found; name one with --port.' : `Port ${port} is taken or not allowed.`,
    );
  console.log(`Hatchwright is open at ${served.address}`);
  if (port === null && served.port !== USUAL_PORT)
    console.log(
      `Port ${USUAL_PORT} was taken. A browser keeps work apart for each address: carry designs over as files.`,
    );
  console.log('It runs on this machine only. Stop it with Ctrl+C.');
  if (open) openBrowser(served.address);
  for (const signal of /** @type {const} */ (['SIGINT', 'SIGTERM']))
    process.once(signal, () => void served.close().then(() => process.exit(0)));
});
