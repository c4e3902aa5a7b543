// The living picture: crisp on any screen, drawn anew when it must be, read by pointer, finger and keys, told in words.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { useSite } from './support/fixture.mjs';
import { Wellwright } from './support/wellwright.mjs';

const { open } = useSite();
const plain = Wellwright.plain;
const job = 'Brindle Wash 7';

async function start(t, options) {
  const { page } = await open(t, { viewport: { width: 1280, height: 800 }, reducedMotion: 'reduce', ...options });
  const app = new Wellwright(page);
  await app.openJob(job);
  await app.depthSlider.waitFor();
  return { page, app };
}

/** The drawing itself: how it lies on the screen, what it holds. */
const drawing = (page) => page.getByRole('group', { name: 'Well and cost on one depth scale' }).locator('canvas');
const sizes = (page) =>
  drawing(page).evaluate((canvas) => {
    const { width, height } = canvas.getBoundingClientRect();
    return { css: [width, height], pixels: [canvas.width, canvas.height] };
  });
const bytes = (page) => drawing(page).evaluate((canvas) => canvas.toDataURL());

/** Waits until the drawing is another one than before. */
const redrawn = (page, before) =>
  drawing(page).evaluate(
    (canvas, before) =>
      new Promise((resolve, reject) => {
        const started = performance.now();
        const look = () => {
          if (canvas.toDataURL() !== before) resolve();
          else if (performance.now() - started > 5000) reject(new Error('the drawing stayed as it was'));
          else requestAnimationFrame(look);
        };
        look();
      }),
    before,
  );

for (const ratio of [1, 2, 3]) {
  test(`the drawing has a pixel for each of the screen’s at ratio ${ratio}`, async (t) => {
    const { page } = await start(t, { deviceScaleFactor: ratio });
    const { css, pixels } = await sizes(page);
    assert.ok(css[0] > 500 && css[1] > 300, `${css}`);
    for (const side of [0, 1]) assert.ok(Math.abs(pixels[side] - css[side] * ratio) <= 1, `${pixels} for ${css}`);
    const inked = await drawing(page).evaluate((canvas) => {
      const { data } = canvas.getContext('2d').getImageData(0, 0, canvas.width, canvas.height);
      let count = 0;
      for (let i = 3; i < data.length; i += 4) if (data[i] > 0) count += 1;
      return count;
    });
    assert.ok(inked > 1000 * ratio, `${inked} pixels are inked`);
  });
}

test('another width of the window draws it anew, still crisp', async (t) => {
  const { page } = await start(t);
  const before = await bytes(page);
  await page.setViewportSize({ width: 1000, height: 800 });
  await redrawn(page, before);
  const { css, pixels } = await sizes(page);
  assert.deepEqual(pixels, css.map(Math.round));
  assert.ok(css[0] < 700, `${css}`);
});

test('another theme draws it anew, the system’s too', async (t) => {
  const { page, app } = await start(t);
  let before = await bytes(page);
  await page.emulateMedia({ colorScheme: 'dark' });
  await redrawn(page, before);
  await app.settings.click();
  for (const theme of ['Sun', 'Light', 'Dark']) {
    before = await bytes(page);
    await page.getByRole('radio', { name: theme }).click({ force: true });
    await redrawn(page, before);
  }
});

test('another figure draws it anew', async (t) => {
  const { page, app } = await start(t);
  await app.turn('cost');
  const before = await bytes(page);
  await app.field('Metal price, as cable').fill('14');
  await redrawn(page, before);
});

/** What the probe says: a depth, and each way's size and cost there. */
const reading = /^At ([\d,]+) ft 480 V: (?:\d+|\d\/0) AWG, \$[\d,]+ 240 V: (?:(?:\d+|\d\/0) AWG, \$[\d,]+|No size serves)$/;

