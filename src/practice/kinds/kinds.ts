/** All kinds of exercise there are: a further one is a file like these, its name in EXERCISE_KINDS, and a line here. */
import type { ExerciseKind } from '../../lesson/practice.ts';
import { drill } from './drill.ts';
import { edge } from './edge.ts';
import type { Kind } from './kind.ts';
import { likeness } from './likeness.ts';
import { order } from './order.ts';
import { picture } from './picture.ts';
import { place } from './place.ts';
import { rule } from './rule.ts';
import { slip } from './slip.ts';
import { solve } from './solve.ts';

export const KINDS: Readonly<Record<ExerciseKind, Kind>> = {
  likeness,
  edge,
  rule,
  picture,
  place,
  slip,
  order,
  solve,
  drill,
};
