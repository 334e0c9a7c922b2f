import { useEffect, useRef, useState } from 'react';
import { nameOf, useReview } from '../state.ts';
import { GearList } from './gear-list.tsx';

const GearFacts = ({ id }: { readonly id: string }) => {
  const data = useReview((state) => state.data);
  const step = useReview((state) => state.step);
  const showStep = useReview((state) => state.showStep);
  const tap = useReview((state) => state.tap);
  const gear = data.gear.find((each) => each.id === id);
  if (!gear) return null;
  const { opening } = gear;
  const at = step ?? gear.steps.length;
  return (
    <>
      <p className="way" role="status">
        <bdi>{gear.way === '' ? 'It has no place yet.' : gear.way}</bdi>{' '}
        {gear.motions === '' ? null : <strong>{gear.motions}</strong>}
      </p>
      {gear.steps.length > 0 ? (
        <ol className="steps">
          {gear.steps.map((each, i) => (
            <li key={`${each.part} ${each.says}`} data-done={i < at}>
              <button type="button" onClick={() => showStep(i + 1)}>
                <bdi>{each.says}</bdi>
              </button>
            </li>
          ))}
        </ol>
      ) : null}
      <p className="facts">
        {gear.size}, {gear.mass}
        {gear.needs.length > 0 ? `, ${gear.needs.join(', ')}` : ''}
        {gear.user === '' ? null : (
          <>
            , used by <bdi>{gear.user}</bdi>
          </>
        )}
        {gear.note === '' ? null : (
          <>
            <br />
            <bdi>{gear.note}</bdi>
          </>
        )}
      </p>
      {opening === null ? null : (
        <button type="button" onClick={() => tap(opening)}>
          Everything in <bdi>{nameOf(data, opening)}</bdi>
        </button>
      )}
    </>
  );
};

const Contents = ({ id }: { readonly id: string }) => {
  const data = useReview((state) => state.data);
  const inside = new Set([id]);
  for (let before = 0; before < inside.size; ) {
    before = inside.size;
    for (const { id: own, parent } of data.openings) if (parent !== null && inside.has(parent)) inside.add(own);
  }
  const gear = data.gear.filter(({ opening }) => opening !== null && inside.has(opening));
  return gear.length === 0 ? <p>Nothing is stowed here.</p> : <GearList gear={gear} />;
};

const Remarks = ({ id, isGear }: { readonly id: string; readonly isGear: boolean }) => {
  const [text, setText] = useState('');
  const data = useReview((state) => state.data);
  const addRemark = useReview((state) => state.addRemark);
  const wait = useReview((state) => state.wait);
  const draft = useReview((state) => state.draft);
  const own = draft.remarks.filter((remark) => remark.kind !== 'answer' && remark.part === id).length;
  const add = (): void => {
    addRemark({ kind: 'note', part: id, name: nameOf(data, id), text: text.trim() });
    setText('');
  };
  return (
    <div className="remark">
      <label>
        Say something about it
        <textarea value={text} maxLength={20_000} rows={2} onChange={(event) => setText(event.target.value)} />
      </label>
      <div className="row">
        <button type="button" disabled={text.trim() === ''} onClick={add}>
          Add the note
        </button>
        {isGear ? (
          <>
            <button type="button" onClick={() => wait({ kind: 'swap', part: id })}>
              Swap with…
            </button>
            <button type="button" onClick={() => wait({ kind: 'move', part: id })}>
              Move to…
            </button>
          </>
        ) : null}
      </div>
      {own > 0 ? <p role="status">{own === 1 ? '1 remark' : `${own} remarks`} on it in your reply.</p> : null}
    </div>
  );
};

/** What was tapped: how it comes to hand or what is in it, and room to say something. */
export const ChosenCard = () => {
  const data = useReview((state) => state.data);
  const chosen = useReview((state) => state.chosen);
  const card = useRef<HTMLElement>(null);
  // The list below may be scrolled far down: what was tapped there is answered up here.
  // biome-ignore lint/correctness/useExhaustiveDependencies: it is the change of what is chosen that scrolls.
  useEffect(() => {
    // Newer browsers answer with a promise, which an effect must not give back.
    card.current?.scrollIntoView({ block: 'start' });
  }, [chosen]);
  if (chosen === null) return null;
  const isGear = data.gear.some(({ id }) => id === chosen);
  return (
    <section ref={card} className="card" aria-label="What you tapped">
      <h2>
        <bdi>{nameOf(data, chosen)}</bdi>
      </h2>
      {isGear ? <GearFacts id={chosen} /> : <Contents id={chosen} />}
      <Remarks key={chosen} id={chosen} isGear={isGear} />
    </section>
  );
};
