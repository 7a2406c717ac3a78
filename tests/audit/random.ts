/** mulberry32: 32 bits of state, the same sequence for the same seed everywhere. */
export function seeded(seed: number): (below: number) => number {
  let state = seed >>> 0;
  return (below) => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return Math.floor((((t ^ (t >>> 14)) >>> 0) / 2 ** 32) * below);
  };
}

export function randomWord(pick: (below: number) => number, turns: readonly string[], length: number): string {
  return Array.from({ length }, () => `${turns[pick(turns.length)]}${['', '2', "'"][pick(3)]}`).join(' ');
}
