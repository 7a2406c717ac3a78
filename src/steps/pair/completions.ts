/** Words that leave fewer ways: where the other piece stands, how the top turns between, which face. */
import { BETWEENS, type PairAdvice, RAISINGS, STANDINGS, WAYS } from './advice.ts';

type Words = Pick<PairAdvice, 'way' | 'stands' | 'between' | 'up'>;

/** What a key may say besides nothing; a key that says something already stays as it is. */
const choices = <T>(said: T | undefined, all: readonly T[]): readonly (T | undefined)[] =>
  said === undefined ? [undefined, ...all] : [said];

const countOf = (words: Words): number => Object.values(words).filter((word) => word !== undefined).length;

/** The advice, and then the same with words more, those with the fewest first. */
export function completions(advice: PairAdvice): readonly PairAdvice[] {
  const { by, lift, piece } = advice;
  // Nothing is lifted, or both are: there is no other piece to speak of.
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
  return all.sort((a, b) => countOf(a) - countOf(b)).map((words) => ({ ...advice, ...words }));
}
