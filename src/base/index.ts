// takes: numbers and text
// gives: units and their reading and printing, rounding tolerance, vectors, poses, boxes, polygons, results, order
// knows: nothing of vehicles
export * from './angles.ts';
export * from './boxes.ts';
export * from './lengths.ts';
export * from './order.ts';
export * from './polygons.ts';
export * from './poses.ts';
export * from './problems.ts';
export * from './random.ts';
export * from './statistics.ts';
export * from './tolerance.ts';
export * from './vectors.ts';
