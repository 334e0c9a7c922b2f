import { run } from './program.ts';

// A reader that has seen enough (`| head`) closes the pipe: nothing to complain about.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
});

process.exitCode = await run(process.argv.slice(2), {
  out: (text) => process.stdout.write(text),
  complain: (text) => process.stderr.write(text),
});
