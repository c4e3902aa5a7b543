// Changes core in every place where cargo-mutants would, one change at a time, and says which change no test finds.
//   node tests/mutants/run.mjs [SHARE | again]
// All changes are built in at once, each behind a number that a variable turns on, so that one build does for thousands; what
// can't be switched (constants, and the like) is built alone. SHARE, as 1/20, tries each twentieth only; `again` those only that
// the last run found neither a test nor a reason for, or did not come to, of the same core.
// Writes SURVIVED.md, where every change that is not found has its reason of `reasons.json`. Ends with status 1 where one has
// none, or fewer than 95 % are found.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { cpSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { copyOfProject, root } from '../support/copy.mjs';
import { binaries, firstToFail, meetings, steady } from './tests.mjs';

const here = new URL('.', import.meta.url);
const again = process.argv[2] === 'again';
const every = again ? 1 : Number((process.argv[2] ?? '1/1').split('/')[1]);
const copy = copyOfProject('mutants');
const target = process.env.MUTANTS_TARGET ?? join(copy, 'target');
const work = join(copy, 'mutants-work');
mkdirSync(work);

function run(command, all, options = {}) {
  const done = spawnSync(command, all, { cwd: copy, encoding: 'utf8', maxBuffer: 1e9, ...options });
  if (done.error) throw done.error;
  return done;
}

function must(command, all, options) {
  const done = run(command, all, options);
  if (done.status !== 0) throw new Error(`${command} ${all.join(' ')}: ${done.stderr}`);
  return done.stdout;
}

const list = JSON.parse(must('cargo', ['mutants', '--list', '--json', '-p', 'wellwright-core'], { cwd: root }));
const lists = join(work, 'list.json');
writeFileSync(lists, JSON.stringify(list));
console.log(`${list.length} mutants`);

const tool = ['run', '--quiet', '--release', '--manifest-path', 'tests/mutants/Cargo.toml', '--target-dir', join(target, 'tool'), '--'];
const building = { env: { ...process.env, CARGO_TARGET_DIR: target, RUSTFLAGS: '--cap-lints allow', CARGO_PROFILE_DEV_OPT_LEVEL: '1' } };

/** A mutant without the place of its line, which moves. */
const named = (number) => list[number - 1].name.replace(/^core\/src\/(\S+?):\d+:\d+: /, '$1: ');

/** Why a mutant is not found: the first reason that fits its name. The file is read anew: it may be written meanwhile. */
function reason(number) {
  const reasons = JSON.parse(readFileSync(new URL('reasons.json', here), 'utf8'));
  return reasons.find(({ mutants }) => new RegExp(mutants).test(named(number)))?.why;
}

/** Numbers that are not in the program: of no build at all, and of none with the others. */
const unviable = new Set();
const alone = new Set();

/** Leaves out what does not build, until the rest does. */
function switched() {
  for (;;) {
    cpSync(join(root, 'core/src'), join(copy, 'core/src'), { recursive: true, force: true });
    const leftOut = join(work, 'left_out');
    writeFileSync(leftOut, [...unviable, ...alone].join(' '));
    const unwritten = must('cargo', [...tool, 'switch', lists, copy, leftOut]).split('\n').filter(Boolean).map(Number);
    const check = run('cargo', ['check', '-p', 'wellwright-core', '--message-format', 'json'], building);
    if (check.status === 0) {
      for (const number of unwritten) alone.add(number);
      return;
    }
    const messages = join(work, 'messages');
    writeFileSync(messages, check.stdout);
    const before = unviable.size + alone.size;
    for (const line of must('cargo', [...tool, 'unbuilt', messages, copy]).split('\n').filter(Boolean)) {
      const [number, how] = line.split(' ');
      (how === 'alone' ? unviable : alone).add(Number(number));
    }
    console.log(`${unviable.size} do not build, ${alone.size} not beside the others`);
    if (unviable.size + alone.size === before) throw new Error(`no mutant is at fault: ${check.stderr}`);
  }
}

