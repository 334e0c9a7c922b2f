import { useEffect, useRef } from 'react';
import type { Vec3 } from '../../../../base/index.ts';
import type { CarryIn, CarryPath } from '../../../../inspection/index.ts';
import { carrySteps, sayCarried, sayCarryGap, sayMountOff, sayTakenOut } from '../../../../says/index.ts';
import { Button } from '../../parts/index.ts';
import { useNames } from '../../state/use-names.ts';
import { useUnits } from '../../state/use-units.ts';
import styles from './carry-in.module.css';
import type { WayOf } from './carry-way.ts';
import { type CarryPlay, type Played, useCarryPlay } from './use-carry-play.ts';

/** The steps of a way, the one under way marked, and what starts, holds and moves it. */
interface WayProps {
  readonly play: CarryPlay;
  readonly of: Played;
  readonly label: string;
  /** What people call what is carried, so that each button is heard apart. */
  readonly name: string;
}

const Way = ({ play, of, label, name }: WayProps) => {
  const units = useUnits();
  const mine = play.played?.id === of.id && play.played.way === of.way && play.played.path === of.path;
  const player = useRef<HTMLDivElement>(null);
  const byHand = useRef(false);
  // The button that was pressed goes away: the focus goes on to what took its place.
  // biome-ignore lint/correctness/useExhaustiveDependencies: it is the change between both that moves the focus
  useEffect(() => {
    if (!byHand.current) return;
    byHand.current = false;
    player.current?.querySelector<HTMLElement>('input, button')?.focus();
  }, [mine]);
  return (
    <>
      <ol className={styles.steps}>
        {carrySteps(of.path, of.way, units).map(({ words, leg }, i) => (
          // Two steps may be said by the same words.
          // biome-ignore lint/suspicious/noArrayIndexKey: the steps of one way never move
          <li key={i} aria-current={mine && play.step === i ? 'step' : undefined}>
            {words}
            {leg && Number.isFinite(leg.leastGap) ? (
              <span className={styles.gap}>
                {' '}
                ({sayCarryGap(leg, units)} from {leg.nearest})
              </span>
            ) : null}
          </li>
        ))}
      </ol>
      {mine ? (
        <div ref={player} className={styles.player}>
          <input
            type="range"
            min={0}
            max={100}
            step={1}
            value={Math.round(play.share * 100)}
            aria-label={`${label}, ${name}: how far along`}
            aria-valuetext={`step ${play.step + 1}, ${Math.round(play.share * 100)} per cent of the way`}
            onChange={(event) => play.scrub(Number(event.target.value) / 100)}
          />
          {play.running ? (
            <Button small onClick={play.pause}>
              Hold
            </Button>
          ) : (
            <Button small onClick={play.goOn}>
              Go on
            </Button>
          )}
          <Button
            small
            onClick={() => {
              byHand.current = true;
              play.end();
            }}
          >
            Put back
          </Button>
        </div>
      ) : (
        <div ref={player} className={styles.player}>
          <Button
            small
            aria-label={`${label}, ${name}`}
            onClick={() => {
              byHand.current = true;
              play.start(of);
            }}
          >
            {label}
          </Button>
        </div>
      )}
    </>
  );
};

interface Entry {
  readonly id: string;
  readonly says: string;
  readonly ways: readonly { readonly of: Played; readonly label: string; readonly title: string }[];
}

/** Every carcass in the order in which they go in, and every mount, each with its ways. */
const entriesOf = (carry: CarryIn, units: 'in' | 'mm', nameOf: (id: string) => string): readonly Entry[] => {
  const wayOf = (id: string, path: CarryPath, way: WayOf, middle: Vec3, absent: readonly string[]): Played => ({
    id,
    path,
    way,
    middle,
    absent,
  });
  return [
    ...carry.carcasses.map((own, i): Entry => {
      const later = carry.carcasses.slice(i + 1).map(({ carcass }) => carcass);
      const out = own.alone ?? own.path;
      return {
        id: own.carcass,
        says: `${i + 1}. ${sayCarried(own, carry.wantedMm, units, nameOf)}`,
        ways: [
          ...(own.path
            ? [{ of: wayOf(own.carcass, own.path, 'in', own.middle, later), label: 'Play carrying in', title: '' }]
            : []),
          ...(out
            ? [
                {
                  of: wayOf(own.carcass, out, 'out', own.middle, own.alone ? [] : later),
                  label: 'Play taking out',
                  title: sayTakenOut(own, nameOf),
                },
              ]
            : []),
        ],
      };
    }),
    ...carry.mounts.map(
      (own): Entry => ({
        id: own.mount,
        says: sayMountOff(own, units, nameOf),
        ways: own.path
          ? [{ of: wayOf(own.mount, own.path, 'out', own.middle, []), label: 'Play taking off', title: '' }]
          : [],
      }),
    ),
  ];
};

/** What the search found, each way with its steps; it plays in the bay. */
export const CarryWays = ({ carry }: { readonly carry: CarryIn }) => {
  const units = useUnits();
  const { nameOf } = useNames();
  const play = useCarryPlay();
  return (
    <ul className={styles.entries}>
      {entriesOf(carry, units, nameOf).map(({ id, says, ways }) => (
        <li key={id} className={styles.entry}>
          <p>{says}</p>
          {ways.map(({ of, label, title }) => (
            <div key={label} className={styles.way}>
              {title === '' ? null : <p>{title}</p>}
              <Way play={play} of={of} label={label} name={nameOf(id)} />
            </div>
          ))}
        </li>
      ))}
    </ul>
  );
};
