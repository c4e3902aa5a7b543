// Everything by keyboard alone, and the focus is seen and never lost.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { useSite } from './support/fixture.mjs';
import { Keys } from './support/keys.mjs';
import { slugs } from './support/labels.mjs';
import { Wellwright } from './support/wellwright.mjs';

const { open } = useSite();
const job = 'Brindle Wash 7';

async function start(t, { at, width = 1280 } = {}) {
  const { page } = await open(t, { viewport: { width, height: 800 }, reducedMotion: 'reduce' });
  const app = new Wellwright(page);
  await app.newJobButton.waitFor();
  if (at) {
    await app.goTo(await app.idOf(job), at);
    const sign = { pump: app.setpoint, power: app.ways, papers: app.well }[at] ?? app.depthSlider;
    await sign.waitFor();
  }
  return { page, app, keys: new Keys(page) };
}

test('a job opens by Enter, its pages are walked, and each turn puts the focus on the heading', async (t) => {
  const { app, keys } = await start(t);
  await keys.tabTo(app.job(job));
  await keys.press('Enter');
  await app.heading('water').waitFor();
  for (const [place, slug] of slugs.entries()) {
    if (place > 0) {
      const station = app.stations.getByRole('link').nth(place);
      await keys.tabTo(station, place > 1 ? 'Shift+Tab' : 'Tab');
      await keys.press('Enter');
      await keys.assertOn(app.heading(slug), `${slug} came up`);
    }
  }
});

test('on a phone the dock turns pages by keyboard, by its links and by its menu', async (t) => {
  const { app, keys } = await start(t, { at: 'water', width: 360 });
  await keys.tabTo(app.stations.getByRole('link', { name: 'On to Pump' }), 'Shift+Tab');
  await keys.press('Enter');
  await keys.assertOn(app.heading('pump'), 'Pump came up');
  await keys.tabTo(app.stations.getByRole('button'));
  await keys.press('Enter');
  await keys.tabTo(app.stations.getByRole('listitem').getByRole('link', { name: /^Cost/ }));
  await keys.press('Enter');
  await keys.assertOn(app.heading('cost'), 'Cost came up');
});

test('every figure steps by arrows, every choice and the switch turn by keys', async (t) => {
  const { page, app, keys } = await start(t, { at: 'water' });
  const inputs = page.getByRole('region', { name: 'Figures of the job' });
  const state = (control) => control.evaluate((at) => (at.type === 'checkbox' ? String(at.checked) : at.value));
  let changed = 0;
  for (const slug of ['water', 'pump', 'power', 'cable', 'cost']) {
    await app.turn(slug);
    const controls = inputs.getByRole('textbox').or(inputs.getByRole('combobox')).or(inputs.getByRole('switch'));
    await app.heading(slug).focus();
    for (let place = 0; place < (await controls.count()); place += 1) {
      const control = controls.nth(place);
      // A list of one has nothing else to choose.
      if (await control.evaluate((at) => at.tagName === 'SELECT' && at.options.length === 1)) continue;
      await keys.tabTo(control);
      const [before, kind] = [await state(control), await control.evaluate((at) => at.getAttribute('role') ?? at.id)];
      if (kind === 'switch') await keys.press('Space');
      else if (['prices.source', 'pump.curve'].includes(kind)) await page.keyboard.type('#');
      // A duty takes the place of the hours in a year; a blank one does not.
      else if (kind === 'energy.duty') await page.keyboard.type(' ');
      else await keys.press((await control.evaluate((at) => at.tagName)) === 'SELECT' ? 'ArrowDown' : 'ArrowUp');
      assert.notEqual(await state(control), before, `${slug}, ${kind}`);
      changed += 1;
    }
  }
  assert.equal(changed, 13 + 5 + 11 + 12 + 11);
});

test('folded figures open by Enter, and the setpoint on the curve moves by keys and is taken back', async (t) => {
  const { page, app, keys } = await start(t, { at: 'water' });
  const fold = page.locator('summary').filter({ hasText: 'Pressure tank' });
  await keys.tabTo(fold);
  await keys.press('Enter');
  await keys.tabTo(app.field('Tank volume'));
  await app.turn('pump');
  await keys.tabTo(app.setpoint);
  const at = () => app.setpoint.getAttribute('aria-valuetext');
  assert.match(await at(), /60\spsi/);
  await keys.press('ArrowUp');
  assert.match(await at(), /61\spsi/);
  await keys.press('PageDown');
  assert.match(await at(), /51\spsi/);
  await keys.press('Control+z');
  assert.match(await at(), /60\spsi/);
});

