import { compareText } from '../../../base/index.ts';
import { nameOf, useReview } from '../state.ts';
import { ChosenCard } from './chosen-card.tsx';
import { GearList, matches } from './gear-list.tsx';

/** Where is it, and what do I open first. */
export const FindPanel = () => {
  const data = useReview((state) => state.data);
  const query = useReview((state) => state.query);
  const seek = useReview((state) => state.seek);
  const found = data.gear
    .filter((gear) => matches(gear, gear.opening === null ? '' : nameOf(data, gear.opening), query))
    .toSorted(
      (a, b) => Number(b.firstDue) - Number(a.firstDue) || compareText(a.name.toLowerCase(), b.name.toLowerCase()),
    );
  return (
    <>
      <label className="search">
        Find gear
        <input
          type="search"
          value={query}
          placeholder="thermal camera"
          autoComplete="off"
          onChange={(event) => seek(event.target.value)}
        />
      </label>
      <ChosenCard />
      {found.length === 0 ? <p>Nothing by that name is aboard.</p> : <GearList gear={found} />}
    </>
  );
};
