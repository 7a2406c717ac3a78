/** Phases of solutions worked out by hand, and laws over all catalogue cases, held against the second checker. */
import { describe, expect, it } from 'vitest';
import { basePlaces } from '../../../src/audit/pair-claims.ts';
import { addressText, isHome, pairSight } from '../../../src/audit/places.ts';
import { turnsOrFaults } from '../../../src/audit/reprove.ts';
import { afterTurns as afterOnStickers, againstCentres } from '../../../src/audit/stickers.ts';
import { afterTurns, solvedCube } from '../../../src/cube/cube.ts';
import { TRIGGERS, triggerIn } from '../../../src/cube/triggers.ts';
import { mirror, writeTurns } from '../../../src/cube/turns.ts';
import { goalAt, isSolvedAddress } from '../../../src/steps/pair/address.ts';
import { CASES } from '../../../src/steps/pair/cases.ts';
import { phasesOf } from '../../../src/steps/pair/phases.ts';
import { DEEDS } from '../../../src/steps/pair/said.ts';
import { findSolutions } from '../../../src/steps/pair/search/find.ts';
import { setUpFor } from '../../../src/steps/pair/set-up-for.ts';
import { goalOf, SLOTS, type Slot } from '../../../src/steps/pair/slots.ts';
import { turnsIn } from '../../cube/read.ts';
import { randomFrom } from '../../random.ts';

const phasesAfter = (setup: string, solution: string, slot: Slot, open: readonly Slot[]) => {
  const goal = goalOf(
    slot,
    SLOTS.filter((s) => !open.includes(s)),
  );
  const { phases, merges } = phasesOf(afterTurns(solvedCube(), turnsIn(setup)), turnsIn(solution), goal);
  return {
    phases: phases.map(({ turns, does, stands, hides }) => ({ turns: writeTurns(turns), does, stands, hides })),
    merges: merges.map(({ turn, as, does, address }) => {
      return { turn, as: writeTurns(as), does, address };
    }),
  };
};

const phase = (turns: string, does: string, stands?: string, hides?: string) => ({
  turns,
  does: does.split('+'),
  stands,
  hides,
});

/** Followed on a cube by hand: set-up, own slot, slots open besides, solution, what each stretch does. */
const BY_HAND: readonly [string, Slot, readonly Slot[], string, ReturnType<typeof phase>[]][] = [
  [
    "R U R' L' U L",
    'FR',
    ['FL'],
    "L' U L R U R'",
    [phase("L' U L", 'edge-out', 'split'), phase("R U R'", 'insert', 'solved')],
  ],
  // A turn of U belongs to what it prepares.
  [
    "R U R' U' F U F'",
    'FR',
    ['FL'],
    "L' U' L U F' U' F",
    [phase("L' U' L", 'edge-out', 'split'), phase("U F' U' F", 'insert', 'solved')],
  ],
  // A turn of the cube stands alone.
  [
    "R U2 R' U' L U L'",
    'FR',
    ['BL'],
    "y R' U' R L' U' L",
    [phase('y', 'turn-cube'), phase("R' U' R", 'edge-out', 'split'), phase("L' U' L", 'insert', 'solved')],
  ],
  // Lift and insert have one turn in common.
  ["R U2 R' U' R' U' R", 'FR', ['BR'], "R' U R2 U' R'", [phase("R' U R2 U' R'", 'edge-out+insert', 'solved')]],
  // L' takes the corner from above the back left down, and brings it back with L.
  [
    "F' U2 F L' U' L",
    'FR',
    ['FL'],
    "L' U L F' U2 F",
    [phase("L' U L", 'edge-out', 'joined', 'corner'), phase("F' U2 F", 'insert', 'solved')],
  ],
  ["R U R'", 'FR', [], "R U' R'", [phase("R U' R'", 'insert', 'solved')]],
  ["R U R' U", 'FR', [], "U' R U' R'", [phase("U' R U' R'", 'insert', 'solved')]],
  // Dw' is U' for the cube and y for its viewer, who then sees F at L. It joins nothing, it only turns the top.
  ["F' U' F U", 'FR', [], "Dw' L' U L", [phase("Dw' L' U L", 'insert', 'solved')]],
  // After x the top is the viewer's B.
  ["R U R' U'", 'FR', [], "x B R B' R'", [phase('x', 'turn-cube', 'joined'), phase("B R B' R'", 'insert', 'solved')]],
  // What is turned at the end prepares nothing.
  ["R U R' U'", 'FR', [], "U R U' R' U2", [phase("U R U' R'", 'insert', 'solved'), phase('U2', 'turn-top', 'solved')]],
];

