import { describe, expect, test } from 'vitest';
import type { SolutionClaim, SolutionClaimText } from '../../src/audit/claims-file.ts';
import { compare } from '../../src/audit/compare.ts';
import { reprove } from '../../src/audit/reprove.ts';
import { goalOfPair, MERGED, RIGHT, reprovePair, STUCK } from './claims.ts';

describe('right claims', () => {
  const rows: [string, SolutionClaim][] = [
    ['three turns', RIGHT],
    ['a stuck edge in two phases', STUCK],
    ['a lift and an insert that share a turn', MERGED],
    ['nothing merged', { ...STUCK, merges: [] }],
    ['without the fields of later parts', { ...RIGHT, shortest: undefined, phases: undefined }],
    [
      'no turns at all',
      {
        ...RIGHT,
        setup: '',
        solution: '',
        address: 'DFR:D FR:F',
        case: 'DFR:D FR:F',
        family: 'home-home',
        length: 0,
        shortest: 0,
        phases: [],
      },
    ],
    // After y the right side faces the viewer; slots keep the names they had before.
    [
      'the set-up ends turned about the vertical axis',
      {
        ...RIGHT,
        setup: "R U' R' y",
        solution: "F U F'",
        phases: undefined,
      },
    ],
    [
      'a rotation inside the solution',
      {
        ...RIGHT,
        solution: "R U y F' x",
        phases: [{ turns: "R U y F' x", address: 'DFR:D FR:F' }],
      },
    ],
    // R = Lw x' … by the identities: Lw = R x'
    ['a wide turn counts one', { ...RIGHT, solution: "Lw x U R'", phases: undefined }],
    // Rw = R M', so R = Rw M
    ['a slice counts two', { ...RIGHT, solution: "Rw M U R'", length: 5, phases: undefined }],
    // The same turns as done from behind: R is L there, the slot FR is BL.
    [
      'another slot',
      {
        ...RIGHT,
        setup: "L U' L'",
        solution: "L U L'",
        ...goalOfPair({ pair: 'BL', kept: ['FR', 'FL', 'BR'] }),
        phases: undefined,
      },
    ],
    // U after the set-up carries UFR to UFL and UB to UR: F to L, R to F, B to R.
    [
      'an address that is not its case',
      {
        ...RIGHT,
        setup: "R U' R' U",
        solution: "U' R U R'",
        address: 'UFL:F UR:U',
        length: 4,
        phases: undefined,
      },
    ],
    [
      'a solution said to fail',
      {
        ...RIGHT,
        solution: "R U' R'",
        verdict: 'fails',
        broken: ['DFR', 'FR'],
        phases: undefined,
      },
    ],
    // By its scheme: blue is held down with white up, yellow in front.
    [
      'a cube of other colours',
      { ...RIGHT, scheme: 'white yellow red blue green orange', hold: { up: 'white', front: 'yellow' }, cross: 'blue' },
    ],
    ['another cross colour', { ...RIGHT, hold: { up: 'red', front: 'white' }, cross: 'orange' }],
  ];
  test.each(rows)('%s', (_, claim) => expect(compare(claim)).toEqual([]));
});

