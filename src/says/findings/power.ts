import { factNumber, factText, partName, type SayRule, sentence } from '../words.ts';

const amps = (value: number): string => `${Number(value.toFixed(value < 10 ? 2 : 1))} A`;

export const sayBatteryHours: SayRule = (finding) => ({
  title: `Parked, the battery lasts ${finding.value.toFixed(1)} h`,
  detail: `${amps(factNumber(finding, 'standbyA'))} on standby from a battery of ${factNumber(finding, 'batteryAh')} Ah, the usable half of it.`,
  valueText: `${finding.value.toFixed(1)} h`,
  limitText: `of ${finding.limit} h`,
});

export const sayAlternator: SayRule = (finding) => ({
  title: 'Everything running draws more than the alternator has to spare at idle',
  detail: `${amps(finding.value)} on average, ${amps(factNumber(finding, 'mostA'))} while the hungriest radio sends.`,
  valueText: amps(finding.value),
  limitText: `of ${amps(finding.limit)}`,
});

export const sayWireFuse: SayRule = (finding) => ({
  title: sentence(`no wire of the house rules carries ${factText(finding, 'name')} with its fuse`),
  detail: 'Use a larger cable with a fuse of its own at the source, or fewer wires in one bundle.',
  valueText: amps(finding.value),
  limitText: '',
});

export const sayWireDrop: SayRule = (finding, speech) => ({
  title: sentence(
    `${factText(finding, 'name')} loses ${speech.amount(finding.value, 'share')} of its voltage in the wire`,
  ),
  detail: `${amps(factNumber(finding, 'mostA'))} through gauge ${factText(finding, 'gauge')}, the largest that was tried. Shorten the feed or use a larger cable.`,
});

export const sayBayHeat: SayRule = (finding, speech) => {
  const [free, air] = [factNumber(finding, 'freeMm2'), factNumber(finding, 'movedM3h')];
  const there = [
    ...(free > 0 ? [`${Math.floor(free / 100)} cm² of vents and slots`] : []),
    ...(air > 0 ? [`a fan of ${Math.floor(air)} m³/h`] : []),
  ];
  const fitted = there.length === 0 ? 'in a closed bay' : `with ${there.join(' and ')}, which is too little`;
  return {
    title: sentence(`${partName(finding, 0, speech)} warms by ${speech.amount(finding.value, 'K')}`),
    detail: `${Math.round(factNumber(finding, 'watts'))} W ${fitted}. A fan of ${Math.ceil(factNumber(finding, 'fanM3h'))} m³/h with vents to breathe through holds ${speech.amount(finding.limit, 'K')}, or a low and a high vent of ${Math.ceil(factNumber(finding, 'ventMm2') / 100)} cm² each.`,
  };
};

const MISSING: Readonly<Record<string, string>> = {
  battery: 'the battery in ampere hours',
  alternator: 'what the alternator has to spare at idle',
  feed: 'the length of the feed, out and back',
};

export const sayPowerUnknown: SayRule = (finding) => ({
  title: 'Power is not fully checked',
  detail: `Needs ${factText(finding, 'missing')
    .split(' ')
    .map((each) => MISSING[each] ?? each)
    .join(', ')}: Survey, Vehicle.`,
  valueText: 'unknown',
  limitText: '',
});
