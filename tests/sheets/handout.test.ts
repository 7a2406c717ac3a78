/** The sample lessons as handouts: laid out, written, read back by the second checker. */
import { describe, expect, it } from 'vitest';
import { auditBuild } from '../../src/audit/audit-build.ts';
import { readPdf } from '../../src/audit/pdf-text.ts';
import { mm } from '../../src/layout/blocks.ts';
import { widthOf } from '../../src/layout/fonts.ts';
import { writePdf } from '../../src/layout/pdf.ts';
import { typeScale } from '../../src/layout/type.ts';
import { loadLesson } from '../../src/lesson/load.ts';
import type { ProvedLesson } from '../../src/lesson/prove.ts';
import { claimsFile } from '../../src/sheets/claims.ts';
import { makingOf } from '../../src/sheets/making.ts';
import { caseName } from '../../src/sheets/panel.ts';
import { printLesson } from '../../src/sheets/printed.ts';
import { FAMILIES } from '../../src/steps/pair/cases.ts';
import { SLOTS } from '../../src/steps/pair/slots.ts';
import { bytesOf, SMALL_LESSON } from '../lesson/small-lesson.ts';
import { provedSample, SAMPLES } from '../samples.ts';

const proved = (name: string, bytes: Uint8Array): ProvedLesson => {
  const { proved: lesson, problems } = loadLesson(name, bytes);
  expect(problems).toEqual([]);
  return lesson!;
};
const COLOUR_A4 = { paper: 'a4', ink: 'colour' } as const;
/** The handout alone, where nothing is said of other sheets. */
const HANDOUT_A4 = { ...COLOUR_A4, only: [''] } as const;

describe.each(SAMPLES)('the handout of %s', (name) => {
  it.each([
    ['a class', {}, 'a4', 'colour'],
    ['a class', {}, 'letter', 'mono'],
    ['a class', {}, 'a5', 'colour'],
    ['another cross colour', { cross: 'green' }, 'letter', 'colour'],
    ['a third cross colour, small letters', { cross: 'orange', wide: 'r' }, 'a4', 'mono'],
    ['the left hand', { hand: 'left' }, 'a4', 'colour'],
    ['the left hand and another cross', { hand: 'left', cross: 'yellow', front: 'red' }, 'letter', 'mono'],
  ] as const)(
    'for %s %o on %s in %s: every claim proved again, and found on its page',
    async (_, variation, paper, ink) => {
      const lesson = provedSample(name, variation);
      const { sheets, problems } = printLesson(lesson, { paper, ink, only: [''] });
      expect(problems).toEqual([]);
      const file = claimsFile(sheets, 'a', name);
      expect(file.claims.map((c) => c.id)).toEqual(
        [...provedSample(name).claims, ...provedSample(name).factClaims].map((c) => c.id),
      );
      const pdfs = new Map([['a.pdf', await writePdf(sheets[0]!.pages)]]);
      expect(await auditBuild(JSON.parse(JSON.stringify(file)), pdfs)).toEqual({
        claims: lesson.claims.length,
        faults: [],
      });
    },
  );

  it('describes every picture, the hold and the legend too', async () => {
    const lesson = provedSample(name);
    const { sheets } = printLesson(lesson, HANDOUT_A4);
    const { pages } = sheets[0]!;
    const { figures, title, language } = await readPdf(await writePdf(pages));
    expect(figures).toHaveLength(lesson.cases.length + 2);
    expect(figures.every(({ alt }) => alt.length > 20)).toBe(true);
    expect([title, language]).toEqual([pages.title, 'en']);
    expect(title?.length).toBeGreaterThan(5);
  });
});

describe('all sheets of a sample', () => {
  it.each(SAMPLES.flatMap((name) => (['a4', 'letter', 'a5'] as const).map((paper) => [name, paper] as const)))(
    'of %s fit on %s, in every way that its class may hold a cube',
    (name, paper) => {
      const [variation, ink] = (
        {
          a4: [{ cross: 'orange', wide: 'r' }, 'mono'],
          letter: [{ hand: 'left', cross: 'green' }, 'mono'],
          a5: [{}, 'colour'],
        } as const
      )[paper];
      expect(printLesson(provedSample(name, variation), { paper, ink }).problems).toEqual([]);
    },
  );
});