describe('one planted fault is found, and nothing else said', () => {
  const rows: [string, SolutionClaim, (string | RegExp)[]][] = [
    ['verdict', { ...RIGHT, verdict: 'fails' }, [/^verdict: .*'fails'.*'solves'/]],
    ['broken', { ...RIGHT, broken: ['FR'] }, [/^broken: .*'FR'.*''/]],
    [
      'broken twice',
      { ...RIGHT, solution: "R U' R'", verdict: 'fails', broken: ['FR', 'DFR', 'FR'], phases: null },
      [/^broken/],
    ],
    ['address', { ...RIGHT, address: 'UFR:F UB:U' }, [/^address: .*'UFR:F UB:U'.*'UFR:R UB:U'/]],
    ['case', { ...RIGHT, case: 'UFR:R UB:B' }, [/^case/]],
    ['family', { ...STUCK, family: 'away-top' }, [/^family: .*'away-top'.*'top-away'/]],
    ['length', { ...RIGHT, length: 4 }, [/^length: .*'4'.*'3'/]],
    ['cross', { ...RIGHT, cross: 'yellow' }, [/^cross: .*'yellow'.*'white'/]],
    ['hold, opposite colours', { ...RIGHT, hold: { up: 'green', front: 'blue' }, cross: 'blue' }, [/^hold/]],
    ['hold, one colour twice', { ...RIGHT, hold: { up: 'green', front: 'green' }, cross: 'blue' }, [/^hold/]],
    [
      'cross, on a cube of other colours',
      { ...RIGHT, scheme: 'white yellow red blue green orange', hold: { up: 'white', front: 'red' }, cross: 'yellow' },
      [/^cross: .*'yellow'.*'blue'/],
    ],
    ['scheme', { ...RIGHT, scheme: 'white green red yellow blue blue' }, [/^scheme: /]],
    ['hold, no colour', { ...RIGHT, hold: { up: 'pink', front: 'green' } }, [/^hold: 'pink'/]],
    ['kept twice', { ...RIGHT, kept: ['FL', 'BL', 'BL', 'BR'] }, [/^kept: names a slot twice/]],
    [
      'kept, own slot',
      { ...RIGHT, ...goalOfPair({ pair: 'FR', kept: ['FR', 'FL'] }) },
      [/^set-up breaks the base: DFR FR$/, /^kept: FR is the pair's own/],
    ],
    [
      'kept, a piece is stuck there',
      { ...STUCK, ...goalOfPair({ pair: 'FR', kept: ['FL', 'BL', 'BR'] }) },
      [/^set-up breaks the base: DBR BR$/, /^kept: a piece of the pair is stuck in BR/],
    ],
    [
      'base',
      { ...RIGHT, base: goalOfPair({ pair: 'FR', kept: ['FL', 'BL'] }).base },
      [/^base: .*'DFL DBL FL BL DF DL DB DR', it is 'DFL DBL DBR FL BL BR DF DL DB DR'/],
    ],
    ['goal', { ...RIGHT, goal: { ...RIGHT.goal, home: ['DFR'] } }, [/^goal: the claim says 'DFR', it is 'DFR FR'/]],
    ['shortest, too long', { ...RIGHT, shortest: 4 }, [/^shortest/]],
    ['shortest, none for an unsolved case', { ...RIGHT, shortest: 0 }, [/^shortest/]],
    ['a merge left out', { ...MERGED, merges: [] }, [/^merges: .*''.*'3 as R,R at UFL:L UF:U'/]],
    ['a merge that is none', { ...STUCK, merges: MERGED.merges }, [/^merges: /, /^merges, turn 3/]],
    [
      'a merge of another turn',
      { ...MERGED, merges: [{ ...MERGED.merges![0]!, of: 'R' }] },
      [/^merges, turn 3: .*'R'.*'R2'/],
    ],
    ['phases that do not rejoin', { ...STUCK, phases: STUCK.phases!.slice(1) }, [/^phases: .*rejoin/]],
    [
      'a phase that ends in mid-air',
      {
        ...STUCK,
        phases: [
          { turns: "R' U2", address: 'UFL:F BL:B' },
          { turns: "R F' U' F", address: 'DFR:D FR:F' },
        ],
      },
      [/^phases\[0\]: the base is not whole/, /^phases\[0\]\.address/],
    ],
    [
      'the address after a phase',
      {
        ...STUCK,
        phases: [
          { turns: "R' U2 R", address: 'UFR:F UL:U' },
          { turns: "F' U' F", address: 'DFR:D FR:F' },
        ],
      },
      [/^phases\[0\]\.address/],
    ],
    ['a group in the text', { ...RIGHT, setup: "(R U R')'" }, [/^setup: not written out/]],
    ['two spaces in the text', { ...RIGHT, solution: "R  U R'", phases: undefined }, [/^solution: not written out/]],
  ];
  test.each(rows)('%s', (_, claim, expected) => {
    const faults = compare(claim);
    expect(faults).toHaveLength(expected.length);
    for (const [i, pattern] of expected.entries()) expect(faults[i]).toMatch(pattern);
  });
});

describe('a wrong turn', () => {
  test.each([
    ['setup', "R U R'"],
    ['setup', "R U' R"],
    ['setup', 'R U2 R'],
    ['solution', "R U' R'"],
    ['solution', 'R U R'],
    ['solution', "L U L'"],
  ] as const)('in the %s: %s', (field, text) => {
    expect(compare({ ...RIGHT, [field]: text, phases: undefined })).not.toEqual([]);
  });
});

describe('set-ups that cannot be', () => {
  test('one that breaks the cross', () => {
    // A turn of F after the pair is lifted: DF leaves, and of the kept slots FL.
    expect(reprovePair({ ...RIGHT, setup: "R U' R' F" }).setupFaults).toEqual(['set-up breaks the base: DFL FL DF']);
  });

  test.each(['x', "z'", 'x2', 'x y', 'M', "Rw U' R'"])('one with the net rotation of %s', (turns) => {
    const { setupFaults } = reprovePair({ ...RIGHT, setup: `R U' R' ${turns}`, kept: [] });
    expect(setupFaults).toContain('set-up ends in a rotation that is not about the vertical axis');
  });

  test.each(['y', 'y2 U', "x y x'  z'", "x x'"])('but not %s', (turns) => {
    expect(reprovePair({ ...RIGHT, setup: `R U' R' ${turns}` }).setupFaults).toEqual([]);
  });

  test('one that cannot be read', () => {
    const proof = reprovePair({ ...RIGHT, setup: "R U3 R'" });
    expect(proof).toMatchObject({ verdict: 'fails', address: '', case: '', family: '' });
    expect(proof.setupFaults).toEqual(["set-up cannot be read at character 4: '3' is no turn"]);
  });

  test('one that leaves the edge in the cross has no address', () => {
    expect(reprovePair({ ...RIGHT, setup: "R'", kept: [] })).toMatchObject({ address: '', case: '', family: '' });
  });
});

test('a corner stuck in a kept slot', () => {
  // Lifted to UFR, past L', to UFL with U, down to DFL with L.
  const claim = { ...RIGHT, setup: "R U' R' L' U L" };
  expect(compare(claim)).toContain('kept: a piece of the pair is stuck in FL');
  expect(reprovePair({ ...claim, kept: ['BL', 'BR'] })).toMatchObject({ setupFaults: [], family: 'away-top' });
});

test('a solution that cannot be read fails', () => {
  const proof = reprovePair({ ...RIGHT, solution: "R U R' ?" });
  expect(proof.verdict).toBe('fails');
  expect(proof.solutionFaults).toEqual(["solution cannot be read at character 8: '?' is no turn"]);
});

test('what one turn of R breaks', () => {
  const proof = reprovePair({ setup: '', solution: 'R', pair: 'FR', kept: ['FL', 'BR'] });
  expect(proof.broken).toEqual(['DFR', 'DBR', 'FR', 'BR', 'DR']);
});

describe('a goal of any step', () => {
  const TOP_EDGES = ['UF', 'UL', 'UB', 'UR'] as const;
  const claim = (setup: string, solution: string, goal: Partial<SolutionClaimText['goal']>): SolutionClaimText => ({
    setup,
    solution,
    base: ['DF', 'DL', 'DB', 'DR'],
    goal: { home: [], top: [], free: null, ...goal },
  });

  // By hand: R carries what was in front to the right column of the top, and nothing else there changes.
  test('the colour of the top is looked for on the top face alone', () => {
    const top = ['UF', 'UR', 'UB', 'UL', 'UFR', 'UFL', 'UBL', 'UBR'] as const;
    expect(reprove(claim('', "U R U2 R'", { top }))).toMatchObject({ verdict: 'fails', setupFaults: [] });
    expect(reprove({ ...claim('', 'R', { top }), base: [] }).broken).toEqual(['UR', 'UFR', 'UBR']);
    expect(reprove(claim('', 'U2', { top }))).toMatchObject({ verdict: 'solves', broken: [] });
  });

  test('the top layer may be left turned where the goal is free up to U, and only there', () => {
    for (const solution of ['', 'U', 'U2', "U'"]) {
      expect(reprove(claim('U', solution, { home: TOP_EDGES, free: 'U' }))).toMatchObject({
        verdict: 'solves',
        broken: [],
      });
    }
    expect(reprove(claim('U', "U'", { home: TOP_EDGES })).verdict).toBe('solves');
    expect(reprove(claim('U', '', { home: TOP_EDGES })).broken).toEqual(TOP_EDGES);
    // A piece of the bottom is not free: R U R' takes the corner out, and no turn of the top puts it back.
    expect(reprove(claim("R U R'", '', { home: ['DFR'], free: 'U' })).verdict).toBe('fails');
  });

  test('claims of a step that no one here knows are judged by it, and have no pair to name', () => {
    const { pair: _, kept: __, phases: ___, ...rest } = RIGHT;
    const other = { ...rest, step: 'cross', address: 'of its own', case: 'too', family: 'any' };
    expect(compare(other)).toEqual([]);
    expect(compare({ ...other, solution: "R U' R'" })).toEqual([
      "verdict: the claim says 'solves', it is 'fails'",
      "broken: the claim says '', it is 'DFR FR'",
    ]);
    expect(compare({ ...other, shortest: 0 })).toEqual(["shortest: the claim says '0' for of its own"]);
  });
});
