/**
 * Choices that come out the same for ever: the multiplicative congruential generator x -> 48271 x mod 2^31 - 1 of Park,
 * Miller and Stockmeyer (Technical correspondence, Communications of the ACM 36(7), 1993), which C++ calls minstd_rand.
 * Whole numbers only, none above 2^47, so that every machine agrees.
 */
export interface Random {
  /** 0 to n - 1, each as likely. */
  readonly below: (n: number) => number;
  readonly pick: <T>(items: readonly T[]) => T;
  /** A copy in another order (Fisher and Yates). */
  readonly shuffled: <T>(items: readonly T[]) => T[];
}

const MULTIPLIER = 48_271;
const MODULUS = 2 ** 31 - 1;

/** One step of the generator; 1 to 2^31 - 2. */
export const nextState = (state: number): number => (MULTIPLIER * state) % MODULUS;

/** FNV-1a with 32 bits (Fowler, Noll, Vo; IETF draft-eastlake-fnv), over UTF-16 units. */
export function hashOf(text: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193) >>> 0;
  return hash;
}

/** A generator for each purpose: what one draws does not move the others. */
export function randomFor(...purpose: readonly (string | number)[]): Random {
  let state = (hashOf(purpose.join('/')) % (MODULUS - 1)) + 1;
  const below = (n: number): number => {
    // Draws above the last whole multiple of n would favour small numbers.
    const most = MODULUS - 1 - ((MODULUS - 1) % n);
    do state = nextState(state);
    while (state - 1 >= most);
    return (state - 1) % n;
  };
  return {
    below,
    pick: (items) => items[below(items.length)]!,
    shuffled: (items) => {
      const all = [...items];
      for (let i = all.length - 1; i > 0; i--) {
        const j = below(i + 1);
        [all[i], all[j]] = [all[j]!, all[i]!];
      }
      return all;
    },
  };
}
