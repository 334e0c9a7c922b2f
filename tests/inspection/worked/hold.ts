import { boxSurvey, HATCH } from '../../envelope/surveys.ts';
import { fitted } from '../../fitout/designs.ts';
import { anchor, catalog, inspectScene, panel } from '../fixture.ts';
import { bracedPair, FORWARD, PAIR } from '../scenes/braces.ts';
import { bracketDesign, inspectBracket } from '../scenes/bracket.ts';
import { held, holdTo, solvedScene, storage, stowed } from '../scenes/hold.ts';
import { obstacle, zone } from '../scenes/vehicle.ts';
import { example, worked } from './example.ts';

const anchored = (count: number) => {
  const { anchors = [], ...rest } = held();
  return inspectScene({ survey: null, fitout: { ...rest, anchors: anchors.slice(0, count) } });
};

const overTank = ({ from, at, to = 1200 }: { readonly from: number; readonly at: number; readonly to?: number }) =>
  inspectScene({
    survey: boxSurvey({ zones: [zone('tank', 'no-hole', [from, 100, -60], [to, 400, 0])] }),
    fitout: { ...held(), anchors: [anchor('anchor-1', [at, 200, 0])] },
  });

/** A bracket that a breathing set stands in. */
const CRADLE = fitted('opening-2', {
  kind: 'apparatus-bracket',
  bracket: 'cradle-pack-floor',
  mounting: 'floor',
});

const ratedN = (id: string): number => catalog.hardware.get(id)?.ratedN ?? Number.NaN;
const angle = catalog.hardware.get('bracket-angle-60')?.reachMm ?? [];

