import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { COMMAND_NAMES } from '../../src/cli/options.ts';
import { bytesOf, SMALL_LESSON, withLine } from '../lesson/small-lesson.ts';
import { command, newFolder, put } from './command.ts';

const FAULTY = withLine(13, "      - L' U L R U' R'");

describe('usage', () => {
  it.each([
    [['chek', 'a.yaml'], /no command "chek"; "check" was likely meant/],
    [['a.yaml'], /: npx turnsheet build a\.yaml/],
    [['check'], /needs the name of a lesson file/],
    [['check', 'a.yaml', '--paper', 'a4'], /"check" takes no option --paper/],
    [['build', 'a.yaml', '--paper', 'a3'], /--paper is a4, letter or a5, not "a3"/],
    [['build', 'a.yaml', '--ink', 'sepia'], /--ink is colour or mono, not "sepia"/],
    [
      ['build', 'a.yaml', '--scheme', 'white,green,red,yellow,blue'],
      /--scheme: a scheme has six colours, and here are 5/,
    ],
    [['build', 'a.yaml', '--scheme', 'white,green,red,yellow,blue,red'], /red stands at two faces; write up front/],
    [
      ['build', 'a.yaml', '--scheme', 'white,green,red,yellow,blue,pink'],
      /"pink" is no colour.* blue orange, with commas/,
    ],
    [['build', 'a.yaml', '--inks', 'mono'], /no option --inks; --ink was likely meant/],
    [['build', 'a.yaml', '--out'], /--out/],
    [['help', 'bild'], /"build" was likely meant/],
  ])('%j ends with 2 and says what would be right', async (args, says) => {
    const { code, out, err } = await command(newFolder(), args);
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(err).toMatch(says);
  });

  it('has help with an example for every command', async () => {
    const whole = await command(newFolder(), []);
    expect(whole.code).toBe(0);
    for (const name of COMMAND_NAMES) {
      expect(whole.out).toContain(`npx turnsheet ${name}`);
      for (const args of [
        ['help', name],
        [name, '--help'],
      ]) {
        const { code, out, err } = await command(newFolder(), args);
        expect([code, err]).toEqual([0, '']);
        expect(out).toMatch(new RegExp(`^ {2}npx turnsheet ${name} [^[…]+$`, 'm'));
      }
    }
  });

  it('names every command as it is typed, in help, in what is said and in a new lesson', async () => {
    const folder = newFolder();
    const said = [
      ...(await Promise.all([[], ...COMMAND_NAMES.map((name) => ['help', name])].map((args) => command(folder, args)))),
      await command(folder, ['new', 'a.yaml']),
      await command(folder, ['a.yaml']),
      await command(folder, ['cases', 'top']),
      await command(folder, ['find', '--pair', 'UFR']),
      await command(folder, ['rules', 'top-away', '--features', 'x']),
    ].map(({ out, err }) => out + err);
    const text = [...said, readFileSync(join(folder, 'a.yaml'), 'utf8')].join('\n');
    const commands = [...COMMAND_NAMES, 'help', '--version'].join('|');
    expect(text.match(new RegExp(`(?<!npx )turnsheet (?:${commands})\\b.*`, 'g'))).toBeNull();
    expect(text.match(new RegExp(`npx turnsheet (?:${commands})`, 'g'))!.length).toBeGreaterThan(40);
  });

  it('tells the version of the package', async () => {
    const { version } = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8'));
    expect(await command(newFolder(), ['--version'])).toEqual({ code: 0, out: `${version}\n`, err: '' });
  });
});

describe('rules', () => {
  it('speak of what is seen at a glance, and name every way; more on request', async () => {
    const folder = newFolder();
    const listed = JSON.parse((await command(folder, ['rules', '--json'])).out).features as {
      name: string;
      atAGlance: boolean;
    }[];
    const hard = listed.filter(({ atAGlance }) => !atAGlance).map(({ name }) => name);
    expect(hard).toContain('down when hidden by R or L');
    const { out } = await command(folder, ['rules', 'top-home', '--json']);
    const found = JSON.parse(out) as { reference: boolean; rules: { see: string[]; ways: Record<string, number> }[] };
    expect(found.reference).toBe(false);
    for (const { see, ways } of found.rules) {
      expect(see.filter((one) => hard.some((name) => one.startsWith(`${name}:`)))).toEqual([]);
      expect(ways['work']).toBe(ways['allowed']);
    }
    const named = await command(folder, ['rules', 'top-home', '--features', 'edge', '--all-features']);
    expect(named).toMatchObject({ code: 2, out: '' });
  });
});

