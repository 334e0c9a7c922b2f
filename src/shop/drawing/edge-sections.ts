import { formatMillimetres, groupBy, type LengthUnits, type Polygon, type Vec2 } from '../../base/index.ts';
import type { Bevel, Panel } from '../../fitout/index.ts';
import { angleText } from '../edge-work.ts';
import { toTenth } from '../rounding.ts';
import type { Block } from './blocks.ts';
import type { Shape } from './drawing.ts';
import { hatching } from './hatch.ts';
import { sizeText } from './paper-words.ts';
import { SECTION_WIDTH } from './recess-sections.ts';
import { line, onSheet, TEXT_MM, text } from './shapes.ts';
import { dimension } from './view-sheet.ts';

type Bend = NonNullable<Panel['bends']>[number];

/** A profile in millimetres of the part, face a up, the edge at the left; it breaks off where the part goes on, at its right. */
interface Profile {
  readonly title: string;
  readonly ring: Polygon;
  readonly dimensions: readonly {
    readonly axis: 'across' | 'up';
    readonly from: Vec2;
    readonly to: Vec2;
    readonly off: number;
  }[];
  /** Said beside the profile, where it leaves room. */
  readonly words: readonly string[];
  readonly wordsAt: Vec2;
}

/** How much of the part is shown beyond its edge or its bend. */
const BODY_SHOWN = 20;
const DIMENSION_STEP = 6;
/** Paper over the profile: its title, and a figure that stands above a thin sheet. */
const HEAD = 9;
/** Paper beside the profile: a dimension line on each side. */
const BESIDE = 10;
const HATCH_MM = 2;
const ARC_STEP_RAD = Math.PI / 36;
const WORDS_STEP = 3;

/** The edge of a board that is sawn with the blade tilted. */
export const bevelRing = ({ longFace, setMm, landMm = 0 }: Bevel, thickness: number): Polygon => {
  const end = setMm + BODY_SHOWN;
  const above: Polygon = [
    [setMm, 0],
    [end, 0],
    [end, thickness],
    [0, thickness],
    ...(landMm > 0 ? ([[0, thickness - landMm]] as const) : []),
  ];
  return longFace === 'a' ? above : above.map(([x, z]): Vec2 => [x, thickness - z]).toReversed();
};

const bevelProfile = (bevel: Bevel, edges: string, thickness: number): Profile => {
  const { longFace, setMm, landMm = 0, tiltRad } = bevel;
  const end = setMm + BODY_SHOWN;
  const short = longFace === 'a' ? 0 : thickness;
  const long = thickness - short;
  return {
    title: `edge ${edges}: saw tilted ${angleText(tiltRad)}`,
    ring: bevelRing(bevel, thickness),
    dimensions: [
      {
        axis: 'across',
        from: [0, short],
        to: [setMm, short],
        off: longFace === 'a' ? -DIMENSION_STEP : DIMENSION_STEP,
      },
      { axis: 'up', from: [end, 0], to: [end, thickness], off: DIMENSION_STEP },
      ...(landMm > 0
        ? [
            {
              axis: 'up' as const,
              from: [0, Math.min(long, long === 0 ? 0 : thickness - landMm)] as const,
              to: [0, long === 0 ? landMm : thickness] as const,
              off: -DIMENSION_STEP,
            },
          ]
        : []),
    ],
    words: [],
    wordsAt: [0, 0],
  };
};

const arc = (middle: Vec2, radius: number, from: number, turn: number): readonly Vec2[] => {
  const steps = Math.max(1, Math.ceil(turn / ARC_STEP_RAD));
  return Array.from({ length: steps + 1 }, (_, i): Vec2 => {
    const angle = from + (turn * i) / steps;
    return [middle[0] + radius * Math.cos(angle), middle[1] + radius * Math.sin(angle)];
  });
};

