import { nameOf, useReview } from '../state.ts';

/** What must be open or closed before what. */
export const OrderPanel = () => {
  const order = useReview((state) => state.data.order);
  return (
    <>
      <h2>What has to be open or closed first</h2>
      {order.length === 0 ? <p>Nothing is in the way of anything else.</p> : null}
      <ul className="lines">
        {order.map((line) => (
          <li key={line}>
            <bdi>{line}</bdi>
          </li>
        ))}
      </ul>
    </>
  );
};

/** What the axles carry, and what is left, in each loading case; and what does not stand as it should. */
export const WeightPanel = () => {
  const { loads, findings } = useReview((state) => state.data);
  const tap = useReview((state) => state.tap);
  const known = useReview((state) => state.data.scene.touch);
  return (
    <>
      <h2>Weight and what is left</h2>
      {loads.length === 0 ? <p>The weights are not known yet: the vehicle has no weigh slip.</p> : null}
      {loads.map(({ name, rows }) => (
        <table key={name}>
          <caption>{name}</caption>
          <thead>
            <tr>
              <th scope="col">on</th>
              <th scope="col">carries</th>
              <th scope="col">reserve</th>
            </tr>
          </thead>
          <tbody>
            {rows.map(({ what, carries, reserve, over }) => (
              <tr key={what}>
                <th scope="row">{what}</th>
                <td>{carries}</td>
                <td className={over ? 'stop' : undefined}>
                  {over ? `over by ${reserve.replace(/^[−-]/, '')}` : reserve}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      ))}
      <h2>What the shop still has to answer for</h2>
      {findings.length === 0 ? <p>No stop and no caution stands.</p> : null}
      <ul className="lines">
        {findings.map(({ severity, says, part }) => (
          <li key={`${severity} ${says}`} data-severity={severity}>
            <strong>{severity}</strong> <bdi>{says}</bdi>{' '}
            {part !== null && known.some(({ id }) => id === part) ? (
              <button type="button" onClick={() => tap(part)}>
                Show
              </button>
            ) : null}
          </li>
        ))}
      </ul>
    </>
  );
};

/** What the shop asks. */
export const QuestionsPanel = () => {
  const data = useReview((state) => state.data);
  const answers = useReview((state) => state.draft.answers);
  const change = useReview((state) => state.change);
  const tap = useReview((state) => state.tap);
  return (
    <>
      <h2>Questions from the shop</h2>
      {data.questions.length === 0 ? <p>The shop asks nothing this time.</p> : null}
      {data.questions.map(({ id, text, about }) => (
        <div className="question" key={id}>
          <label>
            <bdi>{text}</bdi>
            <textarea
              rows={2}
              maxLength={20_000}
              value={answers[id] ?? ''}
              onChange={(event) => change({ answers: { ...answers, [id]: event.target.value } })}
            />
          </label>
          {about === null ? null : (
            <button type="button" onClick={() => tap(about)}>
              Show <bdi>{nameOf(data, about)}</bdi>
            </button>
          )}
        </div>
      ))}
    </>
  );
};

export const CautionsPanel = () => {
  const cautions = useReview((state) => state.data.cautions);
  return (
    <>
      <h2>Before anyone relies on this</h2>
      <ul className="lines">
        {cautions.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </>
  );
};
