/** Rules of thumb for pairs: how a lesson writes their advice, how claims and sheets say it. */
import { z } from 'zod';
import { FACES, type Face } from '../../cube/faces.ts';
import { triggerIn, triggerSaid } from '../../cube/triggers.ts';
import { writeTurns } from '../../cube/turns.ts';
import type { Advice } from '../../rules/world.ts';
import { about } from '../../text/about.ts';
import type { AdviceReading, RulePart, RuleWordsOfStep } from '../rule-part.ts';
import { readAddress, type Whereabouts, writeAddress } from './address.ts';
import { type Aim, BETWEENS, LIFTED_PIECES, type PairAdvice, RAISINGS, STANDINGS, WAYS } from './advice.ts';
import { FAMILIES } from './cases.ts';
import type { Lifted } from './english-rules.ts';
import { likelyFamily } from './family-words.ts';
import type { FeatureName } from './features.ts';
import { asPairAdvice, asSeenPair, pairRuleWorld, seenPair } from './rule-world.ts';
import { asPair, pairSubject } from './subject.ts';
import { pairWords } from './words.ts';

const LIFTING: readonly Face[] = ['R', 'L', 'F', 'B'];
// Patterns are for editors; reading tells more of what is wrong than that a text does not fit.
const LIFTING_PATTERN = '^\\s*(any( face)?|none|[RLFB]((\\s*,\\s*|\\s+or\\s+)[RLFB])*)\\s*$';
const AIM_PATTERN = `^\\s*(joined|split|${FAMILIES.join('|')}|[UDRLFB]{3}:[UDRLFB]\\s+[UDRLFB]{2}:[UDRLFB])\\s*$`;
const turns = () => z.string().min(1);

const fields = {
  lift: about(z.enum(LIFTED_PIECES), 'Which stuck piece is lifted. Without it: one that is away.', 'edge').optional(),
  with: z
    .string()
    .meta({
      description: "Which of the viewer's faces lifts: R or L, F or B, one of them alone, any, none.",
      examples: ['R or L'],
      pattern: LIFTING_PATTERN,
    })
    .optional(),
  how: about(
    z.enum(WAYS),
    'Where the other piece is meanwhile. hidden: the lifting face takes it out of the top; together: it is carried along ' +
      'on top; direct: the face does not touch it. Without it: any of these.',
    'hidden',
  ).optional(),
  up: about(
    z.enum(RAISINGS),
    'Of these faces the one whose first turn brings this colour of the lifted piece on top: the cross colour or another, or one like or unlike a colour that the other piece shows before anything is turned.',
    'unlike corner top',
  ).optional(),
  stands: about(
    z.enum(STANDINGS),
    'Where the other piece stands on top when the face first turns. The side is the other face of the slot. An edge is across from the face or the side when it is above the face opposite, a corner is across from the slot. cross along: the cross colour of the corner looks neither up, nor to the face, nor away from it.',
    'at the side',
  ).optional(),
  between: about(
    z.enum(BETWEENS),
    'How the top turns before the face goes back: what was lifted goes a quarter turn to the other face of its slot, a quarter turn away from it, a half turn; or so that nothing of the pair that is on top is in the face.',
    'clear',
  ).optional(),
  by: about(
    turns(),
    'These turns, or a trigger by its name, in place of one lift; from any side or mirrored.',
  ).optional(),
  aim: about(
    z.union([
      z.string().meta({ pattern: AIM_PATTERN }),
      z.strictObject({ insert: about(turns(), 'Turns, or a trigger by its name, that then insert it.') }),
    ]),
    'What stands afterwards: joined, split, a family such as top-away, a case by its address, or an insert.',
    'split',
  ).optional(),
};

/** As they fit the schema. */
type Written = z.infer<z.ZodObject<typeof fields>>;

