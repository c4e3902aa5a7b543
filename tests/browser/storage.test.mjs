// What is kept: two tabs, a storage that was altered or cleared, a whole device as one file, a failure of the program.
import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { test } from 'node:test';
import { useSite } from './support/fixture.mjs';
import { fillUp } from './support/full.mjs';
import { Wellwright } from './support/wellwright.mjs';

const { open, url } = useSite();
const demo = 'Brindle Wash 7';

async function start(t, options) {
  const { page, context, problems } = await open(t, { locale: 'en-US', ...options });
  const app = new Wellwright(page);
  await app.newJobButton.waitFor();
  return { page, context, app, problems };
}

/** A second tab of the same browser. */
async function another(context) {
  const page = await context.newPage();
  await page.goto(url());
  const app = new Wellwright(page);
  await app.newJobButton.waitFor();
  return { page, app };
}

/** Runs on the page: adds one to a field whenever the other tab has; the parity tells whose turn it is. */
const takeTurns = ([id, mine, last]) =>
  new Promise((resolve) => {
    const input = document.getElementById(id);
    // Timers of a tab out of sight are slowed down, messages are not.
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      const value = Number(input.value.replaceAll(',', ''));
      if (value >= last) return resolve(value);
      if (value % 2 === mine) {
        input.value = String(value + 1);
        input.dispatchEvent(new Event('input', { bubbles: true }));
      }
      return port2.postMessage(0);
    };
    port2.postMessage(0);
  });

test('what one tab changes appears in the other, a thousand rounds, and nothing is lost', async (t) => {
  const { context, app: one } = await start(t);
  const { app: other } = await another(context);
  for (const app of [one, other]) await app.openJob(demo);
  const ends = await Promise.all([one, other].map((app, mine) => app.page.evaluate(takeTurns, ['site.pump_setting', mine, 1620])));
  assert.deepEqual(ends, [1620, 1620]);
  // Another figure in each: both stand at the end.
  await one.field('Static level').fill('431');
  await other.page.waitForFunction(() => document.getElementById('site.static_level').value === '431');
  await other.field('Drawdown').fill('43');
  await one.page.waitForFunction(() => document.getElementById('site.drawdown').value === '43');
  const jobs = (await one.kept()).map(([, text]) => JSON.parse(text).job);
  assert.equal(jobs.length, 3, 'no copy was needed');
  const { site } = jobs.find((job) => job.name === demo);
  assert.deepEqual([site.pump_setting.value, site.static_level.value, site.drawdown.value], [1620, 431, 43]);
});

test('two tabs that open at once for the first time keep each demo job once', async (t) => {
  const { context } = await start(t);
  const site = url();
  await (await context.pages())[0].evaluate(() => localStorage.clear());
  const tabs = await Promise.all([context.newPage(), context.newPage(), context.newPage()]);
  await Promise.all(tabs.map((tab) => tab.goto(site)));
  for (const tab of tabs) {
    await tab.reload();
    const app = new Wellwright(tab);
    await app.job(demo).waitFor();
    assert.equal(await app.jobs.count(), 3);
  }
});

test('the list stands in one order in all tabs', async (t) => {
  const { context, app: one } = await start(t);
  const { app: other } = await another(context);
  const names = async (app) => (await app.jobs.allInnerTexts()).map(Wellwright.plain);
  await one.more('Low Saddle', 'Delete');
  await other.job('Low Saddle').waitFor({ state: 'detached' });
  await one.messages.getByRole('button', { name: 'Undo' }).click();
  await other.job('Low Saddle').waitFor();
  await other.page.waitForFunction(() => [...document.querySelectorAll('main h2 a')][1]?.innerText.trim() === 'Low Saddle');
  assert.deepEqual(await names(other), await names(one));
});

