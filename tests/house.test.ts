/**
 * The house of DEVELOPERS.md, held against the imports: data flows one way, a room imports only from floors below it.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';

const SRC = join(dirname(fileURLToPath(import.meta.url)), '../src');

const FLOOR: Readonly<Record<string, number>> = {
  cube: 1,
  words: 1,
  text: 1,
  rules: 2,
  svg: 2,
  steps: 3,
  layout: 3,
  lesson: 4,
  practice: 5,
  marking: 5,
  sheets: 6,
  audit: 6,
  cli: 7,
};

/** Packages that one file alone may import: the rest of the house does not know them. */
const KEPT_TO: Readonly<Record<string, string>> = {
  pdfkit: 'layout/pdf.ts',
  '@svgdotjs/svg.js': 'svg/write-svg.ts',
  svgdom: 'svg/write-svg.ts',
  'pdfjs-dist': 'audit/pdf-text.ts',
};

interface Import {
  readonly from: string;
  /** A file of src, or a package. */
  readonly to: string;
  readonly own: boolean;
}

const files = readdirSync(SRC, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.ts') && !name.endsWith('.d.ts'))
  .map((name) => name.replaceAll('\\', '/'));

function importsOf(file: string): Import[] {
  const text = readFileSync(join(SRC, file), 'utf8');
  const named = [
    ...text.matchAll(/^(?:import|export)\b[^'"]*?\bfrom '([^']+)'/gms),
    ...text.matchAll(/\bimport\('([^']+)'\)/g),
  ];
  const bare = [...text.matchAll(/^import '([^']+)'/gm)];
  return [...named, ...bare].map(([, target]) => {
    const own = target!.startsWith('.') && target!.endsWith('.ts');
    const to = own ? relative(SRC, resolve(SRC, dirname(file), target!)).replaceAll('\\', '/') : target!;
    return { from: file, to, own };
  });
}

const parsed = new Map<string, ts.SourceFile>();
function parse(file: string): ts.SourceFile {
  const known =
    parsed.get(file) ?? ts.createSourceFile(file, readFileSync(join(SRC, file), 'utf8'), ts.ScriptTarget.Latest, true);
  parsed.set(file, known);
  return known;
}

/** What a file exports, as `cube/cube.ts solvedCube`, and whether a comment says what it is. */
function exportsOf(file: string): (readonly [name: string, isDocumented: boolean])[] {
  const source = parse(file);
  return source.statements.flatMap((statement, i) => {
    const isExported =
      ts.canHaveModifiers(statement) &&
      ts.getModifiers(statement)?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword);
    if (!isExported) return [];
    const names = ts.isVariableStatement(statement)
      ? statement.declarationList.declarations.map(({ name }) => name.getText())
      : 'name' in statement
        ? [(statement.name as ts.Identifier).text]
        : [];
    const comments = ts.getLeadingCommentRanges(source.text, statement.getFullStart()) ?? [];
    const docs = comments.filter(({ pos }) => source.text.startsWith('/**', pos));
    // The first comment of a file says what the file is.
    return names.map((name) => [`${file} ${name}`, docs.length > (i === 0 ? 1 : 0)] as const);
  });
}

/** What a file takes from files of other rooms, named likewise. */
const takenBy = (file: string): string[] =>
  parse(file).statements.flatMap((statement) => {
    if (!ts.isImportDeclaration(statement) || !ts.isStringLiteral(statement.moduleSpecifier)) return [];
    const to = relative(SRC, resolve(SRC, dirname(file), statement.moduleSpecifier.text)).replaceAll('\\', '/');
    const bindings = statement.importClause?.namedBindings;
    if (!bindings || !ts.isNamedImports(bindings) || roomOf(to) === roomOf(file)) return [];
    return bindings.elements.map(({ name, propertyName }) => `${to} ${(propertyName ?? name).text}`);
  });

/** Every name that code writes, and with a quote before it every text of one word. */
function namesIn(file: string): string[] {
  const names: string[] = [];
  const walk = (node: ts.Node): void => {
    if (ts.isIdentifier(node)) names.push(node.text);
    else if (ts.isStringLiteral(node) && /^\w+$/.test(node.text)) names.push(`'${node.text}`);
    ts.forEachChild(node, walk);
  };
  walk(parse(file));
  return names;
}

const imports = files.flatMap(importsOf);
const roomOf = (file: string): string => file.split('/')[0]!;

describe('the house', () => {
  it('has files in every room that is built, and no file outside a room', () => {
    expect(files.length).toBeGreaterThan(40);
    expect(files.filter((file) => FLOOR[roomOf(file)] === undefined)).toEqual([]);
  });

  it('finds the imports there are', () => {
    expect(imports).toContainEqual({ from: 'steps/pair/cases.ts', to: 'steps/pair/address.ts', own: true });
    expect(imports).toContainEqual({ from: 'layout/pdf.ts', to: 'pdfkit', own: false });
    expect(imports).toContainEqual({ from: 'cli/run.ts', to: 'cli/build.ts', own: true });
  });

  it('imports only from floors below', () => {
    const upwards = imports.filter(({ from, to, own }) => {
      const [a, b] = [roomOf(from), roomOf(to)];
      return own && a !== b && !(FLOOR[b]! < FLOOR[a]!);
    });
    expect(upwards).toEqual([]);
  });

  // What only a step may know stands in its folder: the rooms that read, prove, print, mark and take commands ask it.
  const ABOVE = ['lesson', 'sheets', 'practice', 'marking', 'cli'];

  it('knows steps by their registry alone above them', () => {
    const inside = imports.filter(({ from, to }) => ABOVE.includes(roomOf(from)) && /^steps\/[^/]+\//.test(to));
    expect(inside).toEqual([]);
    // Rules are proved in a world that a step gives them; the drawings draw what it says.
    const below = imports.filter(({ from, to }) => ['rules', 'svg'].includes(roomOf(from)) && roomOf(to) === 'steps');
    expect(below).toEqual([]);
  });

  it('calls nothing by what pairs are made of above them', () => {
    // Words in names: slot, stuck, corner, edge. Whole names: those of the pair's state, and of a goal with slots.
    const words = /^(slots?|stuck|corners?|edges?)$/i;
    const names = new Set(['asPair', 'PairGoal', 'isJoined', 'isSplit']);
    const texts = new Set(['joined', 'split', 'slot', 'corner', 'edge']);
    const found = files
      .filter((file) => ABOVE.includes(roomOf(file)))
      .flatMap((file) => namesIn(file).map((name) => ({ file, name })))
      .filter(({ name }) => {
        if (name.startsWith("'")) return texts.has(name.slice(1));
        return names.has(name) || name.split(/(?<=[a-z0-9])(?=[A-Z])|_/).some((word) => words.test(word));
      });
    expect(found).toEqual([]);
    // It sees what it looks for where that stands.
    expect(namesIn('steps/pair/marking.ts')).toEqual(expect.arrayContaining(['isSlot', 'asPair']));
    expect(namesIn('steps/pair/rules.ts')).toContain("'joined");
  });

  it('keeps the second checker apart from the engine', () => {
    const rooms = imports.filter(({ from, own }) => own && roomOf(from) === 'audit').map(({ to }) => roomOf(to));
    expect(rooms.filter((room) => room !== 'audit')).toEqual([]);
  });

  it('keeps each of these packages to one file', () => {
    const strays = imports.filter(({ from, to, own }) => {
      const name = Object.keys(KEPT_TO).find((p) => to === p || to.startsWith(`${p}/`));
      return !own && name !== undefined && KEPT_TO[name] !== from;
    });
    expect(strays).toEqual([]);
  });

  it('has no circle of imports', () => {
    const next = new Map(files.map((file) => [file, imports.filter((i) => i.own && i.from === file).map((i) => i.to)]));
    const done = new Set<string>();
    const circles: string[][] = [];
    const walk = (file: string, path: readonly string[]): void => {
      if (path.includes(file)) circles.push([...path.slice(path.indexOf(file)), file]);
      else if (!done.has(file)) for (const to of next.get(file) ?? []) walk(to, [...path, file]);
      done.add(file);
    };
    for (const file of files) walk(file, []);
    expect(circles).toEqual([]);
  });

  it('touches the process, the console and the files only in the commands', () => {
    const outside = files.filter((file) => roomOf(file) !== 'cli');
    const touching = outside.filter((file) => /\bprocess\.|\bconsole\./.test(readFileSync(join(SRC, file), 'utf8')));
    expect(touching).toEqual([]);
    // Fonts are read where text is measured; nothing else outside the commands knows of files.
    const withFiles = imports
      .filter(({ from, to }) => /^node:fs/.test(to) && roomOf(from) !== 'cli')
      .map((i) => i.from);
    expect(withFiles).toEqual(['layout/fonts.ts']);
  });

  it('says of nine in ten things that rooms take from each other what they are', () => {
    const documented = new Map(files.flatMap(exportsOf));
    const taken = new Set(files.flatMap(takenBy));
    const known = [...taken].filter((one) => documented.has(one));
    const silent = known.filter((one) => !documented.get(one));
    expect(known.length).toBeGreaterThan(300);
    expect(silent.length / known.length, silent.join('\n')).toBeLessThanOrEqual(0.1);
  });

  it('says at the head of every file what it is', () => {
    const silent = files.filter((file) => !/^(#!.*\n)?\/\*\*/.test(readFileSync(join(SRC, file), 'utf8')));
    expect(silent).toEqual([]);
  });

  it('uses no clock and no chance outside the commands', () => {
    const using = files
      .filter((file) => roomOf(file) !== 'cli')
      .filter((file) =>
        /Math\.random|Date\.now|new Date\(\)|performance\.now/.test(readFileSync(join(SRC, file), 'utf8')),
      );
    expect(using).toEqual([]);
  });
});
