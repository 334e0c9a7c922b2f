import { ORIGIN, placed as placedAt, type Vec3 } from '../../base/index.ts';
import {
  type Design,
  type Gear,
  type GearPlace,
  type NodeId,
  type Opening,
  openingsFrom,
  STANCES,
} from '../../design/index.ts';
import { gearSize } from '../../fitout/index.ts';
import { accessOf } from '../access/work-out-order.ts';
import type { InspectionInput } from '../job.ts';
import { loadingCases, receivedLeftMm, travelsOf } from '../loads/index.ts';
import { armsLength, liftGround } from '../reach/index.ts';
import { type Cell, shareRoom, standsAlone } from './cells.ts';
import { type Choice, type Movable, OUTSIDE_INDEX, type Table } from './goals.ts';

type Room = InspectionInput['fitout']['rooms'][number];
type Stowed = InspectionInput['fitout']['gear'][number];

/** A place that an item may be stowed at. */
interface Berth extends Cell {
  readonly room: Room;
  /** What stands there now. */
  readonly holds: NodeId | null;
}

/** Why an item is not offered another place. */
export type Staying = 'wished' | 'held' | 'needs' | 'piled' | 'sized';

/** What is to stay as it is. */
export interface ArrangeWishes {
  /** Gear that keeps its place. */
  readonly keep: readonly string[];
  /** True when no carcass may change sides. */
  readonly keepCarcasses: boolean;
}

/** The table of an arrangement with what each choice is in the design. */
export interface Ground {
  readonly table: Table;
  /** The place of each item of the table for each of its choices. */
  readonly places: readonly (readonly GearPlace[])[];
  readonly stays: readonly { readonly gear: string; readonly why: Staying }[];
}

/** Needs of the room itself: gear that has one goes only where something with the same need has been put. */
const ROOM_NEEDS = ['locked', 'vented', 'charged', 'cool', 'clean', 'away-from-heat', 'outside-cabin'] as const;

/** How well a room keeps what stands in it, the less the worse. */
const HOLD: Readonly<Record<Room['keeps'], number>> = {
  nothing: 0,
  lip: 1,
  strap: 2,
  net: 2,
  closed: 2,
  bracket: 3,
};

/** Openings as large as what is in them: with other gear they are other openings. */
const sizedByContent = (design: Design): ReadonlySet<string> => {
  const within = (opening: Opening): readonly string[] => openingsFrom(opening).map(({ id }) => id);
  return new Set(
    design.cabinet.carcasses.flatMap((carcass) =>
      openingsFrom(carcass.opening).flatMap(({ content }) =>
        content.kind === 'divided'
          ? content.parts.flatMap((part) => (part.size.rule === 'hug' ? within(part.opening) : []))
          : [],
      ),
    ),
  );
};

const key = ({ opening, level }: { readonly opening: string; readonly level: number }): string => `${opening} ${level}`;

/** What stands in each room shares it; an empty room is one berth. */
const berthsOf = ({ fitout }: InspectionInput, usable: (room: Room) => boolean): readonly Berth[] =>
  fitout.rooms.filter(usable).flatMap((room): readonly Berth[] => {
    const inside = fitout.gear.filter((stowed) => key(stowed) === key(room));
    if (inside.length === 0) return [{ room, holds: null, from: ORIGIN, size: room.size }];
    return shareRoom(room.size, inside).flatMap((cell, i) => {
      const stowed = inside[i];
      return stowed && standsAlone(stowed, inside) ? [{ room, holds: stowed.gear, ...cell }] : [];
    });
  });

/** Ways to lie, the present one first; what has to stand or lie is only turned. */
const waysToLie = ({ needs }: Gear, now: GearPlace): readonly Pick<GearPlace, 'stance' | 'turnDeg'>[] => {
  const turns = now.turnDeg === 90 || now.turnDeg === 270 ? ([90, 0] as const) : ([0, 90] as const);
  const fixed = needs.includes('upright') || needs.includes('flat');
  const stances = fixed ? [now.stance] : [now.stance, ...STANCES.filter((stance) => stance !== now.stance)];
  return stances.flatMap((stance) => turns.map((turnDeg) => ({ stance, turnDeg })));
};

