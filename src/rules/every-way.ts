/** Advice that leaves ways open which do not work, completed: the fewest words more with which every way works. */
import type { Advice, RuleWorld, Sighting, Tried } from './world.ts';

/** What else is asked of what comes of the advice at a sighting, besides that every way works. */
export type Suits = (sighting: Sighting, tried: Tried) => boolean;
const isFollowed: Suits = (_, { followed }) => followed !== undefined;

/**
 * The first of these with which every way works in all the sightings; undefined if there is none. Where one of them failed
 * the next is likely to fail too, and is asked there first.
 */
function firstWithEveryWay(
  world: RuleWorld,
  sightings: readonly Sighting[],
  advices: readonly Advice[],
  suits: Suits = isFollowed,
): Advice | undefined {
  let hardest = 0;
  const worksAt = (advice: Advice, sighting: Sighting): boolean => {
    const tried = world.tries(sighting, advice);
    const { allowed, work } = tried.ways;
    return work > 0 && work === allowed && suits(sighting, tried);
  };
  return advices.find((advice) => {
    if (!worksAt(advice, sightings[hardest]!)) return false;
    const failing = sightings.findIndex((sighting) => !worksAt(advice, sighting));
    if (failing >= 0) hardest = failing;
    return failing < 0;
  });
}

export interface Completing {
  /** So many turns more may be allowed than the advice does; none if left out. */
  readonly turns?: number;
  readonly suits?: Suits;
}

/** With the fewest words more, and of as many the fewest turns; itself if every way works already. */
export const withEveryWay = (
  world: RuleWorld,
  sightings: readonly Sighting[],
  advice: Advice,
  { turns = 0, suits }: Completing = {},
): Advice | undefined =>
  firstWithEveryWay(
    world,
    sightings,
    world
      .completions(advice)
      .flatMap((one) => Array.from({ length: turns + 1 }, (_, i) => ({ ...one, most: one.most + i }))),
    suits,
  );

/** With more turns allowed, the fewest that do, up to so many more. */
export const withMoreTurns = (
  world: RuleWorld,
  sightings: readonly Sighting[],
  advice: Advice,
  turns: number,
): Advice | undefined =>
  firstWithEveryWay(
    world,
    sightings,
    Array.from({ length: turns }, (_, i) => ({ ...advice, most: advice.most + i + 1 })),
  );
