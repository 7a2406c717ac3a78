/** What a lesson promises as a whole, in one line under its title. */

import type { LessonClaim } from '../lesson/lesson.ts';
import type { ProvedLesson } from '../lesson/prove.ts';
import { isSolvedAddress } from '../steps/pair/address.ts';
import { casesOf } from '../steps/pair/cases.ts';
import { SLOTS } from '../steps/pair/slots.ts';
import type { Words } from '../words/words.ts';

function promise(claim: LessonClaim, proved: ProvedLesson, { handout: { promises } }: Words): string {
  switch (claim.claim) {
    case 'cases': {
      const shown = proved.differentCases;
      const of = proved.lesson.families.flatMap(casesOf).filter((a) => !isSolvedAddress(a)).length;
      return claim.is === 'all' ? promises.all(shown) : promises.selection(shown, of);
    }
    case 'turns':
      return promises.most(claim.most);
    case 'rotations':
      return promises.noRotation;
    case 'slots':
      return claim.slots.length === SLOTS.length ? promises.everySlot : promises.slots(claim.slots);
    case 'kept':
      return promises.kept;
  }
}

/** Undefined if it promises nothing. Each was proved with the lesson. */
export function promisesOf(proved: ProvedLesson, words: Words): string | undefined {
  const said = proved.lesson.claims.map((claim) => promise(claim, proved, words));
  return said.length > 0 ? said.join(', ') : undefined;
}
