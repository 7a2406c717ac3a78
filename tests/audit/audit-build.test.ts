import { describe, expect, test } from 'vitest';
import { auditBuild } from '../../src/audit/audit-build.ts';
import type { SolutionClaim } from '../../src/audit/claims-file.ts';
import { RIGHT, STUCK } from './claims.ts';
import { type Mark, smallPdf } from './small-pdf.ts';

function panel(x: number, y: number, setup: string, solution: readonly string[]): Mark[] {
  return [
    { x, y, label: 'Set up' },
    { x, y: y + 12, turns: setup },
    { x, y: y + 28, label: 'Solve' },
    ...solution.flatMap((turns, i): Mark[] => [
      { x: x + 65 * i, y: y + 40, turns },
      { x: x + 65 * i, y: y + 54, label: 'insert' },
    ]),
    { x: x + 180, y: y + 40, label: '6' },
  ];
}

const RIGHT_PANEL = panel(50, 50, "R U' R'", ["R U R'"]);
const STUCK_PANEL = panel(300, 50, "F' U F R' U2 R", ["R' U2 R", "F' U' F"]);

function fileOf(...claims: readonly unknown[]): unknown {
  return { lesson: 'Tuesday', file: 'tuesday.yaml', sheets: ['tuesday.pdf'], claims };
}

async function faultsOf(pages: readonly (readonly Mark[])[], ...claims: readonly unknown[]): Promise<string[]> {
  const audit = await auditBuild(fileOf(...claims), new Map([['tuesday.pdf', await smallPdf(pages)]]));
  return audit.faults.map(({ id, fault }) => `${id}: ${fault}`);
}

test('a right sheet has no faults', async () => {
  const sheets = new Map([['tuesday.pdf', await smallPdf([[...RIGHT_PANEL, ...STUCK_PANEL]])]]);
  expect(await auditBuild(fileOf(RIGHT, STUCK), sheets)).toEqual({ claims: 2, faults: [] });
});

