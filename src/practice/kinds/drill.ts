/** Drill: cases to be set up and solved against the clock, again and again. */
import { doing, seeing } from '../difficulty.ts';
import type { Kind } from './kind.ts';
import { solving } from './solve.ts';

export const drill: Kind = {
  kind: 'drill',
  candidates: ({ seen, leading }) =>
    seen.map((one) => ({
      key: one.key,
      difficulty: doing(one.recommended, leading) + seeing(one, leading),
      seen: one,
      open: [],
    })),
  ...solving('drill'),
};
