/** Sharing out the minutes of a lesson. */

/** Whole minutes in proportion to the weights, at least one each, that sum to the whole: largest remainders are rounded up. */
export function shareOut(minutes: number, weights: readonly number[]): number[] {
  const sum = weights.reduce((a, b) => a + b, 0);
  const spare = Math.max(0, minutes - weights.length);
  const exact = weights.map((weight) => 1 + (spare * weight) / sum);
  const whole = exact.map(Math.floor);
  const left = minutes - whole.reduce((a, b) => a + b, 0);
  const byRemainder = exact.map((n, i) => ({ i, rest: n - whole[i]! })).sort((a, b) => b.rest - a.rest || a.i - b.i);
  for (const { i } of byRemainder.slice(0, Math.max(0, left))) whole[i]!++;
  return whole;
}

/** Hands that turn for longer without rest begin to hurt. Common practice, no source; minutes. */
const LONGEST_DRILL = 10;
const SHORT_BREAK = 2;
/** Nobody sits longer than an hour; and how long the break is then. Common practice, no source. */
export const HOUR = 60;
export const BREAK = 5;

/** A drill with short breaks, so that no stretch of it is longer than hands bear: whole minutes that sum to all. */
export function drillWithBreaks(minutes: number): { does: 'drill' | 'break'; minutes: number }[] {
  const parts = Math.max(1, Math.ceil((minutes + SHORT_BREAK) / (LONGEST_DRILL + SHORT_BREAK)));
  const turning = minutes - (parts - 1) * SHORT_BREAK;
  return shareOut(turning, new Array<number>(parts).fill(1)).flatMap((part, i) => [
    ...(i === 0 ? [] : [{ does: 'break' as const, minutes: SHORT_BREAK }]),
    { does: 'drill' as const, minutes: part },
  ]);
}
