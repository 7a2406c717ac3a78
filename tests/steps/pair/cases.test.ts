/** Families and cases, against enumerations of what a pair can do on the cube. */
import { describe, expect, test } from 'vitest';
import { afterTurns, type Cube, copyOf, pieceOf, solvedCube, turnFace } from '../../../src/cube/cube.ts';
import { type Address, addressOf, writeAddress } from '../../../src/steps/pair/address.ts';
import {
  ADDRESSES,
  CASES,
  caseOf,
  casesOf,
  FAMILIES,
  type Family,
  familyOf,
  upToU,
} from '../../../src/steps/pair/cases.ts';
import { turnsIn } from '../../cube/read.ts';

const CORNER = pieceOf('DFR');
const EDGE = pieceOf('FR');

/** Every whereabouts of the pair of FR that turns can bring about, one cube each. */
function reachable(): Cube[] {
  const found = new Map<string, Cube>();
  const open = [solvedCube()];
  for (let cube = open.pop(); cube; cube = open.pop()) {
    const key = `${cube.spots[CORNER]} ${cube.spots[EDGE]}`;
    if (found.has(key)) continue;
    found.set(key, cube);
    for (let turn = 0; turn < 18; turn++) {
      const next = copyOf(cube);
      turnFace(next, turn);
      open.push(next);
    }
  }
  return [...found.values()];
}

const CUBES = reachable();
const written = (addresses: readonly Address[]): string[] => addresses.map(writeAddress).sort();

test('24 spots of the corner times 24 of the edge; 384 have an address', () => {
  expect(CUBES).toHaveLength(24 * 24);
  const addresses = CUBES.flatMap((cube) => addressOf(cube, 'FR') ?? []);
  expect(addresses).toHaveLength(24 * 16);
  expect(written(addresses)).toEqual(written(ADDRESSES));
});

/** The orbits of cubes under turns of U, as sets of addresses: done on cubes, not on addresses. */
function orbits(among: (family: Family) => boolean): Set<string> {
  const classes = new Set<string>();
  for (const cube of CUBES) {
    const address = addressOf(cube, 'FR');
    if (!address || !among(familyOf(address))) continue;
    const turned = ['', 'U', 'U2', "U'"].map((u) => writeAddress(addressOf(afterTurns(cube, turnsIn(u)), 'FR')!));
    classes.add([...new Set(turned)].sort().join(', '));
  }
  return classes;
}

describe('a pair on top or in its own slot', () => {
  const classes = [...orbits((family) => !family.includes('away'))];

  // 15 whereabouts of the corner, 10 of the edge; 36 orbits of four and 6 of one: computed two ways for this project
  // (an orbit count, and double cosets in GAP 4.12.1); no published source.
  test('has 150 addresses in 42 cases, one of them solved', () => {
    const sizes = classes.map((c) => c.split(', ').length);
    expect(sizes.filter((n) => n === 4)).toHaveLength(36);
    expect(sizes.filter((n) => n === 1)).toHaveLength(6);
    expect(sizes.reduce((a, b) => a + b, 0)).toBe(150);
    expect(classes).toContain('DFR:D FR:F');
  });

  test('each case of ours is one of these classes', () => {
    const ours = CASES.filter((a) => !familyOf(a).includes('away')).map((a) => written(upToU(a)).join(', '));
    expect(ours.sort()).toEqual(classes.sort());
  });
});

/**
 * Counted by hand: places of the corner times 3 times places of the edge times 2, on top 4 places each, in foreign
 * slots 3, at home 1; divided by four where a piece is on top.
 */
const SIZES: readonly (readonly [Family, cases: number, addresses: number])[] = [
  ['top-top', 24, 96],
  ['home-top', 6, 24],
  ['top-home', 6, 24],
  ['home-home', 6, 6],
  ['top-away', 18, 72],
  ['away-top', 18, 72],
  ['home-away', 18, 18],
  ['away-home', 18, 18],
  ['away-away', 54, 54],
];

describe('families', () => {
  test.each(SIZES)('%s: %i cases', (family, cases, addresses) => {
    expect(casesOf(family)).toHaveLength(cases);
    expect(ADDRESSES.filter((a) => familyOf(a) === family)).toHaveLength(addresses);
    expect(orbits((f) => f === family).size).toBe(cases);
  });

  test('are these nine; 168 cases, 42 of them without a foreign slot', () => {
    expect(SIZES.map(([family]) => family)).toEqual(FAMILIES);
    expect(CASES).toHaveLength(168);
    expect(CASES.filter((a) => familyOf(a).includes('away'))).toHaveLength(126);
  });

  test('away-away: 18 in the same slot, 36 in two', () => {
    const slots = casesOf('away-away').map((a) => writeAddress(a).replace(/^D(..):. (..):.$/, '$1 $2'));
    expect(slots.filter((s) => s.slice(0, 2) === s.slice(3))).toHaveLength(18);
    expect(slots.filter((s) => s.slice(0, 2) !== s.slice(3))).toHaveLength(36);
  });
});

describe('the address that stands for a case', () => {
  // By hand, from the definition: the corner at UFR; no corner on top, the edge at UF; neither, as it is.
  test.each([
    ['UFL:L UF:U', 'UFR:F UR:U'],
    ['UBR:B UR:R', 'UFR:R UF:F'],
    ['UFR:R UB:U', 'UFR:R UB:U'],
    ['UBL:U FR:R', 'UFR:U FR:R'],
    ['DFR:F UB:B', 'DFR:F UF:F'],
    ['DFL:D UR:U', 'DFL:D UF:U'],
    ['DFL:D BR:B', 'DFL:D BR:B'],
    ['DFR:D FR:F', 'DFR:D FR:F'],
  ])('of %s is %s', (address, standing) => {
    const found = ADDRESSES.find((a) => writeAddress(a) === address);
    expect(found && writeAddress(caseOf(found))).toBe(standing);
  });

  test('is one and the same for its whole class', () => {
    for (const address of ADDRESSES) {
      const standing = writeAddress(caseOf(address));
      for (const other of upToU(address)) expect(writeAddress(caseOf(other))).toBe(standing);
      expect(written(CASES)).toContain(standing);
    }
  });
});
