/** `turnsheet explain`: shapes, exit codes and what is said. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { command, newFolder } from './command.ts';

const README = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');

const run = (...args: string[]) => command(newFolder(), ['explain', ...args]);

describe('explain', () => {
  it('tells why turns work, as the README shows it', async () => {
    const { code, out, err } = await run("F R U R' U' F'");
    expect([code, err]).toEqual([0, '']);
    expect(README).toContain(`$ npx turnsheet explain "F R U R' U' F'"\n${out}\`\`\``);
  });

  it('says so where there is nothing to tell', async () => {
    expect((await run('R U F')).out).toBe(
      'R U F\nnothing here is taken back and nothing has a name: each turn is remembered for itself\n',
    );
  });

  it('tells parts in parts, and a turn that two of them share', async () => {
    expect((await run("R' D' R U R' D R2 U F U'")).out.split('\n')).toEqual([
      "R' D' R U R' D R2 U F U'",
      '6 things to remember in place of 10 turns:',
      "  start with    R' D' R",
      "    start with  R'",
      "      do        D'",
      '    take back   R',
      '  do            U',
      "  take back     R' D R",
      '  do            R',
      '  start with    U',
      '    do          F',
      "  take back     U'",
      '  Turn 7, R2, is two in one: R ends a part and R begins the next',
      '',
    ]);
  });

  it('answers as JSON', async () => {
    const { out } = await run("R U R2 F R F'", '--json');
    const turns = (text: string) => ({ turns: text, parts: [{ kind: 'turns', turns: text }] });
    expect(JSON.parse(out)).toEqual({
      turns: "R U R2 F R F'",
      words: 3,
      notation: "[R: U] (R' F R F')",
      parts: [
        { kind: 'set-up', turns: "R U R'", first: turns('R'), second: turns('U') },
        { kind: 'trigger', turns: "R' F R F'", name: 'sledge', undone: false },
      ],
      shared: [{ turn: 3, of: 'R2', as: ["R'", "R'"] }],
    });
  });

  it('tells after a set-up what the turns do to the pieces', async () => {
    // The first case of the small lesson: the edge comes out, and the split is inserted.
    const given = ["L' U L R U R'", '--setup', "R U R' L' U L"];
    const { out } = await run(...given);
    expect(out.split('what they do to the pieces:\n')[1]).toBe("  edge out      L' U L\n  insert split  R U R'\n");
    const { phases } = JSON.parse((await run(...given, '--slot', 'FR', '--json')).out);
    expect(phases).toMatchObject([
      { turns: "L' U L", does: ['edge-out'] },
      { turns: "R U R'", does: ['insert'] },
    ]);
    expect((await run("L U' L'", '--setup', "L U L'", '--slot', 'BL')).out).toContain('what they do to the pieces');
  });

  it('tells only why, with a note, where the turns solve nothing or the cross is not whole', async () => {
    for (const [setup, says] of [
      ["R U2 R'", /do not solve this case/],
      ['R D', /cross and kept slots are not whole/],
    ] as const) {
      const { code, out, err } = await run("R U R'", '--setup', setup);
      expect(code).toBe(0);
      expect(err).toMatch(says);
      expect(out).toMatch(/start with {2}R/);
      expect(out).not.toMatch(/pieces/);
    }
  });

  it.each([
    [[], /needs turns, as in/],
    [[' '], /there are no turns/],
    [['R q'], /at character 3: "q" is not a turn/],
    [['(R U)51'], /these are 102 turns; at most 100/],
    [["R U R'", '--slot', 'FR'], /--slot goes with --setup/],
    [["R U R'", '--setup', 'R', '--slot', 'XX'], /--slot is FR, FL, BL or BR/],
    [["R U R'", '--setup', 'x'], /--setup leaves the cube turned/],
    [["R U R'", '--keep', 'FL'], /"explain" takes no option --keep/],
  ])('%j ends with 2 and says what would be right', async (args, says) => {
    const { code, out, err } = await run(...args);
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(says);
  });

  it('takes turns without quotes', async () => {
    expect((await run('F', 'R', 'U')).out).toMatch(/^F R U\n/);
  });
});
