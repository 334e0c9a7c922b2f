import { createImprover, highsSolver, type LinearSolver, proveTwoStage, recombine } from '../../../shop/index.ts';
import type { Improved, ImproveRequest } from './layout-api.ts';
import { loadSolver } from './load-solver.ts';

/** Turns between two looks at whether something got better: a fraction of a second. */
const TURNS = 200;

/** Turns of each board before the slower proof: a good layout may need none. */
const FIRST_ROUNDS = 30;

/** Null where the solver does not load: the turns go on, only proof and recombining are missing. */
const solverOrNone = (): Promise<LinearSolver | null> => loadSolver().then(highsSolver, () => null);

const work = async ({ boards, seed }: ImproveRequest): Promise<void> => {
  const improvers = boards.map((board) => createImprover(board.job, seed));
  const open = () => improvers.filter((improver) => !improver.done());
  const say = (goesOn: boolean): void => {
    const answer: Improved = { layouts: improvers.map((improver) => improver.best()), goesOn };
    self.postMessage(answer);
  };
  /** Works at all boards that can still get better; true when one did. */
  const round = (): boolean =>
    open()
      .map((improver) => improver.step(TURNS))
      .some((better) => better);
  say(true);
  let better = false;
  for (let rounds = 0; rounds < FIRST_ROUNDS && open().length > 0; rounds++) better = round() || better;
  if (better) say(true);
  const solver = open().length > 0 ? await solverOrNone() : null;
  if (solver !== null) {
    for (const improver of open()) proveTwoStage(improver, solver);
    say(true);
  }
  while (open().length > 0) {
    better = round();
    if (solver !== null) for (const improver of open()) better = recombine(improver, solver) || better;
    if (better) say(true);
  }
  say(false);
};

self.addEventListener('message', (event: MessageEvent<ImproveRequest>) => void work(event.data));
