/** `turnsheet find` and `turnsheet cases`: shapes, exit codes and what is said. */
import { describe, expect, it } from 'vitest';
import { command, newFolder } from './command.ts';

const run = (...args: string[]) => command(newFolder(), args);

describe('find', () => {
  it('answers for an address as JSON', async () => {
    const { code, out, err } = await run('find', '--pair', 'UFR:R UB:U', '--keep', 'FL,BL,BR', '--json');
    expect([code, err]).toEqual([0, '']);
    expect(JSON.parse(out)).toEqual({
      address: 'UFR:R UB:U',
      keep: ['FL', 'BL', 'BR'],
      shortest: 3,
      proved: true,
      solutions: [{ turns: "R U R'", length: 3 }],
    });
    expect(out.endsWith('}\n')).toBe(true);
  });

  it('keeps every slot without a stuck piece unless told otherwise', async () => {
    const keepOf = async (...args: string[]) => JSON.parse((await run('find', '--json', ...args)).out).keep;
    expect(await keepOf('--pair', 'DFL:D UR:U')).toEqual(['BL', 'BR']);
    expect(await keepOf('--pair', 'DFL:D UR:U', '--keep', 'none')).toEqual([]);
    expect(await keepOf('--pair', 'UFR:R UB:U', '--keep', 'BR, FL')).toEqual(['FL', 'BR']);
    // The corner of FL goes to FR by the front face, its edge stays on top.
    expect(await keepOf('--setup', "R U R' F", '--slot', 'FR')).toEqual(['FL', 'BL', 'BR']);
  });

  it('answers for a set-up and any slot, as the viewer turns after it', async () => {
    const at = async (...args: string[]) => JSON.parse((await run('find', '--json', ...args)).out);
    // Without a slot it is the one that lessons take too.
    expect(await at('--setup', "R U R'")).toEqual(await at('--setup', "R U R'", '--slot', 'FR'));
    expect((await at('--setup', "R U R'")).solutions).toEqual([{ turns: "R U' R'", length: 3 }]);
    expect(await at('--setup', "L' U' L", '--slot', 'FL')).toMatchObject({
      // From the table of tests/cube/address.test.ts, by hand.
      address: 'UBR:B UR:R',
      keep: ['FR', 'BL', 'BR'],
      solutions: [{ turns: "L' U L", length: 3 }],
    });
    // After y what was at L is at B.
    expect((await at('--setup', "L' U' L y", '--slot', 'FL')).solutions).toEqual([{ turns: "B' U B", length: 3 }]);
    expect(await at('--setup', '', '--slot', 'BL', '--longer', '2')).toMatchObject({
      address: 'DFR:D FR:F',
      shortest: 0,
      proved: true,
      solutions: [{ turns: '', length: 0 }],
    });
  });

  it('searches where the cross is not whole, says so, and gives no address for an edge in it', async () => {
    const { code, out, err } = await run('find', '--setup', 'F', '--slot', 'FR', '--keep', 'none', '--json');
    expect(code).toBe(0);
    expect(err).toBe('turnsheet: note: after this set-up not whole: the cross\n');
    expect(JSON.parse(out)).toMatchObject({ address: null, shortest: 1, solutions: [{ turns: "F'", length: 1 }] });
  });

  it('tells which are easiest for hands, each in its way, when it is asked', async () => {
    const { out } = await run('find', '--pair', 'UFR:R FL:F', '--hands', '--json');
    const { hands, solutions } = JSON.parse(out);
    expect(Object.keys(hands)).toEqual(['best', 'still', 'behind', 'left']);
    expect(solutions.every((s: { length: number }) => s.length === 7)).toBe(true);
    expect(hands.best.cost).toBeLessThanOrEqual(hands.still.cost);
    expect(/[xyzMESw]/.test(hands.still.turns)).toBe(false);
    // Seen from behind F is B and R is L.
    const fromBehind = (turns: string): string =>
      turns.replace(/[FBRL]/g, (face) => ({ F: 'B', B: 'F', R: 'L', L: 'R' })[face]!);
    expect(fromBehind(hands.behind.turns)).toBe(hands.behind.solution);
    expect(await run('find', '--pair', 'UFR:R FL:F', '--hands').then((r) => r.out)).toMatch(
      /easiest .*\n .*held still .*\n .*from behind, after y2 .*\n .*left hand .* \d\.\d\n$/,
    );
    const odd = await run('find', '--setup', "B U B'", '--slot', 'BL', '--allow', 'up');
    expect([odd.code, odd.err]).toEqual([2, expect.stringContaining('wide, slices, rotations, tipping')]);
    expect(JSON.parse((await run('find', '--pair', 'UFR:R FL:F', '--json')).out)).not.toHaveProperty('hands');
  });

  it('lists solutions by length for people', async () => {
    const { code, out, err } = await run('find', '--pair', 'UFR:R UB:U', '--longer', '3');
    expect([code, err]).toEqual([0, '']);
    expect(out).toBe(
      [
        'UFR:R UB:U, own slot FR, FL, BL and BR kept',
        '3 turns, the fewest there are (1):',
        "  R U R'",
        '6 turns (2):',
        "  R U2 B U' B' R'",
        "  R L' U R' U' L",
        '',
      ].join('\n'),
    );
  });

  it('obeys limits, and says what it could not find', async () => {
    const args = ['find', '--pair', 'UFR:R UB:U', '--longer', '3'];
    expect((await run(...args, '--faces', 'U,R,L')).out).toMatch(
      /fewest within the limits \(1\):\n {2}R U R'\n6 turns \(1\):\n {2}R L' U R' U' L\n$/,
    );
    expect((await run(...args, '--begins', 'R U2', '--ends', "R'")).out).toContain("  R U2 B U' B' R'");
    const none = await run(...args, '--faces', 'U', '--json');
    expect(none.code).toBe(0);
    expect(JSON.parse(none.out)).toMatchObject({ shortest: null, proved: false, solutions: [] });
    expect(none.err).toMatch(/stopped without a solution: all of up to 20 turns were searched/);
  });

  it.each([
    [[], /needs either --pair "UFR:R UB:U" or --setup/],
    [['--pair', 'UFR:R UB:U', '--setup', 'R'], /needs either --pair/],
    [['UFR:R UB:U'], /"find" takes no "UFR:R UB:U": a case is named by --pair/],
    [['--pair', 'UFR:L UB:U'], /"UFR:L UB:U" is not a pair address/],
    [['--pair', 'UFR:R UB:U', '--slot', 'FL'], /its own slot at FR; --slot goes with --setup/],
    [['--setup', "R U R'", '--slot', 'FRD'], /--slot is FR, FL, BL or BR, not "FRD"/],
    [['--setup', 'R U3', '--slot', 'FR'], /--setup "R U3" at character 4: nothing is turned "3" times; write U'/],
    [['--setup', 'R x', '--slot', 'FR'], /another face is up than before/],
    [['--pair', 'UFR:R UB:U', '--keep', 'FL,XX'], /FR, FL, BL and BR; not "XX"/],
    [['--pair', 'UFR:R UB:U', '--keep', 'FR'], /FR is the pair's own slot/],
    [['--pair', 'DFL:D UR:U', '--keep', 'FL,BL'], /sits in FL.*at most --keep BL,BR/],
    [['--pair', 'UFR:R UB:U', '--longer', '-1'], /--longer/],
    [['--pair', 'UFR:R UB:U', '--longer', 'one'], /--longer is a number of turns, as in --longer 1, not "one"/],
    [['--pair', 'UFR:R UB:U', '--longer', '11'], /--longer is a number of turns/],
    [['--pair', 'UFR:R UB:U', '--faces', 'UX'], /--faces is some of UDRLFB/],
    [['--pair', 'UFR:R UB:U', '--begins', 'r'], /turns of the six faces, without Rw/],
    [['--pair', 'UFR:R UB:U', '--ends', 'R;'], /--ends "R;"/],
    [['--pair', 'UFR:R UB:U', '--paper', 'a4'], /"find" takes no option --paper/],
  ])('%j ends with 2 and says what would be right', async (args, says) => {
    const { code, out, err } = await run('find', ...args);
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(says);
    expect(err).toMatch(/\nTry: npx turnsheet help/);
  });
});

describe('cases', () => {
  it.each([
    [[], 168],
    [['--every-address'], 384],
    [['--every-address', '--every-keep', '--longer', '1'], 2064],
    [['top-top'], 24],
    [['away-away', '--every-keep'], 18 * 4 + 36 * 2],
  ])('%j: %i rows', async (args, count) => {
    const { code, out, err } = await run('cases', ...args, '--json');
    expect([code, err]).toEqual([0, '']);
    const rows = JSON.parse(out);
    expect(rows).toHaveLength(count);
    for (const row of rows) {
      expect(Object.keys(row)).toEqual(['address', 'family', 'keep', 'shortest', 'proved', 'solutions', 'longer']);
      expect(row.proved).toBe(true);
      expect(row.solutions).toBeGreaterThan(0);
      if (!args.includes('--longer')) expect(row.longer).toBe(0);
    }
  });

  it('is a table for people', async () => {
    const { code, out } = await run('cases', 'home-home', '--longer', '1');
    expect(code).toBe(0);
    const lines = out.trimEnd().split('\n');
    expect(lines[0]).toBe('address     family     kept      turns  solutions  one longer');
    expect(lines).toHaveLength(7);
    expect(lines[1]).toBe('DFR:D FR:F  home-home  FL BL BR      0          1           0');
  });

  it.each([
    [['top-tpo'], /there is no family "top-tpo"; "top-top" was likely meant/],
    [['edge-away'], /there is no family "edge-away"; "top-away" was likely meant/],
    [['corner'], /there is no family "corner"; there are top-top \(both on top\), home-top \(corner at home/],
    [['top-top', 'top-home'], /"cases" takes one family/],
    [['--longer', '3'], /at most 2 for the catalogue/],
    [['--keep', 'FL'], /"cases" takes no option --keep/],
  ])('%j ends with 2 and says what would be right', async (args, says) => {
    const { code, out, err } = await run('cases', ...args);
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(says);
  });
});
