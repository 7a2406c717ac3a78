/** Rules of thumb, as far as a step has them: what the rooms above ask besides what rules are proved with. */
import type { z } from 'zod';
import type { TriggerList } from '../cube/triggers.ts';
import type { Turn } from '../cube/turns.ts';
import type { Advice, RuleWorld, Sighting } from '../rules/world.ts';
import type { FeatureWords } from '../words/said.ts';
import type { Words } from '../words/words.ts';
import type { OwnFields, Told } from './lesson-part.ts';
import type { Subject } from './subject.ts';

/** What reading advice needs of the lesson that it stands in. */
export interface AdviceReading {
  /** Turns as they are written, or those of a trigger that is named; undefined, and told, if they are neither. */
  readonly turns: (text: string, ...path: string[]) => readonly Turn[] | undefined;
  readonly tell: (told: Told, ...path: string[]) => void;
}

/** `{turns}` in the text stands for the turns. */
export interface AdviceSaid {
  readonly text: string;
  readonly turns?: readonly Turn[];
}

/** What sheets say of features and advice, in one language, to a class that is taught some families. */
export interface RuleWordsOfStep {
  readonly feature: (name: string) => FeatureWords;
  /** What to turn, in one sentence without its stop. */
  readonly advice: (advice: Advice, triggers: TriggerList) => AdviceSaid;
  /** How to turn it, as a sentence; undefined where any way will do. */
  readonly how: (advice: Advice) => string | undefined;
  /** What stands after it, in a word or two. */
  readonly after: (advice: Advice) => string;
  /** What a set of examples has every one of: `every foreign slot`. */
  readonly points: string;
  /** What a sighting is, before from where it is seen. */
  readonly sighting: string;
  /** One of them, for the coach: `UFR:R UB:U with its own slot seen at FL`. */
  readonly seen: (sighting: Sighting) => string;
}

export interface RulePart extends RuleWorld {
  /** A case as it is seen, solved ones too. */
  readonly sightingOf: (subject: Subject) => Sighting;
  /** All that is not asked about as solved as can be. */
  readonly subjectOf: (sighting: Sighting) => Subject;
  /** From where it is seen, for a coach: `pair of slot FL`. */
  readonly seenSaid: (sighting: Sighting) => string;

  /** Keys of a rule that say what to do; read by `read` once they fit. */
  readonly fields: z.ZodRawShape;
  /** What editors say of `turn`, in place of what it stands, and of `most`. */
  readonly about: Readonly<Record<'turn' | 'most', string>>;
  /** What may stand after `see`, in a rule and for the cases to be practised. */
  readonly seeExamples: Readonly<Record<'rule' | 'only', Readonly<Record<string, string>>>>;
  /** Undefined, and told, if it is no advice. */
  readonly read: (fields: OwnFields, most: number, reading: AdviceReading) => Advice | undefined;
  /** Fields of a rule's claim that say what to do: nothing of this step where the cube is turned. */
  readonly claim: (advice: Advice | undefined) => Readonly<Record<string, unknown>>;
  /** The keys and values of a lesson, a line each: `lift: edge`. */
  readonly written: (advice: Advice) => readonly string[];
  /** What a coach could say to give conditions a meaning that exclude nothing. */
  readonly sharper: string;
  /** What was tried where no advice is enough, after "for some case". */
  readonly tried: string;

  readonly words: (words: Words, families: readonly string[]) => RuleWordsOfStep;
}
