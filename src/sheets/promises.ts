/** What a lesson promises as a whole, in one line under its title. */

import type { LessonClaim } from '../lesson/lesson.ts';
import type { ProvedLesson } from '../lesson/prove.ts';
import type { Words } from '../words/words.ts';

function promise(claim: LessonClaim, proved: ProvedLesson, words: Words): string {
  const { promises } = words.handout;
  switch (claim.claim) {
    case 'cases': {
      const shown = proved.differentCases;
      if (claim.is === 'all') return promises.all(shown);
      const { step, families } = proved.lesson;
      return promises.selection(shown, families.flatMap((family) => step.cases(family) ?? []).length);
    }
    case 'turns':
      return promises.most(claim.most);
    case 'rotations':
      return promises.noRotation;
    case 'own':
      return proved.lesson.step.lesson.promiseSaid(claim.promise, words);
  }
}

/** Undefined if it promises nothing. Each was proved with the lesson. */
export function promisesOf(proved: ProvedLesson, words: Words): string | undefined {
  const said = proved.lesson.claims.map((claim) => promise(claim, proved, words));
  return said.length > 0 ? said.join(', ') : undefined;
}
