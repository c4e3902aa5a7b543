// How the curve follows a finger: drags the depth on the customer's view by touch, one step a frame, and prints frames a
// second and what a step takes of the page's thread, with the processor as it is and slowed four times.
//   node tests/bench/drag.mjs        (after app/serve --build)
import { startChromium } from '../browser/support/chromium.mjs';
import { startSite } from '../browser/support/site.mjs';

const steps = 150;
const rounds = 3;
const sizes = [[360, 740], [1280, 800]];

/** One drag down and up the rod; times in milliseconds. */
async function drag(page, client) {
  const box = await page.getByRole('slider').boundingBox();
  const x = box.x + box.width / 2;
  const y = box.y + box.height / 2;
  const touch = (type, at) => client.send('Input.dispatchTouchEvent', { type, touchPoints: type === 'touchEnd' ? [] : [{ x, y: at }] });
  const metrics = async () => Object.fromEntries((await client.send('Performance.getMetrics')).metrics.map(({ name, value }) => [name, value]));
  await page.evaluate(() => {
    window.frames_at = [];
    const note = (time) => { window.frames_at.push(time); window.noting = requestAnimationFrame(note); };
    window.noting = requestAnimationFrame(note);
  });
  const before = await metrics();
  await touch('touchStart', y);
  for (let step = 1; step <= steps; step += 1) {
    await touch('touchMove', y - 60 * Math.sin((2 * Math.PI * step) / steps));
  }
  await touch('touchEnd');
  const after = await metrics();
  const frames = await page.evaluate(() => { cancelAnimationFrame(window.noting); return window.frames_at; });
  const gaps = frames.slice(1).map((time, at) => time - frames[at]).sort((a, b) => a - b);
  const per = (name) => (1000 * (after[name] - before[name])) / steps;
  return {
    fps: (1000 * gaps.length) / gaps.reduce((sum, gap) => sum + gap, 0),
    p95: gaps[Math.floor(0.95 * gaps.length)],
    task: per('TaskDuration'),
    script: per('ScriptDuration'),
    layout: per('LayoutDuration') + per('RecalcStyleDuration'),
    layouts: (after.LayoutCount - before.LayoutCount) / steps,
  };
}

const site = await startSite();
const browser = await startChromium();
for (const [width, height] of sizes) {
  for (const slower of [1, 4]) {
    const context = await browser.newContext({ viewport: { width, height }, hasTouch: true, reducedMotion: 'reduce', serviceWorkers: 'block' });
    const page = await context.newPage();
    const client = await context.newCDPSession(page);
    await page.goto(`${site.url}#/show/demo-0`);
    await page.getByRole('slider').waitFor();
    await page.waitForTimeout(500);
    await client.send('Performance.enable');
    await client.send('Emulation.setCPUThrottlingRate', { rate: slower });
    const all = [];
    for (let round = 0; round < rounds; round += 1) all.push(await drag(page, client));
    const best = all.toSorted((a, b) => b.fps - a.fps)[Math.floor(rounds / 2)];
    const shown = Object.entries(best).map(([name, value]) => `${name} ${value.toFixed(name === 'fps' ? 0 : 2)}`).join(', ');
    console.log(`${width}×${height}, ${slower}×: ${shown}`);
    await context.close();
  }
}
await browser.close();
await site.stop();
