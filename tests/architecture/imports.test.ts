import fs from 'node:fs';
import { builtinModules } from 'node:module';
import path from 'node:path';
import { parseSync, Visitor } from 'rolldown/utils';
import { describe, expect, test } from 'vitest';

// Which way imports point (DEVELOPERS.md, "Which way imports point"). Types count too: an import of a type is still
// knowledge of the other side, and tsc alone lets app import from main.

const root = path.resolve(import.meta.dirname, '../..');

interface Source {
  readonly file: string;
  readonly imports: readonly { readonly from: string; readonly isType: boolean }[];
  readonly uses: ReadonlySet<string>;
}

const sources: readonly Source[] = ['app', 'main', 'shared'].flatMap((side) =>
  fs
    .readdirSync(path.join(root, side), { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.tsx?$/.test(name))
    .map((name) => readSource(path.posix.join(side, name.split(path.sep).join('/')))),
);

/** What a file imports (statically, dynamically, as a type) and which names it uses as objects: `Date` in `Date.now`. */
function readSource(file: string): Source {
  const { program, errors } = parseSync(file, fs.readFileSync(path.join(root, file), 'utf8'));
  if (errors.length > 0) throw new Error(`${file} cannot be parsed: ${errors[0]?.message}`);
  const imports: { from: string; isType: boolean }[] = [];
  const uses = new Set<string>();
  const add = (source: { value?: unknown } | null | undefined, isType: boolean) => {
    if (typeof source?.value !== 'string') return;
    imports.push({
      from: source.value.startsWith('.') ? path.posix.join(path.dirname(file), source.value) : source.value,
      isType,
    });
  };
  new Visitor({
    ImportDeclaration: (node) => add(node.source, node.importKind === 'type'),
    ExportNamedDeclaration: (node) => add(node.source, node.exportKind === 'type'),
    ExportAllDeclaration: (node) => add(node.source, node.exportKind === 'type'),
    ImportExpression: (node) => add(node.source as { value?: unknown }, false),
    TSImportType: (node) => add(node.source, true),
    MemberExpression: (node) => {
      if (node.object.type !== 'Identifier') return;
      const property = node.property.type === 'Identifier' && !node.computed ? `.${node.property.name}` : '';
      uses.add(node.object.name).add(`${node.object.name}${property}`);
    },
    NewExpression: (node) => {
      if (node.callee.type === 'Identifier' && node.arguments.length === 0) uses.add(`new ${node.callee.name}()`);
    },
  }).visit(program);
  return { file, imports, uses };
}

const isUnder = (file: string, folder: string) => file === folder || file.startsWith(`${folder}/`);
const isProject = (from: string) =>
  ['app', 'main', 'shared', 'tests', 'scripts', 'assets'].some((side) => isUnder(from, side));

/** Every import of files under `of` that `isWrong` names, as `file → import`. */
function wrongImports(of: string, isWrong: (from: string, isType: boolean, file: string) => boolean): string[] {
  return sources
    .filter(({ file }) => isUnder(file, of))
    .flatMap(({ file, imports }) =>
      imports.filter(({ from, isType }) => isWrong(from, isType, file)).map(({ from }) => `${file} → ${from}`),
    );
}

const sides = ['app', 'main', 'shared'];
const wrongAnywhere = (isWrong: Parameters<typeof wrongImports>[1]) =>
  sides.flatMap((side) => wrongImports(side, isWrong));
const outside = (allowed: readonly string[]) => (from: string) =>
  isProject(from) && !allowed.some((folder) => isUnder(from, folder));
const isNodeModule = (from: string) => from.startsWith('node:') || builtinModules.includes(from);
const packageOf = (from: string) =>
  from
    .split('/')
    .slice(0, from.startsWith('@') ? 2 : 1)
    .join('/');

test('there is something to check', () => {
  expect(sources.length).toBeGreaterThan(20);
  expect(sources.flatMap(({ imports }) => imports).length).toBeGreaterThan(50);
});

describe('which way imports point', () => {
  test.each([
    ['shared', ['shared'], 'shared is what both sides agree on; if it knew one of them, the other could not use it'],
    [
      'app',
      ['app', 'shared', 'assets'],
      'the page talks to the contract, never to a host: main would pull Node into it',
    ],
    ['main', ['main', 'shared'], 'main serves whatever window there is, and the command line has none'],
  ])('%s imports only from %j', (side, allowed, reason) => {
    expect(wrongImports(side, outside(allowed)), reason).toEqual([]);
  });

  test('the kernel runs on units, quantities, records and known facts; of the rest it may know types', () => {
    const isOutside = outside(
      ['kernel', 'knowledge', 'model', 'units.ts', 'quantity.ts', 'errors.ts', 'versions.ts'].map(
        (name) => `shared/${name}`,
      ),
    );
    const reason = 'mechanics must be checkable alone, against a textbook: no rules, no wording, no report';
    expect(
      wrongImports('shared/kernel', (from, isType) => isOutside(from) && !isType),
      reason,
    ).toEqual([]);
  });

  test('rules are data: an entry imports types only', () => {
    const reason = 'a rule that computes cannot be read, listed, compared and reproduced as a rule';
    expect(
      wrongImports('shared/rules/entries', (from, isType) => isProject(from) && !isType),
      reason,
    ).toEqual([]);
  });

  test('only the Electron host and its preload import electron', () => {
    const hosts = ['main/hosts/electron.ts', 'main/hosts/preload.ts'];
    const reason = 'all else must run where Electron’s binary is absent; even to look for it starts a download';
    expect(
      wrongAnywhere((from, _isType, file) => from === 'electron' && !hosts.includes(file)),
      reason,
    ).toEqual([]);
  });

  test('an import names its file, ending and all', () => {
    const reason = 'Node runs these files as they are and does not guess endings';
    expect(
      wrongAnywhere((from) => isProject(from) && !fs.existsSync(path.join(root, from))),
      reason,
    ).toEqual([]);
  });
});

describe('shared is pure', () => {
  test('no clock, chance, console or process', () => {
    // The page's and Node's other uses are not in shared's tsconfig and do not compile there.
    const banned = ['Date.now', 'new Date()', 'Math.random', 'console', 'process'];
    const found = sources
      .filter(({ file }) => isUnder(file, 'shared'))
      .flatMap(({ file, uses }) => banned.filter((name) => uses.has(name)).map((name) => `${file}: ${name}`));
    const reason = 'the same case must give the same bytes: time, chance and ids are passed in by whoever calls';
    expect(found, reason).toEqual([]);
  });

  test.each(['shared', 'app'])('no Node module in %s', (side) => {
    expect(wrongImports(side, isNodeModule), 'this runs in the page, where there is no Node').toEqual([]);
  });
});

test('every package that is imported is listed in package.json', () => {
  const manifest = JSON.parse(fs.readFileSync(path.join(root, 'package.json'), 'utf8')) as {
    dependencies: Record<string, string>;
    devDependencies: Record<string, string>;
  };
  const listed = { ...manifest.dependencies, ...manifest.devDependencies };
  const reason = 'a package that is there only because another one brought it may be gone tomorrow';
  expect(
    wrongAnywhere(
      (from, isType) =>
        !isProject(from) &&
        !isNodeModule(from) &&
        !Object.hasOwn(listed, packageOf(from)) &&
        !(isType && Object.hasOwn(listed, `@types/${packageOf(from)}`)),
    ),
    reason,
  ).toEqual([]);
});
