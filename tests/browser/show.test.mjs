// The customer's side of the table: the picture large, three numbers, the depth to move, prices to hide.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { useSite } from './support/fixture.mjs';
import { Wellwright } from './support/wellwright.mjs';

const { open } = useSite();
const plain = Wellwright.plain;
const job = 'Brindle Wash 7';

async function start(t, options) {
  const { page, ...rest } = await open(t, { viewport: { width: 1280, height: 800 }, reducedMotion: 'reduce', ...options });
  const app = new Wellwright(page);
  await app.openJob(job);
  await app.depthSlider.waitFor();
  return { page, app, ...rest };
}

async function show(t, options) {
  const all = await start(t, options);
  await all.page.getByRole('link', { name: 'Show the customer' }).click();
  await all.page.getByRole('link', { name: 'Back to the job' }).waitFor();
  await all.app.depthSlider.waitFor();
  return all;
}

const numbers = async (page) => plain(await page.getByRole('main').locator('dl').innerText());
const depth = async (app) => plain(await app.depthSlider.getAttribute('aria-valuetext'));

test('from a job’s bar it shows what the job says, and goes back to it', async (t) => {
  const { page, app } = await start(t);
  const answer = plain(await page.getByRole('region', { name: 'Answer and picture' }).locator('dl').innerText());
  await page.getByRole('link', { name: 'Show the customer' }).click();
  await page.getByRole('heading', { name: job }).waitFor();
  const shown = await numbers(page);
  for (const figure of [answer.match(/\$[\d,.]+/)[0], answer.match(/Break-even\D+(\d+)/)[1]]) assert.ok(shown.includes(figure), `${figure} in ${shown}`);
  assert.match(shown, /Copper not bought [\d.]+ ?lb/);
  assert.equal(await page.title(), `Show · ${job} · Wellwright`);
  await page.getByRole('link', { name: 'Back to the job' }).click();
  await app.heading('water').waitFor();
});

test('the depth is moved by hand and by keys on a copy; the job stays as it is', async (t) => {
  const { page, app } = await show(t);
  const kept = await app.kept();
  assert.equal(await depth(app), '620 ft');
  const before = await numbers(page);
  const handle = await app.depthSlider.boundingBox();
  const x = handle.x + handle.width / 2;
  const y = handle.y + handle.height / 2;
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x, y - 60, { steps: 4 });
  await page.mouse.up();
  const dragged = await depth(app);
  assert.ok(parseInt(dragged, 10) < 620, dragged);
  assert.notEqual(await numbers(page), before);
  await page.getByRole('button', { name: 'Back to 620 ft' }).click();
  assert.equal(await depth(app), '620 ft');
  assert.equal(await numbers(page), before);
  // Keys work from anywhere, as those of a presenter’s remote do.
  await page.locator('body').press('PageDown');
  assert.equal(await depth(app), '670 ft');
  await page.locator('body').press('ArrowUp');
  assert.equal(await depth(app), '669 ft');
  await page.locator('body').press('Escape');
  await app.heading('water').waitFor();
  assert.equal(await depth(app), '620 ft');
  assert.deepEqual(await app.kept(), kept);
  assert.equal(await app.undo.isEnabled(), false);
});

test('prices can be hidden, and stay hidden', async (t) => {
  const { page, app } = await show(t);
  const hide = page.getByRole('button', { name: 'Hide prices' });
  const everything = () => page.locator('body').evaluate((body) => [body.innerText, ...[...body.querySelectorAll('[aria-label], [aria-valuetext], title')].map((it) => `${it.getAttribute('aria-label')} ${it.getAttribute('aria-valuetext')}`)].join(' '));
  const priced = await page.locator('canvas').evaluate((canvas) => canvas.toDataURL());
  assert.match(await everything(), /\$/);
  await hide.click();
  assert.equal(await hide.getAttribute('aria-pressed'), 'true');
  assert.match(await numbers(page), /480 V costs less, at 620 ft 10 ?%/);
  assert.doesNotMatch(await everything(), /\$/);
  await page.waitForFunction((before) => document.querySelector('canvas').toDataURL() !== before, priced);
  // The level hair over the curve tells sizes alone.
  await app.curve.focus();
  await page.keyboard.press('ArrowDown');
  assert.doesNotMatch(await everything(), /\$/);
  await page.reload();
  await hide.waitFor();
  assert.equal(await hide.getAttribute('aria-pressed'), 'true');
  assert.doesNotMatch(await everything(), /\$/);
});

