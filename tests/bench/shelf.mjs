// How many jobs the browser's storage holds, up to 5,000, and what the list takes with them: until it is drawn, until a
// search is answered, until a job of it is open, and until the list is back.
//   node tests/bench/shelf.mjs        (after app/serve --build)
import { startChromium } from '../browser/support/chromium.mjs';
import { manyJobs } from '../browser/support/many.mjs';
import { startSite } from '../browser/support/site.mjs';
import { median, table } from './support/numbers.mjs';

const runs = 3;
const site = await startSite();
const browser = await startChromium();

/** Runs on the page: milliseconds from an act to the frame in which something holds. */
const until = ([act, holds]) =>
  new Promise((resolve) => {
    const began = performance.now();
    const look = () => (new Function(`return ${holds}`)() ? requestAnimationFrame(() => resolve(performance.now() - began)) : requestAnimationFrame(look));
    new Function(act)();
    look();
  });

const rows = [];
for (const asked of [3, 500, 5000]) {
  const context = await browser.newContext({ viewport: { width: 360, height: 740 }, reducedMotion: 'reduce', serviceWorkers: 'block', bypassCSP: true });
  const page = await context.newPage();
  await page.goto(site.url);
  await page.locator('.jobs li').first().waitFor();
  const kept = asked === 3 ? 3 : await page.evaluate(manyJobs, asked);
  const took = { drawn: [], found: [], open: [], back: [] };
  for (let run = 0; run < runs; run += 1) {
    await page.goto('about:blank');
    await page.goto(site.url);
    await page.locator('.jobs li').first().waitFor();
    took.drawn.push(await page.evaluate(() => performance.now()));
    if (kept > 8) {
      const type = "const box = document.querySelector('input[type=search]'); box.value = 'field 17 '; box.dispatchEvent(new Event('input', { bubbles: true }));";
      took.found.push(await page.evaluate(until, [type, "document.querySelector('.jobs li h2').textContent.includes('Field 17')"]));
    }
    took.open.push(await page.evaluate(until, ["document.querySelector('.jobs li h2 a').click()", "document.querySelector('[role=slider]')"]));
    took.back.push(await page.evaluate(until, ["location.hash = '#/'", "document.querySelector('.jobs li')"]));
  }
  rows.push([kept, ...Object.values(took).map((all) => (all.length ? median(all).toFixed(0) : ''))]);
  await context.close();
}
table(['jobs', 'list drawn ms', 'search answered ms', 'job open ms', 'list back ms'], rows);
await browser.close();
await site.stop();
