import { useEffect, useMemo, useState } from 'react';
import type { Design } from '../../../../../design/index.ts';
import { pairFigures } from '../../../../../revision/index.ts';
import { type SaidFigure, sayFigureRow } from '../../../../../says/index.ts';
import { Heading, Table, ToggleChip, tableStyles } from '../../../parts/index.ts';
import { useUnits } from '../../../state/use-units.ts';
import { knownFigures, reckonFigures } from '../../../worker/connect-figures.ts';
import sheet from '../../sheet.module.css';
import type { Side } from './use-sides.ts';

/** A hand that still works is not answered with two inspections. */
const REST_MS = 400;

type Reckoning = 'done' | 'busy' | 'broke';

/** Figures of both, reckoned beside the page once nobody has changed anything for a moment. */
const useReckoned = (before: Design, after: Design): Reckoning => {
  const [state, setState] = useState<Reckoning>('busy');
  useEffect(() => {
    const designs = [before, after];
    if (designs.every((design) => knownFigures(design) !== null)) {
      setState('done');
      return undefined;
    }
    setState('busy');
    let end: () => void = () => undefined;
    const timer = setTimeout(() => {
      end = reckonFigures(
        designs,
        () => setState('done'),
        () => setState('broke'),
      );
    }, REST_MS);
    return () => {
      clearTimeout(timer);
      end();
    };
  }, [before, after]);
  return state;
};

const FigureRow = ({ said }: { readonly said: SaidFigure }) => (
  <tr>
    <th scope="row">{said.name}</th>
    <td className={tableStyles.number}>{said.before}</td>
    <td className={tableStyles.number}>{said.after}</td>
    <td className={tableStyles.number}>{said.change === '' ? 'same' : said.change}</td>
  </tr>
);

/** Both are cut from what the later one has in stock: a difference is the cabinet's then. */
const useSameStock = (before: Design, { stock }: Design): Design =>
  useMemo(
    () => (before.stock === stock || before.stock.length + stock.length === 0 ? before : { ...before, stock }),
    [before, stock],
  );

/** By number: mass, axles, margins, sheets, price. */
export const FiguresPart = ({ before, after }: { readonly before: Side; readonly after: Side }) => {
  const units = useUnits();
  const [all, setAll] = useState(false);
  const then = useSameStock(before.design, after.design);
  const state = useReckoned(then, after.design);
  const [was, is] = [knownFigures(then), knownFigures(after.design)];
  if (state === 'broke') return <p role="alert">The figures could not be worked out.</p>;
  if (was === null || is === null)
    return (
      <>
        <Heading level={3} title="By number" aside="working it out…" />
        <p className={sheet.soft} role="status">
          Both designs are inspected and their sheets laid out.
        </p>
      </>
    );
  const pairs = pairFigures(was, is);
  const changed = pairs.filter((pair) => pair.before !== pair.after);
  const shown = all ? pairs : changed;
  return (
    <>
      <Heading
        level={3}
        title="By number"
        aside={`${changed.length} of ${pairs.length} figures changed`}
        actions={
          <ToggleChip pressed={all} onClick={() => setAll(!all)}>
            all figures
          </ToggleChip>
        }
      />
      {shown.length === 0 ? null : (
        <Table label="Figures before and after">
          <thead>
            <tr>
              <th>figure</th>
              <th className={tableStyles.number}>{before.title}</th>
              <th className={tableStyles.number}>{after.title}</th>
              <th className={tableStyles.number}>change</th>
            </tr>
          </thead>
          <tbody>
            {shown.map((pair) => (
              <FigureRow key={pair.id} said={sayFigureRow(pair, units)} />
            ))}
          </tbody>
        </Table>
      )}
    </>
  );
};