for (const [name, viewport, touch] of [['a phone', { width: 360, height: 740 }, true], ['a phone on its side', { width: 740, height: 360 }, true], ['a tablet', { width: 1024, height: 768 }, true], ['a desk', { width: 1280, height: 800 }, false]]) {
  test(`on ${name} numbers and picture are in sight together`, async (t) => {
    const { page, app } = await start(t, { viewport, hasTouch: touch });
    const id = await app.idOf(job).catch(() => 'demo-0');
    await page.evaluate((id) => { location.hash = `#/show/${id}`; }, id);
    await page.getByRole('link', { name: 'Back to the job' }).waitFor();
    await app.depthSlider.waitFor();
    assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth), 'nothing is wider than the screen');
    const inSight = async (what, locator) => {
      const box = await locator.boundingBox();
      assert.ok(box.y >= -1 && box.y < viewport.height && box.x >= -1 && box.x + box.width <= viewport.width + 1, `${what}: ${JSON.stringify(box)}`);
    };
    for (const figure of await page.getByRole('main').locator('dl .figure').all()) await inSight('a number', figure);
    await inSight('the handle', app.depthSlider);
    const picture = await page.locator('canvas').boundingBox();
    assert.ok(picture.height > 200 && picture.y + 200 < viewport.height, JSON.stringify(picture));
  });
}

test('the picture fills in once, and not for who asks for less motion', async (t) => {
  for (const [reducedMotion, wanted] of [['no-preference', 1], ['reduce', 0]]) {
    const { page } = await show(t, { reducedMotion });
    const moving = await page.locator('canvas').evaluate((canvas) => canvas.getAnimations().length);
    assert.ok(moving <= wanted, `${reducedMotion}: ${moving}`);
    if (wanted) {
      const name = await page.locator('canvas').evaluate((canvas) => getComputedStyle(canvas).animationName);
      assert.equal(name, 'fill-in');
    }
  }
});

test('it takes the whole screen and gives it back', async (t) => {
  const { page, app } = await show(t);
  await page.getByRole('button', { name: 'Full screen' }).click();
  await page.getByRole('button', { name: 'Leave full screen' }).waitFor();
  assert.equal(await page.evaluate(() => document.fullscreenElement === document.documentElement), true);
  await page.getByRole('link', { name: 'Back to the job' }).click();
  await app.heading('water').waitFor();
  await page.waitForFunction(() => document.fullscreenElement === null);
  assert.equal(await page.locator('html').getAttribute('data-stage'), null);
});

test('in Spanish, in meters, in the sun', async (t) => {
  const { page } = await open(t, { path: '#/show/demo-0', settings: { units: 'si', language: 'es', theme: 'sun' }, viewport: { width: 1280, height: 800 } });
  await page.getByRole('link', { name: 'Volver al trabajo' }).waitFor();
  assert.match(await numbers(page), /480 V ahorra, a 189[.,]0 m .*Cobre que no se compra 72[.,]9 ?kg/);
  assert.equal(await page.locator('html').getAttribute('data-theme'), 'sun');
});

test('a job without figures says what it waits for; one that is not there says so', async (t) => {
  const { page, app } = await open(t).then(({ page }) => ({ page, app: new Wellwright(page) }));
  await app.newJob();
  const id = page.url().split('/').at(-2);
  await page.evaluate((id) => { location.hash = `#/show/${id}`; }, id);
  await page.getByText('Waiting for').first().waitFor();
  await page.evaluate(() => { location.hash = '#/show/none'; });
  await page.getByRole('link', { name: 'All jobs' }).waitFor();
});
