// The lesson: its figures are those of the pages and of sums by hand, its progress is kept, it prints whole.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { useSite } from './support/fixture.mjs';
import { cutOff, tooSmall } from './support/fit.mjs';
import { fillUp } from './support/full.mjs';
import { labels } from './support/labels.mjs';
import { printed } from './support/pdf.mjs';
import { Wellwright } from './support/wellwright.mjs';

const { open, url } = useSite();
const plain = Wellwright.plain;

const words = {
  en: {
    link: /^Lesson: why twice the voltage/,
    next: 'Next',
    back: 'Back',
    lead: 'Length of the lead',
    surface: 'Surface run',
    titles: [
      'Power, volts and amps', 'Twice the volts, half the amps', 'The drop counts as a share', 'Copper by its cross-section',
      'Why it becomes a quarter', 'Wire is sold in steps', 'Heat is the other limit', 'Where it pays',
      'The price of a long lead', 'What to take home',
    ],
    right: 'Right.',
    wrong: /^Not this one\. It is /,
    question: 'Your turn',
    answers: 'Answers, worked out',
    here: 'At this depth',
    costs: 'What each way costs',
    take: 'Take the numbers of a job',
    cannot: /With these numbers the lesson can’t go on/,
    unread: /What was kept of this lesson can’t be read/,
    asks: [/one of twice the power/, /takes 22\.5 A/, /loses 1\.04 %/, /twice as long/, /And on three times the volts/, /Which wire does a lead of 1,240 ft take/, /however short the lead is/, /What does 480 V save there/, /a pulse of 720 V/, /How much of the metal/],
    cautions: [/its nameplate says which/i, /licensed electrician/, /Not a permit/, /Capacitors|capacitors/],
  },
  es: {
    link: /^Lección: por qué el doble/,
    next: 'Siguiente',
    back: 'Atrás',
    lead: 'Largo del cable',
    surface: 'Tramo en superficie',
    titles: [
      'Potencia, volts y amperes', 'El doble de volts, la mitad de amperes', 'La caída cuenta como porcentaje', 'El cobre, por su sección',
      'Por qué queda la cuarta parte', 'El conductor se vende por calibres', 'El calor es el otro límite', 'Desde dónde conviene',
      'Lo que cuesta el cable largo', 'Lo que hay que recordar',
    ],
    right: 'Correcto.',
    wrong: /^Ésa no\. Es /,
    question: 'Ahora usted',
    answers: 'Respuestas, resueltas',
    here: 'A esta profundidad',
    costs: 'Lo que cuesta cada opción',
    take: 'Tomar los números de un trabajo',
    cannot: /Con estos números la lección no puede seguir/,
    unread: /Lo que se guardó de esta lección no se puede leer/,
    asks: [/uno del doble de potencia/, /toma 22\.5 A/, /pierde 1\.04 %/, /doble de largo/, /Y con el triple de volts/, /Qué conductor lleva un cable de 1,240 ft/, /por corto que sea el cable/, /Cuánto ahorra ahí 480 V/, /un pulso de 720 V/, /parte del metal/],
    cautions: [/La placa dice cuál/, /electricista con licencia/, /No es un permiso/, /capacitores/],
  },
};

/** The page of the lesson, as a learner speaks of it. */
class Lesson {
  constructor(page, language = 'en') {
    this.page = page;
    this.words = words[language];
  }

  get heading() { return this.page.getByRole('heading', { level: 1 }); }
  get ask() { return this.page.getByRole('region', { name: this.words.question }); }
  get choices() { return this.ask.getByRole('button'); }
  get next() { return this.page.getByRole('link', { name: this.words.next, exact: true }); }
  get back() { return this.page.getByRole('link', { name: this.words.back, exact: true }); }
  title(step) { return this.page.getByRole('heading', { level: 1, name: this.words.titles[step - 1], exact: true }); }

  async go(step) {
    await this.page.evaluate((address) => { location.hash = address; }, `#/lesson/${step}`);
    await this.title(step).waitFor();
  }

