/** The steps there are: a further one is a folder like these, and a line here. */
import { pairs } from './pair/step.ts';
import type { Step } from './step.ts';
import type { Subject } from './subject.ts';

/** The first is what a lesson means that names none. Tests register further ones. */
const STEPS: Step[] = [pairs];

/** Those there are, in the order in which they are taught. */
export const steps = (): readonly Step[] => STEPS;
/** What a lesson is about that names no step. */
export const USUAL_STEP: Step = pairs;

/** Undefined if there is none of that name. */
export const stepNamed = (name: string): Step | undefined => STEPS.find((step) => step.name === name);

/** The step that a subject came from. */
export function stepOf({ step: name }: Pick<Subject, 'step'>): Step {
  const step = stepNamed(name);
  if (!step) throw new RangeError(`no step is called ${name}`);
  return step;
}

/** For the tests of the seam: adds a step, and gives back what takes it out again. */
export function registerStep(step: Step): () => void {
  STEPS.push(step);
  return () => void STEPS.splice(STEPS.indexOf(step), 1);
}
