import { useEffect, useRef, useState } from 'react';
import type { Box } from '../../../../../base/index.ts';
import { type Carcass, type Design, fillBoxWith } from '../../../../../design/index.ts';
import { BOX_ASIDE, sayBox, sayNoBox } from '../../../../../says/index.ts';
import { Button, ChoiceField, Heading, LengthField, SeverityMark, Table } from '../../../parts/index.ts';
import { useEditor } from '../../../state/use-editor.ts';
import { useNames } from '../../../state/use-names.ts';
import { useUnits } from '../../../state/use-units.ts';
import type { BoxAnswer } from '../../../worker/api.ts';
import type { Connection } from '../../../worker/client.ts';
import { connectWorker } from '../../../worker/connect.ts';
import sheet from '../../sheet.module.css';
import { carcassBox } from '../../survey/outlines.ts';
import { useCabinet } from '../use-cabinet.ts';
import { SpotPlan } from './spot-plan.tsx';

type Search =
  | { readonly kind: 'none' }
  | { readonly kind: 'searching' }
  | { readonly kind: 'broke' }
  | { readonly kind: 'done'; readonly of: Design; readonly answer: BoxAnswer };

const NEW = '';

/** Somewhere in the middle of the carcass that is to grow, or of the room. */
const startSpot = (grows: Box | null, depthMm: number): readonly [number, number] =>
  grows
    ? [Math.round((grows.min[0] + grows.max[0]) / 2), Math.round((grows.min[1] + grows.max[1]) / 2)]
    : [Math.round(depthMm / 2), 0];

interface LargestPartProps {
  readonly onClose: () => void;
}

/** The largest carcass for a spot: chosen on the plan or typed, searched in a worker, taken in one step. */
export const LargestPart = ({ onClose }: LargestPartProps) => {
  const { editor, design, fitOut } = useCabinet();
  const units = useUnits();
  const { nameOf } = useNames();
  const space = useEditor(({ judgement }) => (judgement?.space.ok ? judgement.space.value : null));
  const [grows, setGrows] = useState<Carcass['id'] | null>(null);
  const [spot, setSpot] = useState(() => startSpot(null, space?.bounds.max[0] ?? 1200));
  const [underside, setUnderside] = useState<number | null>(null);
  const [search, setSearch] = useState<Search>({ kind: 'none' });
  const running = useRef<Connection | null>(null);
  const stop = (): void => {
    running.current?.end();
    running.current = null;
  };
  useEffect(() => () => running.current?.end(), []);
  const move = (at: readonly [number, number]): void => {
    setSpot(at);
    setSearch({ kind: 'none' });
  };
  const stand = (mm: number | null): void => {
    setUnderside(mm);
    setSearch({ kind: 'none' });
  };
  const find = (): void => {
    stop();
    const mine = connectWorker(() => running.current === mine && setSearch({ kind: 'broke' }));
    running.current = mine;
    setSearch({ kind: 'searching' });
    const finish = (next: Search): void => {
      if (running.current !== mine) return;
      stop();
      setSearch(next);
    };
    mine.engine.largestBox(design, { at: spot, underside, insteadOf: grows }).then(
      (answer) => finish({ kind: 'done', of: design, answer }),
      () => finish({ kind: 'broke' }),
    );
  };
  const done = search.kind === 'done' && search.of === design ? search.answer : null;
  const found = done?.ok ? done.value : null;
  const said = found ? sayBox(found, units, nameOf) : null;
  const take = (): void => {
    if (!found) return;
    const { history, edit, showCarcass, select } = editor.getState();
    const filled = fillBoxWith(history.design, grows, found.box);
    edit(grows === null ? 'add the largest carcass' : 'make a carcass as large as it may be', () => filled.design);
    showCarcass(filled.id);
    select([filled.id]);
    onClose();
  };
  return (
    <section className={sheet.card} aria-label="Largest carcass">
      <Heading
        level={3}
        title="Largest carcass for a spot"
        aside="a suggestion"
        actions={
          <Button small onClick={onClose}>
            Close
          </Button>
        }
      />
      {!space ? (
        <p className={sheet.soft}>The survey does not make a cargo space yet: measure the sections first.</p>
      ) : (
        <>
          <div className={sheet.fields}>
            <ChoiceField
              label="What is to fill it"
              value={grows ?? NEW}
              choices={[
                { value: NEW, label: 'a new carcass' },
                ...design.cabinet.carcasses.map(({ id, name }) => ({
                  value: id as string,
                  label: `${name}, moved and sized`,
                })),
              ]}
              onCommit={(id) => {
                const carcass = design.cabinet.carcasses.find((own) => own.id === id);
                const solved = fitOut.carcasses.find((own) => own.id === id);
                setGrows(carcass?.id ?? null);
                move(solved ? startSpot(carcassBox(solved), 0) : spot);
              }}
            />
            <LengthField
              label="Spot, from the sill"
              valueMm={spot[0]}
              units={units}
              onCommit={(mm) => move([mm, spot[1]])}
            />
            <LengthField
              label="Spot, to the left"
              valueMm={spot[1]}
              units={units}
              onCommit={(mm) => move([spot[0], mm])}
            />
            <LengthField
              label="Stands at a height of"
              valueMm={underside}
              units={units}
              hint="empty: on the floor"
              onCommit={stand}
              onClear={() => stand(null)}
            />
          </div>
          <SpotPlan space={space} spot={spot} found={found?.box ?? null} insteadOf={grows} onSpot={move} />
          <div className={sheet.bar}>
            {search.kind === 'searching' ? (
              <>
                <span aria-live="polite">searching…</span>
                <Button
                  onClick={() => {
                    stop();
                    setSearch({ kind: 'none' });
                  }}
                >
                  Cancel
                </Button>
              </>
            ) : (
              <Button look={found ? 'plain' : 'main'} onClick={find}>
                Find the largest
              </Button>
            )}
            {found ? (
              <Button look="main" onClick={take}>
                {grows === null ? 'Take it as a new carcass' : `Give ${nameOf(grows)} this room`}
              </Button>
            ) : null}
          </div>
          <div aria-live="polite">
            {search.kind === 'broke' ? <p className={sheet.soft}>The search broke off. Try it again.</p> : null}
            {done && !done.ok ? (
              <p className={sheet.soft}>
                <SeverityMark severity="caution" />{' '}
                {done.error === 'no-space'
                  ? 'The survey does not make a cargo space yet.'
                  : sayNoBox(done.error, units, nameOf)}
              </p>
            ) : null}
            {said ? (
              <>
                <p>
                  <strong>{said.size}</strong>
                </p>
                <Table label="What stops it on each side">
                  <tbody>
                    {said.sides.map(({ side, limit }) => (
                      <tr key={side}>
                        <th scope="row">{side}</th>
                        <td>{limit}</td>
                      </tr>
                    ))}
                  </tbody>
                </Table>
                <p className={sheet.soft}>{BOX_ASIDE}</p>
              </>
            ) : null}
          </div>
        </>
      )}
    </section>
  );
};
