import { factText, type SayRule } from '../words.ts';

/** What contradicts what, by the code of the fact; `Figures` of the label or the slip are named as on paper. */
const CONTRADICTIONS: Readonly<Record<string, readonly [string, string]>> = {
  'axles-below-gross': [
    'The axle ratings together are below the gross rating',
    'One of the three figures was misread from the label: the axles must carry what the vehicle may weigh.',
  ],
  'axle-above-gross': ['An axle rating is above the gross rating', 'Read the label again.'],
  'slip-without-weight': ['The weigh slip has an axle without weight', 'Enter both axles, as received and empty.'],
  'slip-above-gross': [
    'The vehicle as received weighs more than its gross rating',
    'Read slip and label again; if both hold, nothing may be added.',
  ],
  'slip-above-front-axle': ['The front axle as received is over its rating', 'Read slip and label again.'],
  'slip-above-rear-axle': ['The rear axle as received is over its rating', 'Read slip and label again.'],
  'slip-sides-disagree': [
    'Left and right wheels do not add up to front and rear axle',
    'They weigh the same vehicle: read the slip again.',
  ],
  'slip-one-side-only': [
    'Only one side of the vehicle was weighed',
    'Enter the other side too, or neither; half of it checks nothing.',
  ],
  'track-above-wheelbase': ['The track is no less than the wheelbase', 'They may have changed places.'],
};

export const sayRatingsContradict: SayRule = (finding) => {
  const [title, detail] = CONTRADICTIONS[factText(finding, 'fact')] ?? [
    'Figures of the vehicle contradict each other',
    '',
  ];
  return { title, detail };
};
