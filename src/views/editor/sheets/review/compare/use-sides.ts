import { useMemo, useState } from 'react';
import { type Catalog, houseRules } from '../../../../../catalog/index.ts';
import { type Design, type Revision, readDesign } from '../../../../../design/index.ts';
import { type FitOut, solveFitOut } from '../../../../../fitout/index.ts';
import { readRevision } from '../../../../../revision/index.ts';
import { sayProblem } from '../../../../../says/index.ts';
import { useBench } from '../../../state/bench.ts';
import { useEditor } from '../../../state/use-editor.ts';

/** One of the two designs that are compared, solved. */
export interface Side {
  /** At the head of a column: `Revision A`. */
  readonly title: string;
  /** In the middle of a sentence: `revision A`. */
  readonly called: string;
  readonly design: Design;
  readonly fitout: FitOut;
}

export const NOW = 'now';

interface LoadedFile {
  readonly name: string;
  readonly design: Design;
}

export interface Sides {
  /** What can stand on either side: letters, newest last, other files, and the present design. */
  readonly choices: readonly { readonly value: string; readonly label: string }[];
  readonly from: string;
  readonly to: string;
  readonly chooseFrom: (key: string) => void;
  readonly chooseTo: (key: string) => void;
  /** Null where a letter has been altered since it was released. */
  readonly before: Side | null;
  readonly after: Side | null;
  readonly open: (file: File) => Promise<void>;
  /** What was wrong with the file that was chosen last. */
  readonly trouble: string;
}

const read = new WeakMap<Revision, Design | null>();
const solved = new WeakMap<Design, Side>();

/** A letter never changes, so that it is read once however often the present design does. */
const designOf = (revision: Revision): Design | null => {
  const known = read.get(revision);
  if (known !== undefined) return known;
  const result = readRevision(revision);
  const design = result.ok ? result.value : null;
  read.set(revision, design);
  return design;
};

const sideOf = (words: Pick<Side, 'title' | 'called'>, design: Design, catalog: Catalog): Side => {
  const known = solved.get(design);
  if (known?.title === words.title) return known;
  const side = { ...words, design, fitout: solveFitOut(design, catalog, houseRules(catalog, design.houseRules)) };
  solved.set(design, side);
  return side;
};

const chosenOf = (keys: readonly string[], chosen: string | null, usual: string): string =>
  chosen !== null && keys.includes(chosen) ? chosen : usual;

/** The two designs to compare: the newest letter and the present design, until someone chooses otherwise. */
export const useSides = (): Sides => {
  const { catalog } = useBench();
  // While an older design is held up in the bay, the present one is the one at the start of that gesture.
  const design = useEditor((editor) => editor.gesture ?? editor.history.design);
  const [files, setFiles] = useState<readonly LoadedFile[]>([]);
  const [chosenFrom, setFrom] = useState<string | null>(null);
  const [chosenTo, setTo] = useState<string | null>(null);
  const [trouble, setTrouble] = useState('');
  const choices = [
    ...design.revisions.map(({ letter }) => ({ value: letter, label: `revision ${letter}` })),
    ...files.map(({ name }) => ({ value: `file ${name}`, label: `file ${name}` })),
    { value: NOW, label: 'the present design' },
  ];
  const keys = choices.map(({ value }) => value);
  const [from, to] = [chosenOf(keys, chosenFrom, keys.at(-2) ?? NOW), chosenOf(keys, chosenTo, NOW)];
  const [before, after] = useMemo(
    () =>
      [from, to].map((key): Side | null => {
        if (key === NOW) return sideOf({ title: 'Now', called: 'now' }, design, catalog);
        const file = files.find(({ name }) => `file ${name}` === key);
        if (file) return sideOf({ title: file.name, called: file.name }, file.design, catalog);
        const revision = design.revisions.find(({ letter }) => letter === key);
        const frozen = revision ? designOf(revision) : null;
        return frozen && sideOf({ title: `Revision ${key}`, called: `revision ${key}` }, frozen, catalog);
      }),
    [from, to, design, files, catalog],
  );
  const open = async (file: File): Promise<void> => {
    const result = readDesign(await file.text());
    if (!result.ok) {
      const [first] = result.error;
      setTrouble(`${file.name}: ${first ? sayProblem(first) : 'cannot be read'}`);
      return;
    }
    setTrouble('');
    setFiles([...files.filter(({ name }) => name !== file.name), { name: file.name, design: result.value }]);
    setFrom(`file ${file.name}`);
  };
  return {
    choices,
    from,
    to,
    chooseFrom: setFrom,
    chooseTo: setTo,
    before: before ?? null,
    after: after ?? null,
    open,
    trouble,
  };
};