/** The item in the middle of the berth at its front, as it lies now or else as it fits; null where it does not. */
const placeIn = ({ room, from, size }: Berth, gear: Gear, now: GearPlace, gap: number): GearPlace | null => {
  for (const lying of waysToLie(gear, now)) {
    const place = { opening: room.opening, level: room.level, at: [0, 0, 0] as const, ...lying };
    const own = gearSize(gear, place);
    if (own[0] + 2 * gap > size[0] || own[1] + 2 * gap > size[1] || own[2] + gap > size[2]) continue;
    const across = Math.max(gap, Math.floor((size[0] - own[0]) / 2));
    return { ...place, at: [from[0] + across, from[1] + gap, from[2]] };
  }
  return null;
};

const stayingWhy = (
  input: InspectionInput,
  stowed: Stowed,
  room: Room | undefined,
  wishes: ArrangeWishes,
  sized: ReadonlySet<string>,
): Staying | null => {
  const gear = input.design.gear.find(({ id }) => id === stowed.gear);
  if (wishes.keep.includes(stowed.gear)) return 'wished';
  if (!gear || !room || room.keeps === 'bracket') return 'held';
  if (gear.needs.includes('bracket')) return 'needs';
  if (sized.has(stowed.opening)) return 'sized';
  const inside = input.fitout.gear.filter((other) => key(other) === key(stowed));
  return standsAlone(stowed, inside) ? null : 'piled';
};

/**
 * Whether a room suits what an item needs of it: what it needs, another item there needs as well; and what is not clean
 * does not go among what is.
 */
const suiting = ({ design, fitout }: InspectionInput): ((gear: Gear, room: Room) => boolean) => {
  const needsIn = new Map<string, ReadonlySet<string>>(
    fitout.rooms.map((room) => {
      const inside = new Set<string>(fitout.gear.flatMap((stowed) => (key(stowed) === key(room) ? [stowed.gear] : [])));
      return [key(room), new Set(design.gear.flatMap(({ id, needs }) => (inside.has(id) ? needs : [])))];
    }),
  );
  return ({ needs, place }, room) => {
    if (place && key(place) === key(room)) return true;
    const there = needsIn.get(key(room)) ?? new Set();
    return (
      ROOM_NEEDS.every((need) => !needs.includes(need) || there.has(need)) &&
      (needs.includes('clean') || !there.has('clean'))
    );
  };
};

/** What an item does to each goal where it stands. */
type Judge = (gear: Gear, room: Room, middle: Vec3) => Omit<Choice, 'berth'>;

interface Judging {
  readonly judge: Judge;
  readonly leans: readonly number[];
}

const PERCENT = 100;
const MM_PER_DM = 100;

/** Percent that left weighs more than right in each loading case, for what is aboard and for each mass that is added. */
const leaning = (input: InspectionInput) => {
  const { design, fitout, rules } = input;
  const { slip, trackMm, wheelbaseMm, sillBehindRearAxleMm } = design.vehicle;
  if (slip === null || trackMm === null || wheelbaseMm === null || sillBehindRearAxleMm === null) return null;
  const baseKg = slip.frontKg + slip.rearKg;
  const travels = travelsOf(fitout.movers);
  const loaded = loadingCases(design, fitout, rules).filter(({ items }) => items.length > 0);
  const cases = loaded.map(({ items, drawn }) => {
    const totalKg = items.reduce((sum, { kg }) => sum + kg, baseKg);
    const moment = items.reduce((sum, { kg, at }) => sum + kg * at[1], baseKg * receivedLeftMm(slip, trackMm));
    const percent = totalKg > 0 ? (2 * PERCENT) / (totalKg * trackMm) : 0;
    return { percent, moment, drawn, holds: new Set(items.map(({ id }) => id)) };
  });
  return {
    whole: cases.map(({ percent, moment }) => percent * moment),
    of: (gear: Gear, room: Room, middle: Vec3): readonly number[] =>
      cases.map(({ percent, drawn, holds }) => {
        if (!holds.has(`${gear.id}/mass`)) return 0;
        const out = drawn && room.mover !== null ? (travels.get(room.mover)?.[1] ?? 0) : 0;
        return percent * gear.massKg * (middle[1] + out);
      }),
  };
};

/** Motions to a room: those to what is in it now, or one for the vehicle and one for each thing that it rides on. */
const motionsTo = (input: InspectionInput): ((room: Room) => number) => {
  const { fitout, rules } = input;
  const { reach } = accessOf(input);
  const movers = new Map(fitout.movers.map((mover) => [mover.id, mover]));
  const chain = (id: string | null): number => {
    const mover = id === null ? undefined : movers.get(id);
    return mover ? rules.value('motion-slide') + chain(mover.carriedBy) : 0;
  };
  const known = new Map<string, number>();
  for (const stowed of fitout.gear) {
    const count = reach(stowed.gear)?.count ?? null;
    if (count !== null) known.set(key(stowed), Math.min(count, known.get(key(stowed)) ?? Infinity));
  }
  return (room) => known.get(key(room)) ?? rules.value('motion-open') + chain(room.mover);
};

