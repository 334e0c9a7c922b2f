import { Command, CommanderError } from 'commander';
import { BadInput, complaintLine } from './bad-input.ts';
import type { Outcome } from './outcome.ts';
import type { ArrangeOptions } from './verbs/arrange.ts';
import type { BoxOptions } from './verbs/box.ts';
import type { ChangeOptions } from './verbs/change.ts';
import { check, problemsJson } from './verbs/check.ts';
import { inspect } from './verbs/inspect.ts';
import type { LayoutOptions } from './verbs/layout-settings.ts';
import type { PacketOptions } from './verbs/packet.ts';
import type { SheetOptions } from './verbs/sheet.ts';
import { survey } from './verbs/survey.ts';
import { weigh } from './verbs/weigh.ts';

/** Where the command reads its words from and says its own; a test hands in its own ends. */
export interface Terminal {
  readonly out: (text: string) => void;
  readonly complain: (text: string) => void;
}

const ABOUT =
  'Designs the cabinet behind the rear seat of a fire command vehicle: checks it, weighs it, and writes the papers for the saw. Figures are screening values; local codes and licensed practice decide.';

const EXIT_CODES = `
Exit code: 0 done; 1 done, and at least one stop finding stands; 2 bad input, nothing written.`;

interface Said {
  readonly json?: boolean;
}

const withJson = (command: Command): Command =>
  command.option('--json', 'print one JSON document on standard output and nothing else');

/** Verbs that bring much with them, writers of paper above all, come only when they are called for. */
const later = {
  box: async () => (await import('./verbs/box.ts')).box,
  arrange: async () => (await import('./verbs/arrange.ts')).arrange,
  change: async () => (await import('./verbs/change.ts')).change,
  carry: async () => (await import('./verbs/carry.ts')).carry,
  compare: async () => (await import('./verbs/compare.ts')).compare,
  copy: async () => (await import('./verbs/copy.ts')).copy,
  draw: async () => (await import('./verbs/draw.ts')).draw,
  layout: async () => (await import('./verbs/layout.ts')).layout,
  openings: async () => (await import('./verbs/openings.ts')).openings,
  packet: async () => (await import('./verbs/packet.ts')).packet,
  reply: async () => (await import('./verbs/reply.ts')).reply,
  sheet: async () => (await import('./verbs/sheet.ts')).sheet,
};

/** The one verb that takes lists in place of a design. */
const withLayout = (program: Command, done: (outcome: Outcome, said: Said) => void): void => {
  withJson(
    program.command('layout').description('sheet layouts with the sequence of cuts, for a design or any parts list'),
  )
    .argument(
      '<design|parts.csv>',
      'a design file; or parts: mark,length,width,qty,grain; also material,thickness,group',
    )
    .option(
      '--stock <stock.csv>',
      'sheets: name,length,width,qty,price; also material,thickness,offcut; a design has its own',
    )
    .option('--cut <tool>', 'saw, router or shear: a router goes round each part, a shear has no kerf')
    .option('--kerf <length>', 'width of the cut, or of the tool of a router')
    .option('--trim <length>', 'taken off each edge of a sheet')
    .option('--seconds <n>', 'how long to look for better layouts')
    .option('--stages <n>', 'rounds of cuts: 2, 3 or any')
    .option('--seed <n>', 'decides every choice that is free')
    .allowExcessArguments(false)
    .action(async (path: string, said: Said & LayoutOptions) => done(await (await later.layout())(path, said), said));
};

/** The paper that a survey begins with, before there is a design. */
const withSheet = (program: Command, done: (outcome: Outcome, said: Said) => void): void => {
  withJson(program.command('sheet').description('a blank survey sheet to print: what to measure, in order, and where'))
    .requiredOption('--closure <kind>', 'lift-hatch, hatch-glass, barn-door, tailgate, cap-door or side-door')
    .option('--class <class>', 'large-utility, mid-utility, pickup-cap or van', 'large-utility')
    .option('--paper <paper>', 'a4 or letter', 'a4')
    .requiredOption('--to <file.pdf>', 'the file to write')
    .allowExcessArguments(false)
    .action(async (said: Said & SheetOptions) => done((await later.sheet())(said), said));
};

