/** The coach's running order: read back by the second checker; its minutes counted on the page. */
import { describe, expect, it } from 'vitest';
import { auditBuild } from '../../src/audit/audit-build.ts';
import { writePdf } from '../../src/layout/pdf.ts';
import { loadLesson } from '../../src/lesson/load.ts';
import { drillWithBreaks, shareOut } from '../../src/lesson/plan-minutes.ts';
import type { ProvedLesson } from '../../src/lesson/prove.ts';
import { claimsFile } from '../../src/sheets/claims.ts';
import { type PrintedSheet, printLesson } from '../../src/sheets/printed.ts';
import { overlaps, strays } from '../layout/sample.ts';
import { bytesOf, SMALL_LESSON } from '../lesson/small-lesson.ts';
import { randomFrom } from '../random.ts';
import { provedSample, sampleText } from '../samples.ts';
import { textOf } from './printed-text.ts';

const PLANNED = ['edge-away', 'corner-away', 'one-at-home', 'both-away'] as const;
type Paper = 'a4' | 'letter' | 'a5';

const planned = (minutes: number): ProvedLesson => {
  const text = SMALL_LESSON.replace('family:', `plan: { minutes: ${minutes} }\nfamily:`);
  const { proved, problems } = loadLesson('a.yaml', bytesOf(text));
  expect(problems).toEqual([]);
  return proved!;
};

function planOf(proved: ProvedLesson, paper: Paper = 'a4', ink: 'colour' | 'mono' = 'colour') {
  const { sheets, problems } = printLesson(proved, { paper, ink, only: ['-plan'] });
  expect(problems).toEqual([]);
  return sheets[0]!;
}

async function audit(sheet: PrintedSheet) {
  const file = claimsFile([sheet], 'a', 'a.yaml');
  expect(file.claims.map(({ id }) => id)).toEqual(sheet.claims.map(({ id }) => id));
  const pdfs = new Map([[`a${sheet.suffix}.pdf`, await writePdf(sheet.pages)]]);
  const found = await auditBuild(JSON.parse(JSON.stringify(file)), pdfs);
  expect(found.faults).toEqual([]);
  expect(found.claims).toBe(sheet.claims.filter(({ kind }) => kind === 'solution').length);
  return file.claims;
}

/** The minutes of the steps, and the times at which they begin. */
async function timesOf(sheet: PrintedSheet): Promise<{ minutes: number[]; starts: number[] }> {
  const steps = [...(await textOf(sheet)).matchAll(/\b(\d+):(\d\d) (?:[^:]*? )?(\d+) min\b/g)];
  return {
    minutes: steps.map(([, , , minutes]) => Number(minutes)),
    starts: steps.map(([, hours, past]) => 60 * Number(hours) + Number(past)),
  };
}

describe.each(PLANNED)('the running order of %s', (name) => {
  it.each([
    ['a4', 'colour', {}],
    ['letter', 'mono', { hand: 'left', cross: 'orange' }],
    ['a5', 'colour', { cross: 'green' }],
  ] as const)('on %s in %s %o: every claim proved again, and found on its page', async (paper, ink, variation) => {
    const sheet = planOf(provedSample(name, variation), paper, ink);
    const claims = await audit(sheet);
    expect(claims.filter(({ kind }) => kind === 'rule').length).toBeGreaterThan(1);
    expect(claims.every(({ id }) => id.startsWith('plan:'))).toBe(true);
    for (const frame of sheet.pages.frames) {
      expect(overlaps(frame)).toEqual([]);
      expect(strays(frame, paper)).toEqual([]);
    }
  });

  it('fills the minutes of the plan, one step after the other', async () => {
    const { minutes, starts } = await timesOf(planOf(provedSample(name)));
    const total = Number(/minutes: (\d+)/.exec(sampleText(name))![1]);
    let at = 0;
    for (const [i, length] of minutes.entries()) {
      expect(starts[i]).toBe(at);
      at += length;
    }
    expect(at).toBe(total);
  });
});

