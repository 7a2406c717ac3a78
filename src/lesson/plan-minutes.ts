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

/** Hands that turn for so long without rest begin to hurt. Common practice, no source. */
const LONG_DRILL = 20;
const BREAK = 5;

/** A drill, parted by a break where it is long. */
export function drillWithBreak(minutes: number): { first: number; rest: number; second: number } {
  if (minutes < LONG_DRILL) return { first: minutes, rest: 0, second: 0 };
  const first = Math.ceil((minutes - BREAK) / 2);
  return { first, rest: BREAK, second: minutes - BREAK - first };
}