  /** The large figures at the head of a step. */
  async figures() {
    return (await this.page.locator('.lesson-main .lesson-one .figure').allInnerTexts()).map(plain);
  }

  async numbers() {
    return (await this.figures()).map((text) => Number(text.replaceAll(/[^\d.-]/g, '')));
  }

  async said() {
    return plain(await this.page.locator('.lesson-main').innerText());
  }
}

async function start(t, { language = 'en', path = '#/lesson', viewport = { width: 1280, height: 900 }, ...options } = {}) {
  const opened = await open(t, { locale: labels[language].locale, path, viewport, reducedMotion: 'reduce', ...options });
  const lesson = new Lesson(opened.page, language);
  return { ...opened, lesson };
}

/** Figures stand to three digits: half of the last one is five thousandths at most. */
const shown = 0.005;
const near = (value, wanted, share, what) => assert.ok(Math.abs(value / wanted - 1) <= share, `${what}: ${value} is not ${wanted}`);

/** The figures of a row of a table, that of 240 V first: the tables tell 480 V first. */
async function row(table, name) {
  const cells = table.getByRole('row', { name }).first().getByRole('cell');
  return (await cells.allInnerTexts()).map((text) => plain(text).replace(/\s*=$/, '')).reverse();
}

for (const language of ['en', 'es']) {
  const said = words[language];

  test(`its figures are those of sums by hand, in ${language}`, async (t) => {
    const { lesson, page } = await start(t, { language });
    await lesson.title(1).waitFor();
    // 7.5 hp over 620 ft with 5 % of drop; efficiency 0.78 and power factor 0.80 are assumed for such a motor.
    const watts = (7.5 * 745.7) / 0.78;
    const amps = (volts) => watts / (Math.sqrt(3) * volts * 0.8);
    const [one] = await lesson.numbers();
    near(one, amps(230), shown, 'amps at 230 V');
    await lesson.go(2);
    const both = await lesson.numbers();
    near(both[0], amps(230), shown, 'amps at 230 V');
    near(both[1], amps(460), shown, 'amps at 460 V');
    // Table 430.250: 22 A. 6 AWG: 0.491 Ω (table 8) and 0.051 Ω (table 9, PVC) in a thousand feet.
    const share = (current, volts) => (100 * Math.sqrt(3) * current * 0.62 * (0.491 * 0.8 + 0.051 * 0.6)) / volts;
    await lesson.go(3);
    const shares = await lesson.numbers();
    near(shares[0], share(22, 240), shown, 'share on 240 V');
    near(shares[1], share(11, 480), shown, 'share on 480 V');
    // The handbooks' K of 12.9 for copper.
    const kcmil = (current, volts) => (Math.sqrt(3) * 12.9 * current * 620 * 0.8) / (0.05 * volts) / 1000;
    await lesson.go(5);
    const areas = await lesson.numbers();
    near(areas[0], kcmil(22, 240), 2 * shown, 'area at 240 V');
    near(areas[1], kcmil(11, 480), 2 * shown, 'area at 480 V');
    near(areas[1] / areas[0], 0.25, 2 * shown, 'a quarter');
    // The formula stands there with the numbers put in.
    await lesson.go(1);
    const sum = await page.locator('.lesson-main .lesson-sum').innerText();
    assert.match(plain(sum).replaceAll(' ', ''), /22\.49\d+A/);
  });

  test(`its figures are those of the pages of the same job, in ${language}`, async (t) => {
    const { lesson, page } = await start(t, { language, path: '' });
    const app = new Wellwright(page, language);
    await app.newJob({ depth: '620', power: '7.5' });
    await app.turn('cable');
    await app.field(said.surface).fill('0');
    await app.field(app.words.drop).fill('5');
    const table = app.table(said.here);
    const sizes = (await row(table, /AWG/)).map((text) => text.match(/\d+ AWG/)[0]);
    const metals = await row(table, /\blb\b/);
    const chosen = await table.innerText();
    await app.turn('cost');
    const costs = await row(app.table(said.costs), /\$/);
    const net = plain(await app.table(said.costs).innerText());
    await app.turn('power');
    await app.unfoldWays();
    const peaks = plain(await page.getByRole('main').innerText());
    await page.goto(new URL('#/', page.url()).href);
    await page.getByRole('link', { name: said.link }).click();
    await lesson.title(1).waitFor();
    await lesson.go(6);
    assert.deepEqual(await lesson.figures(), sizes);
    await lesson.go(8);
    assert.deepEqual((await lesson.figures()).map((text) => text.replace(/\.\d+$/, '')), costs.map((text) => text.replace(/\.\d+$/, '')));
    const saved = (await lesson.said()).match(/[−-]?\$[\d,]+/g);
    assert.ok(saved.some((cash) => net.includes(cash)), `${saved} not in ${net}`);
    // On the page Power stands the peak of the 240 V way; the drive for 480 V holds 720 V and has a filter built in.
    await lesson.go(9);
    const [low, high] = await lesson.figures();
    assert.ok(peaks.includes(low), `${low} is not on the page Power`);
    assert.equal(high, '1,403 V', '720 V · (1 + (3000 − 80)/(3000 + 80))');
    await lesson.go(10);
    assert.deepEqual(await lesson.figures(), metals);
    assert.match(plain(chosen), /22\.0 A/);
  });

  test(`every step has a question whose right and wrong answers say so, in ${language}`, async (t) => {
    const { lesson } = await start(t, { language });
    for (let step = 1; step <= 10; step += 1) {
      await lesson.title(step).waitFor();
      const count = await lesson.choices.count();
      assert.ok(count >= 3, `${step}: ${count} answers`);
      const verdicts = [];
      for (let place = 0; place < count; place += 1) {
        await lesson.choices.nth(place).click();
        await lesson.page.waitForFunction((at) => document.querySelectorAll('.lesson-choices button')[at].getAttribute('aria-pressed') === 'true', place);
        const text = plain(await lesson.ask.innerText());
        verdicts.push(text.includes(said.right));
        if (!verdicts.at(-1)) assert.match(plain(await lesson.ask.locator('.lesson-verdict').innerText()), said.wrong);
      }
      assert.equal(verdicts.filter(Boolean).length, 1, `step ${step}`);
      if (step < 10) await lesson.next.click();
    }
  });

  test(`the handout holds all ten steps and questions, the answers at its end, in ${language}`, async (t) => {
    const { lesson, page } = await start(t, { language });
    await lesson.title(1).waitFor();
    const sheets = { Letter: [612, 792], A4: [595, 842] };
    for (const [size, [width, height]] of Object.entries(sheets)) {
      await page.evaluate((paper) => {
        const kept = JSON.parse(localStorage.getItem('wellwright.settings') ?? '{}');
        localStorage.setItem('wellwright.settings', JSON.stringify({ ...kept, paper: paper.toLowerCase() }));
      }, size);
      await page.reload();
      await lesson.title(1).waitFor();
      const pdf = await printed(page);
      assert.ok(pdf.pages.length >= 5 && pdf.pages.length <= 7, `${size}: ${pdf.pages.length} pages`);
      const first = pdf.pages.findIndex((one) => one.text.includes(said.answers));
      assert.ok(first >= 2, `the answers begin on page ${first + 1}`);
      const [steps, answers] = [pdf.pages.slice(0, first), pdf.pages.slice(first)].map((part) => part.map((one) => one.text).join(' '));
      for (const title of said.titles) {
        assert.ok(steps.includes(title), `${title} among the steps`);
        assert.ok(answers.includes(title), `${title} among the answers`);
      }
      for (const asks of said.asks) assert.match(steps, asks);
      for (const caution of said.cautions) assert.match(pdf.text, caution);
      assert.match(answers, /44\.99\d* A/, 'the worked answer');
      for (const [place, one] of pdf.pages.entries()) {
        assert.ok(Math.abs(one.width - width) < 1 && Math.abs(one.height - height) < 1, `${one.width} × ${one.height}`);
        assert.ok(one.right < width - 30, `page ${place + 1}: text to ${one.right} of ${width}`);
        assert.match(one.text, new RegExp(`${place + 1} / ${pdf.pages.length}`));
      }
      // Nothing that is pressed stands on paper.
      assert.ok(!pdf.text.includes(said.next) && !pdf.text.includes(said.take));
    }
  });

  test(`on a phone nothing is cut off or too small for a finger, in ${language}`, async (t) => {
    const { lesson, page } = await start(t, { language, viewport: { width: 360, height: 740 } });
    for (let step = 1; step <= 10; step += 1) {
      await lesson.go(step);
      await lesson.choices.first().click();
      assert.deepEqual(await cutOff(page), [], `step ${step}`);
      assert.deepEqual(await tooSmall(page), [], `step ${step}`);
    }
  });
}