/** The verb that looks for other places for what is stowed. */
const withArrange = (
  verb: (name: string, about: string) => Command,
  done: (outcome: Outcome, said: Said) => void,
): void => {
  verb('arrange', 'other places for gear and carcasses: better balance, easier lifts, first-due gear nearer')
    .option(
      '--keep <gear>',
      'an item that keeps its place, by id or name; may be given again',
      (one, all: string[]) => [...all, one],
      [],
    )
    .option('--keep-carcasses', 'no carcass changes sides')
    .option('--first <goal>', 'with --to: which one to write: balance, lifting or first-due')
    .option('--to <file>', 'write the design with that arrangement')
    .action(async (path: string, said: Said & ArrangeOptions) => done(await (await later.arrange())(path, said), said));
};

/** Verbs that show the openings of the cabinet and change what is in them. */
const withOpenings = (
  verb: (name: string, about: string) => Command,
  done: (outcome: Outcome, said: Said) => void,
): void => {
  verb('openings', 'every opening of the cabinet: its id, its inside size, and what is in it').action(
    async (path: string, said: Said) => done((await later.openings())(path), said),
  );
  verb('change', 'fits, divides or clears an opening, or sets values; says which findings come and go')
    .option('--in <opening>', 'the opening; a path of --set then begins in what it holds')
    .option('--fit <kind>', 'put a fitting into it: drawer, slide-out, board, …')
    .option('--divide <parts>', 'divide it: 2columns, 3rows, 2layers')
    .option('--clear', 'take out what it holds')
    .option(
      '--set <path=value>',
      'a value of the file, as size.width=600mm; may be given again',
      (one, all: string[]) => [...all, one],
      [],
    )
    .option('--stock <stock.csv>', 'put a list of sheets and offcuts in place of the stock of the design')
    .option('--to <file>', 'write the changed design; the same file or another')
    .action(async (path: string, said: Said & ChangeOptions) => done(await (await later.change())(path, said), said));
};

/** Verbs about what changed and what was said of it. */
const withReview = (
  verb: (name: string, about: string) => Command,
  done: (outcome: Outcome, said: Said) => void,
): void => {
  verb('copy', 'the review copy: one file that opens without a network')
    .requiredOption('--to <file.html>', 'the file to write')
    .option(
      '--with-shop [lists]',
      'put shop lists in as well: cut-list, hardware, price; all of them when none is named',
    )
    .action(async (path: string, said: Said & { readonly to: string; readonly withShop?: string | boolean }) =>
      done(await (await later.copy())(path, said.to, said.withShop), said),
    );
  verb('compare', 'what changed between two designs, in words and by number')
    .argument('<design-b>', 'the later one; design.json@A is revision A in it')
    .action(async (path: string, other: string, said: Said) => done(await (await later.compare())(path, other), said));
  verb('reply', "brings a reviewer's reply into the design file")
    .argument('<reply>', 'the reply file, or a message with the text block in it')
    .option('--to <file>', 'another file to write to')
    .action(async (path: string, from: string, said: Said & { readonly to?: string }) =>
      done((await later.reply())(path, from, said.to), said),
    );
};

