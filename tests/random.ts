/** Random choices that come out the same for the same seed: a linear congruential generator (Numerical Recipes). */
export interface Random {
  /** 0 to n - 1. */
  readonly below: (n: number) => number;
  readonly pick: <T>(items: readonly T[]) => T;
  readonly chance: (share: number) => boolean;
}

export function randomFrom(seed: number): Random {
  let state = seed >>> 0;
  const next = (): number => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
  const below = (n: number): number => Math.floor(next() * n);
  return { below, pick: (items) => items[below(items.length)]!, chance: (share) => next() < share };
}
