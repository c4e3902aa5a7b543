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
/** Runs on the page: what another tab writes into a job, of which this one is not told yet. */
function writtenElsewhere(name) {
  const [key, text] = Object.entries(localStorage).find(([key, text]) => key.includes('.job.') && text.includes(name));
  const entry = JSON.parse(text);
  entry.job.site.pump_setting.value = 555;
  delete entry.sum;
  localStorage.setItem(key, JSON.stringify(entry));
}

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

test('a job that found no room is told of until it is kept, whatever else is kept meanwhile', async (t) => {
  const { page, app } = await start(t);
  const id = await app.idOf(demo);
  const other = await app.idOf('Low Saddle');
  await app.openJob(demo);
  await page.evaluate(fillUp);
  const long = 'A name that is much longer than the one before, and finds no room any more';
  await app.jobName.fill(long);
  const told = app.alerts.filter({ hasText: 'Not saved' });
  await told.waitFor();
  // Another job grows shorter and is kept: the first one still is not.
  await app.goTo(other, 'water');
  await app.jobName.fill('L');
  await page.waitForTimeout(200);
  assert.ok((await app.kept()).some(([, text]) => text.includes('"name":"L"')));
  assert.equal(await told.isVisible(), true);
  assert.equal((await app.kept()).some(([, text]) => text.includes(long)), false);
  // Room is made by deleting a third: the first is kept by itself.
  await page.evaluate(() => { location.hash = '#/'; });
  await app.more('Quill Flat', 'Delete');
  await told.waitFor({ state: 'detached' });
  const [, text] = (await app.kept()).find(([key]) => key.endsWith(id));
  assert.equal(JSON.parse(text).job.name, long);
});

test('what another tab wrote is not written over where there is no room to keep it beside', async (t) => {
  const { page, app } = await start(t);
  await app.openJob(demo);
  await page.evaluate(writtenElsewhere, demo);
  await page.evaluate(fillUp);
  const before = await app.kept();
  await app.field('Static level').fill('432');
  await app.alerts.filter({ hasText: 'Not saved' }).waitFor();
  assert.deepEqual(await app.kept(), before);
  assert.equal(await app.field('Static level').inputValue(), '432');
});

test('a job that is replaced stays where the new one finds no room', async (t) => {
  const { page, app } = await start(t);
  const names = () => app.jobs.allInnerTexts();
  const before = await names();
  const [[, text]] = (await app.kept()).filter(([, text]) => text.includes(demo));
  const { job } = JSON.parse(text);
  job.note = 'x'.repeat(60_000);
  await page.evaluate(fillUp);
  await app.fileChooser.setInputFiles({ name: 'large.json', mimeType: 'application/json', buffer: Buffer.from(JSON.stringify(job)) });
  await page.getByRole('radio', { name: 'Replace the one here' }).click({ force: true });
  await page.getByRole('button', { name: 'Add 1 job' }).click();
  await page.getByText('was not replaced').waitFor();
  assert.deepEqual(await names(), before);
  const [[, now]] = (await app.kept()).filter(([, text]) => text.includes(demo));
  assert.deepEqual(JSON.parse(now).job, JSON.parse(text).job);
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
  await page.evaluate(writtenElsewhere, demo);
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

test('a file of a whole device may be large, and takes no price book’s place', async (t) => {
  const { page, app } = await start(t);
  const book = (price) => `item,kind,metal,size,unit,price\nname,Mine,,,,\ncurrency,USD,,,,\ndate,2026-11-01,,,,\nmetal,,copper,,$/lb,${price}\n`;
  const entries = (price, note) => ({ 'wellwright.book.a': book(price), 'wellwright.book.b': 'no book', 'wellwright.seller': '{"name":"Pumps and Wells"}', 'wellwright.order': '[]', 'filler': note });
  const open = (price, note) => app.fileChooser.setInputFiles({ name: 'all.json', mimeType: 'application/json', buffer: Buffer.from(JSON.stringify({ wellwright_backup: 1, entries: entries(price, note) })) });
  const books = () => page.evaluate(() => Object.entries(localStorage).filter(([key]) => key.startsWith('wellwright.book.')).map(([, text]) => text));
  await open(5, 'x'.repeat(3_000_000));
  await page.waitForFunction(() => Object.keys(localStorage).filter((key) => key.startsWith('wellwright.book.')).length === 2);
  assert.deepEqual((await books()).sort(), [book(5), 'no book'].sort());
  assert.match(await page.evaluate(() => localStorage.getItem('wellwright.seller')), /Pumps and Wells/);
  // The same again: nothing new. Another of the same name: both.
  await open(5, '');
  await app.messages.getByText('Nothing in it is new').waitFor();
  assert.equal((await books()).length, 2);
  await open(6, '');
  await page.waitForFunction(() => Object.keys(localStorage).filter((key) => key.startsWith('wellwright.book.')).length === 3);
  const all = await books();
  assert.ok(all.includes(book(5)) && all.some((text) => text.includes('Mine 2')), all.join('\n'));
});

test('many jobs of one text are asked about, too many are refused', async (t) => {
  const { page, app } = await start(t);
  const open = (jobs) => app.fileChooser.setInputFiles({ name: 'many.json', mimeType: 'application/json', buffer: Buffer.from(JSON.stringify(jobs)) });
  await open(Array.from({ length: 501 }, () => ({ schema: 1 })));
  await app.messages.getByText('it holds 501 jobs, and at most 500 are read at once').waitFor();
  assert.equal(await app.jobs.count(), 3);
  await open([...Array.from({ length: 60 }, () => ({ schema: 1, name: 7 })), { schema: 1, name: 'One' }, { schema: 1, name: 'Two' }]);
  await page.getByText('40 more can’t be read.').waitFor();
  assert.equal(await app.jobs.count(), 3);
  await page.getByRole('button', { name: 'Add 2 jobs' }).click();
  await app.job('Two').waitFor();
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

test('a program that fails before it has made the page leaves a way out', async (t) => {
  const prepare = (context) => context.addInitScript(() => {
    // What stands for the program fails at once.
    WebAssembly.instantiate = () => { setTimeout(() => { throw new RangeError('Maximum call stack size exceeded'); }); return new Promise(() => {}); };
    WebAssembly.instantiateStreaming = WebAssembly.instantiate;
    localStorage.setItem('wellwright.job.1', '{"job":{"schema":1,"name":"Well"}}');
  });
  const { page, problems } = await open(t, { prepare, acceptDownloads: true });
  await page.getByRole('heading', { name: 'Something in this page failed' }).waitFor();
  const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Save everything as one file' }).click()]);
  assert.match(await readFile(await download.path(), 'utf8'), /Well/);
  await page.getByRole('button', { name: 'Start again' }).click();
  await page.getByRole('heading', { name: 'Something in this page failed' }).waitFor();
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
