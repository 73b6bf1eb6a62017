// npm test: types, lint, format, unit and reference tests, both builds, and end-to-end tests in a real browser.
// Ends with one line: N passed, N failed, N skipped. Each check of types, lint, format and build counts as one.
// `--no-e2e` leaves the browser out.
import { spawnSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { ensurePrograms, modernNode, root } from './setup.mjs';

const withBrowser = !process.argv.includes('--no-e2e');
const total = { passed: 0, failed: 0, skipped: 0 };
const skippedNames = [];
const failedNames = [];

const node = modernNode();
// vitest and playwright start programs by name: let them find this Node first.
process.env.PATH = `${path.dirname(node)}${path.delimiter}${path.join(root, 'node_modules/.bin')}${path.delimiter}${process.env.PATH}`;
const absent = ensurePrograms({
  qpdf: 'qpdf',
  pdftotext: 'poppler-utils',
  ...(withBrowser && process.platform === 'linux' && !process.env.CASEFRAME_BROWSER ? { chromium: 'chromium' } : {}),
});
for (const name of absent) console.log(`Not on this machine: ${name}. Tests that need it are skipped or fail by name.`);
fs.mkdirSync(path.join(root, 'out'), { recursive: true });

for (const side of ['shared', 'app', 'main', 'tests']) check(`types of ${side}`, 'typescript/bin/tsc', ['-p', side]);
check('lint', 'oxlint/bin/oxlint', ['--type-aware']);
check('format', '@biomejs/biome/bin/biome', ['format', '.']);
check('build of the renderer', 'vite/bin/vite.js', ['build', '--logLevel', 'warn']);
check('build of the main process', 'rolldown/bin/cli.mjs', ['-c', '--logLevel', 'warn']);
suite('unit and reference tests', 'vitest/vitest.mjs', ['run'], 'out/unit.json', countVitest);
if (withBrowser) suite('end-to-end tests', '@playwright/test/cli.js', ['test'], 'out/e2e.json', countPlaywright);

if (skippedNames.length > 0) console.log(`\nSkipped:\n${skippedNames.map((name) => `  ${name}`).join('\n')}`);
if (failedNames.length > 0) console.log(`\nFailed:\n${failedNames.map((name) => `  ${name}`).join('\n')}`);
console.log(`\n${total.passed} passed, ${total.failed} failed, ${total.skipped} skipped`);
process.exitCode = total.failed === 0 ? 0 : 1;

function tool(script, args) {
  return (
    spawnSync(node, [path.join(root, 'node_modules', script), ...args], { cwd: root, stdio: 'inherit' }).status === 0
  );
}

function check(name, script, args) {
  console.log(`\n— ${name}`);
  if (tool(script, args)) total.passed += 1;
  else fail(name);
}

function fail(name) {
  total.failed += 1;
  failedNames.push(name);
}

/** Runs a test runner and counts from its own JSON report. A runner that ends badly without naming a test failed too. */
function suite(name, script, args, report, count) {
  console.log(`\n— ${name}`);
  const file = path.join(root, report);
  fs.rmSync(file, { force: true });
  const before = total.failed;
  const isFine = tool(script, args);
  if (fs.existsSync(file)) count(JSON.parse(fs.readFileSync(file, 'utf8')));
  else fail(`${name}: no report was written`);
  if (!isFine && total.failed === before) fail(`${name}: the runner ended with an error`);
}

function add(status, name) {
  if (status === 'passed') total.passed += 1;
  else if (status === 'skipped') {
    total.skipped += 1;
    skippedNames.push(name);
  } else fail(name);
}

function countVitest(report) {
  const statuses = { passed: 'passed', pending: 'skipped', skipped: 'skipped', todo: 'skipped', disabled: 'skipped' };
  for (const file of report.testResults) {
    const where = path.relative(root, file.name);
    if (file.status === 'failed' && file.assertionResults.length === 0) fail(`${where}: ${file.message}`);
    for (const test of file.assertionResults) add(statuses[test.status] ?? 'failed', `${where}: ${test.fullName}`);
  }
}

function countPlaywright(report) {
  const statuses = { expected: 'passed', skipped: 'skipped' };
  const visit = (suite) => {
    for (const spec of suite.specs ?? []) {
      for (const test of spec.tests) {
        const reason = test.annotations.find((note) => note.type === 'skip')?.description;
        add(statuses[test.status] ?? 'failed', `${spec.file}: ${spec.title}${reason ? ` (${reason})` : ''}`);
      }
    }
    for (const inner of suite.suites ?? []) visit(inner);
  };
  for (const suite of report.suites) visit(suite);
  for (const error of report.errors) fail(`end-to-end tests: ${error.message}`);
}