test('steps of a figure: an arrow one, with Shift or a page key ten', async (t) => {
  const { app, keys } = await start(t, { at: 'water' });
  const field = app.field('Pump setting');
  await keys.tabTo(field);
  for (const [key, value] of [
    ['ArrowUp', '621'], ['ArrowDown', '620'], ['Shift+ArrowUp', '630'], ['PageUp', '640'], ['PageDown', '630'],
    ['Shift+ArrowDown', '620'],
  ]) {
    await keys.press(key);
    assert.equal(await field.inputValue(), value, key);
  }
});

test('the target moves by arrows and page keys, and Ctrl+Z takes it back', async (t) => {
  const { app, keys } = await start(t, { at: 'water' });
  await keys.tabTo(app.depthSlider);
  for (const [key, value] of [['ArrowDown', '621'], ['ArrowDown', '622'], ['ArrowUp', '621'], ['PageUp', '571'], ['Home', '0']]) {
    await keys.press(key);
    assert.equal(await app.field('Pump setting').inputValue(), value, key);
    assert.equal(await app.depthSlider.getAttribute('aria-valuenow'), value, key);
  }
  await keys.press('Control+z');
  assert.equal(await app.field('Pump setting').inputValue(), '620');
  await keys.press('Control+Shift+z');
  assert.equal(await app.field('Pump setting').inputValue(), '0');
});

test('what is counted in is chosen by arrows', async (t) => {
  const { page, app, keys } = await start(t, { at: 'water' });
  await keys.tabTo(page.getByRole('radio', { name: 'Installed' }));
  await keys.press('ArrowLeft');
  assert.ok(await page.getByRole('radio', { name: 'Cable', exact: true }).isChecked());
  assert.match(Wellwright.plain(await page.getByRole('definition').first().innerText()), /of metal not bought/);
  assert.match(await app.savingTitle(), /at 620 ft/);
});

for (const [slug, sign] of [
  ['water', 'Calculation: Pumping level'],
  ['water', /^Calculation: 480 V saves/],
  ['cable', /^Calculation: Voltage drop/],
  ['cost', /^Calculation: Cable/],
]) {
  test(`a working opens by Enter and gives the focus back: ${slug}, ${sign}`, async (t) => {
    const { page, app, keys } = await start(t, { at: slug });
    const equals = page.getByRole('button', { name: sign }).first();
    for (const close of ['Escape', 'Enter']) {
      await keys.tabTo(equals, close === 'Escape' ? 'Tab' : 'Shift+Tab');
      await keys.press('Enter');
      const closes = page.getByRole('button', { name: 'Close' });
      await closes.waitFor();
      assert.equal(await keys.here.evaluate((at) => at.tagName), 'H2', 'the focus goes to the heading of the working');
      if (close === 'Enter') await keys.tabTo(closes);
      await keys.press(close);
      await app.heading(slug).waitFor();
      await keys.assertOn(equals, `closed by ${close}`);
      await keys.press('Tab');
    }
  });
}

test('on a phone the focus does not go behind a working that covers the page', async (t) => {
  const { page, app, keys } = await start(t, { at: 'water', width: 360 });
  await app.workings.first().click();
  await page.getByRole('button', { name: 'Close' }).waitFor();
  for (let stop = 0; stop < 20; stop += 1) {
    await keys.press('Tab');
    const behind = await page.evaluate(() => {
      const at = document.activeElement;
      if (at === document.body) return null;
      const { left, top, width, height } = at.getBoundingClientRect();
      const hit = document.elementFromPoint(left + width / 2, top + height / 2);
      return hit && !at.contains(hit) && !hit.contains(at) && hit.control !== at ? at.outerHTML.slice(0, 120) : null;
    });
    assert.equal(behind, null, 'the focus is on what can’t be seen');
  }
});