/** The test binaries by their names. */
function built() {
  const out = must('cargo', ['test', '--no-run', '-p', 'wellwright-core', '-p', 'wellwright-tests', '--lib', '--tests', '--message-format', 'json'], building);
  const all = out.split('\n').filter((line) => line.startsWith('{')).map((line) => JSON.parse(line)).filter((one) => one.executable && one.profile.test);
  return new Map(all.map(({ target: { name }, manifest_path: manifest, executable }) => [name, { executable, cwd: join(manifest, '..') }]));
}

/** What was found so far, for `again`, with what it was found in. */
const soFar = join(target, 'found.json');
/** Core without its own tests, which may come while it stays what it is. */
const untested = (file) => readFileSync(join(root, file), 'utf8').split('#[cfg(test)]')[0];
const inCore = createHash('sha256').update([...new Set(list.map(({ file }) => file))].map(untested).join('')).digest('hex');

function before() {
  const { core, found, unviable: unbuilt = [] } = JSON.parse(readFileSync(soFar, 'utf8'));
  if (core !== inCore) throw new Error('core is another than the last time');
  for (const number of unbuilt) unviable.add(number);
  return new Map(found.filter(([number, by]) => by !== null || reason(number)));
}

function keep(found) { writeFileSync(soFar, JSON.stringify({ core: inCore, found: [...found], unviable: [...unviable] })); }

/** Asks some tests for mutants, on every core, and notes who finds each; those that none of them finds. */
async function asked(tests, some, numbers, found, says) {
  const queue = [...numbers];
  const left = [];
  const worker = async () => {
    for (let number = queue.shift(); number; number = queue.shift()) {
      const by = await firstToFail(tests, some, number);
      if (by) found.set(number, by);
      else {
        left.push(number);
        console.log(`${says}: ${named(number)}`);
      }
      if (queue.length % 250 === 0) console.log(`${queue.length} to go`);
      if (queue.length % 20 === 0) keep(found);
    }
  };
  await Promise.all(Array.from({ length: availableParallelism() }, worker));
  return left;
}

/** Seconds from which on a test is asked only for what the others leave, and only where no reason is known for that. */
const SLOW = 0.4;

/** Tries the mutants that are in the program. */
async function tried(tests, numbers, found) {
  const all = await meetings(tests, work, availableParallelism());
  console.log(`${all.length} tests, ${Math.round(all.reduce((sum, { seconds }) => sum + seconds, 0))} s of them`);
  const left = await asked(tests, all.filter(({ seconds }) => seconds < SLOW), numbers, found, 'left to the slow tests');
  for (const number of left.filter(reason)) found.set(number, null);
  const unknown = left.filter((number) => !reason(number));
  for (const number of await asked(tests, all.filter(({ seconds }) => seconds >= SLOW), unknown, found, 'survives')) found.set(number, null);
}

/** A file with a mutant in it, by the difference that the list tells. */
function changed(number) {
  const { file, diff } = list[number - 1];
  const lines = readFileSync(join(root, file), 'utf8').split('\n');
  const [head, ...hunk] = diff.split('\n').slice(2).filter((line) => line !== '');
  const first = Number(/^@@ -(\d+)/.exec(head)[1]) - 1;
  const side = (mark) => hunk.filter((line) => line[0] === ' ' || line[0] === mark).map((line) => line.slice(1));
  const before = side('-');
  if (lines.slice(first, first + before.length).join('\n') !== before.join('\n')) throw new Error(`${file} is not what ${list[number - 1].name} was made of`);
  lines.splice(first, before.length, ...side('+'));
  return lines.join('\n');
}