describe('a running order', () => {
  it('says what to show, what to ask, and what slips', async () => {
    const said = await textOf(planOf(provedSample('edge-away')));
    expect(said).toContain('Running order for the coach, 60 minutes.');
    expect(said).toContain('Right answer: unlike. After the turns: split.');
    expect(said).toMatch(
      /Slip to expect: It looks the same, but the edge’s front or back colour is like the corner’s top colour: that is rule 3\./,
    );
    expect(said).toContain('Rule 2; from there it is rule 1.');
    expect(said).toContain('These 12 set-ups have every rule');
    expect(said).toContain('1 all 96 0 of 192');
    expect(said).toContain('There is a rule for every sighting.');
  });

  it('is made of the parts of a lesson without rules', async () => {
    const sheet = planOf(planned(20));
    expect((await audit(sheet)).map(({ id }) => id)).toEqual(['plan:1.1']);
    expect(await textOf(sheet)).toContain('which face would you turn first?');
  });

  it('has a break where the drill is long, and none where it is short', async () => {
    expect(await textOf(planOf(planned(120)))).toContain('Break Put the cubes down.');
    expect((await timesOf(planOf(planned(120)))).minutes.reduce((a, b) => a + b, 0)).toBe(120);
    expect(await textOf(planOf(planned(20)))).not.toContain('Break');
  });

  it('has no hour without a break, and drills every rule by its weight', () => {
    for (const name of PLANNED) {
      for (const minutes of [45, 90, 180]) {
        const text = sampleText(name).replace(/minutes: \d+/, `minutes: ${minutes}`);
        const { proved } = loadLesson(name, bytesOf(text));
        const { steps } = proved!.plan!;
        const pauses = [0, ...steps.filter(({ does }) => does === 'break').map(({ at }) => at), minutes];
        for (const [i, at] of pauses.slice(1).entries())
          expect(at - pauses[i]!, `${name} ${minutes}`).toBeLessThanOrEqual(65);
        const drill = steps.find((step) => step.does === 'drill')!;
        const rules = proved!.rules!.rules.filter(({ proved: { sightings } }) => sightings.length > 0);
        const all = rules.reduce((sum, { proved: { sightings } }) => sum + sightings.length, 0);
        for (const rule of rules) {
          const items = drill.items.filter((item) => item.rule === rule);
          const due = (12 * rule.proved.sightings.length) / all;
          expect(items.length, `${name} rule ${rule.said.number}`).toBeGreaterThanOrEqual(Math.min(1, Math.floor(due)));
          expect(items.length).toBeGreaterThan(0);
          expect(items.some(({ isException }) => !isException)).toBe(true);
        }
      }
    }
  });

  it('is not printed for a lesson without a plan', () => {
    const { proved } = loadLesson('a.yaml', bytesOf(SMALL_LESSON));
    expect(printLesson(proved!, { paper: 'a4', ink: 'colour' }).sheets.map(({ suffix }) => suffix)).toEqual(['']);
  });
});

describe('minutes', () => {
  it('are whole, at least one each, sum to the whole, and are in proportion within one: 200 from seed 77', () => {
    for (let i = 0; i < 200; i++) {
      const random = randomFrom(77 + i);
      const weights = Array.from({ length: 1 + random.below(12) }, () => 1 + random.below(5));
      const total = weights.length + random.below(200);
      const shares = shareOut(total, weights);
      const sum = weights.reduce((a, b) => a + b, 0);
      expect(
        shares.reduce((a, b) => a + b, 0),
        `seed ${77 + i}`,
      ).toBe(total);
      shares.forEach((share, k) => {
        expect(Number.isInteger(share) && share >= 1, `seed ${77 + i}`).toBe(true);
        const exact = 1 + ((total - weights.length) * weights[k]!) / sum;
        expect(Math.abs(share - exact), `seed ${77 + i}`).toBeLessThan(1);
      });
    }
  });

  // Common practice, no source.
  it('of a drill of more than ten are parted by breaks, the stretches alike', () => {
    expect(drillWithBreaks(10)).toEqual([{ does: 'drill', minutes: 10 }]);
    for (let minutes = 11; minutes <= 120; minutes++) {
      const parts = drillWithBreaks(minutes);
      expect(parts.reduce((sum, part) => sum + part.minutes, 0)).toBe(minutes);
      expect(parts.map(({ does }) => does)).toEqual(parts.map((_, i) => (i % 2 === 0 ? 'drill' : 'break')));
      const drills = parts.filter(({ does }) => does === 'drill').map((part) => part.minutes);
      expect(drills.length).toBeGreaterThan(1);
      expect(Math.max(...drills)).toBeLessThanOrEqual(10);
      expect(Math.max(...drills) - Math.min(...drills)).toBeLessThan(2);
    }
  });
});
