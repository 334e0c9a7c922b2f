import type { Material } from '../../catalog/index.ts';
import { type Board, plateSag, shelfSag, shelfStress } from '../carry/index.ts';
import type { Finding } from '../finding.ts';
import { forceOf } from '../hold/index.ts';
import type { Job } from '../job.ts';
import { found, limitAt, NOTHING, ruleLimit, type Verdict } from '../verdict.ts';

type Panel = Job['fitout']['panels'][number];

const MM_PER_METRE = 1000;

interface Loaded {
  readonly panel: Panel;
  readonly material: Material;
  readonly board: Board;
  readonly kg: number;
}

/** Gear in one room of an opening. */
const gearKg = ({ fitout, design }: Job, opening: string, level: number | null): number => {
  const here = new Set<string>(
    fitout.gear
      .filter((each) => each.opening === opening && (level === null || each.level === level))
      .map(({ gear }) => gear),
  );
  return design.gear.reduce((sum, { id, massKg }) => (here.has(id) ? sum + massKg : sum), 0);
};

const loaded = (job: Job, panel: Panel, kg: number): readonly Loaded[] => {
  const material = job.catalog.materials.get(panel.material);
  if (!material) return [];
  const board: Board = {
    spanMm: panel.length,
    depthMm: panel.width,
    thicknessMm: panel.thickness,
    youngMPa: material.youngMPa.along,
  };
  return [{ panel, material, board, kg: kg + panel.massKg }];
};

/** Shelves with what stands on each: the shelf numbered n bears the room at level n. */
const shelvesOf = (job: Job): readonly Loaded[] =>
  job.fitout.panels.flatMap((panel) => {
    if (panel.role !== 'shelf') return [];
    const level = Number(/(\d+)$/.exec(panel.id)?.[1] ?? Number.NaN);
    return Number.isNaN(level) ? [] : loaded(job, panel, gearKg(job, panel.origin, level));
  });

/** The openings that a drawer holds, by the drawer. */
const insideOf = ({ fitout }: Job, drawer: string): readonly string[] => {
  const all = new Set([drawer]);
  for (const { id, parent } of fitout.openings) if (parent !== null && all.has(parent)) all.add(id);
  return [...all];
};

/**
 * Sag of every shelf under what stands on it and itself, with creep, against what a shop aims at for its length; and
 * its bending stress when the road throws it. A shelf that would break: stop.
 */
export const shelfSags = (job: Job): Verdict => {
  const [aim, shock] = [ruleLimit(job.rules, 'shelf-sag-aim'), ruleLimit(job.rules, 'bending-shock-share')];
  const findings = shelvesOf(job).flatMap(({ panel, material, board, kg }): readonly Finding[] => {
    const loadN = forceOf(job, kg, 1);
    const value = shelfSag(board, loadN) * material.creepFactor;
    const limit = limitAt(aim, (aim.value * board.spanMm) / MM_PER_METRE, 'mm');
    const stress = shelfStress(board, loadN) * job.rules.value('hold-road-shock');
    const strength = material.bendingStrengthMPa?.along ?? null;
    const facts = { kg, span: board.spanMm };
    if (strength !== null && stress > strength * shock.value)
      return [
        found('shelf-sag', {
          severity: 'stop',
          parts: [panel.id],
          value: stress,
          limit: limitAt(shock, strength * shock.value, 'MPa'),
          facts,
        }),
      ];
    return value > limit.value
      ? [found('shelf-sag', { severity: 'caution', parts: [panel.id], value, limit, facts })]
      : [];
  });
  return { ...NOTHING, findings };
};

/** Sag of every drawer bottom, held in grooves on four sides, so that it clears what is below. */
export const drawerBottoms = (job: Job): Verdict => {
  const limit = ruleLimit(job.rules, 'drawer-bottom-sag');
  const bottoms = job.fitout.panels
    .filter(({ role }) => role === 'box-bottom')
    .flatMap((panel) => {
      const kg = insideOf(job, panel.origin).reduce((sum, opening) => sum + gearKg(job, opening, null), 0);
      return loaded(job, panel, kg);
    });
  const findings = bottoms.flatMap(({ panel, material, board, kg }): readonly Finding[] => {
    const { along, across } = material.youngMPa;
    const young = { ...board, youngMPa: Math.min(along, across) };
    const value = plateSag(young, forceOf(job, kg, 1)) * material.creepFactor;
    const facts = { kg };
    return value > limit.value
      ? [found('drawer-bottom-sag', { severity: 'caution', parts: [panel.id], value, limit, facts })]
      : [];
  });
  return { ...NOTHING, findings };
};
