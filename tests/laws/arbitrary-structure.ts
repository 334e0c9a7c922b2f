import {
  BRACE_FACES,
  CHAMFER_EDGES,
  CHASE_PANELS,
  chamferAt,
  type NodeId,
  WHEELHOUSE_SIDES,
} from '../../src/design/index.ts';
import { type Any, type Fc, hardwareOf, ids, mm, oneOrNone, type Plain } from './arbitrary-parts.ts';

/** Now and then a list, else none. */
const nowAndThen = (fc: Fc, one: Any<Plain>, maxLength: number): Any<readonly Plain[]> =>
  fc.oneof(
    { weight: 2, arbitrary: fc.constant<readonly Plain[]>([]) },
    { weight: 1, arbitrary: fc.array(one, { minLength: 1, maxLength }) },
  );

/** Outside size of the carcass that a piece of structure is drawn for. */
interface Outside {
  readonly width: number;
  readonly height: number;
  readonly depth: number;
}
/** Pieces whose sizes follow from the carcass: drawn as shares of it, so that most can be made. */
type ForSize = (size: Outside) => readonly Plain[];

/** A share of a length, in quarters of a millimetre. */
const part = (share: number, lengthMm: number): number => Math.max(0.25, Math.round(share * lengthMm * 4) / 4);
const shareOf = (fc: Fc, min: number, max: number): Any<number> =>
  fc.integer({ min: min * 1000, max: max * 1000 }).map((thousandths) => thousandths / 1000);

/** Mostly along one axis at corners of their own; some run different ways, lie at one corner twice or take too much. */
const chamfers = (fc: Fc): Any<ForSize> => {
  const leg = shareOf(fc, 0.02, 0.5);
  const at = (corners: readonly (typeof CHAMFER_EDGES)[number][], twice: boolean): Any<ForSize> =>
    nowAndThen(fc, fc.record({ corner: fc.constantFrom(...corners), across: leg, deep: leg, up: leg }), 3).map(
      (drawn) =>
        ({ width, height, depth }) => {
          const list = drawn as readonly {
            corner: (typeof CHAMFER_EDGES)[number];
            across: number;
            deep: number;
            up: number;
          }[];
          const own = twice
            ? list
            : list.filter(({ corner }, i) => list.findIndex((each) => each.corner === corner) === i);
          return own.map(({ corner, across, deep, up }) => ({
            ...chamferAt(
              {
                id: '' as NodeId,
                acrossMm: part(across, width),
                deepMm: part(deep, depth),
                upMm: part(up, height),
              },
              corner,
            ),
          }));
        },
    );
  return fc.oneof(
    { weight: 3, arbitrary: at(CHAMFER_EDGES.slice(0, 4), false) },
    { weight: 2, arbitrary: at(['back-left', 'back-right'], false) },
    { weight: 2, arbitrary: at(['top-back', 'bottom-back'], false) },
    { weight: 1, arbitrary: at(CHAMFER_EDGES, true) },
  );
};

const chases = (fc: Fc): Any<ForSize> =>
  nowAndThen(
    fc,
    fc.record({
      panel: fc.constantFrom(...CHASE_PANELS),
      along: shareOf(fc, 0.05, 0.95),
      across: shareOf(fc, 0.05, 0.95),
      sizeMm: fc.tuple(mm(fc, 20, 140), mm(fc, 20, 90)),
      cornerRadiusMm: fc.constantFrom(0, 10, 60),
      edgeTrim: fc.constantFrom(null, 'trim-edge-rubber'),
    }),
    3,
  ).map(
    (drawn) =>
      ({ width, height, depth }) =>
        (drawn as readonly { panel: string; along: number; across: number }[]).map(({ along, across, ...rest }) => {
          const side = rest.panel === 'left' || rest.panel === 'right';
          const level = rest.panel === 'top' || rest.panel === 'bottom';
          return {
            ...rest,
            alongMm: part(along, side ? depth : width),
            acrossMm: part(across, level ? depth : height),
          };
        }),
  );

