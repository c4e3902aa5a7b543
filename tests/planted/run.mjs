// Plants errors of `errors.json` in a copy of the project, one after the other, and says which test finds each: a
// reference value or a law, never a stored evaluation. Writes CAUGHT.md. Ends with status 1 where one is missed.
//   node tests/planted/run.mjs [FIRST [LAST]]     the errors of these numbers, from 1 on; else all of them. What the page
//   says of the others stays.
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { copyOfProject } from '../support/copy.mjs';

const errors = JSON.parse(readFileSync(new URL('errors.json', import.meta.url), 'utf8'));
const [first = 1, last = errors.length] = process.argv.slice(2).map(Number);
// Reference values are quick, laws take minutes: they are asked where no reference value has found the error.
const binaries = [['--test', 'reference'], ['--test', 'properties']];
const copy = copyOfProject('planted');
const target = process.env.PLANTED_TARGET ?? join(copy, 'target');

/** The test that fails first in a test binary; `compiler` where the program does not build; nothing where all pass. */
function finds(binary) {
  const { status, stdout, stderr } = spawnSync(
    'cargo',
    ['nextest', 'run', '--offline', '--locked', '--color', 'never', '--max-fail', '1', '-p', 'wellwright-tests', ...binary],
    { cwd: copy, encoding: 'utf8', env: { ...process.env, CARGO_TARGET_DIR: target }, maxBuffer: 1e9 },
  );
  if (status === 0) return null;
  return /^ +FAIL \[[^\]]*\] (?:\([^)]*\) )?wellwright-tests::(\S+ \S+)/m.exec(stdout + stderr)?.[1] ?? 'compiler';
}

/** Tests that fail without an error planted find nothing: each binary is tried so before it is asked first. */
const tried = new Set();
function clean(binary) {
  if (tried.has(binary)) return;
  tried.add(binary);
  const found = finds(binary);
  if (found) throw new Error(`without an error planted this fails: ${found}`);
}

const rows = [];
for (const { chapter, file, find, put, what } of errors.slice(first - 1, last)) {
  const path = join(copy, file);
  const whole = readFileSync(path, 'utf8');
  if (whole.split(find).length !== 2) throw new Error(`${file}: ${find} should stand there once`);
  let found = null;
  for (const binary of binaries) {
    if (found) break;
    clean(binary);
    writeFileSync(path, whole.replace(find, () => put));
    found = finds(binary);
    writeFileSync(path, whole);
  }
  rows.push({ chapter, file, what, found });
  console.log(`${rows.length + first - 1}. ${what} (${file}): ${found ?? 'MISSED'}`);
}

const caught = rows.filter(({ found }) => found && found !== 'compiler');
const page = new URL('CAUGHT.md', import.meta.url);
const before = existsSync(page) ? readFileSync(page, 'utf8').split('\n') : [];
const today = new Date().toISOString().slice(0, 10);
const lines = errors.map(({ chapter, file, what }) => {
  const start = `| ${chapter} | ${what} | ${file.replace('core/src/', '')} |`;
  const row = rows.find((one) => one.what === what && one.file === file);
  return row ? `${start} ${row.found ?? 'missed'} | ${today} |` : before.find((line) => line.startsWith(start)) ?? `${start} not tried | |`;
});
const all = lines.filter((line) => !/ (missed|not tried|compiler) \|/.test(line)).length;
writeFileSync(
  page,
  `# Planted errors\n\nWritten by \`node tests/planted/run.mjs\`: ${all} of ${errors.length} caught.\n\n` +
    `| chapter | error | file | first test that fails | day |\n| --- | --- | --- | --- | --- |\n${lines.join('\n')}\n`,
);
console.log(`planted errors: ${caught.length} caught, ${rows.length - caught.length} missed`);
process.exitCode = caught.length === rows.length ? 0 : 1;