async function read(page) {
  const said = page.getByText(/^At\s[\d,]+\sft$/).locator('..');
  await said.waitFor();
  const text = plain(await said.innerText());
  assert.match(text, reading);
  return Number(text.match(reading)[1].replaceAll(',', ''));
}

test('the mouse reads both ways at the depth beneath it, and takes the reading along', async (t) => {
  const { page, app } = await start(t);
  await app.curve.hover({ position: { x: 200, y: 80 } });
  const high = await read(page);
  await app.curve.hover({ position: { x: 200, y: 160 } });
  const low = await read(page);
  // Two pixels for places between pixels.
  assert.ok(Math.abs(low - 2 * high) <= 2 * (high / 80), `${high} and ${low} ft on an even scale`);
  await app.jobName.hover();
  assert.equal(await page.getByText(/^At\s[\d,]+\sft$/).count(), 0);
});

test('a finger reads it by a tap, and the reading stays', async (t) => {
  const { page, app } = await start(t, { viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true });
  await app.curve.scrollIntoViewIfNeeded();
  const { width, height } = await app.curve.boundingBox();
  await app.curve.tap({ position: { x: width / 2, y: height / 3 } });
  const first = await read(page);
  await app.curve.tap({ position: { x: width / 2, y: height / 2 } });
  assert.ok((await read(page)) > first);
});

test('keys go from step to step of the curve', async (t) => {
  const { page, app } = await start(t);
  await app.curve.focus();
  await page.keyboard.press('ArrowDown');
  const first = await read(page);
  await page.keyboard.press('ArrowDown');
  const second = await read(page);
  assert.ok(second > first && first > 620, `${first}, ${second}`);
  await page.keyboard.press('ArrowUp');
  assert.equal(await read(page), first);
  await page.keyboard.press('Escape');
  assert.equal(await page.getByText(/^At\s[\d,]+\sft$/).count(), 0);
  await app.turn('cost');
  const ends = (await app.steps.allInnerTexts()).map(plain);
  assert.ok(ends.some((row) => row.includes(` ${first} ft `)), `${first} ft ends a size`);
});

test('the well is told in words: depth, levels, bottom, both ways', async (t) => {
  const { app } = await start(t);
  const told = plain(await app.well.getAttribute('aria-label'));
  for (const words of [
    'pump at 620 ft', 'pump and motor 7.5 hp', 'static 430 ft', 'pumping 472 ft', 'bottom 760 ft',
    '480 V way: 12 AWG, $5,092', '240 V way: 6 AWG, $5,637',
  ]) {
    assert.ok(told.includes(words), `${words} is not in: ${told}`);
  }
});

test('the words in the picture follow what is typed', async (t) => {
  const { page, app } = await start(t);
  const lettered = () => page.getByRole('img', { name: /^The well drawn to scale/ }).textContent().then(plain);
  assert.match(await lettered(), /static 430 ft/);
  await app.field('Static level').fill('400');
  assert.match(await lettered(), /static 400 ft/);
  assert.match(await lettered(), /pumping 442 ft/);
  assert.match(plain(await app.well.getAttribute('aria-label')), /static 400 ft; pumping 442 ft/);
  await page.getByText('More about the well').click();
  await app.field('Well depth').fill('900');
  assert.match(await lettered(), /bottom 900 ft/);
  await app.field('Drawdown').fill('');
  assert.doesNotMatch(await lettered(), /pumping/);
  await page.getByRole('banner').getByRole('radio', { name: 'SI' }).check({ force: true });
  assert.match(await lettered(), /static 121\.9 m/);
});

test('without a price of metal nothing is drawn, and the picture says why', async (t) => {
  const { page, app } = await start(t);
  await app.turn('cost');
  await app.field('Metal price, as cable').fill('none');
  await page.getByText('The curve appears once the missing figures are in.').waitFor();
  assert.equal(await app.curve.count(), 0);
  assert.equal(await app.depthSlider.count(), 1, 'the target stays');
});
