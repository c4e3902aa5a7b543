// The main errand: make a job, move its depth, read the saving, come back to it.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { useSite } from './support/fixture.mjs';
import { Wellwright } from './support/wellwright.mjs';

const { open } = useSite();
const plain = Wellwright.plain;

async function start(t, options) {
  const opened = await open(t, options);
  const app = new Wellwright(opened.page);
  await app.newJobButton.waitFor();
  return { app, ...opened };
}

test('a first visit finds three demo jobs that say they are invented', async (t) => {
  const { app, page } = await start(t);
  assert.equal(await app.jobs.count(), 3);
  await page.getByText('Demo jobs: places and prices are invented.').waitFor();
});

test('a new job waits for its figures, then shows the saving; a reload keeps it', async (t) => {
  const { app, page } = await start(t);
  await app.newJob();
  assert.equal(await app.savingTitle(), 'Waiting for');
  await app.field('Pump setting').fill('620');
  await app.field('Motor power').fill('7.5');
  assert.match(await app.savingTitle(), /^480 V saves, at 620 ft$/);
  await app.jobName.fill('Alder Spring');
  await page.reload();
  assert.equal(await app.jobName.inputValue(), 'Alder Spring');
  assert.equal(await app.field('Pump setting').inputValue(), '620');
  assert.match(await app.savingTitle(), /at 620 ft$/);
  await page.getByRole('link', { name: 'Jobs' }).click();
  await app.job('Alder Spring').waitFor();
  assert.equal(await app.jobs.count(), 4);
});

test('dragging the target moves depth, figures and field together, and one undo takes it back', async (t) => {
  const { app, page } = await start(t, { viewport: { width: 1280, height: 800 } });
  await app.openJob('Brindle Wash, lot 7');
  const before = await app.savingTitle();
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

test('the target moves by keyboard, and Ctrl+Z takes it back', async (t) => {
  const { app, page } = await start(t);
  await app.openJob('Brindle Wash, lot 7');
  await app.depthSlider.focus();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowDown');
  assert.equal(await app.field('Pump setting').inputValue(), '622');
  await page.keyboard.press('PageUp');
  assert.equal(await app.field('Pump setting').inputValue(), '572');
  await page.keyboard.press('Control+z');
  assert.notEqual(await app.field('Pump setting').inputValue(), '572');
});

test('the curve is painted, and its values stand in a table too', async (t) => {
  const { app, page } = await start(t);
  await app.openJob('Brindle Wash, lot 7');
  const inked = await page.locator('canvas').first().evaluate((canvas) => {
    const { data } = canvas.getContext('2d').getImageData(0, 0, canvas.width, canvas.height);
    let count = 0;
    for (let i = 3; i < data.length; i += 4) if (data[i] > 0) count += 1;
    return count;
  });
  assert.ok(inked > 1000, `${inked} pixels`);
  const rows = (await app.steps.allInnerTexts()).map(plain);
  assert.ok(rows.some((row) => /480 V way 12 AWG 12 AWG 435 ft 709 ft/.test(row)), rows.join('\n'));
});

test('units switch without changing the job', async (t) => {
  const { app, page } = await start(t);
  await app.openJob('Brindle Wash, lot 7');
  const kept = () => page.evaluate(() => Object.entries(localStorage).filter(([key]) => key.includes('.job.')).sort());
  const before = await kept();
  await page.getByRole('radio', { name: 'SI' }).first().check({ force: true });
  assert.equal(await app.field('Pump setting').inputValue(), '188.976');
  assert.match(await app.savingTitle(), /at 189\.0 m$/);
  assert.deepEqual(await kept(), before);
});

test('jobs are renamed, duplicated, deleted and brought back', async (t) => {
  const { app, page } = await start(t);
  await app.more('Low Saddle stock tank', 'Duplicate');
  await app.job('Low Saddle stock tank, copy').waitFor();
  await app.more('Low Saddle stock tank, copy', 'Rename');
  await app.jobName.fill('High Saddle');
  await page.keyboard.press('Enter');
  await app.job('High Saddle').waitFor();
  await app.more('High Saddle', 'Delete');
  await page.getByText('Deleted “High Saddle”.').waitFor();
  assert.equal(await app.jobs.count(), 3);
  await page.getByRole('button', { name: 'Undo' }).click();
  await app.job('High Saddle').waitFor();
  await page.reload();
  assert.equal(await app.jobs.first().innerText(), 'High Saddle');
  assert.equal(await app.jobs.count(), 4);
});

test('back and forward go between the list and a job', async (t) => {
  const { app, page } = await start(t);
  await app.openJob('Brindle Wash, lot 7');
  await page.goBack();
  await app.newJobButton.waitFor();
  await page.goForward();
  await app.field('Pump setting').waitFor();
});

for (const width of [320, 360, 1280]) {
  test(`nothing runs off the side at ${width} px`, async (t) => {
    const { app, page } = await start(t, { viewport: { width, height: 740 } });
    const wide = () => page.evaluate(() => document.documentElement.scrollWidth);
    assert.ok((await wide()) <= width, `list: ${await wide()}`);
    await app.openJob('Quill Flat, north pivot');
    assert.ok((await wide()) <= width, `job: ${await wide()}`);
  });
}