test('a lesson is walked through by keys alone', async (t) => {
  const { lesson, page } = await start(t);
  await lesson.title(1).waitFor();
  const focused = () => page.evaluate(() => document.activeElement.innerText.trim());
  await lesson.choices.first().focus();
  await page.keyboard.press('Enter');
  await lesson.ask.getByText(/^(Right\.|Not this one)/).waitFor();
  assert.equal(await lesson.choices.first().getAttribute('aria-pressed'), 'true');
  await lesson.next.focus();
  await page.keyboard.press('Enter');
  await lesson.title(2).waitFor();
  await page.waitForFunction((title) => document.activeElement?.innerText.trim() === title, words.en.titles[1]);
  // From the heading Tab goes on to the question.
  let reached = '';
  for (let press = 0; press < 12 && !/ A$/.test(reached); press += 1) {
    await page.keyboard.press('Tab');
    reached = plain(await focused());
  }
  assert.match(reached, /^[\d.]+ A$/);
  await lesson.back.focus();
  await page.keyboard.press('Enter');
  await lesson.title(1).waitFor();
});

test('step, answers and numbers are there again after a reload, and in another tab', async (t) => {
  const { lesson, page, context } = await start(t);
  await lesson.title(1).waitFor();
  await page.getByRole('textbox', { name: /^Motor power/ }).fill('10');
  await lesson.choices.nth(1).click();
  await lesson.next.click();
  await lesson.title(2).waitFor();
  await lesson.next.click();
  await lesson.title(3).waitFor();
  await page.goto(url());
  await page.goto(`${url()}#/lesson`);
  await lesson.title(3).waitFor();
  await page.reload();
  await lesson.title(3).waitFor();
  assert.equal(new URL(page.url()).hash, '#/lesson/3');
  assert.equal(await page.getByRole('textbox', { name: /^Motor power/ }).inputValue(), '10');
  await lesson.go(1);
  assert.equal(await lesson.choices.nth(1).getAttribute('aria-pressed'), 'true');
  const other = new Lesson(await context.newPage());
  await other.page.goto(`${url()}#/lesson/1`);
  await other.title(1).waitFor();
  assert.equal(await other.choices.nth(1).getAttribute('aria-pressed'), 'true');
  await other.choices.nth(0).click();
  await page.waitForFunction(() => document.querySelectorAll('.lesson-choices button')[0].getAttribute('aria-pressed') === 'true');
});

