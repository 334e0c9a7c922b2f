import { add, cross, distance, dot, scale, subtract, type Vec3 } from '../../base/index.ts';
import type { Hardware } from '../../catalog/index.ts';
import { barThickness } from '../../fitout/index.ts';
import type { InspectionInput } from '../job.ts';
import { isPly } from './anchor-use.ts';
import { type BarSection, barStress, holedBar, leastMm4, type SectionLoad } from './bar-section.ts';
import { boltsUnder, minusWrench, type Wrench } from './bolts-under.ts';
import { boltUse, plyBearing, plyPunching, sheetBearing } from './links.ts';

type Brace = InspectionInput['fitout']['braces'][number];
type BraceBolt = Brace['bolts'][number];

/** Links between two braced carcasses. `brace-turn`: bolts all on one line, and the load turns about it. */
export type BraceLinkName =
  | 'brace-panel-bearing'
  | 'brace-panel-punching'
  | 'brace-bolt'
  | 'brace-bar-bearing'
  | 'brace-bar'
  | 'brace-turn';

/** The worst link of a tie; infinite where it cannot hold at all. */
export interface BraceUse {
  readonly link: BraceLinkName;
  readonly use: number;
  readonly brace: Brace;
}

/** All braces between two carcasses, the first and the second by their ids. */
export interface Tie {
  readonly carcasses: readonly [string, string];
  readonly braces: readonly Brace[];
}

interface Bar {
  readonly brace: Brace;
  readonly bolt: Hardware;
  readonly washer: Hardware;
  readonly record: Hardware;
  readonly yieldMPa: number;
  readonly youngMPa: number;
}

/** What a brace is reckoned from, or the records that nobody gives a strength for. */
const barOf = ({ catalog, fitout }: InspectionInput, brace: Brace): Bar | readonly string[] => {
  const piece = (id: string | null): Hardware | undefined => (id === null ? undefined : catalog.hardware.get(id));
  const [bolt, washer, record] = [piece(brace.bolt), piece(brace.washer), piece(brace.item)];
  const sheets = brace.bolts.flatMap(({ panel }) => fitout.panels.find(({ id }) => id === panel)?.material ?? panel);
  const missing = [
    ...(bolt?.ratedN && bolt.acrossN && bolt.threadMm ? [] : [brace.bolt ?? brace.id]),
    ...(record?.yieldMPa && record.youngMPa ? [] : [brace.item]),
    ...sheets.filter((id) => !isPly(catalog.materials.get(id))),
  ];
  if (missing.length > 0 || !bolt || !washer || !record?.yieldMPa || !record.youngMPa) return missing;
  return { brace, bolt, washer, record, yieldMPa: record.yieldMPa, youngMPa: record.youngMPa };
};

/** Records without a strength among those that ties are made of. */
export const tieMissing = (job: InspectionInput, { braces }: Tie): readonly string[] =>
  braces.flatMap((brace) => {
    const bar = barOf(job, brace);
    return 'bolt' in bar ? [] : bar;
  });

/** One bolt: the force of the brace on the carcass through it. */
const boltUses = (job: InspectionInput, bar: Bar, placed: BraceBolt, force: Vec3): readonly BraceUse[] => {
  const { catalog, fitout, rules } = job;
  const { bolt, washer, record, yieldMPa, brace } = bar;
  const along = dot(force, placed.into);
  const pull = { tensionN: Math.max(0, -along), shearN: Math.hypot(...subtract(force, scale(placed.into, along))) };
  const panel = fitout.panels.find(({ id }) => id === placed.panel);
  const material = panel && catalog.materials.get(panel.material);
  if (!material || !bolt.ratedN || !bolt.acrossN || !bolt.threadMm) return [];
  const wood = rules.value('wood-partial-factor');
  const bearing = plyBearing(
    rules.value('bolt-ply-bearing-coefficient'),
    material.densityKgM3,
    bolt.threadMm,
    placed.gripMm,
    wood,
  );
  const punching = plyPunching(
    rules.value('panel-shear-strength'),
    washer.sizeMm?.[0] ?? bolt.threadMm,
    placed.gripMm,
    wood,
  );
  const metal = sheetBearing(
    rules.value('bearing-factor-max'),
    yieldMPa,
    bolt.threadMm,
    barThickness(record),
    rules.value('anchor-partial-factor'),
  );
  const strength = { tensionN: bolt.ratedN, shearN: bolt.acrossN };
  return [
    { brace, link: 'brace-panel-bearing', use: pull.shearN / bearing },
    { brace, link: 'brace-panel-punching', use: pull.tensionN / punching },
    { brace, link: 'brace-bolt', use: boltUse(pull, strength, rules.value('anchor-interaction-tension')) },
    { brace, link: 'brace-bar-bearing', use: pull.shearN / metal },
  ];
};

