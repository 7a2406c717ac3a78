/**
 * All kinds of exercise there are: a further one that all steps share is a file like these, its name in SHARED_KINDS, and a
 * line here; one of a step alone is a question of its practice part.
 */
import { type ExerciseKind, isShared, type SharedKind } from '../../lesson/practice.ts';
import type { Kind } from './kind.ts';
import { order } from './order.ts';
import { own } from './own.ts';
import { picture } from './picture.ts';
import { place } from './place.ts';
import { rule } from './rule.ts';
import { slip } from './slip.ts';
import { drill, solve } from './solve.ts';

const SHARED: Readonly<Record<SharedKind, Kind>> = { rule, picture, slip, order, place, solve, drill };

/** A name that is none gives a kind without candidates. */
export const kindNamed = (name: ExerciseKind): Kind => (isShared(name) ? SHARED[name] : own(name));
