/** The catalogue on paper: a chapter a family, a panel a case, seen from each of four sides. For the coach. */

import { type Block, mm, type Sheet } from '../layout/blocks.ts';
import { SIDES } from '../lesson/booklet-lesson.ts';
import type { ProvedLesson } from '../lesson/prove.ts';
import type { ProvedCase } from '../lesson/proved.ts';
import { openViewLegend } from '../svg/draw.ts';
import { beside, figure, grid, h1, h2, h3, space, stack, whole } from './blocks.ts';
import { headRule, lessonSheet } from './heading.ts';
import type { Making } from './making.ts';
import { casePicture } from './panel.ts';
import { signsOf, turnsLine } from './phrases.ts';
import { printable } from './print-text.ts';
import { grey, line, note, plain, strong } from './texts.ts';

const PICTURE = mm(24);
const GAP = mm(5);

/** Where lessons show each case: by the case's address, in the order of the lessons. */
export type Coverage = ReadonlyMap<string, readonly string[]>;

export interface BookletFacts {
  readonly families: readonly string[];
  /** By case: how many solutions are as short as the shortest. */
  readonly solutions: ReadonlyMap<string, number>;
  /** Undefined if no lessons were named. */
  readonly coverage: Coverage | undefined;
}

/** A case from one side: picture, set-up, solutions. */
function position({ case: c, ...proved }: ProvedCase, making: Making): Block {
  const { booklet, handout } = making.words;
  return whole(
    mm(1),
    figure(casePicture({ case: c, ...proved }, making), PICTURE),
    turnsLine(c.setup, making, { label: handout.setUp }),
    ...proved.solutions.map(({ solution, claim }, i) => {
      const label = i === 0 ? booklet.shortest(claim.length) : booklet.hands(claim.length);
      return turnsLine(solution.turns, making, { label, claims: [claim.id] });
    }),
  );
}

function panel(positions: readonly ProvedCase[], number: number, facts: BookletFacts, making: Making): Block {
  const { booklet } = making.words;
  const address = positions[0]!.subject.caseAddress;
  const taught = facts.coverage && (facts.coverage.get(address) ?? []);
  const solutions = booklet.solutions(facts.solutions.get(address) ?? 0, positions[0]!.solutions[0]!.claim.length);
  const notes = [
    solutions,
    ...(taught ? [taught.length > 0 ? booklet.taught(taught.map((name) => printable(name))) : booklet.notTaught] : []),
  ];
  const title = h3([grey(`${number}\u00a0\u00a0`), strong(address)]);
  const cells = positions.map((one) => position(one, making));
  const sides = grid(cells, { columns: SIDES, least: mm(36), gap: GAP, rowGap: mm(3) });
  return { ...whole(mm(1.5), title, note(grey(notes.join(' · '))), sides), line: 'above' };
}

/** Sides of one case follow each other. */
const addressesOf = (cases: readonly ProvedCase[]): ProvedCase[][] =>
  Array.from({ length: cases.length / SIDES }, (_, i) => cases.slice(SIDES * i, SIDES * (i + 1)));

/** `proved`: a lesson of `bookletLesson`. */
export function booklet(proved: ProvedLesson, facts: BookletFacts, making: Making): Sheet {
  const { booklet: words } = making.words;
  const ofStep = proved.lesson.step.sheets.words(making.words);
  let number = 0;
  const chapters = facts.families.flatMap((family, i): Block[] => {
    const panels = addressesOf(proved.parts[i]!.cases);
    const heading = words.family(ofStep.family(family), family, panels.length);
    return [
      ...(i > 0 ? [space(mm(6))] : []),
      h2([plain(heading)], { bookmark: heading }),
      space(mm(2)),
      ...panels.flatMap((positions): Block[] => [panel(positions, ++number, facts, making), space(mm(4))]),
    ];
  });
  const [only, ...others] = facts.families;
  const title = only && others.length === 0 ? ofStep.family(only) : ofStep.allCases;
  const cases = proved.cases.length / SIDES;
  const { coverage } = facts;
  const taught = coverage && [...facts.solutions.keys()].filter((address) => coverage.has(address)).length;
  const signs = note(plain([...signsOf(proved.lesson.step, making), making.words.handout.outermost].join(' ')));
  const legend = openViewLegend(making.words, making.ink);
  return lessonSheet(title, proved, making, [
    h1([plain(title)], { bookmark: title }),
    note(grey([words.about(cases), ...(taught === undefined ? [] : [words.covered(taught, cases)])].join(' · '))),
    ...headRule(mm(4)),
    beside(mm(7), legend, PICTURE, stack(mm(2), line('body', plain(ofStep.booklet)), signs)),
    space(mm(6)),
    ...chapters,
  ]);
}