describe('one sheet alone', () => {
  const lesson = provedSample('edge-away');
  const all = printLesson(lesson, COLOUR_A4);

  it.each(all.sheets.map(({ suffix }) => suffix))('"%s" is the sheet that is printed with all others', (suffix) => {
    const { sheets, problems } = printLesson(lesson, { ...COLOUR_A4, only: [suffix] });
    expect(problems).toEqual([]);
    expect(sheets).toEqual(all.sheets.filter((sheet) => sheet.suffix === suffix));
  });

  it('asks for papers only where one of theirs is printed', () => {
    const papers = ['-practice', '-key'] as const;
    expect(all.practised.size).toBeGreaterThan(0);
    expect(printLesson(lesson, { ...COLOUR_A4, only: [''] }).practised.size).toBe(0);
    for (const suffix of papers) {
      expect(printLesson(lesson, { ...COLOUR_A4, only: [suffix] }).practised).toEqual(all.practised);
    }
  });
});

/** Of the narrowest panel on A4 what its picture and a number of two digits leave. */
const PANEL_LINE = mm(41);
/** How the description of the picture says a part of an automatic name. */
const SAYS_SO = (part: string): RegExp => {
  const [, side] = /^orange (.+)$/.exec(part) ?? [];
  if (side)
    return new RegExp(`The corner[^.]* orange (?:${side}|to the ${side})\\.|The corner is in its own slot, solved`);
  const [, edge] = /^edge (.+)$/.exec(part) ?? [];
  if (edge === 'home') return /The edge is in its own slot, solved/;
  if (edge) return new RegExp(`The edge is on top at the ${edge},`);
  return part === 'flipped' ? /The edge is in its own slot but flipped/ : new RegExp(`stuck in the ${part} slot`);
};

