import { factNumber, type SayRule } from '../words.ts';

export const saySpaceMissing: SayRule = (finding) => ({
  title: 'No cargo space yet: nothing is checked against the vehicle',
  detail:
    factNumber(finding, 'stations') < 2
      ? 'Measure at least two stations, each from the floor to the roof on both sides.'
      : 'The survey does not make a closed space; its sheet says where.',
  valueText: 'not checked',
  limitText: '',
});

export const sayStartValues: SayRule = () => ({
  title: 'The survey holds start values of a vehicle class',
  detail: 'They serve for a first sketch. Measure the vehicle before anything is cut.',
  valueText: 'not measured',
  limitText: '',
});
