/** The coach's running order: what it shows is proved again and found, and the minutes are those of the evening. */
import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { auditBuild } from '../../src/audit/audit-build.ts';
import { readPdf } from '../../src/audit/pdf-text.ts';
import { stuckSlots } from '../../src/cube/address.ts';
import { SLOTS } from '../../src/cube/goal.ts';
import { chooseExamples } from '../../src/cube/teach/examples.ts';
import { writePdf } from '../../src/layout/pdf.ts';
import { loadLesson } from '../../src/lesson/load.ts';
import { claimsFile } from '../../src/sheets/claims.ts';
import { printLesson } from '../../src/sheets/printed.ts';

const LESSONS = join(dirname(fileURLToPath(import.meta.url)), '../../lessons');
const NAMES = ['edge-away', 'corner-away', 'one-at-home', 'both-away'] as const;
const provedOf = (name: string, variation = {}) =>
  loadLesson(`${name}.yaml`, readFileSync(join(LESSONS, `${name}.yaml`)), variation).proved!;

describe.each(NAMES)('the running order of %s', (name) => {
  it.each([
    ['a4', 'colour', {}],
    ['letter', 'mono', { hand: 'left', cross: 'orange' }],
    ['a5', 'colour', {}],
  ] as const)('on %s in %s: proved again and found on its page', async (paper, ink, variation) => {
    const { sheets, problems } = printLesson(provedOf(name, variation), { paper, ink });
    expect(problems).toEqual([]);
    const plan = sheets.find(({ suffix }) => suffix === '-plan')!;
    const pdf = await writePdf(plan.pages);
    const file = JSON.parse(JSON.stringify(claimsFile([plan], 'a', 'a.yaml')));
    const audit = await auditBuild(file, new Map([['a-plan.pdf', pdf]]));
    expect(audit).toEqual({ claims: plan.claims.length, faults: [] });
    const { pages } = await readPdf(pdf);
    const said = pages.map((p) => p.text).join('\n');
    const minutes = [...said.matchAll(/(\d+) min\b/g)].reduce((sum, [, count]) => sum + Number(count), 0);
    expect(minutes).toBe(60);
  });

  it('shows every rule, own slot, foreign slot and hand that there is, with no more set-ups than needed', () => {
    const { table } = provedOf(name).rules!;
    const { examples, atLeast } = chooseExamples(table);
    expect(new Set(examples.map((e) => e.rule)).size).toBe(table.rules.length);
    expect(new Set(examples.map((e) => e.sighting.seen))).toEqual(new Set(SLOTS));
    const stuck = examples.flatMap(({ sighting }) => stuckSlots(sighting.address, sighting.seen));
    expect(new Set(stuck)).toEqual(new Set(SLOTS));
    const lifted = new Set(examples.flatMap((e) => e.done?.takeOut.map((t) => t.letter) ?? []));
    expect(lifted).toContain('R');
    expect(lifted).toContain('L');
    expect(examples.length).toBeGreaterThanOrEqual(atLeast);
    expect(examples.length - atLeast).toBeLessThanOrEqual(1);
    for (const { rule, contrast, alike } of examples) {
      expect(contrast?.rule).not.toBe(rule);
      expect(alike?.rule).not.toBe(rule);
    }
  });
});
