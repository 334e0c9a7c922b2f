import { createImprover } from '../../../shop/index.ts';
import type { Improved, ImproveRequest } from './layout-api.ts';

/** Turns between two looks at whether something got better: a fraction of a second. */
const TURNS = 200;

const work = ({ boards, seed }: ImproveRequest): void => {
  const improvers = boards.map((board) => createImprover(board.job, seed));
  const say = (goesOn: boolean): void => {
    const answer: Improved = { layouts: improvers.map((improver) => improver.best()), goesOn };
    self.postMessage(answer);
  };
  for (let better = true; ; ) {
    if (better) say(true);
    const open = improvers.filter((improver) => !improver.done());
    if (open.length === 0) {
      say(false);
      return;
    }
    better = open.map((improver) => improver.step(TURNS)).some((each) => each);
  }
};

self.addEventListener('message', (event: MessageEvent<ImproveRequest>) => work(event.data));
