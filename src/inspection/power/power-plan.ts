import type { Device } from '../../catalog/index.ts';
import type { InspectionInput } from '../job.ts';
import { fuseFor, wireDrop } from './wire.ts';

/** One circuit: one device with its own fuse. */
export interface Circuit {
  readonly device: string;
  readonly name: string;
  readonly opening: string | null;
  readonly standbyA: number;
  readonly runA: number;
  /** The most that it draws. */
  readonly mostA: number;
  /** Gauge and copper of the smallest wire that carries it with its fuse; null where none in the house rules does. */
  readonly wire: { readonly gauge: string; readonly areaMm2: number; readonly amps: number } | null;
  readonly fuseA: number | null;
  /** Voltage lost over the loop, as a share of the supply parked; null while the length of the loop is unknown. */
  readonly dropShare: number | null;
  readonly dropLimit: number;
}

export interface PowerPlan {
  readonly circuits: readonly Circuit[];
  readonly standbyA: number;
  readonly runA: number;
  /** Everything running, each radio sending for its share of the time. */
  readonly meanA: number;
  /** Everything running while the hungriest radio sends. */
  readonly mostA: number;
  /** Hours parked on standby until the share of the battery is used; null without a battery or a load. */
  readonly parkedHours: number | null;
  readonly spareA: number | null;
}

const GAUGES = ['18', '16', '14', '12', '10'] as const;
/** Radios and chargers lose least; lights and the rest may lose more. */
const FUSSY: ReadonlySet<Device['kind']> = new Set(['radio', 'deck', 'head', 'charger', 'hub', 'screen']);

const mostOf = ({ amps }: Device): number => Math.max(amps.run, amps.transmit);
const meanOf = ({ amps, transmitShare }: Device): number =>
  amps.transmit > 0 ? amps.transmit * transmitShare + amps.run * (1 - transmitShare) : amps.run;

type Input = Pick<InspectionInput, 'design' | 'fitout' | 'catalog' | 'rules'>;

/** What a wire in the loom of an opening may carry, over what it carries alone. */
const derating = ({ rules }: Input, wires: number): number =>
  wires >= 7 ? rules.value('bundle-derating-7') : wires >= 4 ? rules.value('bundle-derating-4') : 1;

const circuitOf = (input: Input, device: Device, id: string, opening: string | null, wires: number): Circuit => {
  const { rules, design } = input;
  const mostA = mostOf(device);
  const loopM = design.vehicle.power.feedLoopM;
  const dropLimit = rules.value(FUSSY.has(device.kind) ? 'wire-drop-share' : 'wire-drop-other-share');
  const share = derating(input, wires);
  const dropOf = (areaMm2: number): number | null =>
    loopM === null
      ? null
      : wireDrop(rules.value('copper-resistivity'), mostA, loopM, areaMm2) / rules.value('parked-volts');
  const sizes = GAUGES.map((gauge) => {
    const [areaMm2, alone] = [rules.value(`wire-area-${gauge}`), rules.value(`wire-amps-${gauge}`)];
    const amps = alone * share;
    return {
      wire: { gauge, areaMm2, amps },
      fuseA: fuseFor(mostA, rules.value('fuse-factor'), amps),
      drop: dropOf(areaMm2),
    };
  });
  const carries = sizes.filter(({ fuseA }) => fuseA !== null);
  const chosen = carries.find(({ drop }) => drop === null || drop <= dropLimit) ?? carries.at(-1);
  return {
    device: id,
    name: device.name,
    opening,
    standbyA: device.amps.standby,
    runA: device.amps.run,
    mostA,
    wire: chosen?.wire ?? null,
    fuseA: chosen?.fuseA ?? null,
    dropShare: chosen?.drop ?? null,
    dropLimit,
  };
};

/** Every device as a circuit of its own with wire and fuse, and what all of them draw. */
export const powerPlan = (input: Input): PowerPlan => {
  const { design, fitout, catalog, rules } = input;
  const used = fitout.devices.flatMap(({ id, device, opening }) => {
    const record = catalog.devices.get(device);
    return record && mostOf(record) > 0 ? [{ id, opening, record }] : [];
  });
  const wiresAt = (opening: string | null): number => used.filter((each) => each.opening === opening).length;
  const sum = (of: (record: Device) => number): number => used.reduce((total, { record }) => total + of(record), 0);
  const standbyA = sum(({ amps }) => amps.standby);
  const runA = sum(({ amps }) => amps.run);
  const { batteryAh, alternatorSpareA } = design.vehicle.power;
  return {
    circuits: used.map(({ id, opening, record }) => circuitOf(input, record, id, opening, wiresAt(opening))),
    standbyA,
    runA,
    meanA: sum(meanOf),
    mostA: runA + Math.max(0, ...used.map(({ record }) => mostOf(record) - record.amps.run)),
    parkedHours:
      batteryAh === null || standbyA === 0 ? null : (batteryAh * rules.value('battery-use-share')) / standbyA,
    spareA: alternatorSpareA,
  };
};
