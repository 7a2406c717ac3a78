/** Why a solution works, where a step can tell: stretches between printed moments at which the base is whole. */
import type { NamedTrigger, TriggerList } from '../cube/triggers.ts';
import type { Turn } from '../cube/turns.ts';
import type { Words } from '../words/words.ts';
import type { Subject } from './subject.ts';

/** A stretch between two such moments. */
export interface Phase {
  /** As printed. */
  readonly turns: readonly Turn[];
  /** What it does, in words of the step; more than one where a phase's end and the next one's start were merged into one turn. */
  readonly does: readonly string[];
  /** How things stand before it and after it, if that has a name: `joined`. */
  readonly stood: string | undefined;
  readonly stands: string | undefined;
  /** What was on top, out of the way while another came up, and is on top again: `corner`. */
  readonly hides: string | undefined;
  /** After it. */
  readonly address: string;
  readonly trigger: NamedTrigger | undefined;
}

/** Two turns that became one: the last of a phase and the first of the next, of one face as it is written. */
export interface Merge {
  /** Which printed turn of the solution, from 1. */
  readonly turn: number;
  readonly of: Turn;
  readonly as: readonly [Turn, Turn];
  /** Of the two phases that share it. */
  readonly does: readonly [string, string];
  /** Between the two. */
  readonly address: string;
}

/** Their turns rejoin to the solution. */
export interface Phases {
  readonly phases: readonly Phase[];
  readonly merges: readonly Merge[];
}

/** What a step can tell of its solutions. */
export interface PhasesPart {
  /** Of turns that solve it. `triggers`: runs of turns that the club has names for. */
  readonly of: (subject: Subject, turns: readonly Turn[], triggers: TriggerList) => Phases;
  /** Under the turns of a phase: what it does, a few letters wide. */
  readonly said: (phase: Phase, words: Words) => string;
}
