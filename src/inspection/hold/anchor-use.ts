import { dot, length, scale, subtract, type Vec3 } from '../../base/index.ts';
import type { Hardware, Material } from '../../catalog/index.ts';
import type { InspectionInput } from '../job.ts';
import {
  boltUse,
  insertUse,
  type LinkName,
  type LinkUse,
  type Pull,
  plateCollapse,
  plyBearing,
  plyPunching,
  sheetBearing,
  sheetPunching,
} from './links.ts';

type Anchor = InspectionInput['fitout']['anchors'][number];
type Panel = InspectionInput['fitout']['panels'][number];

/** What an anchor holds with, or the first figure that nobody has: the id of the record that lacks it. */
export interface AnchorUse {
  /** Every link that could be reckoned. */
  readonly links: readonly LinkUse[];
  readonly missing: readonly string[];
}

/** The parts of an anchor that links are reckoned from. */
interface Parts {
  readonly bolt: Hardware | null;
  readonly insert: Hardware | null;
  readonly washer: Hardware | null;
  readonly plate: Hardware | null;
  readonly bracket: Hardware | null;
  readonly panel: Panel | undefined;
  readonly material: Material | undefined;
}

const partsOf = ({ catalog, fitout }: InspectionInput, anchor: Anchor): Parts => {
  const piece = (id: string | null): Hardware | null => (id === null ? null : (catalog.hardware.get(id) ?? null));
  const panel = fitout.panels.find(({ id }) => id === anchor.panel);
  return {
    bolt: piece(anchor.bolt),
    insert: piece(anchor.insert),
    washer: piece(anchor.washer),
    plate: piece(anchor.plate),
    bracket: piece(anchor.bracket),
    panel,
    material: panel && catalog.materials.get(panel.material),
  };
};

/** Nuts are counted as wide as 1.6 threads. */
const NUT_OVER_THREAD = 1.6;

export const isPly = (material: Material | undefined): boolean =>
  material?.kind === 'plywood' || material?.kind === 'faced-plywood';

const use = (link: LinkName, loadN: number, capacityN: number): LinkUse => ({
  link,
  use: loadN === 0 ? 0 : loadN / capacityN,
});

/** The plywood between head and nut: the bolt bears on it, the washer pulls through it. */
const panelLinks = (
  job: InspectionInput,
  pull: Pull,
  wide: number,
  grip: number,
  material: Material,
  thread: number,
  below: boolean,
) => {
  const { rules } = job;
  const partial = rules.value('wood-partial-factor');
  const bearing = plyBearing(rules.value('bolt-ply-bearing-coefficient'), material.densityKgM3, thread, grip, partial);
  const punching = plyPunching(rules.value('panel-shear-strength'), wide, grip, partial);
  return [
    use(below ? 'below-bearing' : 'panel-bearing', pull.shearN, bearing),
    use(below ? 'below-punching' : 'panel-punching', pull.tensionN, punching),
  ];
};

const sheetLinks = (
  job: InspectionInput,
  anchor: Anchor,
  parts: Parts,
  pull: Pull,
  thread: number,
): readonly LinkUse[] => {
  const { rules } = job;
  const [thick, ultimate] = [rules.value('floor-skin-thickness'), rules.value('floor-skin-ultimate')];
  const partial = rules.value('anchor-partial-factor');
  const k = rules.value('bearing-factor-max');
  const skin = sheetBearing(k, ultimate, thread, thick, partial);
  const [long, wide, high] = parts.plate?.sizeMm ?? [0, 0, 0];
  const plateWide = Math.min(long, wide);
  const [bonded, area] = [anchor.plateBonded && plateWide > 0, long * wide];
  const plate = bonded ? sheetBearing(k, rules.value('plate-yield'), thread, high, partial) : 0;
  const under = plateWide || parts.insert?.sizeMm?.[1] || NUT_OVER_THREAD * thread;
  const moment = (rules.value('plate-yield') * high ** 2) / 4;
  return [
    use('sheet-bearing', pull.shearN, skin + plate),
    ...(bonded ? [use('bond', Math.max(0, pull.shearN - skin), area * rules.value('bond-shear'))] : []),
    use(
      'sheet-punching',
      pull.tensionN,
      sheetPunching(rules.value('punching-coefficient'), ultimate, under, thick, partial),
    ),
    ...(plateWide > 0
      ? [use('plate', pull.tensionN, plateCollapse(moment, (NUT_OVER_THREAD * thread) / 2, plateWide / 2) / partial)]
      : []),
  ];
};

const boltLinks = (job: InspectionInput, { bolt, insert, bracket }: Parts, pull: Pull): readonly LinkUse[] => {
  const links: LinkUse[] = [];
  if (bolt?.ratedN && bolt.acrossN) {
    const divisor = job.rules.value('anchor-interaction-tension');
    links.push({ link: 'bolt', use: boltUse(pull, { tensionN: bolt.ratedN, shearN: bolt.acrossN }, divisor) });
  }
  if (insert?.ratedN && insert.acrossN)
    links.push({ link: 'insert', use: insertUse(pull, { tensionN: insert.ratedN, shearN: insert.acrossN }) });
  if (bracket?.ratedN) links.push(use('bracket', Math.hypot(pull.tensionN, pull.shearN), bracket.ratedN));
  return links;
};

const unrated = (record: Hardware | null): readonly string[] =>
  record && !(record.ratedN && record.acrossN) ? [record.id] : [];

const missingOf = (anchor: Anchor, { bolt, insert, bracket, material, panel }: Parts, below: Material | null) => [
  ...(bolt === null ? [anchor.bolt] : unrated(bolt)),
  ...(anchor.insert !== null && insert === null ? [anchor.insert] : unrated(insert)),
  ...(anchor.bracket !== null && !bracket?.ratedN ? [anchor.bracket] : []),
  ...(isPly(material) ? [] : [panel?.material ?? anchor.panel]),
  ...(below !== null && !isPly(below) ? [below.id] : []),
];

/** The force of the vehicle on a carcass through one anchor, as a pull along the bolt and a shear across it. */
export const pullOf = (anchor: Pick<Anchor, 'into'>, force: Vec3): Pull => {
  const along = dot(force, anchor.into);
  return { tensionN: Math.max(0, along), shearN: length(subtract(force, scale(anchor.into, along))) };
};

/**
 * Load over capacity of every link of an anchor, from the panel that it goes through to the sheet of the vehicle, or
 * to the top panel of the carcass below (`below`, with its thickness). A link whose strength nobody gives is missing
 * and not reckoned.
 */
export const anchorUse = (
  job: InspectionInput,
  anchor: Anchor,
  pull: Pull,
  below: { readonly material: Material; readonly thickness: number } | null,
): AnchorUse => {
  const parts = partsOf(job, anchor);
  const { bolt, washer, plate, material } = parts;
  const thread = bolt?.threadMm ?? 0;
  const missing = missingOf(anchor, parts, below?.material ?? null);
  if (thread === 0) return { links: [], missing };
  const head = washer?.sizeMm?.[0] ?? bolt?.sizeMm?.[1] ?? thread;
  const nut = Math.min(...(plate?.sizeMm?.slice(0, 2) ?? [NUT_OVER_THREAD * thread]));
  return {
    links: [
      ...(material && isPly(material) ? panelLinks(job, pull, head, anchor.gripMm, material, thread, false) : []),
      ...boltLinks(job, parts, pull),
      ...(below === null
        ? sheetLinks(job, anchor, parts, pull, thread)
        : isPly(below.material)
          ? panelLinks(job, pull, nut, below.thickness, below.material, thread, true)
          : []),
    ],
    missing,
  };
};
