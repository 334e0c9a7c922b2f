import { useState } from 'react';
import { addStock, replaceStock, type StockRow } from '../../../../../design/index.ts';
import { sayListProblem } from '../../../../../says/index.ts';
import { readDesignStock } from '../../../../../shop/index.ts';
import { Button, Dialog, FileButton } from '../../../parts/index.ts';
import { useBench } from '../../../state/bench.ts';
import { useDesk } from '../../../state/use-desk.ts';
import { useEditorParts } from '../../../state/use-editor.ts';
import sheet from '../../sheet.module.css';

/** A list that was chosen: its rows, or what is wrong with it, a sentence each. */
type Chosen = { readonly file: string } & (
  | { readonly rows: readonly Omit<StockRow, 'id'>[] }
  | { readonly says: readonly string[] }
);

/** More sentences than this tell nobody more. */
const MOST_SAID = 60;

const COLUMNS = 'name, length, width, qty, price and material; thickness and offcut where you have them';

interface DialogProps<T> {
  readonly chosen: T;
  readonly onClose: () => void;
}

const Refused = ({ chosen, onClose }: DialogProps<{ readonly file: string; readonly says: readonly string[] }>) => (
  <Dialog
    title="This list cannot be read"
    reading
    onClose={onClose}
    foot={
      <Button look="main" onClick={onClose}>
        Close
      </Button>
    }
  >
    <p>
      Nothing was changed. {chosen.file} needs a header row with {COLUMNS}.
    </p>
    <ul className={sheet.problems}>
      {chosen.says.slice(0, MOST_SAID).map((says) => (
        <li key={says}>{says}</li>
      ))}
    </ul>
    {chosen.says.length > MOST_SAID ? <p>And {chosen.says.length - MOST_SAID} more.</p> : null}
  </Dialog>
);

const Offered = ({
  chosen,
  onClose,
  onTake,
}: DialogProps<{ readonly file: string; readonly rows: readonly unknown[] }> & {
  readonly onTake: (how: 'add' | 'replace') => void;
}) => (
  <Dialog
    title="Read a list of stock"
    onClose={onClose}
    foot={
      <>
        <Button onClick={onClose}>Cancel</Button>
        <Button onClick={() => onTake('replace')}>Put in place of it</Button>
        <Button look="main" onClick={() => onTake('add')}>
          Add to it
        </Button>
      </>
    }
  >
    <p>
      {chosen.file} has {chosen.rows.length} {chosen.rows.length === 1 ? 'row' : 'rows'}, and the design has a list
      already.
    </p>
  </Dialog>
);

/** Reads sheets and offcuts from a CSV file; a list with a fault changes nothing. */
export const ReadList = () => {
  const { catalog } = useBench();
  const { stock, edit } = useEditorParts((editor) => ({ stock: editor.history.design.stock, edit: editor.edit }));
  const tell = useDesk((desk) => desk.tell);
  const [chosen, setChosen] = useState<Chosen | null>(null);
  const take = (
    { file, rows }: { file: string; rows: readonly Omit<StockRow, 'id'>[] },
    how: 'add' | 'replace',
  ): void => {
    edit(`read ${file}`, (now) => (how === 'add' ? addStock(now, rows).design : replaceStock(now, rows)));
    tell(`${rows.length} ${rows.length === 1 ? 'row' : 'rows'} of stock read.`);
    setChosen(null);
  };
  const read = async (file: File): Promise<void> => {
    const result = readDesignStock(await file.text(), catalog);
    if (!result.ok) {
      const says = result.error.map((problem) => [problem.at, sayListProblem(problem)].filter((part) => part !== ''));
      setChosen({ file: file.name, says: says.map((parts) => `${parts.join(': ')}.`) });
    } else if (stock.length === 0) take({ file: file.name, rows: result.value }, 'add');
    else setChosen({ file: file.name, rows: result.value });
  };
  return (
    <>
      <FileButton
        label="List of stock"
        accept=".csv,text/csv"
        title={`A CSV file with ${COLUMNS}`}
        onFile={(file) => void read(file)}
      >
        Read a list…
      </FileButton>
      {chosen === null ? null : 'says' in chosen ? (
        <Refused chosen={chosen} onClose={() => setChosen(null)} />
      ) : (
        <Offered chosen={chosen} onClose={() => setChosen(null)} onTake={(how) => take(chosen, how)} />
      )}
    </>
  );
};
