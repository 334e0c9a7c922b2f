// takes: devices in place, wires and fuses of the house rules, battery and alternator of the vehicle
// gives: circuits, hours parked, wire and fuse of each, warming of each bay
// knows: direct current and still air
export * from './bay-heat.ts';
export * from './power-plan.ts';
export * from './wire.ts';
