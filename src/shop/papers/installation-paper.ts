import { groupBy, type LengthUnits } from '../../base/index.ts';
import type { Mover, PlacedAnchor } from '../../fitout/index.ts';
import { powerPlan } from '../../inspection/index.ts';
import { sayOrderRow } from '../../says/index.ts';
import type { Drawing } from '../drawing/drawing.ts';
import { sizeText, unitsText } from '../drawing/paper-words.ts';
import { angleText } from '../edge-work.ts';
import { type PaperCell, type PaperColumn, type PaperPiece, paperPages } from '../paper/index.ts';
import { namesOf, type PapersInput, paperHead } from './paper.ts';

const TICK: PaperCell = { tick: true };

const tasks = (title: string, lines: readonly string[]): readonly PaperPiece[] => [
  { kind: 'heading', words: title },
  {
    kind: 'table',
    columns: [
      { title: 'done', share: 5 },
      { title: 'what', share: 78 },
      { title: 'who', share: 12 },
    ],
    rows: lines.map((line) => [TICK, line, '']),
  },
];

const BEFORE_DRILLING = [
  'Looked at the underside under every hole and photographed it: tank, vapour, fuel and brake lines, exhaust, harness, high voltage.',
  'High voltage (orange): powered down by the maker’s procedure, waited as long as it says, measured before touching.',
  'Battery disconnected where the vehicle builder asks for it before drilling or welding.',
  'The anchor template lies on its datum and its check bars measure true; no hole stands in the hatched area.',
  'Depth stop set; somebody watches the far side.',
];

const CLEAR_OF = [
  'Belts, retractors, child tethers and lower anchors, seat latches and exits are free; the seat goes through its whole travel.',
  'Curtain, seat and pillar airbags: nothing in, on or near the covers or in the path in which they fill.',
  'Spare wheel, jack, battery, service plug and cut loop can be reached as the maker’s manual says.',
  'Vents, drains, lamps, camera, rear sight and the high stop lamp are free.',
  'The hatch closes from fully open by its own weight or motor, first on a strip of paper at every near place.',
];

const LAST = [
  'Cabinet square: diagonals of every open face within 1.5 mm (1/16 in) of each other.',
  'Every drawer and tray carries a plate with its greatest load.',
  'Sharp edges and screw points: a hand run along every place that a hand can reach.',
  'Lights work with the hatch open; the hatch stays up in the cold (gas springs).',
  'Drive on a rough road with all gear aboard: nothing rattles, nothing opened, nothing moved.',
  'Witness marks still line up after the drive.',
];

const ANCHORS: readonly PaperColumn[] = [
  { title: 'carcass', share: 14 },
  { title: 'place x, y, z', share: 22 },
  { title: 'bolt, insert, plate', share: 30 },
  { title: 'looked below', share: 7 },
  { title: 'deburred, primed', share: 8 },
  { title: 'sealed', share: 6 },
  { title: 'torque, tool', share: 11 },
  { title: 'witness mark', share: 7 },
];

const anchorCells = (
  anchor: PlacedAnchor,
  names: (id: string) => string,
  { catalog, design }: PapersInput,
): readonly PaperCell[] => {
  const piece = (id: string | null): readonly string[] => (id === null ? [] : [catalog.hardware.get(id)?.name ?? id]);
  return [
    `${names(anchor.carcass)}, ${anchor.on}`,
    anchor.at.map((mm) => sizeText(mm, design.units)).join(', '),
    [anchor.bracket, anchor.bolt, anchor.insert, anchor.washer, anchor.plate].flatMap(piece).join('; '),
    TICK,
    TICK,
    TICK,
    '',
    TICK,
  ];
};

const MOVERS: readonly PaperColumn[] = [
  { title: 'what moves', share: 26 },
  { title: 'goes', share: 14, align: 'right' },
  { title: 'before it moves', share: 40 },
  { title: 'whole way', share: 6 },
  { title: 'latched shut', share: 7 },
  { title: 'held open', share: 7 },
];

const travelText = ({ motion }: Mover, units: LengthUnits): string =>
  motion.kind === 'slide' ? `${sizeText(motion.travel, units)} out` : angleText(motion.travelRad);

