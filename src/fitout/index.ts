// takes: design and catalog
// gives: the fit-out: panels, bodies, movers, masses, hardware, devices and gear rooms, all in place
// knows: what the cabinet is
export * from './parts.ts';