/** What can't be switched is built one by one, each test binary only where those before it find nothing. */
function triedAlone(numbers, found) {
  const env = { ...process.env, ...steady, CARGO_TARGET_DIR: join(target, 'alone'), RUSTFLAGS: '--cap-lints allow' };
  const quick = { cwd: copy, stdio: 'ignore', env };
  const cargo = (binary, ...more) => {
    const tests = binary === 'wellwright_core' ? ['-p', 'wellwright-core', '--lib'] : ['-p', 'wellwright-tests', '--test', binary];
    // One that does not end has failed.
    return spawnSync('timeout', ['1200', 'cargo', 'test', '--quiet', ...tests, ...more], quick).status === 0;
  };
  const failing = numbers.length > 0 && binaries.find((binary) => !cargo(binary));
  if (failing) throw new Error(`${failing} fails without a mutant`);
  for (const number of numbers) {
    const path = join(copy, list[number - 1].file);
    writeFileSync(path, changed(number));
    if (!cargo(binaries[0], '--no-run')) unviable.add(number);
    else {
      const by = binaries.find((binary) => !cargo(binary));
      found.set(number, by ? 'built alone' : null);
      if (!by) console.log(`survives: ${named(number)}`);
      keep(found);
    }
    cpSync(join(root, list[number - 1].file), path, { force: true });
  }
}

/** The chapters of formulas, and what works and tells whole jobs; the others together. */
const chapters = ['water', 'pump', 'power', 'cable', 'cost', 'startup', 'standards', 'quantity', 'evaluate', 'papers'];

function byChapter(found) {
  const sums = Object.fromEntries([...chapters, 'the rest'].map((chapter) => [chapter, { caught: 0, tried: 0 }]));
  for (const [number, by] of found) {
    const folder = /^core\/src\/([a-z_]+)/.exec(list[number - 1].file)[1];
    const sum = sums[folder] ?? sums['the rest'];
    sum.tried += 1;
    sum.caught += by === null ? 0 : 1;
  }
  return sums;
}

function page(found) {
  const survived = [...found].filter(([, by]) => by === null).map(([number]) => number);
  const caught = found.size - survived.length;
  const share = caught / found.size;
  const by = binaries.concat('built alone').map((name) => `${name} ${[...found.values()].filter((one) => one === name).length}`);
  const told = new Map();
  const bare = [];
  for (const number of survived) {
    const why = reason(number);
    if (why) told.set(why, [...(told.get(why) ?? []), named(number)]);
    else bare.push(named(number));
  }
  const today = new Date().toISOString().slice(0, 10);
  const groups = [...told].map(([why, names]) => `\n## ${why}\n\n${names.sort().map((name) => `- \`${name}\``).join('\n')}\n`);
  if (bare.length > 0) groups.push(`\n## No reason is known\n\n${bare.sort().map((name) => `- \`${name}\``).join('\n')}\n`);
  const text = `# Changes that no test finds\n\nWritten by \`node tests/mutants/run.mjs\` on ${today}: ${caught} of ${found.size} mutants of core found (${(100 * share).toFixed(1)} %), ` +
    `${unviable.size} more do not build.\nBy whom first: ${by.join(', ')}.\n${groups.join('')}`;
  if (every === 1) writeFileSync(new URL('SURVIVED.md', here), text);
  else console.log(text);
  keep(found);
  console.log(`mutants by chapter: ${JSON.stringify(byChapter(found))}`);
  console.log(`mutants: ${caught} caught, ${survived.length} survived, ${bare.length} of them without a reason`);
  return share >= 0.95 && bare.length === 0;
}

const found = again ? before() : new Map();
switched();
const tests = built();
// Some tests read the program's text.
cpSync(join(root, 'core/src'), join(copy, 'core/src'), { recursive: true, force: true });
const numbers = list.map((_, at) => at + 1).filter((number) => number % every === 0 && !unviable.has(number));
const left = numbers.filter((number) => !found.has(number));
await tried(tests, left.filter((number) => !alone.has(number)), found);
triedAlone(left.filter((number) => alone.has(number)), found);
process.exitCode = page(found) ? 0 : 1;