/** From the outer edge of a flange to where its outside meets the outside of the plate. */
export const flangeOutside = (
  { from, to, deductionMm }: Bend,
  { length, width }: Pick<Panel, 'length' | 'width'>,
): number => {
  const alongX = from[1] === to[1];
  const at = alongX ? from[1] : from[0];
  return Math.min(at, (alongX ? width : length) - at) + deductionMm / 2;
};

/**
 * The flange of a bent sheet with the plate at its right: outside radius, inside radius and both straights at their true
 * places. 0 across is where both outsides would meet; the plate lies from 0 up to its thickness.
 */
export const bendRing = ({ angleRad, towards, insideRadiusMm }: Bend, flange: number, thickness: number): Polygon => {
  const setback = (insideRadiusMm + thickness) * Math.tan(angleRad / 2);
  const middle: Vec2 = [setback, -insideRadiusMm];
  const straight = Math.max(0, flange - setback);
  const up = Math.PI / 2;
  const outer = arc(middle, insideRadiusMm + thickness, up, angleRad);
  const inner = arc(middle, insideRadiusMm, up, angleRad);
  // The plate comes from the right, and the flange goes on by the angle turned through.
  const heading = Math.PI + angleRad;
  const onward = ([x, z]: Vec2): Vec2 => [x + straight * Math.cos(heading), z + straight * Math.sin(heading)];
  const ring: Polygon = [
    [setback + BODY_SHOWN, thickness],
    ...outer,
    onward(outer.at(-1) ?? middle),
    onward(inner.at(-1) ?? middle),
    ...inner.toReversed(),
    [setback + BODY_SHOWN, 0],
  ];
  return towards === 'b' ? ring : ring.map(([x, z]): Vec2 => [x, thickness - z]).toReversed();
};

const isSquare = (angleRad: number): boolean => Math.abs(angleRad - Math.PI / 2) < ARC_STEP_RAD / 100;

const bendProfile = (bend: Bend, at: string, panel: Panel, units: LengthUnits): Profile => {
  const { angleRad, towards, insideRadiusMm, deductionMm } = bend;
  const { thickness } = panel;
  const flange = flangeOutside(bend, panel);
  const ring = bendRing(bend, flange, thickness);
  const end = Math.max(...ring.map(([x]) => x));
  const down = towards === 'b';
  const tip = down ? thickness - flange : flange;
  const outside = down ? thickness : 0;
  const setback = (insideRadiusMm + thickness) * Math.tan(angleRad / 2);
  return {
    title: `bend at ${at}: ${angleText(angleRad)} to face ${towards}`,
    ring,
    dimensions: [
      ...(isSquare(angleRad)
        ? [
            {
              axis: 'up' as const,
              from: [0, Math.min(tip, outside)] as const,
              to: [0, Math.max(tip, outside)] as const,
              off: -DIMENSION_STEP,
            },
          ]
        : []),
      { axis: 'up', from: [end, 0], to: [end, thickness], off: 2 * DIMENSION_STEP },
    ],
    words: [
      ...(isSquare(angleRad) ? [] : [`flange ${sizeText(flange, units)} outside`]),
      `inside radius ${formatMillimetres(insideRadiusMm)} mm`,
      `deduction ${formatMillimetres(deductionMm, 2)} mm`,
    ],
    wordsAt: [setback, down ? 0 : thickness],
  };
};

