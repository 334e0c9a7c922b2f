import { useMemo, useState } from 'react';
import { Heading, ToggleChip } from '../../../parts/index.ts';
import { openingWords } from '../names.ts';
import { roomsIn } from '../stow-in.ts';
import { DROP_ATTRIBUTE } from '../unplaced/gear-drag.ts';
import { useCabinet } from '../use-cabinet.ts';
import styles from './plan.module.css';
import { PlanGearBlock } from './plan-gear.tsx';
import { levelsOf, planOf } from './plan-model.ts';
import { storeysOf } from './storeys.ts';

const NO_ROOMS: ReturnType<typeof roomsIn> = [];

/** The plan takes at most this width and height, in pixels. */
const WIDEST_PX = 250;
const TALLEST_PX = 220;

/** What is inside the selected opening, seen from above, its face at the foot; gear is slid about in it. */
export const InsidePlan = () => {
  const { design, fitOut, chosen } = useCabinet();
  const opening = chosen.opening;
  const storeys = useMemo(
    () => (opening ? storeysOf(opening, roomsIn(design, fitOut, opening.id)) : []),
    [design, fitOut, opening],
  );
  const [wantedStorey, setStorey] = useState(0);
  const standsOn = storeys.findIndex(({ rooms: own }) =>
    own.some((room) => room.opening === chosen.gear?.place?.opening),
  );
  const storey = standsOn >= 0 ? standsOn : Math.min(wantedStorey, storeys.length - 1);
  const rooms = storeys[storey]?.rooms ?? NO_ROOMS;
  const levels = levelsOf(rooms);
  const [wantedLevel, setLevel] = useState(0);
  const gearLevel = chosen.gear?.place?.level;
  const level = levels.includes(gearLevel ?? wantedLevel) ? (gearLevel ?? wantedLevel) : (levels[0] ?? 0);
  const plan = useMemo(() => planOf(fitOut, rooms, level), [fitOut, rooms, level]);
  const divided = opening?.content.kind === 'divided';
  if (!opening || !plan || divided) return null;
  const { bounds } = plan;
  const pxPerMm = Math.min(WIDEST_PX / bounds.width, TALLEST_PX / bounds.depth);
  // Seen from above with the face at the foot: what is deeper lies higher on the screen.
  const place = (rect: typeof bounds) => ({
    left: (rect.across - bounds.across) * pxPerMm,
    bottom: (rect.deep - bounds.deep) * pxPerMm,
    width: rect.width * pxPerMm,
    height: rect.depth * pxPerMm,
  });
  return (
    <section className={styles.inside}>
      <Heading level={3} title="Inside" aside={`${openingWords(opening)}, seen from above, face at the foot`} />
      {storeys.length > 1 ? (
        <div className={styles.levels} role="toolbar" aria-label="Deck shown">
          {storeys.map(({ name }, i) => (
            <ToggleChip key={name} pressed={i === storey} onClick={() => setStorey(i)}>
              {name}
            </ToggleChip>
          ))}
        </div>
      ) : null}
      {levels.length > 1 ? (
        <div className={styles.levels} role="toolbar" aria-label="Level shown">
          {levels.map((one) => (
            <ToggleChip key={one} pressed={one === level} onClick={() => setLevel(one)}>
              {one === 0 ? 'floor' : `shelf ${one}`}
            </ToggleChip>
          ))}
        </div>
      ) : null}
      <div className={styles.plan} style={{ width: bounds.width * pxPerMm, height: bounds.depth * pxPerMm }}>
        {plan.rooms.map((room) => (
          <div
            key={room.opening}
            className={styles.room}
            style={place(room.rect)}
            {...{ [DROP_ATTRIBUTE]: room.opening }}
          />
        ))}
        {plan.gear.map((block) => (
          <PlanGearBlock key={block.gear} plan={plan} block={block} style={place(block.rect)} pxPerMm={pxPerMm} />
        ))}
        {plan.gear.length === 0 ? <p className={styles.nothing}>Nothing stands here yet.</p> : null}
      </div>
    </section>
  );
};
