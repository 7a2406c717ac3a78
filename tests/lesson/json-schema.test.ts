/** The schema for editors, held against a general-purpose JSON Schema validator. */
import { readdirSync, readFileSync } from 'node:fs';
import { Ajv } from 'ajv';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { handsPage } from '../../src/lesson/hands-page.ts';
import { courseJsonSchema, jsonSchema } from '../../src/lesson/json-schema.ts';
import { PROBLEM_KINDS } from '../../src/lesson/problem.ts';
import { problemsPage } from '../../src/lesson/problems-page.ts';
import { FAULTS, type Fault } from './faults.ts';
import { SMALL_LESSON } from './small-lesson.ts';

const at = (path: string): string => readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8');
const samples = readdirSync(new URL('../../lessons', import.meta.url)).filter((name) => name.endsWith('.yaml'));
const validate = new Ajv({ strict: true, allErrors: true }).compile(JSON.parse(jsonSchema()));

/** What an editor can see without doing a turn. */
const SEEN = ['key-unknown', 'value-unknown', 'value-kind'];

describe('the schema for editors', () => {
  it('is the one that is shipped', () => {
    expect(at('lessons/lesson.schema.json')).toBe(jsonSchema());
  });

  it.each(samples)('finds no fault in %s, whose first line names it', (name) => {
    const text = at(`lessons/${name}`);
    expect(text.split('\n')[0]).toBe('# yaml-language-server: $schema=lesson.schema.json');
    validate(parse(text));
    expect(validate.errors ?? []).toEqual([]);
  });

  it('finds no fault in the small lesson', () => {
    expect(validate(parse(SMALL_LESSON))).toBe(true);
  });

  // What counts as a heading, and which triggers a club has, is more than a schema knows.
  const isBeyond = ({ name, says }: Fault): boolean =>
    name === 'headings and no cases' || name.includes('a trigger') || says.source.startsWith('neither turns nor');
  it.each(FAULTS.filter((f) => SEEN.includes(f.code) && !isBeyond(f)))('sees $code: $name', ({ text }) => {
    expect(validate(parse(text))).toBe(false);
  });

  it('describes every key', () => {
    const bare: string[] = [];
    const walk = (node: unknown, path: string): void => {
      if (typeof node !== 'object' || node === null) return;
      const { properties } = node as { properties?: Record<string, { description?: string }> };
      for (const [key, value] of Object.entries(properties ?? {})) {
        if (!value.description) bare.push(`${path}.${key}`);
      }
      for (const [key, value] of Object.entries(node)) walk(value, `${path}.${key}`);
    };
    walk(JSON.parse(jsonSchema()), '');
    expect(bare).toEqual([]);
  });
});

describe('the page of problems', () => {
  it('is the one that is shipped, with every problem', () => {
    expect(at('docs/problems.md')).toBe(problemsPage());
    expect(at('lessons/course.schema.json')).toBe(courseJsonSchema());
    expect(at('docs/hands.md')).toBe(handsPage());
    for (const code of Object.keys(PROBLEM_KINDS)) expect(problemsPage()).toContain(`## ${code}\n`);
  });
});