test('storage that is full to the last letter is told, and nothing kept is torn', async (t) => {
  const { page, app } = await start(t);
  await app.openJob(demo);
  const before = await app.kept();
  await page.evaluate(fillUp);
  await app.field('Pump setting').fill('641.25');
  await app.alerts.filter({ hasText: 'Not saved' }).waitFor();
  assert.match(await app.savingTitle(), /at 641 ft$/);
  assert.deepEqual(await app.kept(), before);
  await page.evaluate(() => {
    for (const key of Object.keys(localStorage)) if (key.startsWith('filler.')) localStorage.removeItem(key);
  });
  await app.field('Pump setting').fill('642');
  await app.alerts.filter({ hasText: 'Not saved' }).waitFor({ state: 'detached' });
  assert.ok((await app.kept()).some(([, text]) => text.includes('"value":642')));
});

test('a job that another tab adds or deletes comes and goes', async (t) => {
  const { context, app: one } = await start(t);
  const { app: other } = await another(context);
  await one.newJob({ depth: '300' });
  await other.jobs.nth(3).waitFor();
  await other.more('Low Saddle', 'Delete');
  await one.page.getByRole('banner').getByRole('link', { name: 'Jobs' }).click();
  await one.job('Low Saddle').waitFor({ state: 'detached' });
  assert.equal(await one.jobs.count(), 3);
});

test('what two tabs write in the same moment is kept twice, and that is said', async (t) => {
  const { page, app } = await start(t);
  await app.openJob(demo);
  // Another tab wrote, and this one was not told yet.
  await page.evaluate((demo) => {
    const [key, text] = Object.entries(localStorage).find(([key, text]) => key.includes('.job.') && text.includes(demo));
    const entry = JSON.parse(text);
    entry.job.site.pump_setting.value = 555;
    delete entry.sum;
    localStorage.setItem(key, JSON.stringify(entry));
  }, demo);
  await app.field('Static level').fill('432');
  await app.messages.getByText('was changed in two tabs at once. Both are kept').waitFor();
  const jobs = (await app.kept()).map(([, text]) => JSON.parse(text).job);
  const depth = (name) => jobs.find((job) => job.name === name)?.site.pump_setting.value;
  assert.deepEqual([depth(demo), depth(`${demo}, from another tab`)], [620, 555]);
  assert.equal(jobs.find((job) => job.name === demo).site.static_level.value, 432);
});

test('an entry that something altered is set aside, and what stood there before can be had', async (t) => {
  const { page, app } = await start(t);
  await app.openJob(demo);
  await app.field('Pump setting').fill('640');
  await page.evaluate(() => {
    const [key, text] = Object.entries(localStorage).find(([key, text]) => key.includes('.job.') && text.includes('"pump_setting":{"unit":"ft","value":640'));
    localStorage.setItem(key, text.replace('"value":640', '"value":460'));
  });
  await page.goto(url());
  await page.reload();
  await page.getByText('1 stored job can’t be read.').waitFor();
  await page.getByText(/Can’t be read: it is not what was written/).waitFor();
  await page.getByRole('button', { name: 'Add it as it stood before' }).click();
  await app.openJob(demo);
  assert.equal(await app.field('Pump setting').inputValue(), '620');
});

test('a whole device goes into one file and comes back', async (t) => {
  const { page, app } = await start(t, { acceptDownloads: true });
  await app.openJob(demo);
  await app.field('Pump setting').fill('about 600');
  await page.goto(`${url()}?x`);
  await app.newJobButton.waitFor();
  await app.settings.click();
  const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Save everything as one file' }).click()]);
  assert.equal(download.suggestedFilename(), 'wellwright-all-jobs.json');
  const text = await readFile(await download.path(), 'utf8');

  const { page: there, app: fresh } = await start(t);
  for (const name of [demo, 'Low Saddle', 'Quill Flat']) await fresh.more(name, 'Delete');
  await fresh.fileChooser.setInputFiles({ name: 'all.json', mimeType: 'application/json', buffer: Buffer.from(text) });
  await there.getByRole('button', { name: 'Add 3 jobs' }).click();
  await fresh.openJob(demo);
  // What was no number yet is there too.
  assert.equal(await fresh.field('Pump setting').inputValue(), 'about 600');
  await there.getByRole('banner').getByRole('link', { name: 'Jobs' }).click();
  await fresh.fileChooser.setInputFiles({ name: 'all.json', mimeType: 'application/json', buffer: Buffer.from(text) });
  await there.getByRole('button', { name: 'Add 0 jobs' }).waitFor();
});

