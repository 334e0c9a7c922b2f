import type { ReviewGear } from '../../../shop/index.ts';
import { nameOf, useReview } from '../state.ts';

/** Letters and digits alone, so that case, hyphens and commas do not matter. */
const plain = (text: string): string => text.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, ' ');

/** True when every word of the question is in the name, the user, the note or the place. */
export const matches = (gear: ReviewGear, place: string, query: string): boolean => {
  const held = plain([gear.name, gear.user, gear.note, place].join(' '));
  return plain(query)
    .split(' ')
    .every((word) => held.includes(word));
};

/** The gear as large buttons: what is first due comes first, the rest by name. */
export const GearList = ({ gear }: { readonly gear: readonly ReviewGear[] }) => {
  const data = useReview((state) => state.data);
  const tap = useReview((state) => state.tap);
  const chosen = useReview((state) => state.chosen);
  return (
    <ul className="gear">
      {gear.map((item) => (
        <li key={item.id}>
          <button type="button" aria-pressed={chosen === item.id} onClick={() => tap(item.id)}>
            <bdi>{item.name}</bdi>
            <small>
              <bdi>{item.opening === null ? 'no place yet' : nameOf(data, item.opening)}</bdi>
              {item.motions === '' ? '' : ` · ${item.motions}`}
              {item.firstDue ? ' · first due' : ''}
            </small>
          </button>
        </li>
      ))}
    </ul>
  );
};
