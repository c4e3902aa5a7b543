// Keeps what a long run has shown, for the table: `node tests/proof/keep.mjs NAME`, with what the run printed on standard
// input. What it can't find there it says, and keeps nothing.
import { readFileSync, writeFileSync } from 'node:fs';

const file = new URL('kept.json', import.meta.url);
const out = readFileSync(0, 'utf8');

/** The numbers of the last line that a pattern fits. */
function last(pattern, names) {
  const found = [...out.matchAll(new RegExp(pattern, 'gm'))].at(-1);
  if (!found) throw new Error(`nothing like ${pattern} was printed`);
  return Object.fromEntries(names.map((name, at) => [name, Number(found[at + 1])]));
}

const run = () => last(/tests? run: (\d+) passed/, ['passed']);
const readers = {
  laws: () => ({ ...run(), cases: Number(process.env.PROPTEST_CASES) }),
  doors: () => {
    const texts = [...out.matchAll(/^ *\w+: (\d+) texts/gm)].map(([, count]) => Number(count));
    return { doors: texts.length, texts: texts.reduce((sum, one) => sum + one, 0), seconds: Number(process.env.WELLWRIGHT_FUZZ_SECONDS) };
  },
  coverage: () => {
    const share = '\\d+ +\\d+ +([\\d.]+)%';
    return last(`^TOTAL +${share} +${share} +${share}`, ['regions', 'functions', 'lines']);
  },
  planted: () => last(/^planted errors: (\d+) caught, (\d+) missed/, ['caught', 'missed']),
  mutants: () => ({
    ...last(/^mutants: (\d+) caught, (\d+) survived/, ['caught', 'survived']),
    chapters: JSON.parse(/^mutants by chapter: (.*)$/m.exec(out)[1]),
  }),
  second: () => last(/^second opinion: (\d+) jobs, (\d+) figures, (\d+) values, (\d+) differ/, ['jobs', 'figures', 'values', 'differ']),
};

const name = process.argv[2];
const kept = JSON.parse(readFileSync(file, 'utf8'));
kept[name] = { day: new Date().toISOString().slice(0, 10), ...readers[name]() };
writeFileSync(file, `${JSON.stringify(kept, null, 1)}\n`);