const profilesOf = (panel: Panel, units: LengthUnits): readonly Profile[] => {
  const bevelKey = ({ tiltRad, longFace, setMm, landMm = 0 }: Bevel): string =>
    [angleText(tiltRad), longFace, toTenth(setMm), toTenth(landMm)].join(' ');
  const bevels = [...groupBy(panel.bevels ?? [], bevelKey).values()].flatMap((same): readonly Profile[] => {
    const [first] = same;
    return first === undefined
      ? []
      : [bevelProfile(first, same.map(({ edge }) => edge.toUpperCase()).join(' '), panel.thickness)];
  });
  const bendKey = (bend: Bend): string =>
    [angleText(bend.angleRad), bend.towards, toTenth(bend.insideRadiusMm), toTenth(flangeOutside(bend, panel))].join(
      ' ',
    );
  const placeOf = ({ from, to }: Bend): string =>
    from[1] === to[1] ? `y ${sizeText(from[1], units)}` : `x ${sizeText(from[0], units)}`;
  const bends = [...groupBy(panel.bends ?? [], bendKey).values()].flatMap((same): readonly Profile[] => {
    const [first] = same;
    return first === undefined ? [] : [bendProfile(first, same.map(placeOf).join(', '), panel, units)];
  });
  return [...bevels, ...bends];
};

const profileShapes = (
  profile: Profile,
  label: string,
  scale: number,
  at: Vec2,
  units: LengthUnits,
): readonly Shape[] => {
  const { ring, title, dimensions, words, wordsAt } = profile;
  const [left, top, right] = [
    Math.min(...ring.map(([x]) => x)),
    Math.max(...ring.map(([, z]) => z)),
    Math.max(...ring.map(([x]) => x)),
  ];
  const above = dimensions.some(({ axis, off }) => axis === 'across' && off > 0);
  const move = onSheet(scale, [
    at[0] + BESIDE - left * scale,
    at[1] - HEAD - (above ? DIMENSION_STEP + 1 : 0) - top * scale,
  ]);
  const [wordsX, wordsY] = move(wordsAt);
  const down = wordsAt[1] === 0;
  return [
    text([at[0] + 0.8, at[1] - 3], `${label}  ${title}, ${scale === 1 ? '1:1' : `1:${Math.round(1 / scale)}`}`, {
      height: TEXT_MM.note,
      strong: true,
      within: SECTION_WIDTH - 1,
    }),
    ...hatching(ring.map(move), HATCH_MM),
    ...ring.flatMap((a, i): readonly Shape[] => {
      const b = ring[(i + 1) % ring.length] ?? a;
      return a[0] === right && b[0] === right ? [] : [line('outline', move(a), move(b))];
    }),
    ...dimensions.map(({ axis, from, to, off }) => {
      const along = axis === 'across' ? 0 : 1;
      const lineAt = (move(from)[1 - along] ?? 0) + off;
      return dimension(axis, move(from), move(to), lineAt, sizeText(Math.abs(to[along] - from[along]), units));
    }),
    ...words.map((each, i) =>
      text(
        [wordsX + 2, down ? wordsY - (i + 1.3) * WORDS_STEP : wordsY + (words.length - i - 0.4) * WORDS_STEP],
        each,
        {
          height: TEXT_MM.note,
        },
      ),
    ),
  ];
};

/** Scales of the pictures, the largest first that fits. */
const SCALES = [1, 0.5, 0.2, 0.1] as const;

/** Sections of the bevelled edges and the bends of a part, one for each profile; none for a plain part. */
export const edgeSections = (panel: Panel, units: LengthUnits): readonly Block[] =>
  profilesOf(panel, units).map((profile, i): Block => {
    const [xs, zs] = [profile.ring.map(([x]) => x), profile.ring.map(([, z]) => z)];
    const [wide, high] = [Math.max(...xs) - Math.min(...xs), Math.max(...zs) - Math.min(...zs)];
    const scale = SCALES.find((each) => wide * each <= SECTION_WIDTH - 2 * BESIDE) ?? 0.1;
    const lines = profile.dimensions.filter(({ axis }) => axis === 'across').length;
    const least = profile.words.length * WORDS_STEP + panel.thickness * scale + 2;
    return {
      kind: 'picture',
      height: HEAD + Math.max(high * scale, least) + lines * (DIMENSION_STEP + 1) + 2,
      shapes: (at) => profileShapes(profile, `E${i + 1}`, scale, at, units),
    };
  });