test('other numbers, units and metal change every figure; a wrong one says so and the lesson waits', async (t) => {
  const { lesson, page } = await start(t, { path: '#/lesson/5' });
  await lesson.title(5).waitFor();
  const before = await lesson.numbers();
  await page.getByRole('textbox', { name: /^Length of the lead/ }).fill('310');
  await page.waitForFunction((figure) => !document.querySelector('.lesson-one .figure').innerText.includes(figure), String(before[0]));
  near((await lesson.numbers())[0], before[0] / 2, 2 * shown, 'half the lead, half the area');
  await page.getByRole('radio', { name: 'Aluminum', exact: true }).click({ force: true });
  await page.waitForFunction(() => document.querySelector('.lesson-one .figure').innerText.startsWith('16'));
  near((await lesson.numbers())[0], (before[0] / 2) * (21.2 / 12.9), 0.01, 'aluminum');
  await page.getByRole('banner').getByRole('radio', { name: 'SI', exact: true }).click({ force: true });
  await page.locator('.lesson-main .figure').getByText('mm²').first().waitFor();
  near((await lesson.numbers())[0], (before[0] / 2) * (21.2 / 12.9) * 0.5067, 0.01, 'square millimeters');
  await page.getByRole('textbox', { name: /^Motor power/ }).fill('much');
  await page.getByText(words.en.cannot).waitFor();
  await page.reload();
  await page.getByText(words.en.cannot).waitFor();
  assert.equal(await page.getByRole('textbox', { name: /^Motor power/ }).inputValue(), 'much');
  await page.getByRole('button', { name: 'Back to the example' }).click();
  await page.getByText('An invented example').waitFor();
  assert.deepEqual((await lesson.numbers()).length, 2);
});