describe('check', () => {
  it('says of each rule where it holds, and of those it would exclude if there are any', async () => {
    const rules =
      'rules:\n  - { see: { cross colour: up }, aim: top-top, most: 14 }\n  - { aim: top-top, most: 14 }\nfamily:';
    const folder = newFolder();
    const { err } = await command(folder, ['check', put(folder, 'a.yaml', SMALL_LESSON.replace('family:', rules))]);
    // 18 cases, four turns of U, four sides: 288; the cross colour is up in a third of them.
    expect(err).toMatch(
      /rule 1: holds in all 96 sightings, \d+ of its \d+ ways, and would in \d+ of the 192 that it excludes\n/,
    );
    expect(err).toMatch(/rule 2: holds in all 192 sightings, \d+ of its \d+ ways\n/);
  });

  it('says how much was proved', async () => {
    const folder = newFolder();
    const said = await command(folder, ['check', put(folder, 'a.yaml', SMALL_LESSON)]);
    expect(said).toEqual({ code: 0, out: '', err: 'a.yaml: 2 cases, 2 solutions proved\n' });
  });

  it('shows a problem with its line, carets and a hint, and writes nothing', async () => {
    const folder = newFolder();
    const { code, out, err } = await command(folder, ['check', put(folder, 'a.yaml', FAULTY)]);
    expect([code, out]).toEqual([1, '']);
    expect(err).toBe(
      [
        'a.yaml:13:9: error: the solution leaves the pair unsolved; cross and kept slots are whole [solution-fails]',
        "  13 |       - L' U L R U' R'",
        '     |         ^^^^^^^^^^^^^^',
        "     = was it L' U' L R U' R' (U' instead of U, turn 2); or L' U L R U R' (U instead of U', turn 5)?",
        '',
        '1 error',
        '',
      ].join('\n'),
    );
    expect(readdirSync(folder)).toEqual(['a.yaml']);
  });

  it('gives one JSON document: problems and claims, the failing one too', async () => {
    const folder = newFolder();
    const { code, out } = await command(folder, ['check', put(folder, 'a.yaml', FAULTY), '--json']);
    expect(code).toBe(1);
    const { ok, problems, claims } = JSON.parse(out);
    expect(ok).toBe(false);
    expect(Object.keys(problems[0])).toEqual(['severity', 'code', 'file', 'line', 'column', 'message', 'hint']);
    expect(claims.map((c: { id: string; verdict: string }) => [c.id, c.verdict])).toEqual([
      ['1.1', 'fails'],
      ['2.1', 'solves'],
    ]);
  });

  it('paints on a terminal, unless NO_COLOR is set', async () => {
    const folder = newFolder();
    const args = ['check', put(folder, 'a.yaml', FAULTY)];
    const painted = '\u001b[31merror\u001b[0m';
    expect((await command(folder, args, { terminal: true })).err).toContain(painted);
    expect((await command(folder, args, { terminal: true, env: { NO_COLOR: '1' } })).err).not.toContain('\u001b');
    expect((await command(folder, args)).err).not.toContain('\u001b');
  });

  it('steers no terminal by the name of a file, nor by signs that turn the direction of writing', async () => {
    const folder = newFolder();
    const odd = put(folder, 'a\u001b[31m.yaml', withLine(18, '    watch: A \u202ewall *behind.'));
    const { code, err } = await command(folder, ['check', odd]);
    expect(code).toBe(1);
    expect(err).toContain('a\\x1b[31m.yaml:18:');
    expect(err).toContain('A \\u{202e}wall *behind.');
    for (const sign of ['\u001b', '\u202e']) expect(err).not.toContain(sign);
  });

  it.each([
    ['no such file', 'nowhere.yaml', /there is no such file/],
    ['a folder', 'sub', /it is a folder/],
  ])('tells of %s', async (_, file, says) => {
    const folder = newFolder();
    mkdirSync(join(folder, 'sub'));
    const { code, err } = await command(folder, ['check', file]);
    expect(code).toBe(1);
    expect(err).toMatch(says);
    expect(err).toMatch(/\[file-unreadable\]/);
  });
});

