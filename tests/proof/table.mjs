// What proves the sums, in short: `node tests/proof/table.mjs` prints it, `--write` puts it into DEVELOPERS.md as well. What
// takes long is as the last long run has left it (`kept.json`, by `tests/run deep`), with its day.
import { readFileSync, readdirSync, writeFileSync } from 'node:fs';

const at = (path) => new URL(`../../${path}`, import.meta.url);
const text = (path) => readFileSync(at(path), 'utf8');
const kept = JSON.parse(text('tests/proof/kept.json'));
const count = (path, pattern) => [...text(path).matchAll(pattern)].length;
const number = (value) => value.toLocaleString('en-US');
const rows = (path) => text(path).split('\n').filter((line) => line.startsWith('| ')).map((line) => line.slice(2, -2).split(' | '));

function table(head, body) {
  const line = (cells) => `| ${cells.join(' | ')} |`;
  return [line(head), line(head.map(() => '---')), ...body.map(line)].join('\n');
}

/** Mutants of a chapter, where they were tried. */
function mutants(chapter) {
  const found = kept.mutants?.chapters[chapter];
  return found ? `${number(found.caught)} of ${number(found.tried)}` : '';
}

function byChapter() {
  const formulas = new Map(rows('core/CHECKED.md').filter((row) => row.length === 4 && /^\d+$/.test(row[1])).map(([chapter, ...rest]) => [chapter, rest]));
  const planted = rows('tests/planted/CAUGHT.md').slice(2);
  const chapters = [...new Set([...formulas.keys(), ...planted.map(([chapter]) => chapter), ...Object.keys(kept.mutants?.chapters ?? {})])];
  return chapters.map((chapter) => {
    const own = planted.filter(([name, , , by]) => name === chapter && !/missed|not tried/.test(by ?? ''));
    return [chapter, ...(formulas.get(chapter) ?? ['', '', '']), own.length || '', mutants(chapter)];
  });
}

/** Journeys by engine. Those of Firefox and WebKit stand in one file, what only Firefox can do further in; Chromium walks the rest. */
function journeys() {
  const folder = readdirSync(at('tests/browser')).filter((name) => name.endsWith('.test.mjs') && name !== 'engines.test.mjs');
  const chromium = folder.reduce((sum, name) => sum + count(`tests/browser/${name}`, /^ *test\(/gm), 0);
  const engines = (pattern) => count('tests/browser/engines.test.mjs', pattern);
  return `Chromium ${chromium}, Firefox ${engines(/^ +journey\('/gm)}, WebKit ${engines(/^ {4}journey\('/gm)}`;
}

function others() {
  const laws = readdirSync(at('tests/properties'), { recursive: true }).filter((name) => name.endsWith('.rs'))
    .reduce((sum, name) => sum + count(`tests/properties/${name}`, /#\[test\]/g), 0);
  const { second, coverage, doors, mutants: all, planted, laws: deep } = kept;
  const share = all && (100 * all.caught) / (all.caught + all.survived);
  return [
    ['laws', number(laws), deep && `${number(deep.passed)} over ${number(deep.cases)} cases`, deep],
    ['jobs worked in Python', '', second && `${number(second.jobs)}; ${number(second.values)} values, ${second.differ} differ`, second],
    ['errors planted', '', planted && `${planted.caught} of ${planted.caught + planted.missed} caught`, planted],
    ['mutants of core', '', all && `${number(all.caught)} of ${number(all.caught + all.survived)} caught (${share.toFixed(1)} %)`, all],
    ['lines of core that tests reach', '', coverage && `${coverage.lines.toFixed(1)} %; functions ${coverage.functions.toFixed(1)} %, regions ${coverage.regions.toFixed(1)} %`, coverage],
    ['doors tried with spoiled texts', '', doors && `${doors.doors}, ${doors.seconds} s each: ${number(doors.texts)} texts`, doors],
    ['journeys by engine', journeys(), '', null],
  ].map(([what, now, long, of]) => [what, now, long ?? 'not run', of?.day ?? '']);
}

const whole = [
  table(['chapter', 'formulas', 'published values', 'worst', 'planted errors caught', 'mutants caught'], byChapter()),
  table(['what', 'in every run', 'in the last long run', 'its day'], others()),
].join('\n\n');
console.log(whole);

if (process.argv[2] === '--write') {
  const page = text('DEVELOPERS.md');
  const place = /<!-- proof -->\n[^]*?<!-- end of proof -->/;
  if (!place.test(page)) throw new Error('DEVELOPERS.md has no place for the table');
  writeFileSync(at('DEVELOPERS.md'), page.replace(place, () => `<!-- proof -->\n\n${whole}\n\n<!-- end of proof -->`));
}