test('storage that is cleared under the page loses nothing that is on the screen', async (t) => {
  const { page, app } = await start(t);
  await app.openJob(demo);
  await page.evaluate(() => localStorage.clear());
  await app.field('Pump setting').fill('655');
  const [[, text]] = await app.kept();
  assert.equal(JSON.parse(text).job.site.pump_setting.value, 655);
});

test('after a failure of the program the jobs are saved as one file, and the page starts again', async (t) => {
  const { page, app, problems } = await start(t, { acceptDownloads: true });
  await app.openJob(demo);
  await app.field('Pump setting').fill('633');
  await page.evaluate(() => setTimeout(() => { throw new WebAssembly.RuntimeError('unreachable'); }));
  await page.getByRole('heading', { name: 'Something in this page failed' }).waitFor();
  assert.equal(await app.field('Pump setting').isVisible(), false);
  const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Save everything as one file' }).click()]);
  const { wellwright_backup: version, entries } = JSON.parse(await readFile(await download.path(), 'utf8'));
  assert.equal(version, 1);
  assert.ok(Object.values(entries).some((text) => text.includes(':633')));
  await page.getByRole('button', { name: 'Start again' }).click();
  await app.heading('water').waitFor();
  assert.equal(await app.field('Pump setting').inputValue(), '633');
  problems.splice(0);
});

/** Runs on the page: keys as fast as they go. */
const typeOn = () => {
  const input = document.getElementById('site.pump_setting');
  let value = 600;
  const type = () => {
    input.value = String((value += 1));
    input.dispatchEvent(new Event('input', { bubbles: true }));
    setTimeout(type);
  };
  type();
};

function assertWhole(kept, round) {
  assert.equal(kept.length, 3, `round ${round}`);
  for (const [, text] of kept) assert.ok(JSON.parse(text).sum >= 0, `round ${round}`);
}

test('tabs that are killed while they save leave every job whole', async (t) => {
  const { context, app } = await start(t);
  const id = await app.idOf(demo);
  for (let round = 0; round < 20; round += 1) {
    const tab = await context.newPage();
    await tab.goto(`${url()}#/job/${id}/water`);
    await tab.getByRole('textbox', { name: 'Pump setting' }).focus();
    await tab.evaluate(typeOn);
    await new Promise((resolve) => setTimeout(resolve, 5 + (round % 10) * 7));
    await tab.close({ runBeforeUnload: false });
    assertWhole(await app.kept(), round);
  }
  await app.page.reload();
  await app.job(demo).waitFor();
  assert.equal(await app.alerts.count(), 0);
});

test('nine times twenty frames that are gone amid their keys leave every job whole', async (t) => {
  const { context, page, app } = await start(t);
  const address = `${url()}#/job/${await app.idOf(demo)}/water`;
  // A document of the same host without the page's own policy, which lets no frame in.
  const host = await context.newPage();
  await host.goto(`${url()}manifest.webmanifest`);
  for (let round = 0; round < 20; round += 1) {
    await host.evaluate((src) => {
      for (let count = 0; count < 9; count += 1) document.body.append(Object.assign(document.createElement('iframe'), { src: `${src.replace('#', `?${count}#`)}` }));
    }, address);
    const frames = () => host.frames().slice(1);
    await Promise.all(frames().map((frame) => frame.getByRole('textbox', { name: 'Pump setting' }).waitFor()));
    for (let left = 9; left > 0; left -= 1) {
      await frames()[0].evaluate(typeOn);
      await new Promise((resolve) => setTimeout(resolve, 3 + left * 5));
      await host.evaluate(() => document.querySelector('iframe').remove());
      assertWhole(await app.kept(), round);
    }
  }
  await page.reload();
  await app.job(demo).waitFor();
  assert.equal(await app.alerts.count(), 0);
});