function liftIn(text = 'any', { tell }: AdviceReading): readonly Face[] | undefined {
  const said = text.trim();
  if (/^any( face)?$/.test(said)) return LIFTING;
  if (said === 'none') return [];
  const faces = said.split(/,|\sor\s/).map((face) => face.trim());
  if (faces.every((face) => LIFTING.includes(face as Face))) return LIFTING.filter((face) => faces.includes(face));
  const message = `"${text}" names no faces that lift`;
  tell({ code: 'value-unknown', message, hint: 'write R or L, F or B, one of them alone, any, or none' }, 'with');
  return undefined;
}

function aimIn(written: NonNullable<Written['aim']>, { turns, tell }: AdviceReading): Aim | undefined {
  if (typeof written !== 'string') {
    const read = turns(written.insert, 'aim', 'insert');
    return read && { kind: 'insert', turns: read };
  }
  const said = written.trim();
  if (said === 'joined' || said === 'split') return { kind: said };
  const family = FAMILIES.find((f) => f === said);
  if (family) return { kind: 'family', family };
  const address = readAddress(said);
  if (address) return { kind: 'case', case: address };
  const message = `"${written}" is nothing that a rule can aim at`;
  const hint =
    likelyFamily(said, ['joined', 'split']) ?? 'joined, split, a family such as top-top, or a case by its address';
  tell({ code: 'value-unknown', message, hint }, 'aim');
  return undefined;
}

/** A key that another one leaves nothing to say, and that other: what is not heeded would be printed unproved. */
function unheededKey(written: Written, faces: readonly Face[]): readonly [string, string] | undefined {
  const first = (...keys: readonly (keyof Written)[]) => keys.find((key) => written[key] !== undefined);
  // The turns move the other piece, the top and the faces as they move them.
  const besideBy = written.by === undefined ? undefined : first('how', 'up', 'between');
  if (besideBy) return [besideBy, 'by'];
  if (faces.length > 0) return undefined;
  if (written.by !== undefined) return ['with', 'by'];
  const key = first('how', 'lift', 'up', 'stands', 'between');
  return key && [key, 'with: none'];
}

function read(written: Written, most: number, reading: AdviceReading): PairAdvice | undefined {
  const { tell } = reading;
  if (written.aim === undefined) {
    tell({
      code: 'key-missing',
      message: 'a rule needs the key "aim", or "turn" in its place',
      hint: 'add aim: split',
    });
    return undefined;
  }
  const lift = liftIn(written.with, reading);
  const aim = aimIn(written.aim, reading);
  const by = written.by === undefined ? undefined : reading.turns(written.by, 'by');
  if (!lift || !aim || (written.by !== undefined && !by)) return undefined;
  if (by?.some((t) => t.kind !== 'face' || t.letter === 'D')) {
    const message = 'a rule is done by turns of U, R, L, F and B';
    tell({ code: 'rule-unclear', message, hint: 'write it with these' }, 'by');
    return undefined;
  }
  const unheeded = unheededKey(written, lift);
  if (unheeded) {
    const [key, beside] = unheeded;
    const message = `"${key}" beside "${beside}" says nothing that could be proved`;
    tell({ code: 'rule-unclear', message, hint: 'take one of the two out' }, key);
    return undefined;
  }
  const { lift: piece, how: way, up, stands, between } = written;
  return { aim, lift, piece, way, up, stands, between, by, most };
}

function aimSaid(aim: Aim): string {
  switch (aim.kind) {
    case 'joined':
    case 'split':
      return aim.kind;
    case 'family':
      return aim.family;
    case 'case':
      return writeAddress(aim.case);
    case 'insert':
      return `insert ${writeTurns(aim.turns)}`;
  }
}

function claim(advice: Advice | undefined): ReturnType<RulePart['claim']> {
  if (!advice) return { aim: 'turn the cube', lift: [] };
  const { aim, lift, piece, way, up, stands, between, by } = asPairAdvice(advice);
  return {
    aim: aimSaid(aim),
    lift,
    ...(piece && { piece }),
    ...(way && { how: way }),
    ...(up && { up }),
    ...(stands && { stands }),
    ...(between && { between }),
    ...(by && { by: writeTurns(by) }),
  };
}

