import { formatMass, type Vec2 } from '../../base/index.ts';
import type { Catalog, HouseRules } from '../../catalog/index.ts';
import type { Design, NodeId } from '../../design/index.ts';
import type { CargoSpace } from '../../envelope/index.ts';
import type { FitOut } from '../../fitout/index.ts';
import type { Inspection, LoadingCaseResult, OpeningOrder } from '../../inspection/index.ts';
import { revisionStamp } from '../../revision/index.ts';
import {
  CAUTIONS,
  nameOfPart,
  sayCase,
  sayFinding,
  sayLength,
  sayMotions,
  sayOrderRow,
  sayOrderStep,
  sayReach,
  sayStamp,
} from '../../says/index.ts';
import { signOffOf } from '../sign-off.ts';
import { type ReviewScene, reviewScene } from './review-scene.ts';
import { type ReviewShop, reviewShop, type ShopExtra } from './review-shop.ts';

export const REVIEW_FORMAT = 'hatchwright-review';

export interface ReviewStep {
  readonly says: string;
  readonly part: string;
  /** What it moves and how far, as a share of the travel; null where nothing moves. */
  readonly mover: string | null;
  readonly share: number | null;
}

export interface ReviewGear {
  readonly id: string;
  readonly name: string;
  /** The opening that it stands in, or null where it has no place yet. */
  readonly opening: string | null;
  readonly size: string;
  readonly mass: string;
  readonly needs: readonly string[];
  readonly user: string;
  readonly note: string;
  readonly firstDue: boolean;
  /** From the closed vehicle to hand; empty where no way was found. */
  readonly steps: readonly ReviewStep[];
  readonly motions: string;
  /** The whole way in a sentence. */
  readonly way: string;
  /** Where every mover stands when it is taken. */
  readonly shares: Readonly<Record<string, number>>;
}

export interface ReviewOpening {
  readonly id: string;
  readonly carcass: string;
  readonly parent: string | null;
  readonly name: string;
  /** Seen at the face: from the left and from the floor of the carcass, across × up, mm; null behind another. */
  readonly face: { readonly from: Vec2; readonly size: Vec2 } | null;
  readonly leaf: boolean;
}

export interface ReviewCarcass {
  readonly id: string;
  readonly name: string;
  /** Across × up, mm. */
  readonly size: Vec2;
}

export interface ReviewLoad {
  readonly name: string;
  readonly rows: readonly {
    readonly what: string;
    readonly carries: string;
    readonly reserve: string;
    readonly over: boolean;
  }[];
}

/** Everything that a review copy shows: names, sentences and shapes, and nothing of the shop unless asked for. */
export interface ReviewData {
  readonly format: typeof REVIEW_FORMAT;
  readonly version: 1;
  readonly title: string;
  readonly customer: string;
  readonly units: Design['units'];
  readonly letter: string;
  readonly stamp: string;
  /** Letter, hash and who approved it, as title blocks have it. */
  readonly signed: string;
  readonly sha256: string;
  readonly approvals: readonly { readonly who: string; readonly on: string }[];
  readonly scene: ReviewScene;
  readonly carcasses: readonly ReviewCarcass[];
  readonly openings: readonly ReviewOpening[];
  readonly gear: readonly ReviewGear[];
  readonly order: readonly string[];
  readonly loads: readonly ReviewLoad[];
  /** Findings that stand: stops and cautions, in words. */
  readonly findings: readonly { readonly severity: string; readonly says: string; readonly part: string | null }[];
  readonly questions: readonly { readonly id: NodeId; readonly text: string; readonly about: string | null }[];
  readonly cautions: readonly string[];
  readonly shop: ReviewShop | null;
}

export interface ReviewInput {
  readonly design: Design;
  readonly fitout: FitOut;
  readonly catalog: Catalog;
  readonly rules: HouseRules;
  readonly space: CargoSpace | null;
  readonly inspection: Inspection;
  readonly order: OpeningOrder;
  /** What of the shop the maker of the copy ticked; nothing of it goes in without. */
  readonly withShop: readonly ShopExtra[];
}

type GearMapInput = Pick<ReviewInput, 'design' | 'fitout' | 'order'>;

