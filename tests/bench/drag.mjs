// How the curve follows a finger: drags the depth on the customer's view by touch, one step a frame, and prints frames a
// second and what a step takes of the page's thread, with the processor as it is and slowed four times; beside it a page
// with nothing but a canvas of the same size, drawn by hand at every step: what this machine can do at all.
//   node tests/bench/drag.mjs        (after app/serve --build)
import { startChromium } from '../browser/support/chromium.mjs';
import { startSite } from '../browser/support/site.mjs';

const steps = 150;
const rounds = 3;
const sizes = [[360, 740], [1280, 800]];

/** Runs on a bare page: a handle and a canvas, a few lines and figures drawn at every step. */
function bare() {
  document.body.innerHTML = '<canvas style="position:fixed;inset:0"></canvas><div role="slider" style="position:fixed;left:40%;top:50%;width:44px;height:44px;touch-action:none"></div>';
  const canvas = document.querySelector('canvas');
  Object.assign(canvas, { width: innerWidth, height: innerHeight });
  const pen = canvas.getContext('2d');
  document.querySelector('div').addEventListener('pointermove', ({ clientY }) => {
    pen.clearRect(0, 0, innerWidth, innerHeight);
    pen.beginPath();
    for (let at = 0; at < 60; at += 1) {
      pen.moveTo(0, clientY + at);
      pen.lineTo(innerWidth, at * 10);
    }
    pen.stroke();
    for (let at = 0; at < 30; at += 1) pen.fillText(`${clientY} ft`, at * 20, clientY + at);
  });
}

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
  for (const [slower, hand] of [[1, false], [1, true], [4, false], [4, true]]) {
    const context = await browser.newContext({ viewport: { width, height }, hasTouch: true, reducedMotion: 'reduce', serviceWorkers: 'block' });
    const page = await context.newPage();
    const client = await context.newCDPSession(page);
    await page.goto(hand ? 'about:blank' : `${site.url}#/show/demo-0`);
    if (hand) await page.evaluate(bare);
    await page.getByRole('slider').waitFor();
    await page.waitForTimeout(500);
    await client.send('Performance.enable');
    await client.send('Emulation.setCPUThrottlingRate', { rate: slower });
    const all = [];
    for (let round = 0; round < rounds; round += 1) all.push(await drag(page, client));
    const best = all.toSorted((a, b) => b.fps - a.fps)[Math.floor(rounds / 2)];
    const shown = Object.entries(best).map(([name, value]) => `${name} ${value.toFixed(name === 'fps' ? 0 : 2)}`).join(', ');
    console.log(`${width}×${height}, ${slower}×${hand ? ', by hand' : ''}: ${shown}`);
    await context.close();
  }
}
await browser.close();
await site.stop();
