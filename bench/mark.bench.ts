/**
 * A class of 1,000 answers of 100 students, four in ten of them wrong. Acceptance: marked with near misses in at most 1 s;
 * with slips, report and tables as PDF in at most 2 s.
 */
import { readFileSync } from 'node:fs';
import { bench, describe } from 'vitest';
import { classFiles } from '../src/cli/class-files.ts';
import { USUAL_SCHEME } from '../src/cube/colours.ts';
import { loadLesson } from '../src/lesson/load.ts';
import { readClaimsText } from '../src/marking/claims-file.ts';
import { isUnreadable } from '../src/marking/fields.ts';
import { proveClaims } from '../src/marking/gather-items.ts';
import { marker } from '../src/marking/mark.ts';
import { readSubmissions } from '../src/marking/read-submissions.ts';
import type { MarkedRow } from '../src/marking/submission.ts';
import { wordsIn } from '../src/steps/languages.ts';

const LESSON = new URL('../lessons/edge-away.yaml', import.meta.url);
const { claims } = loadLesson('edge-away.yaml', readFileSync(LESSON));
const CLAIMS = JSON.stringify({ lesson: 'The edge waits in a foreign slot', claims });

/** Of ten answers six are right; one has a turn left out, one a turn the wrong way, one is in the mirror, one is misspelt. */
const answerOf = (key: string, i: number): string => {
  const turns = key.split(' ');
  switch (i % 10) {
    case 0:
      return turns.toSpliced(i % turns.length, 1).join(' ');
    case 3:
      return turns.with(i % turns.length, `${turns[i % turns.length]![0]}2`).join(' ');
    case 6:
      return key.replaceAll(/[RL]/g, (face) => (face === 'R' ? 'L' : 'R'));
    case 9:
      return key.replaceAll("'", 'i');
    default:
      return key;
  }
};
const CSV = new TextEncoder().encode(
  [
    'student,item,answer',
    ...Array.from({ length: 1000 }, (_, i) => {
      const claim = claims[(i * 7) % claims.length]!;
      return `K${Math.floor(i / 10)},${claim.id},${answerOf(claim.solution, i)}`;
    }),
  ].join('\n'),
);

function marked(): { rows: MarkedRow[]; items: ReturnType<typeof proveClaims>['items'] } {
  const text = readClaimsText('a.claims.json', CLAIMS);
  const read = readSubmissions('a.csv', CSV);
  if ('unreadable' in text || isUnreadable(read)) throw new Error('the bench cannot read its own class');
  const { items } = proveClaims([text]);
  const rows = read.rows.map(marker(items, { smallLetters: 'wide', words: wordsIn('en') }));
  if (rows.length !== 1000) throw new Error(`${rows.length} rows`);
  return { rows, items };
}

describe('marking 1,000 answers', () => {
  bench('claims proved again, verdicts, near misses', () => {
    marked();
  });
  bench('with slips, report and tables', async () => {
    const { rows, items } = marked();
    const options = {
      command: 'mark',
      json: false,
      claims: [],
      submissions: [],
      roster: undefined,
      type: false,
    } as const;
    const print = { paper: 'a4', ink: 'colour', smallLetters: 'wide', scheme: USUAL_SCHEME, out: 'out' } as const;
    await classFiles('a', 'A lesson', items, { rows, others: [] }, { ...options, ...print });
  });
});