const gearOf = ({ design, order }: GearMapInput, names: (id: string) => string): readonly ReviewGear[] => {
  const reaches = new Map(order.gear.map((reach) => [reach.gear, reach]));
  return design.gear.map((gear) => {
    const reach = reaches.get(gear.id);
    return {
      id: gear.id,
      name: gear.name,
      opening: gear.place?.opening ?? null,
      size: gear.sizeMm.map((mm) => sayLength(mm, design.units)).join(' × '),
      mass: formatMass(gear.massKg, design.units),
      needs: gear.needs,
      user: gear.user,
      note: gear.note,
      firstDue: gear.firstDue,
      steps: (reach?.steps ?? []).map((step) => ({
        says: sayOrderStep(step, names),
        part: step.part,
        mover: step.mover,
        share: step.share,
      })),
      motions: reach ? sayMotions(reach) : '',
      way: reach ? sayReach(reach, names) : '',
      shares: reach?.shares ?? {},
    };
  });
};

/** How deep behind the face an opening may begin and still be seen there. */
const FRONT_MM = 60;

/** The face shows what is fitted there; what lies inside a fitting, or behind a front layer, is seen once it is open. */
const openingsOf = ({ fitout }: GearMapInput, names: (id: string) => string): readonly ReviewOpening[] => {
  const byId = new Map(fitout.openings.map((opening) => [opening.id, opening]));
  const isInside = (parent: (typeof fitout.openings)[number]['parent']): boolean => {
    const around = parent === null ? undefined : byId.get(parent);
    return around !== undefined && (around.content === 'fitted' || isInside(around.parent));
  };
  return fitout.openings.map(({ id, carcass, parent, content, from, size }) => ({
    id,
    carcass,
    parent,
    name: names(id),
    leaf: content !== 'divided',
    face:
      content === 'divided' || from[1] > FRONT_MM || isInside(parent)
        ? null
        : { from: [from[0], from[2]], size: [size[0], size[2]] },
  }));
};

const loadOf = (load: LoadingCaseResult, units: Design['units']): ReviewLoad => {
  const row = (what: string, kg: number, margin: number | null) => ({
    what,
    carries: formatMass(kg, units),
    reserve: margin === null ? 'rating not known' : formatMass(margin, units),
    over: margin !== null && margin < 0,
  });
  return {
    name: sayCase(load.id),
    rows: [
      row('front axle', load.frontKg, load.margins.frontKg),
      row('rear axle', load.rearKg, load.margins.rearKg),
      row('all up', load.totalKg, load.margins.grossKg),
    ],
  };
};

/** What the gear map, the crew card and the labels are printed from. */
export type GearMapData = Pick<
  ReviewData,
  'title' | 'customer' | 'units' | 'stamp' | 'signed' | 'carcasses' | 'openings' | 'gear' | 'order'
>;

/** Where every item of gear lives, and how it comes to hand. */
export const createGearMap = (input: GearMapInput): GearMapData => {
  const { design, fitout } = input;
  const names = nameOfPart(design, fitout);
  return {
    title: design.title,
    customer: design.customer,
    units: design.units,
    stamp: sayStamp(revisionStamp(design)),
    signed: signOffOf(design).mark,
    carcasses: fitout.carcasses.map(({ id, size }) => ({ id, name: names(id), size: [size[0], size[2]] })),
    openings: openingsOf(input, names),
    gear: gearOf(input, names),
    order: input.order.rows.map((row) => sayOrderRow(row, names)),
  };
};

/** Makes what a review copy shows. The same design gives the same data. */
export const createReviewData = (input: ReviewInput): ReviewData => {
  const { design, fitout, catalog, space, inspection } = input;
  const names = nameOfPart(design, fitout);
  const stamp = revisionStamp(design);
  return {
    format: REVIEW_FORMAT,
    version: 1,
    ...createGearMap(input),
    // A draft was not released: a reply to it belongs to no letter.
    letter: stamp.draft ? '' : stamp.letter,
    sha256: stamp.sha256,
    approvals: stamp.approvals.map(({ who, on }) => ({ who, on })),
    scene: reviewScene(design, fitout, catalog, space),
    loads: inspection.cases.map((load) => loadOf(load, design.units)),
    findings: inspection.findings
      .filter(({ severity }) => severity !== 'note')
      .map((finding) => ({
        severity: finding.severity,
        says: sayFinding(finding, design.units, names).title,
        part: finding.parts[0] ?? null,
      })),
    questions: design.questions.map(({ id, text, about }) => ({ id, text, about })),
    cautions: CAUTIONS.map(({ long }) => long),
    shop: input.withShop.length > 0 ? reviewShop(input, input.withShop) : null,
  };
};
