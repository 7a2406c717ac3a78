/** Lesson -> ProvedLesson: every set-up and every solution is done on the cube, every rule held against every sighting. */
import { createHash } from 'node:crypto';
import { USUAL_STEP } from '../steps/steps.ts';
import type { FactClaim, RuleClaim, SolutionClaim } from './claim.ts';
import { completed } from './complete.ts';
import type { Case, Lesson, LessonClaim } from './lesson.ts';
import { brokenClaims, casesTwice, emptyParts, misnamed } from './lesson-claims.ts';
import { type Problem, severityOf } from './problem.ts';
import { wrongFamily } from './proof-problems.ts';
import { proveCase } from './prove-case.ts';
import { proveFacts } from './prove-facts.ts';
import { type ProvedPlan, planProblems, provePlan } from './prove-plan.ts';
import { type ProvedRules, proveRules, ruleField } from './prove-rules.ts';
import type { ProvedCase, ProvedPart } from './proved.ts';

/** Only the prover makes one, so that nothing unproved can be handed to a sheet. */
export class ProvedLesson {
  /** Makes the type one of a kind: an object that merely looks like it does not pass for it. */
  readonly #proved = true;
  readonly lesson: Lesson;
  readonly parts: readonly ProvedPart[];
  /** Undefined if the lesson has no rules. */
  readonly rules: ProvedRules | undefined;
  /** Of the facts that its sentences say. */
  readonly factClaims: readonly FactClaim[];
  #plan: ProvedPlan | undefined;
  /** Names what was proved: two handouts with one edition say the same. */
  readonly edition: string;

  private constructor(
    lesson: Lesson,
    parts: readonly ProvedPart[],
    rules: ProvedRules | undefined,
    factClaims: readonly FactClaim[],
  ) {
    this.lesson = lesson;
    this.parts = parts;
    this.rules = rules;
    this.factClaims = factClaims;
    this.edition = editionOf(lesson, parts);
  }

  static isProved(value: object): value is ProvedLesson {
    return #proved in value && value.#proved;
  }

  /** Worked out when it is first asked for; undefined if the lesson asks for none. */
  get plan(): ProvedPlan | undefined {
    const { plan } = this.lesson;
    this.#plan ??= plan && provePlan(this.lesson, this.parts, this.rules, plan.minutes);
    return this.#plan;
  }

  get cases(): ProvedCase[] {
    return this.parts.flatMap((p) => p.cases);
  }

  /** How many different cases are shown: one seen from four sides counts once. */
  get differentCases(): number {
    return new Set(this.cases.map(({ subject }) => subject.caseAddress)).size;
  }

  /** Of its solutions; those of its rules stand with them. */
  get claims(): SolutionClaim[] {
    return claimsOf(this.parts, this.rules);
  }

  /**
   * `proved` is there when nothing is wrong, nor was while the lesson was read. The claims are those of all set-ups that
   * give a case, failing ones among them.
   */
  static prove({ lesson: read, problems: whileReading }: { lesson: Lesson; problems: readonly Problem[] }): Outcome {
    const parts = read.parts.map((part) => ({ part, cases: part.cases.map((c) => completed(c, read)) }));
    const wrong = wrongFamily(
      read,
      parts.flatMap(({ cases }) => cases),
    );
    // What follows from the wrong family is not told: the set-ups are held to the one meant, and nothing else is.
    const lesson = wrong ? { ...read, families: wrong.meant, rules: [], facts: [], claims: notOfFamily(read) } : read;
    const problems: Problem[] = [...whileReading, ...(wrong ? [wrong.problem] : [])];
    // A lesson that could not be read whole would seem to break promises that it keeps.
    const isWhole = whileReading.every((p) => severityOf(p) !== 'error');
    const proved = parts.map(({ part, cases }) => ({
      part,
      cases: cases.map((c) => proveCase(c, lesson, problems)).filter((c) => c !== undefined),
    }));
    const rules = proveRules(lesson, isWhole);
    const facts = proveFacts(lesson, isWhole && !wrong);
    const claims = claimsOf(proved, rules.proved);
    const ruleClaims = (rules.proved?.rules ?? []).map(({ claim }) => claim);
    const cases = proved.flatMap((p) => p.cases);
    problems.push(
      ...casesTwice(proved, lesson),
      ...misnamed(cases, lesson),
      ...emptyParts(lesson),
      ...rules.problems,
      ...facts.problems,
      ...planProblems(lesson),
    );
    if (isWhole) problems.push(...brokenClaims(lesson, cases));
    const found = { claims, ruleClaims, factClaims: facts.claims, problems };
    if (problems.some(isError)) return { ...found, proved: undefined };
    return { ...found, proved: new ProvedLesson(lesson, proved, rules.proved, facts.claims) };
  }
}

/** What proving gives: a proved lesson, or claims and problems alone. */
export interface Outcome {
  readonly proved: ProvedLesson | undefined;
  /** Of solutions. */
  readonly claims: readonly SolutionClaim[];
  readonly ruleClaims: readonly RuleClaim[];
  readonly factClaims: readonly FactClaim[];
  readonly problems: readonly Problem[];
}

const notOfFamily = ({ claims }: Lesson): LessonClaim[] => claims.filter(({ claim }) => claim !== 'cases');

const isError = (p: Problem): boolean => severityOf(p) === 'error';

const claimsOf = (parts: readonly ProvedPart[], rules: ProvedRules | undefined): SolutionClaim[] =>
  parts.flatMap((p) =>
    p.cases.flatMap((c) => {
      const rule = ruleField(rules, c.subject);
      return c.solutions.map((s) => ({ ...s.claim, ...rule }));
    }),
  );

/** Keys of a lesson that say where things stand in its file. */
const PLACES: ReadonlySet<string> = new Set(['span', 'setupSpan', 'familySpan']);
/** And those that are proved and not printed: a sentence that says a fact is printed like any other. */
const UNPRINTED: ReadonlySet<string> = new Set(['facts', 'says']);

/** With what its step says of it in place of a whole. */
const printedOf = ({ number, name, hold, colours, where, setup, made, solutions, watch }: Case) => ({
  ...{ number, name, hold, colours, ...where, setup, made, solutions, watch },
});

/**
 * Of what is printed, not of how the file spells it: comments and spaces do not make another edition, nor does an address
 * in place of the set-up that is made for it.
 */
function editionOf(lesson: Lesson, proved: readonly ProvedPart[]): string {
  // Papers have codes of their own: another seed does not make another handout. The usual step goes without saying.
  const { source: _, practice: __, choose: ___, addShortest: ____, step, ...said } = lesson;
  const named = step === USUAL_STEP ? {} : { step: step.name };
  const claims = said.claims.map((claim) => (claim.claim === 'own' ? claim.promise : claim));
  const parts = proved.map(({ part, cases }) => ({ ...part, cases: cases.map((c) => printedOf(c.case)) }));
  const digest = createHash('sha256')
    .update(
      JSON.stringify({ ...named, ...said, claims, parts }, (key, value) =>
        PLACES.has(key) || UNPRINTED.has(key) ? undefined : value,
      ),
    )
    .digest('hex');
  return `${digest.slice(0, 4)}-${digest.slice(4, 8)}`;
}