test('the menu of settings opens by Enter, closes by Escape, and the focus is back on its button', async (t) => {
  const { page, app, keys } = await start(t, { at: 'pump' });
  await keys.tabTo(app.settings);
  await keys.press('Enter');
  await keys.tabTo(page.getByRole('group', { name: 'Screen' }).getByRole('radio', { name: 'Auto' }));
  await keys.press('ArrowRight');
  assert.ok(await page.getByRole('radio', { name: 'Light' }).isChecked());
  await keys.press('Escape');
  await page.getByRole('group', { name: 'Screen' }).waitFor({ state: 'hidden' });
  await keys.assertOn(app.settings, 'closed');
});

test('a job is renamed, duplicated and deleted from its menu', async (t) => {
  const { page, app, keys } = await start(t);
  const choose = async (name, action) => {
    await keys.tabTo(app.row(name).getByRole('button', { name: `More for ${name}` }));
    await keys.press('Enter');
    await keys.tabTo(app.row(name).getByRole('button', { name: action }));
    await keys.press('Enter');
  };
  await choose('Low Saddle', 'Rename');
  await keys.assertOn(app.jobName, 'the name can be typed');
  await keys.press('Control+a');
  await page.keyboard.type('High Saddle');
  await keys.press('Enter');
  await app.job('High Saddle').waitFor();
  await choose('High Saddle', 'Rename');
  await page.keyboard.type('Nothing of this');
  await keys.press('Escape');
  await app.job('High Saddle').waitFor();
  await choose('High Saddle', 'Duplicate');
  await app.job('High Saddle, copy').waitFor();
  await choose('High Saddle, copy', 'Delete');
  await app.messages.getByText('Deleted').waitFor();
  await keys.tabTo(app.messages.getByRole('button', { name: 'Undo' }));
  await keys.press('Enter');
  await app.job('High Saddle, copy').waitFor();
  assert.equal(await app.jobs.count(), 4);
});

test('a name to be changed is selected, so that typing takes its place', async (t) => {
  const { page, app } = await start(t);
  await app.more('Low Saddle', 'Rename');
  await page.keyboard.type('High Saddle');
  assert.equal(await app.jobName.inputValue(), 'High Saddle');
});

test('a name that was changed gives the focus back to its row', async (t) => {
  const { page, app, keys } = await start(t);
  await app.more('Low Saddle', 'Rename');
  await app.jobName.fill('High Saddle');
  await keys.press('Enter');
  await app.job('High Saddle').waitFor();
  assert.equal(await app.row('High Saddle').locator(':focus').count(), 1, 'the focus is lost');
});

test('a job that was deleted leaves the focus in the list', async (t) => {
  const { page, app } = await start(t);
  await app.more('Low Saddle', 'Delete');
  await app.messages.getByText('Deleted').waitFor();
  assert.equal(await page.locator(':focus').count(), 1, 'the focus is lost');
});

test('another language leaves the focus where it was chosen', async (t) => {
  const { page, app } = await start(t);
  await app.set('Language', 'Español');
  await new Wellwright(page, 'es').newJobButton.waitFor();
  assert.equal(await page.locator(':focus').count(), 1, 'the focus is lost');
});

test('Ctrl+Z takes back over pages: a depth on Water and a price on Cost, from Papers', async (t) => {
  const { app, keys, page } = await start(t, { at: 'water' });
  await app.field('Pump setting').fill('700');
  await app.turn('cost');
  await app.field('Metal price, as cable').fill('12');
  await app.turn('papers');
  await page.getByRole('radio', { name: 'Engineer', exact: true }).click({ force: true });
  const figure = (name) => app.table('Figures that this rests on').getByRole('row', { name }).innerText().then(Wellwright.plain);
  assert.match(await figure(/^Pump setting/), /700 ft/);
  assert.match(await figure(/^Metal price, as cable/), / \$12\/lb/);
  await keys.press('Control+z');
  assert.match(await figure(/^Metal price, as cable/), / \$9\/lb/);
  assert.match(await figure(/^Pump setting/), /700 ft/);
  await keys.press('Control+z');
  assert.match(await figure(/^Pump setting/), /620 ft/);
  await keys.press('Control+y');
  assert.match(await figure(/^Pump setting/), /700 ft/);
});
