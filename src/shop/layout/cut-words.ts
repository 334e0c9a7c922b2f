/** saw: full cuts with a kerf; router: free, with a gap; shear: full cuts without kerf. */
export type CutKind = 'saw' | 'router' | 'shear';

/** rip: along the length of the sheet (x); crosscut: across it. */
export type CutDirection = 'rip' | 'crosscut';
