// The main errand: make a job, move its depth, read the saving, come back to it.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { useSite } from './support/fixture.mjs';
import { manyJobs } from './support/many.mjs';
import { Wellwright } from './support/wellwright.mjs';

const { open } = useSite();
const plain = Wellwright.plain;
const job = 'Brindle Wash 7';

async function start(t, options) {
  const opened = await open(t, options);
  const app = new Wellwright(opened.page);
  await app.newJobButton.waitFor();
  return { app, ...opened };
}

test('a first visit finds three demo jobs that say they are invented', async (t) => {
  const { app, page } = await start(t);
  assert.deepEqual(await app.jobs.allInnerTexts(), ['Brindle Wash 7', 'Low Saddle', 'Quill Flat']);
  await page.getByText('Demo jobs: places and prices are invented.').waitFor();
});

test('a new job waits for its figures, then shows the saving; a reload keeps it', async (t) => {
  const { app, page } = await start(t);
  await app.newJob();
  assert.equal(await app.savingTitle(), 'Waiting for');
  await app.field('Pump setting').fill('620');
  await page.getByRole('region', { name: 'Answer and picture' }).getByRole('link', { name: 'Motor power' }).click();
  await app.field('Motor power').fill('7.5');
  assert.match(await app.savingTitle(), /^480 V saves, at 620 ft$/);
  await app.jobName.fill('Alder Spring');
  await page.reload();
  assert.equal(await app.jobName.inputValue(), 'Alder Spring');
  assert.equal(await app.field('Motor power').inputValue(), '7.5');
  await app.turn('water');
  assert.equal(await app.field('Pump setting').inputValue(), '620');
  assert.match(await app.savingTitle(), /at 620 ft$/);
  await page.getByRole('banner').getByRole('link', { name: 'Jobs' }).click();
  await app.job('Alder Spring').waitFor();
  assert.equal(await app.jobs.count(), 4);
});

test('the seven pages are walked one after the other, and each shows the same job', async (t) => {
  const { app, page } = await start(t);
  await app.openJob(job);
  for (const slug of ['pump', 'power', 'cable', 'cost', 'start-up']) {
    await app.turn(slug);
    assert.match(await app.savingTitle(), /^480 V saves, at 620 ft$/, slug);
    assert.equal(await app.stations.getByRole('link', { name: /25\sgpm, 648\sft/ }).count(), 1);
  }
  await app.turn('papers');
  await page.getByRole('region', { name: 'The paper as it prints' }).getByText('$546').first().waitFor();
});

test('dragging the target moves depth, figures and field together, and one undo takes it back', async (t) => {
  const { app, page } = await start(t, { viewport: { width: 1280, height: 800 } });
  await app.openJob(job);
  const before = await app.savingTitle();
  await app.depthSlider.hover();
  const box = await app.depthSlider.boundingBox();
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x, y + 40, { steps: 8 });
  await page.mouse.up();
  const depth = Number(await app.field('Pump setting').inputValue());
  assert.ok(depth > 640 && depth < 1000, `depth ${depth}`);
  assert.match(await app.savingTitle(), new RegExp(`at ${depth} ft$`));
  assert.equal(await app.depthSlider.getAttribute('aria-valuenow'), String(depth));
  await app.undo.click();
  assert.equal(await app.savingTitle(), before);
  await app.redo.click();
  assert.match(await app.savingTitle(), new RegExp(`at ${depth} ft$`));
});

test('on a phone two large keys move the depth by ten feet', async (t) => {
  const { app, page } = await start(t, { viewport: { width: 360, height: 740 } });
  await app.openJob(job);
  await page.getByRole('button', { name: '10 ft deeper' }).click();
  assert.match(await app.savingTitle(), /at 630 ft$/);
  await page.getByRole('button', { name: '10 ft shallower' }).click();
  await page.getByRole('button', { name: '10 ft shallower' }).click();
  assert.match(await app.savingTitle(), /at 610 ft$/);
  await app.undo.click();
  assert.match(await app.savingTitle(), /at 620 ft$/);
});

test('counting in the cable alone changes what is saved, and both tell what they count', async (t) => {
  const { app, page } = await start(t);
  await app.openJob(job);
  const saved = () => page.getByRole('definition').first().innerText().then(plain);
  assert.equal(await saved(), '$546 480 V: $1,446 off the cable, $900 more equipment');
  await page.getByRole('group', { name: 'Count in' }).getByRole('radio', { name: 'Cable', exact: true }).check({ force: true });
  assert.match(await saved(), /^\$1,446 160\.\d lb of metal not bought$/);
});