describe('texts on paper', () => {
  const missing = (part: string, text: string, page = 1): string =>
    `${part} '${text}' does not stand as a whole run of turns on page ${page} of tuesday.pdf`;

  test('missing', async () => {
    expect(await faultsOf([STUCK_PANEL], RIGHT, STUCK)).toEqual([
      `tuesday-1: ${missing('set-up', "R U' R'")}`,
      `tuesday-1: ${missing('solution', "R U R'")}`,
    ]);
  });

  test('on another page than the claim says', async () => {
    const pages = [RIGHT_PANEL, STUCK_PANEL];
    expect(await faultsOf(pages, RIGHT, { ...STUCK, page: 2 })).toEqual([]);
    expect(await faultsOf(pages, RIGHT, STUCK)).toEqual([
      `tuesday-2: ${missing('set-up', "F' U F R' U2 R")}`,
      `tuesday-2: ${missing('solution', "R' U2 R F' U' F")}`,
    ]);
    expect(await faultsOf(pages, { ...RIGHT, page: 3 })).toEqual(['tuesday-1: page 3: tuesday.pdf has 2']);
  });

  test.each([
    ['a turn more at the end', ["R U R' U"]],
    ['a turn more in front', ["U R U R'"]],
    ['another phase behind', ["R U R'", "F' U' F"]],
    ['a turn less', ['R U']],
    ['a prime less', ['R U R']],
    ['brackets with repeats', ["(R U R')2"]],
  ])('only as part of something else: %s', async (_, solution) => {
    expect(await faultsOf([panel(50, 50, "R U' R'", solution)], RIGHT)).toEqual([
      `tuesday-1: ${missing('solution', "R U R'")}`,
    ]);
  });

  test('a longer run that wraps just after the text', async () => {
    const wrapped: Mark[] = [
      ...panel(50, 50, "R U' R'", []),
      { x: 50, y: 90, turns: "R U R'" },
      { x: 50, y: 106, turns: 'U2' },
    ];
    expect(await faultsOf([wrapped], RIGHT)).toEqual([`tuesday-1: ${missing('solution', "R U R'")}`]);
  });

  test('the right text wrapped', async () => {
    const wrapped: Mark[] = [
      ...panel(50, 50, "F' U F R' U2 R", []),
      { x: 50, y: 90, turns: "R' U2 R F'" },
      { x: 50, y: 106, turns: "U' F" },
    ];
    expect(await faultsOf([wrapped], STUCK)).toEqual([]);
  });

  test('one printing does not serve two claims', async () => {
    const second = { ...RIGHT, id: 'tuesday-3' };
    expect(await faultsOf([[...RIGHT_PANEL, ...panel(50, 150, "R U' R'", ["R U R'"])]], RIGHT, second)).toEqual([]);
    expect(await faultsOf([RIGHT_PANEL], RIGHT, second)).toEqual([
      "tuesday-3: set-up 'R U' R'' stands 1 and not 2 times as a whole run of turns on page 1 of tuesday.pdf",
      "tuesday-3: solution 'R U R'' stands 1 and not 2 times as a whole run of turns on page 1 of tuesday.pdf",
    ]);
  });

  test('but one set-up may serve two solutions', async () => {
    const other: SolutionClaim = {
      ...RIGHT,
      id: 'tuesday-3',
      solution: "y F U F'",
      phases: undefined,
    };
    const marks: Mark[] = [...RIGHT_PANEL, { x: 50, y: 130, label: 'or' }, { x: 50, y: 142, turns: "y F U F'" }];
    expect(await faultsOf([marks], RIGHT, other)).toEqual([]);
  });

  test('no turns need no printing', async () => {
    const solved = { address: 'DFR:D FR:F', case: 'DFR:D FR:F', family: 'home-home', shortest: 0, length: 0 };
    const claim = { ...RIGHT, ...solved, setup: '', solution: '', phases: [] };
    expect(await faultsOf([[{ x: 50, y: 50, label: 'Solved' }]], claim)).toEqual([]);
  });
});

describe('claims', () => {
  test('a contradicted field becomes a fault of its claim', async () => {
    expect(await faultsOf([RIGHT_PANEL], { ...RIGHT, length: 4, shortest: undefined })).toEqual([
      "tuesday-1: length: the claim says '4', it is '3'",
    ]);
  });

  test('malformed claims, claims without an id and twice the same id are named', async () => {
    const { cross: _, ...withoutCross } = RIGHT;
    const faults = await faultsOf([RIGHT_PANEL], withoutCross, { kind: 'solution' }, RIGHT, { id: 'r', kind: 'rule' });
    expect(faults.filter((fault) => !fault.startsWith('claims[1]: '))).toEqual([
      expect.stringMatching(/^tuesday-1: cross: /),
      'tuesday-1: two claims bear this id',
    ]);
    expect(faults).toContainEqual(expect.stringMatching(/^claims\[1\]: setup: /));
  });

  test.each([null, [], 'text', { claims: {} }])('%j is no claims file', async (json) => {
    const { claims, faults } = await auditBuild(json, new Map());
    expect(claims).toBe(0);
    expect(faults.length).toBeGreaterThan(0);
    expect(faults.every(({ id }) => id === '')).toBe(true);
  });

  test('a sheet that is missing, and one that is no PDF', async () => {
    expect((await auditBuild(fileOf(RIGHT), new Map())).faults).toEqual([
      { id: 'tuesday-1', fault: 'sheet tuesday.pdf is missing' },
    ]);
    const broken = await auditBuild(fileOf(RIGHT), new Map([['tuesday.pdf', new Uint8Array([1, 2, 3])]]));
    expect(broken.faults).toEqual([
      { id: 'tuesday-1', fault: expect.stringMatching(/^sheet tuesday\.pdf cannot be read: /) },
    ]);
  });
});
