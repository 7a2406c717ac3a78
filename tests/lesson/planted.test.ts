/** Faults planted by chance, seeded, in the sample lessons: each is told, with its code, where it stands. */
import { describe, expect, it } from 'vitest';
import { readTurns } from '../../src/cube/notation.ts';
import { writeTurns } from '../../src/cube/turns.ts';
import { loadLesson } from '../../src/lesson/load.ts';
import { placeProblem } from '../../src/lesson/source.ts';
import { randomFrom } from '../random.ts';
import { SAMPLES, sampleText } from '../samples.ts';
import { PLANTS, plant } from './plant.ts';
import { bytesOf } from './small-lesson.ts';

const SEED = 20_261_125;
const texts = SAMPLES.map(sampleText);

/** `of`: cases, without the rules, where a fault of a solution is looked for. */
const errorsOf = (text: string, of?: 'cases') => {
  const { source, problems, proved } = loadLesson('a.yaml', bytesOf(text), {}, of);
  return { proved, errors: problems.map((p) => placeProblem(p, source)).filter((p) => p.severity === 'error') };
};

describe('planted faults', () => {
  it(`of every kind are told with their code on their line (seed ${SEED})`, () => {
    const random = randomFrom(SEED);
    const kinds = new Set<string>();
    let count = 0;
    for (let round = 0; round < 4; round++) {
      for (const kind of Object.keys(PLANTS)) {
        const planted = plant(random.pick(texts), kind, random) ?? plant(sampleText('edge-away'), kind, random);
        expect(planted, kind).toBeDefined();
        const { proved, errors } = errorsOf(planted!.text);
        const told = errors.some((e) => e.line === planted!.line && planted!.codes.includes(e.code));
        const seen = errors.map((e) => `${e.line}:${e.column} ${e.code} ${e.message}`);
        expect({ told, kind, line: planted!.line, ...(!told && { seen }) }).toEqual({
          told: true,
          kind,
          line: planted!.line,
        });
        expect(proved).toBeUndefined();
        kinds.add(kind);
        count++;
      }
    }
    expect(kinds.size).toBeGreaterThanOrEqual(25);
    expect(count).toBeGreaterThanOrEqual(100);
  });

  it(`ten in one file are ten reports (seed ${SEED})`, () => {
    const random = randomFrom(SEED + 1);
    const kinds = Object.keys(PLANTS).filter(
      (kind) => !/a tab|twice|never closed|another family|fewer turns/.test(kind),
    );
    for (let round = 0; round < 20; round++) {
      let text = sampleText('edge-away');
      const expected: { line: number; codes: readonly string[]; kind: string }[] = [];
      while (expected.length < 10) {
        const planted = plant(text, random.pick(kinds), random);
        // One fault a case, so that none stands in another's way; the lines do not move.
        if (!planted || expected.some((e) => Math.abs(e.line - planted.line) < 7)) continue;
        if (planted.text.split('\n').length !== text.split('\n').length) continue;
        text = planted.text;
        expected.push({ line: planted.line, codes: planted.codes, kind: planted.kind });
      }
      const { errors } = errorsOf(text);
      const missed = expected.filter(
        ({ line, codes }) => !errors.some((e) => e.line === line && codes.includes(e.code)),
      );
      const seen = errors.map((e) => `${e.line} ${e.code}`);
      expect({ round, missed, ...(missed.length > 0 && { seen }) }).toEqual({ round, missed: [] });
    }
  });

  it(`slips of one turn are mended among the first three hints in nine of ten (seed ${SEED})`, () => {
    const random = randomFrom(SEED + 2);
    let slips = 0;
    let mended = 0;
    while (slips < 100) {
      const text = random.pick(texts);
      const lines = text.split('\n');
      const places = lines.flatMap((line, i) => (/^ +- (?:turns: )?(?=[URLFBDy]['2]? [URLFBD])/.test(line) ? [i] : []));
      const at = random.pick(places);
      const [, before, turns] = /^( +- (?:turns: )?)(.*)$/.exec(lines[at]!)!;
      const list = turns!.split(' ');
      const i = random.below(list.length);
      const slip = random.pick(['prime', 'dropped', 'added', 'swapped', 'letter'] as const);
      const letter = list[i]![0]!;
      if (slip === 'prime') list[i] = list[i]!.endsWith("'") ? letter : `${letter}'`;
      if (slip === 'dropped') list.splice(i, 1);
      if (slip === 'added') list.splice(i, 0, random.pick(['U', "U'", 'R', "F'", 'U2']));
      if (slip === 'swapped') list.splice(i, 2, ...list.slice(i, i + 2).reverse());
      if (slip === 'letter') list[i] = list[i]!.replace(letter, random.pick(['R', 'L', 'F', 'U']));
      lines[at] = before! + list.join(' ');
      const failing = errorsOf(lines.join('\n'), 'cases').errors.find(
        (e) => e.line === at + 1 && e.code === 'solution-fails',
      );
      // Some slips leave a solution that solves all the same.
      if (!failing) continue;
      slips++;
      const reading = readTurns(turns!);
      const right = reading.ok ? writeTurns(reading.turns) : '';
      if (failing.hint.includes(`${right} (`)) mended++;
    }
    expect(mended).toBeGreaterThanOrEqual(90);
  });
});
