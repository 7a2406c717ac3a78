/** Read the picture: which of four set-ups gives it? The wrong ones are those that a hasty look takes for it. */

import { edgeOf } from '../../cube/spots.ts';
import { writeTurns } from '../../cube/turns.ts';
import { type Address, isSolvedAddress, writeAddress } from '../../steps/pair/address.ts';
import { caseOf, upToU } from '../../steps/pair/cases.ts';
import { mirroredAddress } from '../../steps/pair/mirrored.ts';
import { doSetUp } from '../../steps/pair/set-up.ts';
import { seeing } from '../difficulty.ts';
import type { ChoiceExercise, Exercise, Option } from '../exercise.ts';
import type { Random } from '../random.ts';
import { baseOf } from './base.ts';
import type { Kind } from './kind.ts';

const COMPARING = 40;
const WRONG = 3;

const caseText = (a: Address): string => writeAddress(caseOf(a));

/** The corner turned on its place. */
const twisted = ({ corner, edge }: Address, by: 1 | 2): Address => ({
  corner: corner - (corner % 3) + ((corner + by) % 3),
  edge,
});
const flipped = ({ corner, edge }: Address): Address => ({ corner, edge: edge ^ 1 });

/** A turn of U forgotten, the mirror, the neighbours: as plausible as they come first. */
function likely(address: Address, random: Random): Address[] {
  const missingU = random.shuffled(upToU(address).slice(1)).slice(0, 1);
  const near = [mirroredAddress(address), twisted(address, 1), twisted(address, 2), flipped(address)];
  return [...missingU, ...random.shuffled(near), flipped(mirroredAddress(address)), twisted(flipped(address), 1)];
}

/** Different as addresses from the right one, and as cases from each other. */
function wrongOnes(address: Address, random: Random): Address[] {
  const wrong: Address[] = [];
  for (const one of likely(address, random)) {
    const isRight = writeAddress(one) === writeAddress(address);
    const isThere = wrong.some((w) => caseText(w) === caseText(one));
    if (!isRight && !isThere && !isSolvedAddress(one) && !edgeOf(one.edge).startsWith('D')) wrong.push(one);
    if (wrong.length === WRONG) break;
  }
  return wrong;
}

const option = (turns: Extract<Option, { says: 'turns' }>['turns']): Option => ({ says: 'turns', turns });

function addressesOf({ options, slot }: ChoiceExercise): (Address | undefined)[] {
  return options.map((one) => {
    const done = one.says === 'turns' ? doSetUp(one.turns, slot, []) : undefined;
    return done && !('fault' in done) ? done.address : undefined;
  });
}

function unsound(exercise: Exercise): string | undefined {
  if (exercise.form !== 'choice') return 'it offers no choice';
  const addresses = addressesOf(exercise);
  const none = addresses.indexOf(undefined);
  if (none >= 0) {
    const bad = exercise.options[none]!;
    return `${bad.says === 'turns' ? writeTurns(bad.turns) : 'a choice'} is no set-up for this pair`;
  }
  const texts = addresses.map((a) => writeAddress(a!));
  const fitting = texts.flatMap((text, i) => (text === writeAddress(exercise.address) ? [i] : []));
  if (fitting.length !== 1) return `${fitting.length} set-ups give the picture`;
  if (exercise.right.join() !== fitting.join()) return 'another set-up gives the picture';
  const wrong = addresses.flatMap((a, i) => (i === fitting[0] ? [] : [caseText(a!)]));
  return new Set(wrong).size === wrong.length ? undefined : 'two wrong set-ups give one case';
}

export const picture: Kind = {
  kind: 'picture',
  candidates: ({ seen, leading }) =>
    seen.map((one) => ({ key: one.key, difficulty: COMPARING + seeing(one, leading), seen: one, open: [] })),
  make(one, material, random): ChoiceExercise | undefined {
    const base = baseOf('picture', one, material);
    const wrong = wrongOnes(one.seen.address, random);
    if (wrong.length < WRONG) return undefined;
    const setUps = wrong.map((address) => material.setUps.setUp(address, one.seen.slot, []));
    return { ...base, form: 'choice', options: [base.setup, ...setUps].map(option), right: [0] };
  },
  unsound,
};