/** The command with its verbs; each hands its outcome to `done`. */
const programOf = (terminal: Terminal, done: (outcome: Outcome, said: Said) => void): Command => {
  const program = new Command('hatchwright')
    .description(ABOUT)
    .exitOverride()
    .configureOutput({ writeOut: terminal.out, writeErr: terminal.complain })
    .addHelpText('after', EXIT_CODES)
    .helpCommand(false)
    .allowExcessArguments(false);
  const verb = (name: string, about: string): Command =>
    withJson(
      program.command(name).description(about).argument('<design>', 'a design file').allowExcessArguments(false),
    );
  verb('check', 'is the file sound? (schema and references only)').action((path: string, said: Said) =>
    done(check(path), said),
  );
  withSheet(program, done);
  withOpenings(verb, done);
  verb('survey', 'adjusts the readings; says which is likely misread, or which further one would tell').action(
    async (path: string, said: Said) => done(await survey(path), said),
  );
  verb('box', 'the largest carcass that stands over a spot, and what stops it on each side')
    .requiredOption('--depth <length>', 'the spot, forward of the sill')
    .option('--left <length>', 'the spot, to the left of the centre line; negative to the right', '0')
    .option('--underside <length>', 'how high it stands; the floor when left out')
    .option('--instead-of <carcass>', 'a carcass of the design that makes room for it')
    .action(async (path: string, said: Said & BoxOptions) => done(await (await later.box())(path, said), said));
  verb('inspect', 'all checks, each with value, limit, source and a way out')
    .option('--thorough', 'also how carcasses are carried in, and ways out of cautions; takes seconds', false)
    .action(async (path: string, said: Said & { readonly thorough: boolean }) =>
      done(await inspect(path, said.thorough), said),
    );
  verb('carry', 'how each carcass is carried in, in which order and by which steps').action(
    async (path: string, said: Said) => done(await (await later.carry())(path), said),
  );
  verb('weigh', 'masses, and what the axles carry in each loading case').action(async (path: string, said: Said) =>
    done(await weigh(path), said),
  );
  withArrange(verb, done);
  verb('packet', 'everything for the saw')
    .requiredOption('--to <dir>', 'the folder to write to, or one file that ends in .zip')
    .option('--labels <sheet>', 'the sheets of labels in hand: a4-14, letter-10, …')
    .option('--labels-from <n>', 'the first free label of a sheet that has been begun')
    .action(async (path: string, said: Said & PacketOptions) => done(await (await later.packet())(path, said), said));
  withLayout(program, done);
  verb('draw', 'one dimensioned view, or the drawing of one part')
    .requiredOption(
      '--view <name>',
      'face-<carcass>, plan, side, gear-map, crew-card, compartment-labels, or the mark of a part',
    )
    .requiredOption('--to <file>', 'the file to write: .svg, .pdf, or .dxf of a part or a template')
    .action(async (path: string, said: Said & { readonly view: string; readonly to: string }) =>
      done(await (await later.draw())(path, said.view, said.to), said),
    );
  withReview(verb, done);
  return program;
};

const printed = (json: unknown): string => `${JSON.stringify(json, null, 2)}\n`;

/**
 * Runs one command line (without node and script) and gives its exit code. Whatever goes wrong is said in words on
 * standard error; with `--json` standard output holds one JSON document in every case but a call for help.
 */
export const run = async (args: readonly string[], terminal: Terminal): Promise<0 | 1 | 2> => {
  let exitCode: 0 | 1 | 2 = 0;
  const wantsJson = args.includes('--json');
  const refuse = (bad: BadInput): 2 => {
    for (const complaint of bad.complaints) terminal.complain(`${complaintLine(complaint)}\n`);
    if (wantsJson) terminal.out(printed(problemsJson(bad)));
    return 2;
  };
  const program = programOf(terminal, (outcome, said) => {
    terminal.out(said.json === true ? printed(outcome.json) : `${outcome.lines.join('\n')}\n`);
    exitCode = outcome.exitCode;
  });
  try {
    await program.parseAsync(args, { from: 'user' });
    return exitCode;
  } catch (error) {
    if (error instanceof BadInput) return refuse(error);
    if (error instanceof CommanderError) {
      if (error.exitCode === 0) return 0;
      // Commander has already said on standard error what it did not understand.
      if (wantsJson) terminal.out(printed({ problems: [{ at: '', says: error.message }] }));
      return 2;
    }
    const says = error instanceof Error ? error.message : String(error);
    terminal.complain(`hatchwright failed, which is a fault of its own: ${says}\n`);
    if (wantsJson) terminal.out(printed({ problems: [{ at: '', says }] }));
    return 2;
  }
};