describe('a handout', () => {
  const text = async (source: string): Promise<string> => {
    const { sheets, problems } = printLesson(proved('a.yaml', bytesOf(source)), HANDOUT_A4);
    const { pages } = sheets[0]!;
    expect(problems).toEqual([]);
    const read = await readPdf(await writePdf(pages));
    return read.pages.map((p) => p.text).join('\n');
  };

  it('says what the lesson says, in its order', async () => {
    const said = await text(SMALL_LESSON);
    const order = [
      'A small lesson',
      'white down, green in front',
      'Look',
      'The first',
      'A wall behind.',
      "R U' R' L U' L'",
    ];
    const places = order.map((words) => said.indexOf(words));
    expect(places.every((place) => place >= 0)).toBe(true);
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(said).toContain('page 1 of 1');
  });

  it('sets a small picture after each phase but the last on request', async () => {
    const withStates = proved('a.yaml', bytesOf(SMALL_LESSON.replace('family:', 'show: [states]\nfamily:')));
    const { sheets } = printLesson(withStates, HANDOUT_A4);
    const { figures } = await readPdf(await writePdf(sheets[0]!.pages));
    // Hold and legend; two cases, each solved in two phases.
    expect(figures).toHaveLength(2 + 2 + 2);
    // After L' U L the pair of the first case is apart on top.
    const between = figures.find(({ alt }) => alt.includes('The edge is on top'));
    expect(between?.alt).toMatch(/The corner is on top at the .*The edge is on top at the/);
  });

  it('names a case that the coach did not', async () => {
    // The second case, seen on a cube: its edge stuck in the back left slot, its corner's white to the back.
    expect(await text(SMALL_LESSON)).toContain('2 Back left, white back A wall behind.');
  });

  it.each(FAMILIES)('names cases of %s in one line of a panel, for pairs of any slot, and as they lie', (family) => {
    for (const slot of SLOTS) {
      // The longest name of a colour.
      const cases = `cases:\n  - { every: ${family}, slot: ${slot} }\n`;
      const lesson = proved('a.yaml', bytesOf(`title: All\nhold: { cross: orange, front: white }\n${cases}`));
      const making = makingOf(lesson, 'colour');
      for (const one of lesson.cases) {
        const name = caseName(one, making);
        expect(widthOf('sans-strong', name, typeScale.panel.size), name).toBeLessThan(PANEL_LINE);
        const said = one.subject.describe(one.subject.cube, one.case.colours, making.words);
        for (const part of name.toLowerCase().split(', ')) expect(said, name).toMatch(SAYS_SO(part));
      }
    }
  });

  it('tells the hold of a case only where it is another', async () => {
    expect(await text(SMALL_LESSON)).not.toContain('red in front');
    const turned = SMALL_LESSON.replace('- name: The first', '- hold: { front: red }');
    expect(await text(turned)).toContain('Hold: white down, red in front');
  });

  it('prints what the lesson promises, as it was proved', async () => {
    const claims = 'claims: { cases: selection, turns: 6, rotations: none, slots: [FR], kept: all }';
    const said = await text(SMALL_LESSON.replace('family:', `${claims}\nfamily:`));
    const promises =
      'A selection: 2 of 18 cases, at most 6 turns, without turning the cube, pairs of the front right slot, all other slots kept';
    expect(said.replace(/\s+/g, ' ')).toContain(promises);
  });

  it('writes wide turns as the club does, and the second checker reads them', async () => {
    const wide = SMALL_LESSON.replace("L' U L R U R'", "L' U L Rw Rw' R U R'");
    const small = wide.replace('family:', 'wide: r\nfamily:');
    expect(await text(wide)).toContain("L' U L Rw Rw' R U R'");
    expect(await text(small)).toContain("L' U L r r' R U R'");
    const lesson = proved('a.yaml', bytesOf(small));
    const { sheets } = printLesson(lesson, HANDOUT_A4);
    const { pages } = sheets[0]!;
    const file = JSON.parse(JSON.stringify(claimsFile([sheets[0]!], 'a', 'a.yaml')));
    expect(file.claims[0].solution).toBe("L' U L r r' R U R'");
    const audit = await auditBuild(file, new Map([['a.pdf', await writePdf(pages)]]));
    expect(audit).toEqual({ claims: 2, faults: [] });
  });

  it("prints the club's words for ours, and a list of them", async () => {
    const said = await text(SMALL_LESSON.replace('family:', 'words: { slot: pocket, solve: mend }\nfamily:'));
    expect(said).toContain('Dashed line: its own pocket.');
    expect(said).toContain('Mend');
    expect(said).toContain('Words of our club pocket: what others call slot mend: what others call solve');
    expect(said).not.toContain('back left slot');
  });

  it('shows how to take a set-up back if asked', async () => {
    expect(await text(SMALL_LESSON)).not.toContain("L' U' L R U' R'");
    const said = await text(SMALL_LESSON.replace('family:', 'show: [undo]\nfamily:'));
    // The set-up of the first case is R U R' L' U L.
    expect(said).toContain("Back L' U' L R U' R'");
  });

  it('makes a panel with a line to write on for every case of a family', async () => {
    const said = await text(
      SMALL_LESSON.replace(/cases:(?:.|\n)*/, 'cases:\n  - every: top-away\n').replace(
        'family:',
        'claims: { cases: all }\nfamily:',
      ),
    );
    expect(said.match(/Your turns/g)).toHaveLength(18);
    expect(said).toContain('All 18 cases');
  });

  it('makes a set-up for an address that does not give the answer away', async () => {
    // The address and the answer of the first case.
    const lesson = proved('a.yaml', bytesOf(SMALL_LESSON.replace("setup: R U R' L' U L\n", 'address: UBR:B FL:F\n')));
    const [claim] = lesson.claims;
    expect(claim).toMatchObject({ address: 'UBR:B FL:F', solution: "L' U L R U R'", verdict: 'solves' });
    // Its inverse would be R U' R' L' U' L.
    expect(claim!.setup).not.toBe("R U' R' L' U' L");
    expect(claim!.setup.split(' ').length).toBeLessThan(10);
  });

  it('lets a text of any length flow over pages', async () => {
    const long = Array.from(
      { length: 120 },
      (_, i) => `  Paragraph ${i} of a long explanation, which goes on and on.\n`,
    );
    const said = await text(SMALL_LESSON.replace(/ {2}Lift .*\n/, `${long.join('\n')}`));
    expect(said).toContain('Paragraph 119');
    expect(said).toMatch(/page 1 of [3-9]/);
  });

  it('tells of a word that is too wide, with the line it stands in', () => {
    const wide = SMALL_LESSON.replace('- name: The first', `- name: ${'wide'.repeat(14)}`);
    const { problems } = printLesson(proved('a.yaml', bytesOf(wide)), COLOUR_A4);
    expect(problems).toMatchObject([{ code: 'print-word-too-wide', span: { start: wide.indexOf('wide') } }]);
  });
});