const moverPieces = (input: PapersInput, names: (id: string) => string): readonly PaperPiece[] => {
  const { fitout, order, design } = input;
  if (fitout.movers.length === 0) return [];
  const before = groupBy(order.rows, ({ part }) => part);
  return [
    { kind: 'heading', words: 'Everything that moves, through its whole way, gear aboard' },
    {
      kind: 'table',
      columns: MOVERS,
      rows: fitout.movers.map((mover) => [
        names(mover.id),
        travelText(mover, design.units),
        (before.get(mover.id) ?? []).map((row) => sayOrderRow(row, names)).join(' '),
        TICK,
        TICK,
        TICK,
      ]),
    },
    {
      kind: 'words',
      words:
        'Then each pair that a crew would have open together, with the hatch open and half open: nothing meets, nothing is trapped, every latch can still be reached with gloves on.',
    },
  ];
};

const WIRES: readonly PaperColumn[] = [
  { title: 'circuit', share: 34 },
  { title: 'most A', share: 10, align: 'right' },
  { title: 'fuse A', share: 10, align: 'right' },
  { title: 'wire, gauge', share: 14 },
  { title: 'tugged', share: 7 },
  { title: 'fused at the source', share: 11 },
  { title: 'works', share: 7 },
];

const wirePieces = ({ design, fitout, catalog, rules }: PapersInput): readonly PaperPiece[] => {
  const { circuits } = powerPlan({ design, fitout, catalog, rules });
  if (circuits.length === 0) return [];
  return [
    { kind: 'heading', words: 'Wiring, by licensed practice' },
    {
      kind: 'table',
      columns: WIRES,
      rows: circuits.map(({ name, mostA, fuseA, wire }) => [
        name,
        String(Number(mostA.toFixed(1))),
        fuseA === null ? 'to be worked out' : String(fuseA),
        wire === null ? 'none in the house rules' : `${wire.gauge} (${wire.areaMm2} mm²)`,
        TICK,
        TICK,
        TICK,
      ]),
    },
    {
      kind: 'words',
      words:
        'Grommets where a wire goes through metal, slack where something moves, every wire labelled at both ends, the as-built sheet drawn.',
    },
  ];
};

const torquePieces = ({ design }: PapersInput): readonly PaperPiece[] => [
  { kind: 'heading', words: 'Anchors tightened again' },
  {
    kind: 'words',
    words: 'After 500 to 1,000 km on the road: torque checked, witness marks made anew.',
  },
  {
    kind: 'table',
    columns: [
      { title: 'due', share: 30 },
      { title: 'done on', share: 30 },
      { title: 'who', share: 35 },
    ],
    rowMm: 8,
    rows: [
      ...design.record.torqueChecks.map(({ due, doneOn, who }) => [due, doneOn, who]),
      ...(design.record.torqueChecks.length === 0 ? [['', '', '']] : []),
    ],
  },
];

/** What is ticked off from the first hole to the hand-over. */
export const installationPaper = (input: PapersInput): readonly Drawing[] => {
  const { design, fitout } = input;
  const names = namesOf(input);
  return paperPages(
    paperHead(
      design,
      'Installation check sheet',
      'The vehicle builder’s guide for modifiers, local codes and licensed practice overrule this sheet.',
    ),
    [
      ...tasks('Before any hole', BEFORE_DRILLING),
      { kind: 'heading', words: 'Anchors' },
      ...(fitout.anchors.length === 0
        ? [
            {
              kind: 'words',
              words: 'The design holds no anchor: a cabinet that is not bolted down is not installed.',
              strong: true,
            } as const,
          ]
        : [
            {
              kind: 'words',
              words: `Places in ${unitsText(design.units)}: forward of the hatch sill, left of the middle, above the floor. Torque by the maker of the fastener or the vehicle; write what was set and with which tool.`,
            } as const,
            {
              kind: 'table',
              columns: ANCHORS,
              rows: fitout.anchors.map((anchor) => anchorCells(anchor, names, input)),
            } as const,
          ]),
      ...moverPieces(input, names),
      ...tasks('Clear of', CLEAR_OF),
      ...wirePieces(input),
      ...tasks('Last', LAST),
      ...torquePieces(input),
      { kind: 'heading', words: 'Signed' },
      { kind: 'blanks', captions: ['Installed by', 'date', 'Checked by', 'date'], across: 2 },
    ],
  );
};
