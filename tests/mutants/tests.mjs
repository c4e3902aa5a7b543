// The tests that a mutant is tried by: only those that meet it, the quick ones first.
import { spawn, spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

/** Test binaries in the order in which they are asked. */
export const binaries = ['reference', 'golden', 'wellwright_core', 'findings', 'properties', 'hostile'];

/** Laws have the same cases each time: else who meets what would be another thing each time. */
export const steady = { PROPTEST_CASES: '16', PROPTEST_RNG_SEED: '20261128', PROPTEST_MAX_SHRINK_ITERS: '0', RUST_BACKTRACE: '0' };

/** Whether tests of a binary pass; those that do not end have failed. */
function pass({ executable, cwd }, names, seconds, env) {
  return new Promise((resolve) => {
    // A mutant may ask for all the memory there is.
    const child = spawn('bash', ['-c', 'ulimit -v 8000000 2>/dev/null; exec "$@"', 'bash', executable, '--test-threads', '1', '--exact', ...names], {
      cwd,
      stdio: 'ignore',
      env: { ...process.env, ...steady, ...env },
    });
    const enough = setTimeout(() => child.kill('SIGKILL'), seconds * 1000);
    child.on('close', (status) => {
      clearTimeout(enough);
      resolve(status === 0);
    });
  });
}

/** Tests that take longer, in seconds, are asked for no mutant: one that only they would find counts as one that none does. */
const TOO_LONG = 5;

/** What each test meets, and how long it takes: [{ binary, name, seconds, met }], in the order in which they are asked. */
export async function meetings(built, work, workers) {
  const all = binaries.flatMap((binary) => {
    const { executable, cwd } = built.get(binary);
    const list = spawnSync(executable, ['--list', '--format', 'terse'], { cwd, encoding: 'utf8' }).stdout;
    return [...list.matchAll(/^(.*): test$/gm)].map(([, name]) => ({ binary, name }));
  });
  const queue = all.map((test, at) => ({ test, file: join(work, `met-${at}`) }));
  await Promise.all(Array.from({ length: workers }, async () => {
    for (let next = queue.shift(); next; next = queue.shift()) {
      const { test, file } = next;
      const start = performance.now();
      if (!await pass(built.get(test.binary), [test.name], 600, { MUTANTS_MET: file })) throw new Error(`${test.name} fails without a mutant`);
      test.seconds = (performance.now() - start) / 1000;
      test.met = new Set(numbers(file));
    }
  }));
  const short = all.filter(({ seconds }) => seconds < TOO_LONG);
  return short.sort((one, other) => binaries.indexOf(one.binary) - binaries.indexOf(other.binary) || one.seconds - other.seconds);
}

function numbers(file) {
  try {
    return readFileSync(file, 'utf8').split('\n').filter(Boolean).map(Number);
  } catch {
    // It met none.
    return [];
  }
}

/** Which binary finds a mutant first; null where none does. */
export async function firstToFail(built, tests, number) {
  const meeting = tests.filter(({ met }) => met.has(number));
  while (meeting.length > 0) {
    // Quick ones go together.
    const [{ binary }] = meeting;
    const some = [meeting.shift()];
    let seconds = some[0].seconds;
    while (meeting[0]?.binary === binary && seconds + meeting[0].seconds < 1) {
      some.push(meeting.shift());
      seconds += some.at(-1).seconds;
    }
    if (!await pass(built.get(binary), some.map(({ name }) => name), 20 + 20 * seconds, { MUTANT: String(number) })) return binary;
  }
  return null;
}