test('the steps of the curve stand in a table too', async (t) => {
  const { app } = await start(t);
  await app.openJob(job);
  await app.turn('cost');
  const rows = (await app.steps.allInnerTexts()).map(plain);
  assert.ok(rows.some((row) => /480 V 12 AWG 12 AWG 435 ft 709 ft/.test(row)), rows.join('\n'));
});

test('units switch without changing the job', async (t) => {
  const { app, page } = await start(t);
  await app.openJob(job);
  const before = await app.kept();
  await page.getByRole('banner').getByRole('radio', { name: 'SI' }).check({ force: true });
  assert.equal(await app.field('Pump setting').inputValue(), '188.98');
  assert.match(await app.savingTitle(), /at 189\.0 m$/);
  assert.deepEqual(await app.kept(), before);
});

test('on a phone units switch in the menu of settings', async (t) => {
  const { app } = await start(t, { viewport: { width: 360, height: 740 } });
  await app.openJob(job);
  await app.set('Units', 'SI');
  assert.match(await app.savingTitle(), /at 189\.0 m$/);
});

test('jobs are renamed, duplicated, deleted and brought back', async (t) => {
  const { app, page } = await start(t);
  await app.more('Low Saddle', 'Duplicate');
  await app.job('Low Saddle, copy').waitFor();
  await app.more('Low Saddle, copy', 'Rename');
  await app.jobName.fill('High Saddle');
  await page.keyboard.press('Enter');
  await app.job('High Saddle').waitFor();
  await app.more('High Saddle', 'Delete');
  await page.getByText('Deleted “High Saddle”.').waitFor();
  assert.equal(await app.jobs.count(), 3);
  await app.messages.getByRole('button', { name: 'Undo' }).click();
  await app.job('High Saddle').waitFor();
  await page.reload();
  assert.equal(await app.jobs.first().innerText(), 'High Saddle');
  assert.equal(await app.jobs.count(), 4);
});

test('with every job deleted the list says what a job is and offers the demo jobs', async (t) => {
  const { app, page } = await start(t);
  for (const name of ['Brindle Wash 7', 'Low Saddle', 'Quill Flat']) await app.more(name, 'Delete');
  await page.getByRole('heading', { name: 'No jobs on this device yet' }).waitFor();
  await page.reload();
  await page.getByRole('button', { name: 'Add the demo jobs' }).click();
  assert.deepEqual(await app.jobs.allInnerTexts(), ['Brindle Wash 7', 'Low Saddle', 'Quill Flat']);
});

test('a list of hundreds is searched by names and notes, and drawn a hundred at a time', async (t) => {
  const { app, page } = await start(t);
  const box = page.getByRole('searchbox', { name: 'Search names and notes' });
  assert.equal(await box.count(), 0);
  await page.evaluate(manyJobs, 250);
  await page.reload();
  await box.waitFor();
  assert.equal(await app.jobs.count(), 100);
  await page.getByRole('button', { name: 'Show 100 more' }).click();
  await page.getByRole('button', { name: 'Show 50 more' }).click();
  assert.equal(await app.jobs.count(), 250);
  assert.equal(await page.getByRole('button', { name: /^Show \d+ more$/ }).count(), 0);
  await box.fill('field 21');
  await page.getByRole('status').filter({ hasText: '13 of 250 jobs' }).waitFor();
  assert.equal(await app.jobs.count(), 13);
  await box.fill('brindle demo');
  await page.getByRole('status').filter({ hasText: '1 of 250 jobs' }).waitFor();
  assert.deepEqual(await app.jobs.allInnerTexts(), [job]);
  await box.fill('<b>');
  await page.getByRole('status').filter({ hasText: 'No job has these words.' }).waitFor();
  assert.equal(await app.jobs.count(), 0);
  await page.getByText('250 jobs, all kept on this device.').waitFor();
  await box.fill('');
  await app.job(job).click();
  await page.getByRole('slider').waitFor();
});

test('a search does not lock away what it hides when the list grows short', async (t) => {
  const { app, page } = await start(t);
  await page.evaluate(manyJobs, 8);
  await page.reload();
  const box = page.getByRole('searchbox', { name: 'Search names and notes' });
  await box.fill('field 3');
  await page.getByRole('status').filter({ hasText: '1 of 8 jobs' }).waitFor();
  await app.row('Field 3').getByRole('button', { name: 'More for Field 3' }).click();
  await page.getByRole('button', { name: 'Delete', exact: true }).click();
  await page.getByRole('status').filter({ hasText: 'No job has these words.' }).waitFor();
  await box.fill('');
  await app.job(job).waitFor();
  assert.equal(await app.jobs.count(), 7);
});