test('the numbers of a job are taken, and the way to its costs stands at the end', async (t) => {
  const { lesson, page } = await start(t, { path: '#/lesson/6' });
  await lesson.title(6).waitFor();
  await page.getByLabel(words.en.take).selectOption({ label: 'Brindle Wash 7' });
  // 620 ft down the well and 40 ft on the surface.
  await page.waitForFunction(() => document.getElementById('site.pump_setting').value === '660');
  assert.equal(await page.getByRole('textbox', { name: /^Motor power/ }).inputValue(), '7.5');
  await lesson.go(10);
  await page.getByRole('link', { name: 'Costs of Brindle Wash 7' }).click();
  await new Wellwright(page).heading('cost').waitFor();
  await page.getByRole('link', { name: words.en.link }).click();
  await lesson.title(10).waitFor();
});

test('what can’t be read is kept and told; a full storage is told; without storage the lesson goes on', async (t) => {
  const { lesson, page } = await start(t, { path: '' });
  await page.getByRole('link', { name: words.en.link }).waitFor();
  const odd = '{"lesson":1,"step":"four"}';
  await page.evaluate((text) => localStorage.setItem('wellwright.lesson', text), odd);
  await page.goto(`${url()}#/`);
  await page.reload();
  await page.evaluate(() => { location.hash = '#/lesson'; });
  await lesson.title(1).waitFor();
  await page.getByRole('alert').getByText(words.en.unread).waitFor();
  assert.equal(await page.evaluate(() => localStorage.getItem('wellwright.lesson')), odd, 'looking changes nothing');
  await lesson.next.click();
  await lesson.title(2).waitFor();
  const beside = () => page.evaluate(() => Object.keys(localStorage).filter((key) => key.startsWith('wellwright.lesson.unread.')).map((key) => localStorage.getItem(key)));
  assert.deepEqual(await beside(), [odd]);
  const kept = await page.evaluate(() => localStorage.getItem('wellwright.lesson'));
  await page.evaluate(fillUp);
  await page.getByRole('textbox', { name: /^Motor power/ }).fill('7.51234567');
  await page.getByRole('alert').getByText(/not saved|no room|full/i).waitFor();
  assert.equal(await page.evaluate(() => localStorage.getItem('wellwright.lesson')), kept, 'what was kept stays');
  await lesson.next.click();
  await lesson.title(3).waitFor();
  const nowhere = await open(t, {
    locale: 'en-US',
    path: '#/lesson',
    prepare: (context) => context.addInitScript(() => Object.defineProperty(window, 'localStorage', { get: () => null })),
  });
  const other = new Lesson(nowhere.page);
  await other.title(1).waitFor();
  await other.choices.first().click();
  await other.next.click();
  await other.title(2).waitFor();
});
