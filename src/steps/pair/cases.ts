/** Families and the catalogue of cases, by enumeration of all addresses. */

import { CORNER_AFTER, CORNERS, cornerOf, EDGE_AFTER, EDGES, edgeOf, edgeSpot, faceTurn } from '../../cube/spots.ts';
import { type Address, cornerWhereabouts, edgeWhereabouts, type Whereabouts, writeAddress } from './address.ts';

/** Whereabouts of corner and edge, in the order in which they are listed. */
export const FAMILIES = [
  'top-top',
  'home-top',
  'top-home',
  'home-home',
  'top-away',
  'away-top',
  'home-away',
  'away-home',
  'away-away',
] as const satisfies readonly `${Whereabouts}-${Whereabouts}`[];
/** `<corner>-<edge>` */
export type Family = (typeof FAMILIES)[number];

export const familyOf = (a: Address): Family => `${cornerWhereabouts(a)}-${edgeWhereabouts(a)}`;

const U = faceTurn('U', 1);
const turnedU = (a: Address): Address => ({
  corner: CORNER_AFTER[24 * U + a.corner]!,
  edge: EDGE_AFTER[24 * U + a.edge]!,
});

/** The address and what turns of U make of it: one to four, each once. */
export function upToU(a: Address): Address[] {
  const all: Address[] = [a];
  for (let next = turnedU(a); writeAddress(next) !== writeAddress(a); next = turnedU(next)) all.push(next);
  return all;
}

/** The one that stands for all: the corner at UFR; no corner on top, the edge at UF; neither, as it is. */
export function caseOf(a: Address): Address {
  const all = upToU(a);
  return all.find((b) => cornerOf(b.corner) === 'UFR') ?? all.find((b) => edgeOf(b.edge) === 'UF') ?? a;
}

/** All 384: 24 spots of the corner, 16 of the edge. */
export const ADDRESSES: readonly Address[] = CORNERS.flatMap((_, c) =>
  [0, 1, 2].flatMap((twist) =>
    EDGES.filter((e) => !e.startsWith('D')).flatMap((e) =>
      [...e].map((face) => ({ corner: 3 * c + twist, edge: edgeSpot(e, face as 'U') })),
    ),
  ),
);

/** The 168 cases, family by family. */
export const CASES: readonly Address[] = FAMILIES.flatMap((family) =>
  ADDRESSES.filter((a) => familyOf(a) === family && writeAddress(caseOf(a)) === writeAddress(a)),
);

export const casesOf = (family: Family): Address[] => CASES.filter((a) => familyOf(a) === family);