/** What the bar takes just past its innermost bolt, `way` 1 at the end from which it points and −1 at the other. */
const barUse = (
  job: InspectionInput,
  { brace, record, yieldMPa, youngMPa }: Bar,
  own: readonly { readonly bolt: BraceBolt; readonly force: Vec3 }[],
  free: number,
  inner: Vec3,
  way: 1 | -1,
): BraceUse => {
  const [, wide = 0, high = 0] = record.sizeMm ?? [];
  const { along } = brace;
  const out = scale(own[0]?.bolt.into ?? [0, 0, 0], -1);
  const across = cross(out, along);
  const partial = job.rules.value('anchor-partial-factor');
  const section = holedBar(wide, barThickness(record), high, brace.holeMm);
  // The bolts push on the bar with the opposite of what it pushes on the carcass with; the cut carries that on.
  let force: Vec3 = [0, 0, 0];
  let moment: Vec3 = [0, 0, 0];
  for (const each of own) {
    force = add(force, scale(each.force, way));
    moment = add(moment, scale(cross(subtract(each.bolt.at, inner), each.force), way));
  }
  const loadOn = ({ middle }: BarSection, mirror: 1 | -1): SectionLoad => {
    const arm = add(scale(across, -mirror * middle[0]), scale(out, -middle[1]));
    const about = add(moment, cross(arm, force));
    // Seen in a mirror, forces across and moments along and out change sides.
    return {
      along: dot(force, along),
      across: mirror * dot(force, across),
      out: dot(force, out),
      aboutAlong: mirror * dot(about, along),
      aboutAcross: dot(about, across),
      aboutOut: mirror * dot(about, out),
    };
  };
  // Nobody says at which edge the other leg of an angle stands: the worse of both.
  const stress = Math.max(barStress(section, loadOn(section, 1)), barStress(section, loadOn(section, -1)));
  const push = Math.max(0, -dot(force, along));
  const buckling = (Math.PI ** 2 * youngMPa * leastMm4(section)) / free ** 2;
  return { brace, link: 'brace-bar', use: partial * (stress / yieldMPa + push / buckling) };
};

const innermost = ({ bolts, at }: Brace, carcass: string): BraceBolt | undefined =>
  bolts.filter((bolt) => bolt.carcass === carcass).toSorted((a, b) => distance(a.at, at) - distance(b.at, at))[0];

/** One end of a tie: the wrench that its braces put on that carcass. */
const endUses = (
  job: InspectionInput,
  bars: readonly Bar[],
  carcass: string,
  wrench: Wrench,
): readonly BraceUse[] | null => {
  const bolts = bars.flatMap((bar) =>
    bar.brace.bolts.flatMap((bolt) => (bolt.carcass === carcass ? [{ bar, bolt }] : [])),
  );
  const forces = boltsUnder(
    bolts.map(({ bolt }) => bolt.at),
    wrench,
  );
  if (!forces) return null;
  const under = bolts.map(({ bar, bolt }, i) => ({ bar, bolt, force: forces[i] ?? ([0, 0, 0] as const) }));
  return [
    ...under.flatMap(({ bar, bolt, force }) => boltUses(job, bar, bolt, force)),
    ...bars.flatMap((bar): readonly BraceUse[] => {
      const [a, b] = bar.brace.carcasses.map((id) => innermost(bar.brace, id));
      const first = bar.brace.carcasses[0] === carcass;
      const inner = first ? a : b;
      if (!a || !b || !inner) return [];
      const own = under.filter((each) => each.bar === bar);
      return [barUse(job, bar, own, distance(a.at, b.at), inner.at, first ? 1 : -1)];
    }),
  ];
};

/** The worst of a tie that puts a wrench on its first carcass and the opposite on its second. */
export const tieUse = (job: InspectionInput, { carcasses, braces }: Tie, onFirst: Wrench): BraceUse | null => {
  const bars = braces.flatMap((brace): readonly Bar[] => {
    const bar = barOf(job, brace);
    return 'bolt' in bar ? [bar] : [];
  });
  const [brace] = braces;
  const [one, other] = [
    endUses(job, bars, carcasses[0], onFirst),
    endUses(job, bars, carcasses[1], minusWrench(onFirst)),
  ];
  if (!brace) return null;
  if (!one || !other) return { brace, link: 'brace-turn', use: Number.POSITIVE_INFINITY };
  return [...one, ...other].toSorted((a, b) => b.use - a.use)[0] ?? null;
};
