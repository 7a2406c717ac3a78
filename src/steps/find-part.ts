/** What the commands `find` and `cases` ask of a step. */
import type { Cube } from '../cube/cube.ts';
import type { Goal } from '../cube/goal.ts';
import type { Answer, FindOptions } from '../cube/search/answer.ts';
import type { Turn } from '../cube/turns.ts';

/** Values of a step's own options, as typed; those left out are undefined. */
export type OwnOptions = { readonly [option: string]: string | boolean | undefined };

/** Why options name no case, for who typed them. */
export interface Misused {
  readonly usage: string;
}

/** A cube to be solved: a case, or one whose base is not whole yet. */
export interface Sought {
  readonly cube: Cube;
  readonly goal: Goal;
  /** As it is headed: `UFR:R UB:U, own slot FR, no other slot kept`. */
  readonly said: string;
  /** As documents have it: `address`, `keep`. */
  readonly fields: Readonly<Record<string, unknown>>;
  /** What of the base is not whole before the solution, in words. */
  readonly broken: readonly string[];
}

/** A case of the catalogue. */
export interface CatalogueRow {
  readonly address: string;
  /** What else tells it from others: `family`, `keep`. */
  readonly fields: Readonly<Record<string, unknown>>;
  /** The same as cells of a table under `columns`. */
  readonly cells: readonly string[];
  readonly shortest: number;
  /** How many solutions have the shortest length, and how many are longer, by as much as was asked for. */
  readonly solutions: number;
  readonly longer: number;
}

type OwnKinds = Readonly<Record<string, 'string' | 'boolean'>>;

/** What a step answers to `find` and `cases`. */
export interface FindPart {
  /** The option that names a case by its address, and an example of one. */
  readonly address: readonly [option: string, example: string];
  /** That option and others of the step's own, by command: what each is followed by. */
  readonly options: { readonly find: OwnKinds; readonly cases: OwnKinds };
  /** The case at an address, or after turns on a solved cube. */
  readonly sought: (start: string | readonly Turn[], own: OwnOptions) => Sought | Misused;
  readonly search: (sought: Sought, options: FindOptions) => Answer;
  readonly columns: readonly string[];
  /** Every length is searched in full, so each `shortest` is proved. */
  readonly catalogue: (families: readonly string[], longer: number, own: OwnOptions) => readonly CatalogueRow[];
}
