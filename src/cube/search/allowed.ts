/**
 * What a solution may be done with besides turns of faces. `rotations`: y wherever it makes a solution easier; `tipping`: x
 * and z too, so that the cross may end elsewhere than at the bottom. Without it a solution ends with the same centre up as
 * it began with.
 */
export const ALLOWED = ['wide', 'slices', 'rotations', 'tipping'] as const;
export type Allowed = (typeof ALLOWED)[number];
