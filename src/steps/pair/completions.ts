/** Words that leave fewer ways: where the other piece stands, how the top turns between, which face. */
import { BETWEENS, type PairAdvice, RAISINGS, STANDINGS, WAYS } from './advice.ts';

type Words = Pick<PairAdvice, 'way' | 'stands' | 'between' | 'up'>;

/** What a key may say besides nothing; a key that says something already stays as it is. */
const choices = <T>(said: T | undefined, all: readonly T[]): readonly (T | undefined)[] =>
  said === undefined ? [undefined, ...all] : [said];

/** How many of the words are said. */
export const countOf = ({ way, stands, between, up }: Words): number =>
  [way, stands, between, up].filter((word) => word !== undefined).length;

/** Where the piece stands says more than how it moves, but for the one that tells only how it looks. */
const isTwice = ({ way, stands }: Words): boolean =>
  way !== undefined && stands !== undefined && stands !== 'cross along';

/** The advice, and then the same with words more, those with the fewest first. */
export function completions(advice: PairAdvice): readonly PairAdvice[] {
  const { by, lift, piece } = advice;
  // Nothing is lifted: there is nothing to say of it.
  if (!by && lift.length === 0) return [advice];
  const isAlone = piece === 'both';
  const lifts = by === undefined;
  const colours = RAISINGS.filter((up) => (piece === 'corner' ? /cross|edge/ : /corner/).test(up));
  const ways = lifts && !isAlone ? choices(advice.way, WAYS) : [advice.way];
  const stands = isAlone ? [advice.stands] : choices(advice.stands, STANDINGS);
  const between = lifts ? choices(advice.between, BETWEENS) : [undefined];
  const up = lifts && !isAlone && piece !== undefined ? choices(advice.up, colours) : [advice.up];
  const all = up.flatMap((u) =>
    ways.flatMap((way) => stands.flatMap((s) => between.map((b): Words => ({ way, stands: s, between: b, up: u })))),
  );
  return all
    .filter((words) => advice.way !== undefined || !isTwice(words))
    .sort((a, b) => countOf(a) - countOf(b))
    .map((words) => ({ ...advice, ...words }));
}
