/** Triggers: short runs of turns that hands know as one. Common practice of the trade, no source; a club has its own. */
import { readTurns } from './notation.ts';
import { everySide } from './sides.ts';
import { inverse, isTurnOfTop, mirror, type Turn, writeTurns } from './turns.ts';

const written = (text: string): readonly Turn[] => {
  const reading = readTurns(text);
  if (!reading.ok) throw new RangeError(`${text}: ${reading.message}`);
  return reading.turns;
};

/** Runs of turns by their names. */
export type TriggerList = Readonly<Record<string, readonly Turn[]>>;

/** By name, as the right hand does them at the front right; the left hand's own where it has a name of its own. */
export const TRIGGERS: TriggerList = {
  'right four': written("R U R' U'"),
  'left four': written("L' U' L U"),
  sledge: written("R' F R F'"),
};

/** A trigger found in some turns, and how it is done there. */
export interface NamedTrigger {
  readonly name: string;
  /** Done backwards. */
  readonly undone: boolean;
  readonly times: 1 | 2;
  /** Other turns stand before or after it, not counting turns of U before. */
  readonly inside: boolean;
}

/** `sledge`, `right four undone`, `right four twice`, `right four inside` */
export const triggerSaid = ({ name, undone, times, inside }: NamedTrigger): string =>
  [name, ...(undone ? ['undone'] : []), ...(times === 2 ? ['twice'] : []), ...(inside ? ['inside'] : [])].join(' ');

/** Turns of one face and the top are an ordinary lift or insert. */
const isOfOneFace = (turns: readonly Turn[]): boolean =>
  new Set(turns.filter((turn) => !isTurnOfTop(turn)).map(({ letter, kind }) => letter + kind)).size < 2;

/** A trigger in one of its forms, as it reads from each side and in a mirror. */
interface Form extends Omit<NamedTrigger, 'inside'> {
  readonly ofOneFace: boolean;
  readonly texts: ReadonlySet<string>;
}

/** From four sides; in the mirror too, unless that is another trigger of the list. */
function sidesFor(name: string, turns: readonly Turn[], triggers: TriggerList): readonly Turn[][] {
  const sides = everySide(turns);
  const mirrored = writeTurns(mirror(triggers[name]!));
  const hasOther = Object.entries(triggers).some(
    ([other, some]) =>
      other !== name &&
      everySide(some)
        .slice(0, 4)
        .some((side) => writeTurns(side) === mirrored),
  );
  return hasOther ? sides.slice(0, 4) : sides;
}

const formsOfList = new WeakMap<TriggerList, readonly Form[]>();

function formsOf(triggers: TriggerList): readonly Form[] {
  const known = formsOfList.get(triggers);
  if (known) return known;
  // Forwards first: a trigger that undoes another may have a name of its own.
  const forms = [false, true].flatMap((undone) =>
    Object.entries(triggers).flatMap(([name, trigger]) =>
      ([1, 2] as const).map((times): Form => {
        const one = undone ? inverse(trigger) : trigger;
        const all = times === 2 ? [...one, ...one] : one;
        const texts = new Set(sidesFor(name, all, triggers).map((side) => writeTurns(side)));
        return { name, undone, times, ofOneFace: isOfOneFace(one), texts };
      }),
    ),
  );
  formsOfList.set(triggers, forms);
  return forms;
}

/** A way to do a trigger once: from any side, in a mirror, backwards. */
export interface TriggerForm extends Pick<NamedTrigger, 'name' | 'undone'> {
  readonly turns: readonly Turn[];
}

/** Forwards first. */
export const triggerForms = (triggers: TriggerList): TriggerForm[] =>
  formsOf(triggers)
    .filter(({ times }) => times === 1)
    .flatMap(({ name, undone, texts }) => [...texts].map((text) => ({ name, undone, turns: written(text) })));

/** The turns, and what is left when turns of U at the beginning are taken off one by one. */
function withoutTop(turns: readonly Turn[]): Turn[][] {
  const firstOther = turns.findIndex((turn) => !isTurnOfTop(turn));
  return Array.from({ length: Math.max(firstOther, 0) + 1 }, (_, taken) => turns.slice(taken));
}

/**
 * The trigger that the turns of a phase are, turns of U before it aside, or that stands within them: from any side and
 * in a mirror, forwards or backwards, once or twice; `undefined` if it is none of the list. A trigger of one face is told
 * from an ordinary lift or insert only where it is done twice or stands between turns of another face.
 */
export function triggerIn(turns: readonly Turn[], triggers: TriggerList = TRIGGERS): NamedTrigger | undefined {
  const named = ({ name, undone, times }: Form, inside: boolean): NamedTrigger => ({ name, undone, times, inside });
  const forms = formsOf(triggers);
  const said = withoutTop(turns).map((some) => writeTurns(some));
  const exact = forms.find((f) => (f.times === 2 || !f.ofOneFace) && said.some((text) => f.texts.has(text)));
  if (exact) return named(exact, false);
  const text = ` ${said[0]} `;
  const isAmongOthers = !isOfOneFace(turns);
  const within = [...forms]
    .sort((a, b) => b.times - a.times)
    .find(
      (f) => (f.times === 2 || !f.ofOneFace || isAmongOthers) && [...f.texts].some((one) => text.includes(` ${one} `)),
    );
  return within && named(within, true);
}
