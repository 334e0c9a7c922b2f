import type { Problem } from '../../../base/index.ts';
import { sayProblem } from '../../../says/index.ts';
import { Button, Dialog } from '../parts/index.ts';
import { useBench } from '../state/bench.ts';
import { useDesk } from '../state/use-desk.ts';
import styles from './bad-file-dialog.module.css';

interface BadFileDialogProps {
  readonly name: string;
  readonly problems: readonly Problem[];
}

/** A file that is no sound design: every fault with its place. What was open stays open. */
export const BadFileDialog = ({ name, problems }: BadFileDialogProps) => {
  const lay = useDesk((desk) => desk.lay);
  const { files } = useBench();
  return (
    <Dialog
      title={`“${name}” could not be opened`}
      onClose={() => lay(null)}
      foot={
        <>
          <Button onClick={() => void files.openFile()}>Open another file…</Button>
          <Button look="main" onClick={() => lay(null)}>
            Go on
          </Button>
        </>
      }
    >
      <p>The file was left as it is, and what you had open is still open.</p>
      <ul className={styles.list}>
        {problems.map((problem) => (
          <li key={`${problem.at} ${problem.code} ${problem.got ?? ''}`}>
            <span>{sayProblem(problem)}.</span>
            {problem.at === '' ? null : <span className={styles.place}>{problem.at}</span>}
          </li>
        ))}
      </ul>
    </Dialog>
  );
};
