#!/usr/bin/env node
// The launcher of the command: makes sure that there is something fresh to run, then runs it. Standard output belongs
// to the command; whatever the launcher has to say goes to standard error.
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { BUILDS, begin, freshen, installPackages, TOP } from '../ground.mjs';

// Exit code 2, as for any input the command cannot work with: 1 would say that a design has a stop finding.
await begin(async () => {
  installPackages({ toStandardError: true });
  freshen(BUILDS.cli, { toStandardError: true });
  await import(pathToFileURL(join(TOP, BUILDS.cli.main)).href);
}, 2);