function written(advice: Advice): string[] {
  const { aim, lift, piece, way, up, stands, between, by } = asPairAdvice(advice);
  const faces = lift.length === 4 ? 'any' : lift.length === 0 ? 'none' : lift.join(' or ');
  return [
    ...(piece ? [`lift: ${piece}`] : []),
    `with: ${faces}`,
    ...(up ? [`up: ${up}`] : []),
    ...(way ? [`how: ${way}`] : []),
    ...(stands ? [`stands: ${stands}`] : []),
    ...(between ? [`between: ${between}`] : []),
    ...(by ? [`by: ${writeTurns(by)}`] : []),
    aim.kind === 'insert' ? `aim: { insert: ${writeTurns(aim.turns)} }` : `aim: ${aimSaid(aim)}`,
  ];
}

const PIECES = ['corner', 'edge'] as const;
type Piece = (typeof PIECES)[number];
const piecesIn = (family: string) => family.split('-') as [corner: Whereabouts, edge: Whereabouts];

/** Where the piece is in some of the families. */
const whereabouts = (families: readonly string[], piece: Piece): Set<Whereabouts> =>
  new Set(families.map((family) => piecesIn(family)[PIECES.indexOf(piece)]!));

function wordsFor(words: Parameters<RulePart['words']>[0], families: readonly string[]): RuleWordsOfStep {
  const { rules } = pairWords(words);
  const away = PIECES.filter((piece) => [...whereabouts(families, piece)].join() === 'away');
  /** Which piece comes up: the one that the rule names, or the one that is away in all families. */
  const lifted = ({ piece }: PairAdvice): Lifted => piece ?? (away.length === 1 ? away[0]! : 'piece');
  const { points, sighting, seen } = rules;
  return {
    points,
    sighting,
    seen: ({ address, side }) => seen(address, side),
    // Pieces that are in slots in all families have words of their own for some features.
    feature: (name) => {
      const named = PIECES.filter((piece) => name.includes(piece));
      const areInSlots = named.every((piece) => !whereabouts(families, piece).has('top'));
      return (areInSlots ? rules.inSlots[name as FeatureName] : undefined) ?? rules.features[name as FeatureName];
    },
    advice: (advice, triggers) => {
      const { by, lift, up } = asPairAdvice(advice);
      if (by) {
        const trigger = triggerIn(by, triggers);
        return { text: rules.by(trigger && !trigger.inside ? triggerSaid(trigger) : undefined), turns: by };
      }
      const faces = FACES.filter((face) => lift.includes(face));
      return { text: lift.length === 0 ? rules.noLift : rules.lift(lifted(asPairAdvice(advice)), faces, up) };
    },
    how: (advice) => {
      const { by, way, stands, between } = asPairAdvice(advice);
      const piece = lifted(asPairAdvice(advice));
      const sentences = [
        rules.first(way, stands, piece, by !== undefined),
        between && rules.between(between, piece),
        by && rules.byMeans(stands === undefined),
      ].filter((text) => text !== undefined);
      return sentences.length > 0 ? sentences.join(' ') : undefined;
    },
    after: (advice) => {
      const { aim } = asPairAdvice(advice);
      return aim.kind === 'family' ? rules.after.family(...piecesIn(aim.family)) : rules.after[aim.kind];
    },
  };
}

export const pairRules: RulePart = {
  ...pairRuleWorld,
  sightingOf: (subject) => seenPair(asPair(subject)),
  subjectOf: (sighting) => {
    const { at, side } = asSeenPair(sighting);
    return pairSubject(at, { slot: side, open: [] });
  },
  seenSaid: ({ side }) => `pair of slot ${side}`,
  fields,
  about: { turn: 'In place of lifting.', most: 'The pair is solved within so many turns, first to last.' },
  seeExamples: {
    rule: { 'cross colour': 'sideways', 'edge front and corner top': 'unlike' },
    only: { edge: 'bad' },
  },
  read,
  claim,
  written,
  sharper: 'with which face to lift',
  tried: 'neither a lift nor a trigger makes the pair joined, split or easier',
  words: wordsFor,
};
