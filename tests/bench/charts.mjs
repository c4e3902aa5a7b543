// What a redraw of the curve takes, beside a fast chart library that draws the same two series, and beside the same picture
// drawn by hand: the very commands that the canvas got, as a script of nothing else. And what the whole calculation takes
// beside a spreadsheet engine with a small model of the same kind.
//   node tests/bench/charts.mjs [REDRAWS]       builds the page with the feature `timed` into target/timed; Trunk has to be on
//   the path, as `tests/run bench` puts it there
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { startChromium } from '../browser/support/chromium.mjs';
import { buildPages, folder } from './build.mjs';
import { host } from './support/host.mjs';
import { median, table } from './support/numbers.mjs';

const redraws = Number(process.argv[2] ?? 300);
const size = [800, 450];
const root = fileURLToPath(new URL('../../', import.meta.url));
const timed = `${root}target/timed`;

const build = spawnSync('trunk', ['build', '--release', '--offline', '--features', 'timed', '--dist', timed], {
  cwd: root, stdio: 'inherit', env: { ...process.env, NO_COLOR: undefined },
});
if (build.status !== 0) throw new Error('the page for the bench could not be built');
await buildPages();

const browser = await startChromium();
async function open(place, waits) {
  const site = await host(place);
  const context = await browser.newContext({ viewport: { width: 900, height: 700 }, deviceScaleFactor: 2, serviceWorkers: 'block' });
  const page = await context.newPage();
  page.on('pageerror', (error) => console.error(error.message));
  await page.goto(site.url);
  await page.waitForFunction(waits);
  return { page, client: await context.newCDPSession(page), site };
}

/** Runs in the page: times `draw` after `work`, the script alone and with the pixels, which one of them read back forces. */
async function time([count, [width, height]]) {
  document.querySelector('canvas.bench')?.remove();
  const canvas = Object.assign(document.createElement('canvas'), { className: 'bench', width: 2 * width, height: 2 * height });
  canvas.style.cssText = `position:fixed;inset:0;z-index:9;width:${width}px;height:${height}px`;
  document.body.append(canvas);
  const pen = () => (window.bench?.canvas?.() ?? canvas).getContext('2d');
  const script = [];
  const whole = [];
  for (let round = 0; round < count + 30; round += 1) {
    const depth = 300 + ((round * 7) % 400);
    window.bench.work(depth);
    await null;
    const began = performance.now();
    window.bench.draw(canvas, width, height);
    const drawn = performance.now();
    pen().getImageData(0, 0, 1, 1);
    const ended = performance.now();
    if (round >= 30) {
      script.push(drawn - began);
      whole.push(ended - began);
    }
    if (round % 20 === 19) await new Promise((then) => { setTimeout(then); });
  }
  return { script, whole };
}

/** Forced layouts and restyles of one redraw a frame. */
async function layouts({ page, client }) {
  await client.send('Performance.enable');
  const count = async () => (await client.send('Performance.getMetrics')).metrics.find(({ name }) => name === 'LayoutCount').value;
  await page.evaluate(() => new Promise((then) => { setTimeout(then, 300); }));
  const before = await count();
  const frames = 60;
  await page.evaluate(async ([frames, [width, height]]) => {
    const canvas = document.querySelector('canvas.bench');
    for (let round = 0; round < frames; round += 1) {
      await new Promise(requestAnimationFrame);
      window.bench.work(300 + round);
      window.bench.draw(canvas, width, height);
    }
  }, [frames, size]);
  return (await count() - before) / frames;
}

/** Runs in the page: everything that one redraw asks of the canvas, as the text of a script. */
function recorded([width, height]) {
  const canvas = document.querySelector('canvas.bench');
  const lines = [];
  const made = CanvasRenderingContext2D.prototype;
  const own = new Map();
  for (const [name, of] of Object.entries(Object.getOwnPropertyDescriptors(made))) {
    if (typeof of.value === 'function') {
      own.set(name, of);
      made[name] = function (...all) { lines.push(`c.${name}(${all.map((one) => JSON.stringify(one)).join(',')});`); return of.value.apply(this, all); };
    } else if (of.set) {
      own.set(name, of);
      Object.defineProperty(made, name, { ...of, set(value) { lines.push(`c.${name}=${JSON.stringify(value)};`); of.set.call(this, value); } });
    }
  }
  window.timed.draw(canvas, width, height);
  for (const [name, of] of own) Object.defineProperty(made, name, of);
  return lines.join('\n');
}

const own = await open(timed, () => window.timed);
await own.page.evaluate(() => { window.bench = window.timed; });
const beside = await open(folder('charts'), () => window.charts);

await own.page.evaluate(time, [1, size]);
await own.page.evaluate(() => window.timed.work(620));
const commands = await own.page.evaluate(recorded, size);
const series = [];
for (let round = 0; round < 40; round += 1) {
  series.push(await own.page.evaluate((depth) => { window.timed.work(depth); return [...window.timed.costs(200)]; }, 300 + 10 * round));
}
await beside.page.evaluate(([series, commands]) => window.charts.take(series, commands), [series, commands]);

const contestants = [['Wellwright', own, null], ['chart library', beside, 'library'], ['by hand', beside, 'byHand']];
const all = new Map(contestants.map(([name]) => [name, { script: [], whole: [] }]));
const forced = new Map();
for (let pass = 0; pass < 3; pass += 1) {
  for (const [name, where, kind] of contestants) {
    if (kind) await where.page.evaluate((kind) => { window.bench = window.charts[kind](); }, kind);
    const found = await where.page.evaluate(time, [Math.ceil(redraws / 3), size]);
    for (const what of ['script', 'whole']) all.get(name)[what].push(...found[what]);
    if (pass === 0) {
      forced.set(name, await layouts(where));
      await where.page.screenshot({ path: `${root}target/timed-${name.replaceAll(' ', '_')}.png` });
    }
  }
}
const middle = (name, what) => median(all.get(name)[what]);
table(
  ['redraw', 'script ms', 'with pixels ms', 'forced layouts'],
  contestants.map(([name]) => [name, middle(name, 'script').toFixed(3), middle(name, 'whole').toFixed(3), forced.get(name).toFixed(1)]),
);
console.log(`script, Wellwright ÷ chart library: ${(middle('Wellwright', 'script') / middle('chart library', 'script')).toFixed(2)}`);
console.log(`with pixels, Wellwright ÷ by hand: ${(middle('Wellwright', 'whole') / middle('by hand', 'whole')).toFixed(2)}`);

const sheet = await beside.page.evaluate(() => window.charts.sheet(30));
const work = await own.page.evaluate(() => {
  const took = [];
  for (let round = 0; round < 230; round += 1) {
    const began = performance.now();
    for (let one = 0; one < 10; one += 1) window.timed.work(300 + ((round * 10 + one) % 400));
    if (round >= 30) took.push((performance.now() - began) / 10);
  }
  return took;
});
console.log(`whole calculation: ${median(work).toFixed(3)} ms; a spreadsheet of ${sheet.formulas} formulas: ${median(sheet.took).toFixed(1)} ms (${(median(sheet.took) / median(work)).toFixed(0)} times)`);
await browser.close();
await own.site.stop();
await beside.site.stop();
