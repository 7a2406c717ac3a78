/** A case as it lies before a viewer: what is drawn, solved, asked about and claimed, whichever step it belongs to. */

import type { FaceColours } from '../cube/colours.ts';
import type { Cube } from '../cube/cube.ts';
import type { Goal } from '../cube/goal.ts';
import type { Drawn } from '../svg/emphasis.ts';
import type { Words } from '../words/words.ts';

declare const ofItsStep: unique symbol;

/**
 * What a step has to know besides turns to say what a case is: for a pair its slot and the slots that are open. Made and
 * read by the step alone; the rooms above hand it on.
 */
export interface Where {
  readonly [ofItsStep]?: never;
}

/** What is drawn, asked and claimed of a case, and what only its step may read. */
export interface Subject extends Drawn {
  /** The name of the step: `pairs`. */
  readonly step: string;
  readonly where: Where;
  /** Before the solution. */
  readonly cube: Cube;
  readonly goal: Goal;
  /** Exactly what lies there, as files write it, seen from one fixed side: `UFR:R UB:U`. */
  readonly address: string;
  /** The same for all that one case is, whatever the turn of the top. */
  readonly caseAddress: string;
  readonly family: string;
  /** From where the viewer sees it; two sides of one case are two exercises. A word of the step's own: `FL`. */
  readonly side: string;
  /** Nothing is left to do. */
  readonly isSolved: boolean;
  /** What a case is called that the coach gives no name: one short line, by what catches the eye; others may be called the same. */
  readonly named: (colours: FaceColours, words: Words) => string;
  /** Fields of a claim that this step has besides those of all: `pair`, `kept`. */
  readonly claim: () => Readonly<Record<string, unknown>>;
}

/** Two subjects that are one exercise to a student: one case from one side, whatever the turn of the top. */
export const isSameToStudents = (a: Subject, b: Subject): boolean =>
  a.caseAddress === b.caseAddress && a.side === b.side;

/** Tells subjects apart in tables: where, what, and with which base. */
export const subjectKey = ({ address, side, goal }: Subject): string => `${address} ${side} ${goal.base.join(' ')}`;
