/** Odd spellings, written out by hand: what each was likely meant to be. Which habits people have is common practice, no source. */
import { describe, expect, it } from 'vitest';
import { writeTurns } from '../../src/cube/turns.ts';
import { likelyMeant } from '../../src/marking/spelling.ts';

const meant = (text: string): string[] => likelyMeant(text).map((turns) => writeTurns(turns));

describe('turns that cannot be read', () => {
  it.each([
    ['R3 U R1', "R' U R"],
    ['Ri U Ri', "R' U R'"],
    ["R'2 U", 'R2 U'],
    ['R´ U R`', "R' U R'"],
    ['R‘ U Rʼ', "R' U R'"],
    ['RÚ R', "R' U R"],
    ['R Ú', "R U'"],
    ['R, U, R’', "R U R'"],
    ['R - U - R-', "R U R'"],
    ['R; U. R2.', 'R U R2'],
    ['В U Β2', 'B U B2'],
    ['Ｒ Ｕ Ｒ＇', "R U R'"],
    ['R² U', 'R2 U'],
    ['X R Y', 'x R y'],
    ['m U m2', 'M U M2'],
    ['RW U RW’', "Rw U Rw'"],
    ["R'w U", "Rw' U"],
    ['R2w U', 'Rw2 U'],
    ['(R U)x3', 'R U R U R U'],
    ['(R U) 2', 'R U R U'],
    ['[R U] R', 'R U R'],
    ['(R U R', 'R U R'],
    ['R U R)', 'R U R'],
    ['R prime U R inverse', "R' U R'"],
    ['R twice U', 'R2 U'],
    ['2R U', 'R2 U'],
    ['R 2 U', 'R2 U'],
    ["R ' U", "R' U"],
    ['R+ U R-', "R U R'"],
    ['R⁠U', 'R U'],
    ['R > U > R', 'R U R'],
  ])('%s is %s', (text, turns) => {
    expect(meant(text)).toContain(turns);
  });

  it.each(['R" U', "R'' U"])('%s is a half turn or one back', (text) => {
    expect(meant(text).sort()).toEqual(["R' U", 'R2 U']);
  });

  it.each(['hello', 'no idea', '壁', '1234', '=1+1', '()'])('%s is nothing', (text) => {
    expect(meant(text)).toEqual([]);
  });

  it('leaves alone what can be read', () => {
    expect(meant("R U R' r2")).toEqual([]);
  });
});