describe('build', () => {
  it('writes the handout and exactly its claims', async () => {
    const folder = newFolder();
    const { code, out, err } = await command(folder, [
      'build',
      put(folder, 'small.yaml', SMALL_LESSON),
      '--out',
      'print',
    ]);
    expect([code, out]).toEqual([0, '']);
    expect(err).toContain(join('print', 'small.pdf'));
    expect(readdirSync(join(folder, 'print')).sort()).toEqual(['small.claims.json', 'small.pdf']);
    const { lesson, file, sheets, claims } = JSON.parse(readFileSync(join(folder, 'print/small.claims.json'), 'utf8'));
    expect([lesson, file, sheets]).toEqual(['A small lesson', 'small.yaml', ['small.pdf']]);
    expect(claims.map((c: { id: string; sheet: string; page: number }) => [c.id, c.sheet, c.page])).toEqual([
      ['1.1', 'small.pdf', 1],
      ['2.1', 'small.pdf', 1],
    ]);
  });

  it('lists the files as JSON', async () => {
    const folder = newFolder();
    const { out, err } = await command(folder, ['build', put(folder, 'small.yaml', SMALL_LESSON), '--json']);
    expect(err).toBe('');
    const paths = [join('out', 'small.pdf'), join('out', 'small.claims.json')];
    expect(JSON.parse(out)).toEqual({ ok: true, problems: [], files: paths });
  });

  it('writes the pictures as SVG files if asked', async () => {
    const folder = newFolder();
    const { code } = await command(folder, ['build', put(folder, 'small.yaml', SMALL_LESSON), '--pictures']);
    expect(code).toBe(0);
    expect(readdirSync(join(folder, 'out/small-pictures')).sort()).toEqual(['1.svg', '2.svg']);
    const svg = readFileSync(join(folder, 'out/small-pictures/1.svg'), 'utf8');
    expect(svg).toMatch(/^<svg /);
    expect(svg).toContain('<title>The first</title>');
    expect(svg).toContain('The edge is stuck in the front left slot, green to the front.');
  });

  it.each([
    ['an error in the lesson', FAULTY, /solution-fails/],
    ['a word too wide', SMALL_LESSON.replace('The first', 'wide'.repeat(30)), /a\.yaml:10:11: .*print-word-too-wide/],
    ['a character without a glyph', SMALL_LESSON.replace('A wall', 'A 壁'), /a\.yaml:18:\d+: .*print-glyph-missing/],
  ])('with %s leaves all files as they were, of the other lessons too', async (_, text, says) => {
    const folder = newFolder();
    mkdirSync(join(folder, 'out'));
    writeFileSync(join(folder, 'out/a.pdf'), 'as it was');
    const args = ['build', put(folder, 'b.yaml', SMALL_LESSON), put(folder, 'a.yaml', text)];
    const { code, err } = await command(folder, args);
    expect(code).toBe(1);
    expect(err).toMatch(says);
    expect(err).toContain('nothing was written');
    expect(readdirSync(join(folder, 'out'))).toEqual(['a.pdf']);
    expect(readFileSync(join(folder, 'out/a.pdf'), 'utf8')).toBe('as it was');
  });

  it('leaves nothing half-written where it may not write', async () => {
    const folder = newFolder();
    put(folder, 'out', 'a file where the folder should be');
    const { code, err } = await command(folder, ['build', put(folder, 'a.yaml', SMALL_LESSON)]);
    expect(code).toBe(1);
    expect(err).toMatch(/cannot be written/);
    expect(readdirSync(folder).sort()).toEqual(['a.yaml', 'out']);
  });

  it('takes all back where one of the files cannot take its place', async () => {
    const folder = newFolder();
    put(folder, 'a.yaml', SMALL_LESSON);
    await command(folder, ['build', 'a.yaml']);
    const before = readFileSync(join(folder, 'out/a.pdf'));
    rmSync(join(folder, 'out/a.claims.json'));
    mkdirSync(join(folder, 'out/a.claims.json'));
    put(folder, 'a.yaml', SMALL_LESSON.replace('A small', 'Another'));
    const { code, err } = await command(folder, ['build', 'a.yaml']);
    expect(code).toBe(1);
    expect(err).toMatch(/a\.claims\.json cannot be written .*; nothing was changed/);
    expect(readFileSync(join(folder, 'out/a.pdf')).equals(before)).toBe(true);
    expect(readdirSync(join(folder, 'out')).sort()).toEqual(['a.claims.json', 'a.pdf']);
  });

  it('refuses two lessons that would overwrite each other', async () => {
    const folder = newFolder();
    mkdirSync(join(folder, 'sub'));
    const args = ['build', put(folder, 'a.yaml', SMALL_LESSON), put(folder, 'sub/a.yaml', SMALL_LESSON)];
    expect(await command(folder, args)).toMatchObject({
      code: 2,
      err: expect.stringMatching(/both be written to a\.pdf/),
    });
  });

  it('gives the same bytes from any folder, however the lesson is named', async () => {
    const [one, two] = [newFolder(), newFolder()];
    mkdirSync(join(two, 'deep'));
    put(one, 'a.yaml', SMALL_LESSON);
    put(two, 'deep/a.yaml', SMALL_LESSON);
    await command(one, ['build', 'a.yaml']);
    await command(two, ['build', join(two, 'deep/a.yaml'), '--out', 'deep/out']);
    for (const name of ['a.pdf', 'a.claims.json']) {
      const [a, b] = [join(one, 'out', name), join(two, 'deep/out', name)].map((path) => readFileSync(path));
      expect(a!.equals(b!)).toBe(true);
    }
  });

  it('shows on a terminal how far it is', async () => {
    const folder = newFolder();
    const files = ['a.yaml', 'b.yaml'].map((name) => put(folder, name, SMALL_LESSON));
    expect((await command(folder, ['build', ...files], { terminal: true })).err).toContain('1 of 2: a.yaml');
    expect((await command(folder, ['build', ...files])).err).not.toContain('1 of 2');
  });

  it('survives any bytes', async () => {
    const folder = newFolder();
    for (const bytes of [bytesOf('\u0000\u0001: ['), Uint8Array.of(0xff, 0xfe, 0), bytesOf('&a [*a, *a]')]) {
      writeFileSync(join(folder, 'a.yaml'), bytes);
      expect((await command(folder, ['build', 'a.yaml'])).code).toBe(1);
    }
  });
});
