// How heavy the page is and how soon it shows something, beside three small pages that draw one chart: one by hand, one
// in Solid, one in React. `node tests/bench/load.mjs [RUNS]`, after app/serve --build.
//   painted  the frame in which a chart is first to be seen
//   usable   the moment from which the depth can be moved (the comparison: the slider)
//   slow     processor slowed four times, 1.6 Mbit/s, 150 ms
import { readFileSync } from 'node:fs';
import { extname, join } from 'node:path';
import { startChromium } from '../browser/support/chromium.mjs';
import { dist } from '../browser/support/site.mjs';
import { buildPages, folder, pages } from './build.mjs';
import { brotli, files, gzip, host } from './support/host.mjs';
import { median, table } from './support/numbers.mjs';

const runs = Number(process.argv[2] ?? 5);
const slowRuns = Math.ceil(runs / 2);
const size = { width: 900, height: 700 };

/** Runs in the page before anything of it. */
function watch() {
  const seen = (window.seen = { cls: 0, memory: [] });
  const first = () => {
    if (seen.stroke) return;
    seen.stroke = performance.now();
    requestAnimationFrame(() => {
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = () => { seen.painted = performance.now(); };
      port2.postMessage(0);
    });
  };
  for (const name of ['stroke', 'drawImage']) {
    const own = CanvasRenderingContext2D.prototype[name];
    CanvasRenderingContext2D.prototype[name] = function (...all) { first(); return own.apply(this, all); };
  }
  for (const name of ['instantiate', 'instantiateStreaming']) {
    const own = WebAssembly[name];
    WebAssembly[name] = async (...all) => {
      const made = await own.apply(WebAssembly, all);
      const memory = Object.values((made.instance ?? made).exports).filter((one) => one instanceof WebAssembly.Memory);
      seen.memory.push(...memory);
      return made;
    };
  }
  const handle = () => {
    // A chart that stands on the page before its program.
    if (document.querySelector('svg[data-drawn]')?.getClientRects().length) first();
    if (document.querySelector('[role=slider],input[type=range]')) seen.usable = performance.now();
    else requestAnimationFrame(handle);
  };
  requestAnimationFrame(handle);
  const each = (type, then) => new PerformanceObserver((list) => list.getEntries().forEach(then)).observe({ type, buffered: true });
  each('layout-shift', (entry) => { if (!entry.hadRecentInput) seen.cls += entry.value; });
  each('largest-contentful-paint', (entry) => { seen.lcp = entry.startTime; });
}

const told = () => ({
  ...window.seen,
  memory: window.seen.memory.reduce((sum, one) => sum + one.buffer.byteLength, 0),
  fcp: performance.getEntriesByName('first-contentful-paint')[0]?.startTime,
  bytes: [...performance.getEntriesByType('resource'), ...performance.getEntriesByType('navigation')]
    .reduce((sum, entry) => sum + entry.transferSize, 0),
});

async function slowDown(client) {
  await client.send('Emulation.setCPUThrottlingRate', { rate: 4 });
  await client.send('Network.enable');
  await client.send('Network.emulateNetworkConditions', {
    offline: false, latency: 150, downloadThroughput: 1.6e6 / 8, uploadThroughput: 750e3 / 8,
  });
}

async function open(page, url) {
  await page.goto(url, { waitUntil: 'load' });
  await page.waitForFunction(() => window.seen.painted && window.seen.usable, null, { timeout: 60_000, polling: 20 });
  await page.waitForTimeout(200);
  return page.evaluate(told);
}

/** One visit; a warm one is the second to the same host. */
async function visit(browser, url, { slow, warm }) {
  const context = await browser.newContext({ viewport: size, deviceScaleFactor: 2, reducedMotion: 'reduce', serviceWorkers: warm ? 'allow' : 'block' });
  const page = await context.newPage();
  await page.addInitScript(watch);
  const client = await context.newCDPSession(page);
  if (slow) await slowDown(client);
  let found = await open(page, url);
  if (warm) {
    if (url.includes('#')) await page.waitForFunction(() => navigator.serviceWorker.controller, null, { timeout: 60_000 });
    await page.goto('about:blank');
    found = await open(page, url);
  }
  if (!slow && !warm) {
    await client.send('HeapProfiler.collectGarbage');
    await client.send('Performance.enable');
    const { metrics } = await client.send('Performance.getMetrics');
    found.heap = metrics.find(({ name }) => name === 'JSHeapUsedSize').value;
  }
  await context.close();
  return found;
}

function weights(name, place) {
  const sums = {};
  for (const file of files(place)) {
    const bytes = readFileSync(join(place, file));
    const kind = extname(file).slice(1);
    for (const group of [kind, 'all']) {
      const sum = (sums[group] ??= { raw: 0, gzip: 0, brotli: 0 });
      sum.raw += bytes.length;
      sum.gzip += gzip(bytes).length;
      sum.brotli += brotli(bytes).length;
    }
  }
  const kb = (bytes) => (bytes / 1000).toFixed(1);
  return Object.entries(sums).map(([kind, sum]) => [name, kind, kb(sum.raw), kb(sum.gzip), kb(sum.brotli)]);
}

await buildPages();
const places = [
  ...Object.keys(pages).map((name) => ({ name, place: folder(name), at: '' })),
  { name: 'Wellwright', place: dist, at: '#/job/demo-0/water' },
];
table(['page', 'files', 'raw kB', 'gzip kB', 'brotli kB'], places.flatMap(({ name, place }) => weights(name, place)));

const browser = await startChromium();
const modes = [['cold', {}, runs], ['warm', { warm: true }, runs], ['slow cold', { slow: true }, slowRuns], ['slow warm', { slow: true, warm: true }, slowRuns]];
const all = new Map();
for (const one of places) one.host = await host(one.place);
for (let run = 0; run < runs; run += 1) {
  for (const { name, host: { url }, at } of places) {
    for (const [mode, how, times] of modes) {
      if (run >= times) continue;
      const key = `${name}/${mode}`;
      all.set(key, [...(all.get(key) ?? []), await visit(browser, url + at, how)]);
    }
  }
}
const of = (name, mode, what) => median((all.get(`${name}/${mode}`) ?? []).map((found) => found[what]));
const rows = [];
for (const [mode] of modes) {
  for (const { name } of places) {
    const painted = of(name, mode, 'painted');
    const beside = ['solid', 'react'].map((other) => (painted / of(other, mode, 'painted')).toFixed(2));
    const ms = ['fcp', 'lcp', 'painted', 'usable'].map((what) => of(name, mode, what).toFixed(0));
    const memory = ((of(name, 'cold', 'heap') + of(name, 'cold', 'memory')) / 1e6).toFixed(2);
    rows.push([mode, name, ...ms, of(name, mode, 'cls').toFixed(3), ...beside, (of(name, mode, 'bytes') / 1000).toFixed(1), memory]);
  }
}
table(['visit', 'page', 'FCP ms', 'LCP ms', 'painted ms', 'usable ms', 'CLS', '÷ Solid', '÷ React', 'kB on the wire', 'heap + wasm MB'], rows);
await browser.close();
for (const one of places) await one.host.stop();
