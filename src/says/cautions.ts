/** What the product does not answer for, and what has hurt people. Local codes and licensed practice come first. */
export interface Caution {
  readonly id: string;
  /** For the screen: one line. */
  readonly short: string;
  /** For paper: what to do. */
  readonly long: string;
}

export const CAUTIONS: readonly Caution[] = [
  {
    id: 'screening',
    short: 'Screening figures: no crash test, no certification, no approval.',
    long: 'These are screening calculations. Nothing here was crash-tested and nothing is certified or approved: a licensed engineer, a test laboratory or the authority in charge decides, by the codes that hold where the vehicle is used.',
  },
  {
    id: 'airbags',
    short: 'Keep curtain, seat and pillar airbags and their paths clear.',
    long: 'Nothing in, on or near the covers of curtain, seat and pillar airbags or in the path in which they fill, and no straps over the roof. Take the zones from the guide that the vehicle builder gives to modifiers.',
  },
  {
    id: 'belts',
    short: 'Keep belts, child anchors, seat latches and exits free.',
    long: 'Leave belts, retractors, child tethers and anchors, seat latches and exits free. A cabinet behind occupied seats loads the seat-back in a crash. No loose gear above the height of the seat-back.',
  },
  {
    id: 'drilling',
    short: 'Look under the floor and photograph it before any hole.',
    long: 'Before any hole, look at the underside and photograph it: tank, vapour and fuel lines, brake lines, exhaust, wiring, high voltage. Use a depth stop. Orange cable is high voltage: power down by the maker’s procedure, wait as long as it says, and measure before touching.',
  },
  {
    id: 'rescue-points',
    short: 'Keep the high-voltage plug, vents and cut loop in reach.',
    long: 'The service plug, the vents and the cut loop for rescuers stay reachable and visible behind and under the cabinet.',
  },
  {
    id: 'weight',
    short: 'Stay under the gross rating and each axle rating; weigh the finished vehicle.',
    long: 'Stay under the gross rating and under the rating of each axle with everyone aboard. Weigh the finished vehicle, compare it with the prediction, see to any label that is due, and check tyres and their pressure.',
  },
  {
    id: 'oxygen',
    short: 'Oxygen and breathing sets: in date, held every way, vented, away from heat.',
    long: 'Cylinders are in date, held in every direction with the valve guarded, free of oil, in a vented space, away from chargers and flares. Never lift one by its valve. Rules for carrying them on the road apply.',
  },
  {
    id: 'batteries',
    short: 'Chargers stand open to the air, not in a shut drawer.',
    long: 'Chargers and lithium batteries stand open and ventilated, away from what burns, never in a shut drawer. Unplug what is hot or swollen.',
  },
  {
    id: 'fuel',
    short: 'Nothing that burns fuel in the space where people ride.',
    long: 'Fuel-driven tools and generators do not ride in the space where people sit: exhaust gas and fuel vapour.',
  },
  {
    id: 'fire',
    short: 'Ask for proof that interior materials meet the fire rule.',
    long: 'Ask the supplier for evidence that sheets, finishes and nets meet the rule for interior materials that holds for this vehicle.',
  },
  {
    id: 'sight',
    short: 'Keep rear sight, stop lamp, camera, plate lamp and exits clear.',
    long: 'The view to the rear, the high stop lamp, the camera, the plate lamp and the exits stay clear with everything stowed and, where the law asks for it, with everything open.',
  },
  {
    id: 'open-hatch',
    short: 'At the open hatch: antennas, noise, and a hatch that may fall.',
    long: 'Whoever works at the open hatch stands near its antennas: keep the distance that their power asks for, and guard hearing. Gas springs hold less in the cold; a hatch with weak ones falls.',
  },
  {
    id: 'pinching',
    short: 'Powered hatches and heavy trays pinch: lock out before leaning in.',
    long: 'A powered hatch shears and a tray runs on a slope: lock out before leaning in, latch before driving off, and keep a plate with the greatest load on every drawer and tray.',
  },
  {
    id: 'typical',
    short: 'Library figures are typical: the tape, the scale and the maker’s sheet overrule them.',
    long: 'Sizes, masses and limits from the catalog are typical ones. The tape, the scale and the maker’s sheet overrule them.',
  },
];
