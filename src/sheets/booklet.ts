/** The catalogue on paper: a chapter a family, a panel a case, the pair in each of four positions. For the coach. */

import { type Block, mm, type Sheet } from '../layout/blocks.ts';
import type { ProvedLesson } from '../lesson/prove.ts';
import type { ProvedCase } from '../lesson/proved.ts';
import { writeAddress } from '../steps/pair/address.ts';
import { caseOf, type Family } from '../steps/pair/cases.ts';
import { SLOTS } from '../steps/pair/slots.ts';
import { openViewLegend } from '../svg/open-view-legend.ts';
import { headRule } from './heading.ts';
import type { Making } from './making.ts';
import { casePicture } from './panel.ts';
import { printedTurns, signsOf } from './phrases.ts';
import { grey, line, note, plain } from './texts.ts';

const PICTURE = mm(24);
const GAP = mm(5);

/** Where lessons show each case: by the case's address, in the order of the lessons. */
export type Coverage = ReadonlyMap<string, readonly string[]>;

export interface BookletFacts {
  readonly families: readonly Family[];
  /** By case: how many solutions are as short as the shortest. */
  readonly solutions: ReadonlyMap<string, number>;
  /** Undefined if no lessons were named. */
  readonly coverage: Coverage | undefined;
}

/** One position of the pair: picture, set-up, solutions. */
function position({ case: c, ...proved }: ProvedCase, making: Making): Block {
  const { booklet, handout } = making.words;
  const turnsOf = (label: string, turns: typeof c.setup, claims: readonly string[]): Block => ({
    kind: 'turns',
    label,
    groups: [{ turns: printedTurns(turns, making) }],
    claims,
  });
  return {
    kind: 'stack',
    gap: mm(1),
    keep: true,
    children: [
      { kind: 'figure', scene: casePicture({ case: c, ...proved }, making), width: PICTURE },
      turnsOf(handout.setUp, c.setup, []),
      ...proved.solutions.map(({ solution, claim }, i) =>
        turnsOf(i === 0 ? booklet.shortest(claim.length) : booklet.hands(claim.length), solution.turns, [claim.id]),
      ),
    ],
  };
}

function panel(positions: readonly ProvedCase[], number: number, facts: BookletFacts, making: Making): Block {
  const { booklet } = making.words;
  const address = writeAddress(caseOf(positions[0]!.address));
  const taught = facts.coverage && (facts.coverage.get(address) ?? []);
  const solutions = booklet.solutions(facts.solutions.get(address) ?? 0, positions[0]!.solutions[0]!.claim.length);
  const notes = [solutions, ...(taught ? [taught.length > 0 ? booklet.taught(taught) : booklet.notTaught] : [])];
  return {
    kind: 'stack',
    keep: true,
    line: 'above',
    gap: mm(1.5),
    children: [
      {
        kind: 'text',
        role: 'H3',
        style: 'panel',
        spans: [
          { kind: 'plain', text: `${number}\u00a0\u00a0`, ink: 'grey' },
          { kind: 'strong', text: address },
        ],
      },
      note(grey(notes.join(' · '))),
      {
        kind: 'grid',
        columns: SLOTS.length,
        least: mm(36),
        gap: GAP,
        rowGap: mm(3),
        cells: positions.map((one) => position(one, making)),
      },
    ],
  };
}

/** Positions of one address follow each other, in the order of SLOTS. */
const addressesOf = (cases: readonly ProvedCase[]): ProvedCase[][] =>
  Array.from({ length: cases.length / SLOTS.length }, (_, i) => cases.slice(SLOTS.length * i, SLOTS.length * (i + 1)));

/** `proved`: a lesson of `bookletLesson`. */
export function booklet(proved: ProvedLesson, facts: BookletFacts, making: Making): Sheet {
  const { booklet: words, handout, language } = making.words;
  let number = 0;
  const chapters = facts.families.flatMap((family, i): Block[] => {
    const panels = addressesOf(proved.parts[i]!.cases);
    const heading = words.family(family, panels.length);
    return [
      ...(i > 0 ? [{ kind: 'space', height: mm(6) } as const] : []),
      { kind: 'text', role: 'H2', style: 'heading', spans: [plain(heading)], bookmark: heading, keepWithNext: true },
      { kind: 'space', height: mm(2) },
      ...panels.flatMap((positions): Block[] => [
        panel(positions, ++number, facts, making),
        { kind: 'space', height: mm(4) },
      ]),
    ];
  });
  const title = words.title(facts.families);
  const cases = proved.cases.length / SLOTS.length;
  const { coverage } = facts;
  const taught = coverage && [...facts.solutions.keys()].filter((address) => coverage.has(address)).length;
  return {
    title,
    language,
    body: [
      { kind: 'text', role: 'H1', style: 'title', spans: [plain(title)], bookmark: title },
      note(grey([words.about(cases), ...(taught === undefined ? [] : [words.covered(taught, cases)])].join(' · '))),
      ...headRule(mm(4)),
      {
        kind: 'columns',
        gap: mm(7),
        columns: [
          {
            width: PICTURE,
            child: { kind: 'figure', scene: openViewLegend(making.words, making.ink), width: PICTURE },
          },
          {
            width: { share: 1 },
            child: {
              kind: 'stack',
              gap: mm(2),
              children: [line('body', plain(words.howToRead)), note(plain(signsOf(making).join(' ')))],
            },
          },
        ],
      },
      { kind: 'space', height: mm(6) },
      ...chapters,
    ],
    foot: { left: [handout.foot(title, proved.edition), handout.proved(proved.edition)], right: handout.page },
  };
}
