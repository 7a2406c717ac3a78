/** The pairs of the first two layers as a step. */
import type { Turn } from '../../cube/turns.ts';
import type { SetUpFault, Step } from '../step.ts';
import type { Subject } from '../subject.ts';
import { readAddress } from './address.ts';
import { casesOf, FAMILIES, type Family, upToU } from './cases.ts';
import { english } from './english.ts';
import { pairFind } from './find.ts';
import { pairLesson } from './lesson.ts';
import { pairMarking } from './marking.ts';
import { IN_SIDE_MIRROR, mirroredAddress } from './mirrored.ts';
import { pairPhases } from './phases.ts';
import { pairPractice } from './practice.ts';
import { pairRules } from './rules.ts';
import { doSetUp } from './set-up.ts';
import { setUpFor } from './set-up-for.ts';
import { pairSheets } from './sheets.ts';
import { SLOTS, type Slot, turnedSlot } from './slots.ts';
import { shortestOfPair, solutionsOf } from './solutions.ts';
import { asPair, asPairWhere, PAIRS, type PairSubject, type PairWhere, pairSubject } from './subject.ts';

const USUAL: PairWhere = { slot: 'FR', open: [] };

function after(setup: readonly Turn[], { slot, open }: PairWhere): PairSubject | SetUpFault {
  const done = doSetUp(setup, slot, open);
  if ('fault' in done) return done.fault === 'hides-pair' ? { fault: 'hides' } : done;
  return pairSubject(done.address, { slot, open }, done.cube);
}

function casesIn(family: string): readonly Subject[] | undefined {
  if (!FAMILIES.includes(family as Family)) return undefined;
  return casesOf(family as Family)
    .map((at) => pairSubject(at, USUAL))
    .filter(({ isSolved }) => !isSolved);
}

/** Without the cube that it was set up on. */
function moved({ at, where }: PairSubject, change: (slot: Slot) => Slot, address = at): PairSubject {
  return pairSubject(address, {
    slot: change(where.slot),
    open: SLOTS.filter((s) => where.open.map(change).includes(s)),
  });
}

export const pairs: Step = {
  name: PAIRS,
  families: FAMILIES,
  words: { en: english },
  lesson: pairLesson,
  practice: pairPractice,
  marking: pairMarking,
  phases: pairPhases,
  sheets: pairSheets,
  find: pairFind,
  rules: pairRules,
  usual: USUAL,
  after: (setup, where) => after(setup, asPairWhere(where)),
  at: (text, where) => {
    const at = readAddress(text);
    return at && pairSubject(at, asPairWhere(where));
  },
  cases: casesIn,
  upToTop: (subject) => upToU(asPair(subject).at).map((at) => pairSubject(at, asPair(subject).where)),
  turned: (subject, quarters) => moved(asPair(subject), (slot) => turnedSlot(slot, quarters)),
  mirrored: (subject) => {
    const pair = asPair(subject);
    return moved(pair, (slot) => IN_SIDE_MIRROR[slot], mirroredAddress(pair.at));
  },
  solutions: (subject, longer) => solutionsOf(asPair(subject), longer),
  shortest: (subject) => shortestOfPair(asPair(subject)),
  setUp: (subject, avoid, { solutions, least = 0 } = {}) => {
    const { at, side } = asPair(subject);
    return setUpFor(at, side, avoid, { least, ...(solutions && { solutions }) });
  },
};