/** Anchors, restraints and what comes against a seat-back. */
export const HOLD = [
  example('anchor-count', [
    worked({
      given: { anchors: 3 },
      run: ({ anchors }) => anchored(anchors),
      words: '3 anchors, 3 of 4: caution',
      expects: { severity: 'caution', value: '3', limit: '4' },
    }),
    worked({
      given: { anchors: 0 },
      run: ({ anchors }) => anchored(anchors),
      words: '0 of 4: stop',
      expects: { severity: 'stop', value: '0', limit: '4' },
    }),
  ]),
  example(
    'anchor-hold',
    [
      worked({
        given: { kg: 220, thread: 8 },
        run: ({ kg, thread }) =>
          inspectScene({
            survey: null,
            fitout: held({ bolt: `bolt-m${thread}x40` }, kg),
            design: holdTo('ambulance'),
          }),
        words:
          '220 kg at 10 g on 4 bolts M8: each takes 220 · 10 · 9.80665 / 4 = 5,394 N; in a floor of 0.8 mm it may take 2.5 · 270 · 8 · 0.8 / 1.25 = 3,456 N; 5,394 / 3,456 = 1.56 of 1: stop',
        expects: {
          severity: 'stop',
          value: '1.56',
          limit: '1',
          facts: { g: '10', shearN: '5,394' },
          told: { link: 'sheet-bearing' },
        },
      }),
      worked({
        given: { kg: 145, other: 100 },
        run: ({ kg, other }) =>
          inspectScene({
            survey: null,
            fitout: bracedPair({ 'carcass-1': kg, 'carcass-2': other }, PAIR),
            design: FORWARD,
          }),
        words:
          '145 kg alone 145 · 10 · 9.80665 / 4 / 3,456 = 1.03; braced to 100 kg beside it the worst bolt of both uses 0.95 ([sum](loads.md#carcasses-tied-by-braces)), so the group holds: caution',
        expects: {
          severity: 'caution',
          value: '1.03',
          facts: { groupUse: '0.95' },
          told: { group: 'holds' },
        },
      }),
    ],
    {
      house: [
        'hold-ambulance',
        'standard-gravity',
        'bearing-factor-max',
        'floor-skin-ultimate',
        'floor-skin-thickness',
        'anchor-partial-factor',
      ],
      looked: { anchors: held().anchors?.length ?? 0 },
    },
  ),
  example('anchor-edge', [
    worked({
      given: { edge: 25 },
      run: ({ edge }) =>
        inspectScene({
          survey: null,
          fitout: { ...held(), anchors: [anchor('anchor-1', [50, 0, 0], { edgeMm: edge })] },
        }),
      words: 'a bolt 25 from the edge, 25 of 30: caution',
      expects: { severity: 'caution', value: '25', limit: '30' },
    }),
    worked({
      given: { edge: -2 },
      run: ({ edge }) =>
        inspectScene({
          survey: null,
          fitout: { ...held(), anchors: [anchor('anchor-1', [50, 0, 0], { edgeMm: edge })] },
        }),
      words: '2 beside the panel, −2 of 30: stop',
      expects: { severity: 'stop', value: '−2', limit: '30' },
    }),
  ]),
  example('anchor-no-hole', [
    worked({
      given: { from: 900, to: 1200, at: 1050 },
      run: overTank,
      words: 'a tank from 900 to 1,200 forward under the floor, an anchor at 1,050: 1 of 0: stop',
      expects: { severity: 'stop', value: '1', limit: '0' },
    }),
    worked({
      given: { from: 900, at: 850 },
      run: overTank,
      words: 'at 850: nothing',
      expects: { severity: 'nothing' },
    }),
  ]),
  example(
    'bracket-reach',
    [
      worked({
        given: { sigma: 2, gap: 60 },
        run: ({ sigma, gap }) =>
          inspectBracket(bracketDesign(gap, 'bracket-angle-60', boxSurvey({ sigmaMm: sigma, closures: [HATCH] }))),
        words:
          'sections known to 2: u = 2 √(2² + 2² + 1²) = 6; an angle that bridges 25 to 60, its panel 60 from the wall: 60 − 60 = 0 over, within 6: caution',
        expects: { severity: 'caution', value: '60', limit: '60', u: '6' },
      }),
      worked({
        given: { sigma: 2, gap: 18.5 },
        run: ({ sigma, gap }) =>
          inspectBracket(bracketDesign(gap, 'bracket-angle-60', boxSurvey({ sigmaMm: sigma, closures: [HATCH] }))),
        words: '18.5 from it: 25 − 18.5 = 6.5 too near, more than 6: stop',
        expects: { severity: 'stop', value: '18.5', limit: '25' },
      }),
    ],
    {
      house: ['gap-sigma-factor', 'vehicle-allowance-sigma', 'build-sigma'],
      looked: { least: angle[0] ?? Number.NaN, most: angle[1] ?? Number.NaN },
    },
  ),
  example('hold-unknown', [
    worked({
      given: { thread: 8 },
      run: ({ thread }) => inspectScene({ survey: null, fitout: held({ insert: `wood-insert-m${thread}` }) }),
      words: 'a threaded insert M8 for wood, rated along but not across: 0 of 1: a caution that names it',
      expects: { severity: 'caution', value: '0', limit: '1', told: { item: 'wood-insert-m8' } },
    }),
    worked({
      given: { thick: 12 },
      run: ({ thick }) =>
        inspectScene({
          survey: null,
          fitout: { ...held(), panels: [panel('carcass-1/bottom', 600, 1000, { material: `hdpe-${thick}` })] },
        }),
      words: 'a bottom of 12 mm plastic, 0 of 1: caution',
      expects: { severity: 'caution', value: '0', told: { item: 'hdpe-12' } },
    }),
  ]),
  example(
    'gear-hold',
    [
      worked({
        given: { kg: 10 },
        run: ({ kg }) => solvedScene(storage('net-small'), { design: { ...stowed(kg), holdTo: ['crew-area'] } }),
        words: '10 kg at 9 g behind a net: 10 · 9 · 9.80665 = 882.6 of 800 N: stop',
        expects: { severity: 'stop', value: '882.6', limit: '800' },
      }),
      worked({
        given: { kg: 18 },
        run: ({ kg }) => solvedScene(CRADLE, { design: { ...stowed(kg), holdTo: ['road'] } }),
        words: 'a pack of 18 kg in a bracket, held to the road alone: 18 · 9 · 9.80665 = 1,588.7 of 1,500 N: stop',
        expects: { severity: 'stop', value: '1,588.7', limit: '1,500' },
      }),
      worked({
        given: { kg: 4 },
        run: ({ kg }) => solvedScene(storage(null), { design: stowed(kg) }),
        words: '4 kg that nothing keeps, 4 of 1: stop',
        expects: { severity: 'stop', value: '4', limit: '1' },
      }),
      worked({
        given: { kg: 4 },
        run: ({ kg }) => solvedScene(storage(null, 40), { design: stowed(kg) }),
        words: 'behind a lip alone: caution',
        expects: { severity: 'caution', value: '4', limit: '1' },
      }),
    ],
    { house: ['hold-apparatus', 'standard-gravity'], looked: { net: ratedN('net-small') } },
  ),
  example('gear-needs-bracket', [
    worked({
      given: {},
      run: () =>
        solvedScene(storage('strap-quick-50'), { design: stowed(4, 'opening-2', [0, 0, 0], { needs: ['bracket'] }) }),
      words: 'irons behind a strap, 0 of 1 bracket: caution',
      expects: { severity: 'caution', value: '0', limit: '1' },
    }),
    worked({
      given: {},
      run: () => solvedScene(CRADLE, { design: stowed(4, 'opening-2', [0, 0, 0], { needs: ['bracket'] }) }),
      words: 'in a bracket: nothing',
      expects: { severity: 'nothing' },
    }),
  ]),
  example('seat-back-load', [
    worked({
      given: { kg: 60 },
      run: ({ kg }) => {
        const { anchors: _none, ...loose } = held({}, kg);
        const seat = obstacle('seat', 'seat-back', [1300, -500, 0], [1400, 500, 600]);
        return inspectScene({ survey: boxSurvey({ obstacles: [seat] }), fitout: loose });
      },
      words: 'a carcass of 60 kg without anchors behind a seat-back: 60 of 36: stop',
      expects: { severity: 'stop', value: '60', limit: '36' },
    }),
    worked({
      given: { kg: 60 },
      run: ({ kg }) => {
        const seat = obstacle('seat', 'seat-back', [1300, -500, 0], [1400, 500, 600]);
        return inspectScene({ survey: boxSurvey({ obstacles: [seat] }), fitout: held({}, kg) });
      },
      words: 'on anchors that hold it: nothing',
      expects: { severity: 'nothing' },
    }),
  ]),
];