const judging = (input: InspectionInput): Judging => {
  const { rules } = input;
  const lean = leaning(input);
  const liftAt = liftGround(input);
  const motions = motionsTo(input);
  const least = rules.value('lifting-least-mass');
  return {
    leans: lean?.whole ?? [],
    judge: (gear, room, middle) => {
      const lift = liftAt?.(gear, room, middle) ?? null;
      return {
        leans: lean?.of(gear, room, middle) ?? [],
        index: lift && gear.massKg >= least ? (lift.index ?? OUTSIDE_INDEX) : 0,
        motions: gear.firstDue ? motions(room) : 0,
        arms: gear.firstDue && lift ? armsLength(lift, rules) / MM_PER_DM : 0,
      };
    },
  };
};

const middleOf = (room: Room, from: Vec3, size: Vec3): Vec3 =>
  placedAt(room.pose, [from[0] + size[0] / 2, from[1] + size[1] / 2, from[2] + size[2] / 2]);

/** Everything of a solved cabinet that an arrangement of its gear is chosen from. */
export const arrangeGround = (input: InspectionInput, wishes: ArrangeWishes): Ground => {
  const { design, fitout, rules } = input;
  const gap = rules.value('gap-gear');
  const strapped = rules.value('strapped-mass');
  const sized = sizedByContent(design);
  const rooms = new Map(fitout.rooms.map((room) => [key(room), room]));
  const warmed = new Set<string>(fitout.devices.flatMap(({ opening }) => opening ?? []));
  const why = new Map(
    fitout.gear.map((stowed) => [stowed.gear, stayingWhy(input, stowed, rooms.get(key(stowed)), wishes, sized)]),
  );
  const berths = berthsOf(
    input,
    ({ opening, keeps }) => keeps !== 'bracket' && !sized.has(opening) && !warmed.has(opening),
  ).filter(({ holds }) => holds === null || why.get(holds) === null);
  const { judge, leans } = judging(input);
  const suits = suiting(input);
  const moving: { readonly movable: Movable; readonly places: readonly GearPlace[] }[] = [];
  const staying: Omit<Choice, 'berth'>[] = [];
  for (const stowed of fitout.gear) {
    const gear = design.gear.find(({ id }) => id === stowed.gear);
    const room = rooms.get(key(stowed));
    if (!gear?.place || !room) continue;
    const now = gear.place;
    const here = judge(gear, room, middleOf(room, stowed.from, stowed.size));
    const own = berths.findIndex(({ holds }) => holds === stowed.gear);
    if (own < 0) {
      staying.push(here);
      continue;
    }
    const least = gear.massKg > strapped || gear.needs.includes('strapped') ? HOLD[room.keeps] : 0;
    const others = berths.flatMap((berth, at) => {
      if (at === own || HOLD[berth.room.keeps] < least || !suits(gear, berth.room)) return [];
      const place = placeIn(berth, gear, now, gap);
      if (!place) return [];
      const middle = middleOf(berth.room, place.at, gearSize(gear, place));
      return [{ place, choice: { berth: at, ...judge(gear, berth.room, middle) } }];
    });
    moving.push({
      movable: { id: gear.id, choices: [{ berth: own, ...here }, ...others.map(({ choice }) => choice)] },
      places: [now, ...others.map(({ place }) => place)],
    });
  }
  const most = (of: (own: Omit<Choice, 'berth'>) => number): number => Math.max(0, ...staying.map(of));
  return {
    table: {
      items: moving.map(({ movable }) => movable),
      // What may move is counted by its choices alone.
      leans: leans.map((whole, at) =>
        moving.reduce((sum, { movable }) => sum - (movable.choices[0].leans[at] ?? 0), whole),
      ),
      staying: {
        // A lift outside the equation that stays tells nothing of the others.
        index: most(({ index }) => (index < OUTSIDE_INDEX ? index : 0)),
        motions: most(({ motions }) => motions),
        arms: most(({ arms }) => arms),
      },
    },
    places: moving.map(({ places }) => places),
    stays: fitout.gear.flatMap(({ gear }) => {
      const reason = why.get(gear) ?? null;
      return reason === null ? [] : [{ gear, why: reason }];
    }),
  };
};