describe('phases', () => {
  it.each(BY_HAND)('after %s, own slot %s', (setup, slot, open, solution, expected) => {
    expect(phasesAfter(setup, solution, slot, [slot, ...open]).phases).toEqual(expected);
  });

  it('say which turn is the end of one and the start of the next', () => {
    const { merges } = phasesAfter("R U2 R' U' R' U' R", "R' U R2 U' R'", 'FR', ['FR', 'BR']);
    // What R U' R' inserts is what R U R' leaves: R brings the pair up, U takes it to the front left, R' lets it be.
    expect(merges).toEqual([{ turn: 3, as: 'R R', does: ['edge-out', 'insert'], address: 'UFL:L UF:U' }]);
    // Lw2 is R2 and a half turn of the whole cube along with it; the top is then the viewer's D.
    const wide = phasesAfter("R U2 R' U' R' U' R", "R' U Lw2 D' R'", 'FR', ['FR', 'BR']).merges;
    expect(wide).toEqual([{ ...merges[0], as: 'Lw Lw' }]);
    expect(phasesAfter("R U R' L' U L", "L' U L R U R'", 'FR', ['FR', 'FL']).merges).toEqual([]);
  });

  it('of every shortest solution of every case rejoin, and the base is whole between them and only there', () => {
    const deeds = new Set<string>();
    for (const address of CASES.filter((a) => !isSolvedAddress(a))) {
      for (const slot of ['FR', 'BL'] as const) {
        const goal = goalAt(address, slot);
        const setup = setUpFor(address, slot, []);
        const start = afterTurns(solvedCube(), setup);
        const base = basePlaces(goal.kept);
        for (const { turns } of findSolutions(start, goal).solutions) {
          const { phases, merges } = phasesOf(start, turns, goal);
          expect(phases.flatMap((p) => p.turns)).toEqual(turns);
          let stickers = afterOnStickers(turnsOrFaults('', writeTurns(setup)).turns);
          for (const { turns: stretch, address: after, does } of phases) {
            for (const deed of does) deeds.add(deed);
            stickers = afterOnStickers(turnsOrFaults('', writeTurns(stretch)).turns, stickers);
            const state = againstCentres(stickers);
            expect(base.every((place) => isHome(state, place))).toBe(true);
            expect(addressText(pairSight(state, slot))).toBe(after);
          }
          expect(does(phases)).toBe(merges.length + phases.length);
          expect(phases.at(-1)!.stands).toBe('solved');
        }
      }
    }
    // A shortest solution does every thing that brings a pair nearer, and none that prepares nothing or takes back.
    const idle = ['turn-cube', 'turn-top', 'both-in', 'regroup', 'shift'];
    expect(DEEDS.filter((deed) => !deeds.has(deed))).toEqual(idle);
  });

  it('are of no use where the base is not whole at the end: that is an error of ours', () => {
    expect(() => phasesAfter("R U R'", "R U' R", 'FR', ['FR'])).toThrow(RangeError);
  });

  it('of turns that keep the base and solve nothing are phases too, seeded', () => {
    const seed = 61;
    const random = randomFrom(seed);
    const goal = goalOf('FR', ['FL', 'BL', 'BR']);
    const words = ["R U R'", "R U' R'", "F' U F", "F' U' F", 'U', 'U2', "y L' U' L y'", "Dw' y'", "R U2 R' U'"];
    for (let i = 0; i < 300; i++) {
      const turns = turnsIn(Array.from({ length: 6 }, () => random.pick(words)).join(' '));
      const { phases } = phasesOf(solvedCube(), turns, goal);
      expect([seed, phases.flatMap((p) => p.turns)]).toEqual([seed, turns]);
    }
  });
});

const does = (phases: readonly { readonly does: readonly string[] }[]): number =>
  phases.reduce((sum, p) => sum + p.does.length, 0);

describe('triggers', () => {
  it.each([
    ["R' F R F'", { name: 'sledge', undone: false, times: 1, inside: false }],
    ["F R' F' R", { name: 'sledge', undone: false, times: 1, inside: false }],
    ["L F' L' F", { name: 'sledge', undone: false, times: 1, inside: false }],
    ["U2 B' R B R'", { name: 'sledge', undone: false, times: 1, inside: false }],
    ["R U R' U' R U R' U'", { name: 'right four', undone: false, times: 2, inside: false }],
    ["U R U' R' U R U' R'", { name: 'right four', undone: true, times: 2, inside: false }],
    ["R U R' U'", undefined],
    // Between turns of another face it is more than a lift.
    ["L' U' L U L' U' L U", { name: 'left four', undone: false, times: 2, inside: false }],
    ["F R U R' U' F'", { name: 'right four', undone: false, times: 1, inside: true }],
    ["L B' U2 R' F R F' B L'", { name: 'sledge', undone: false, times: 1, inside: true }],
    // Of a club that writes it so, the same in a view from the left: R' U R U' is no side of R U R' U'.
    ["F R' U R U' F'", undefined],
    ["R U R'", undefined],
    ["R' F R F", undefined],
  ] as const)('%s', (text, named) => {
    expect(triggerIn(turnsIn(text))).toEqual(named);
  });

  it('have a mirror that is the same trigger, and a club its own', () => {
    const { sledge } = TRIGGERS as Record<'sledge', ReturnType<typeof turnsIn>>;
    expect(triggerIn(mirror(sledge))?.name).toBe('sledge');
    const own = { hook: turnsIn("F R U R' U' F'") };
    // Seen from behind F is B and R is L; in a mirror L is R again, and all turn the other way.
    expect(triggerIn(turnsIn("B' R' U' R U B"), own)).toEqual({ name: 'hook', undone: false, times: 1, inside: false });
  });
});
