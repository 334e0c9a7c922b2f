/**
 * What every paper that leaves the shop has to say. None of it is law; all of it has hurt someone. Short, so that it
 * is read.
 */
export const CAUTIONS: readonly string[] = [
  'These are screening calculations. They are not a crash test, a certification or an approval: a licensed engineer, a test laboratory or the authority in charge decides.',
  'Curtain, seat and pillar airbags: put nothing in, on or near their covers or in their path. Ask the vehicle builder’s guide for the zones.',
  'Keep belts, retractors, child tethers, seat latches and exits clear. Let no loose gear stand above a seat-back.',
  'Before any hole: look under the floor and photograph it. Tank, fuel and brake lines, exhaust, wiring, high voltage. Use a depth stop.',
  'Orange cable is high voltage: power down by the maker’s procedure, wait, and measure. Keep its service plug and rescue cut points in reach.',
  'Stay under the gross rating and under each axle rating with everyone aboard. Weigh the finished vehicle.',
  'Oxygen and breathing air: cylinder in date, valve guarded, held every way, no oil, vented, away from chargers and flares.',
  'Chargers and lithium batteries stand open to the air, away from what burns, never in a shut drawer.',
  'Nothing that burns fuel, and no fuel vapour, in the occupied space.',
  'Ask the supplier for evidence that interior materials meet the fire rule that applies.',
  'Leave rear sight, stop lamp, camera, plate lamp and exits clear.',
  'An open hatch is near its antennas: keep the distance their power asks for. A weak strut lets a hatch fall.',
  'Catalog figures are typical. The tape, the scale and the maker’s sheet overrule them.',
];