const wheelhouses = (fc: Fc): Any<ForSize> =>
  nowAndThen(
    fc,
    fc.record({
      side: fc.constantFrom(...WHEELHOUSE_SIDES),
      from: fc.oneof(fc.constant(0), shareOf(fc, 0, 0.9)),
      length: shareOf(fc, 0.1, 1),
      into: shareOf(fc, 0.02, 0.5),
      up: shareOf(fc, 0.02, 0.6),
    }),
    2,
  ).map(
    (drawn) =>
      ({ width, height, depth }) =>
        (drawn as readonly { side: string; from: number; length: number; into: number; up: number }[]).map((each) => {
          const [run, reach] = each.side === 'back' ? [width, depth] : [depth, width];
          return {
            side: each.side,
            fromMm: each.from === 0 ? 0 : part(each.from, run),
            lengthMm: part(each.length, run),
            inMm: part(each.into, reach),
            upMm: part(each.up, height),
          };
        }),
  );

const stand = (fc: Fc): Any<Plain> => {
  const sheets = ids('materials').filter((id) => /^(birch|hdpe|composite|aluminium)/.test(id));
  return fc.oneof(
    { weight: 2, arbitrary: fc.constant<Plain>({ kind: 'none' }) },
    { weight: 1, arbitrary: fc.record({ kind: fc.constant('sub-floor'), material: fc.constantFrom(...sheets) }) },
    {
      weight: 1,
      arbitrary: fc.record({
        kind: fc.constant('riser'),
        heightMm: mm(fc, 10, 160),
        runners: fc.integer({ min: 2, max: 5 }),
      }),
    },
  );
};

const anchors = (fc: Fc): Any<readonly Plain[]> => {
  const from = (near: string, far: string): Any<Plain> =>
    fc.record({ from: fc.constantFrom(near, far), mm: mm(fc, 0, 400) });
  const plates = hardwareOf('plate');
  const held = {
    bolt: fc.constantFrom(...hardwareOf('bolt').filter((id) => id.startsWith('bolt-'))),
    insert: oneOrNone(fc, hardwareOf('insert')),
    washer: oneOrNone(
      fc,
      plates.filter((id) => id.startsWith('washer')),
    ),
    plate: oneOrNone(
      fc,
      plates.filter((id) => id.startsWith('backing')),
    ),
    plateBonded: fc.boolean(),
  };
  return nowAndThen(
    fc,
    fc.oneof(
      fc.record({
        on: fc.constant('floor'),
        across: from('left', 'right'),
        deep: from('face', 'back'),
        letIn: fc.boolean(),
        ...held,
      }),
      fc.record({
        on: fc.constant('wall'),
        side: fc.constantFrom('left', 'right', 'back'),
        along: from('start', 'end'),
        up: from('bottom', 'top'),
        bracket: fc.constantFrom(...hardwareOf('bracket')),
        ...held,
      }),
    ),
    4,
  );
};

/**
 * What makes a carcass other than a plain box on a bare floor: chamfers, wiring chases, cut-outs for wheelhouses, what
 * it stands on, anchors with their floor plates and wall brackets. About a third of the carcasses have none of it, unless all are to.
 */
export const structure = (fc: Fc, always: boolean): Any<(size: Outside) => Plain> =>
  fc.oneof(
    { weight: always ? 0 : 1, arbitrary: fc.constant(() => ({})) },
    {
      weight: 2,
      arbitrary: fc
        .record({
          chamfers: chamfers(fc),
          chases: chases(fc),
          wheelhouses: wheelhouses(fc),
          stand: stand(fc),
          anchors: anchors(fc),
        })
        .map((drawn) => (size: Outside) => ({
          ...drawn,
          chamfers: drawn.chamfers(size),
          chases: drawn.chases(size),
          wheelhouses: drawn.wheelhouses(size),
        })),
    },
  );

/** Bars between two of the carcasses `carcass-1` to `carcass-count`; one alone has none. */
export const braces = (fc: Fc): Any<(count: number) => readonly Plain[]> => {
  const end = fc.record({ nth: fc.nat(40), at: fc.tuple(mm(fc, 0, 350), mm(fc, 0, 350), mm(fc, 0, 350)) });
  const one = fc.record({
    item: fc.constantFrom(...hardwareOf('brace')),
    lies: fc.constantFrom(...BRACE_FACES),
    from: end,
    to: end,
  });
  return nowAndThen(fc, one, 3).map((drawn) => (count) => {
    if (count < 2) return [];
    const placed = ({ nth, at }: { readonly nth: number; readonly at: unknown }): Plain => ({
      carcass: `carcass-${(nth % count) + 1}`,
      at,
    });
    return (drawn as readonly { readonly from: never; readonly to: never }[]).map((each, i) => ({
      ...each,
      id: `brace-${i + 1}`,
      from: placed(each.from),
      to: placed(each.to),
    }));
  });
};
