// The main journeys in the other engines: a new job, its curve, a reload, no network, a newer build, two tabs, a full
// storage, tabs that are killed, print, a file, a page inside another. Chromium has tests of its own for each of them.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { after, before, describe, test } from 'node:test';
import { By, Key } from 'selenium-webdriver';
import { around, bare } from './support/around.mjs';
import { engines, startEngine } from './support/engines.mjs';
import { fillUp } from './support/full.mjs';
import { host } from './support/host.mjs';
import { readPdf } from './support/pdf.mjs';

const patience = 20_000;
const demo = 'Brindle Wash 7';
const depth = 'site.pump_setting';

/** A page in an engine, by what a user sees on it. */
class Page {
  constructor(driver, url) {
    this.driver = driver;
    this.url = url;
  }

  /** Not the driver's own reload: Firefox's goes past what the page keeps on the device. */
  async open(path = '') {
    await this.driver.get('about:blank');
    await this.driver.get(this.url + path);
  }

  run(script, ...args) { return this.driver.executeScript(script, ...args); }

  until(script, ...args) {
    return this.driver.wait(() => this.run(script, ...args).catch(() => false), patience, `waited for ${script} ${args}`);
  }

  says(text) { return this.until('return document.body.innerText.replaceAll("\\u00a0", " ").includes(arguments[0])', text); }

  press(kind, text) {
    const found = By.xpath(`//${kind}[normalize-space()='${text}']`);
    return this.driver.wait(async () => {
      const [first] = await this.driver.findElements(found);
      await first?.click();
      return Boolean(first);
    }, patience, `no ${kind} ${text}`);
  }

  async fill(id, text) {
    const field = await this.driver.wait(async () => (await this.driver.findElements(By.id(id)))[0], patience, `no ${id}`);
    await field.click();
    await field.sendKeys(Key.chord(Key.CONTROL, 'a'));
    await field.sendKeys(text);
  }

  value(id) { return this.run('return document.getElementById(arguments[0]).value', id); }

  has(id, value) { return this.until('return document.getElementById(arguments[0])?.value === arguments[1]', id, value); }

  async turn(slug) {
    await this.run("location.hash = location.hash.replace(/[^/]+$/, arguments[0])", slug);
    await this.until('return location.hash.endsWith(arguments[0]) && document.querySelector("main h2") !== null', slug);
  }

  async openJob(name = demo) {
    await this.press('a', name);
    await this.has(depth, '620');
  }

  /** Whether the curve stands there with ink in it. */
  drawn() {
    return this.until(`return [...document.querySelectorAll('main canvas')].some((canvas) => {
      const { data } = canvas.getContext('2d').getImageData(0, 0, canvas.width, canvas.height);
      let ink = 0;
      for (let at = 3; at < data.length; at += 4) if (data[at] > 0) ink += 1;
      return ink > 1000;
    })`);
  }

  /** The jobs that are kept, by name. */
  async jobs() {
    const texts = await this.run('return Object.entries(localStorage).filter(([key]) => key.includes(".job.")).map(([, text]) => text)');
    return new Map(texts.map((text) => JSON.parse(text)).map(({ job }) => [job.name, job]));
  }

  style() { return this.run('return document.querySelector("link[rel=stylesheet]").href'); }
}

for (const name of engines) {
  describe(name, () => {
    let engine;
    before(async () => {
      engine = await startEngine(name);
    });
    after(() => engine?.stop());

    async function visit(t) {
      if (engine.silent) {
        await engine.stop();
        await engine.start();
      }
      const site = await host(t, 'well/');
      const driver = await engine.session();
      t.after(() => driver.quit().catch(({ message }) => t.diagnostic(message)));
      await driver.manage().setTimeouts({ script: patience, pageLoad: 60_000 });
      const page = new Page(driver, site.url);
      await page.open();
      await page.says(demo);
      return { t, site, driver, page };
    }

    /** A test on a visit. A driver that falls silent may be no fault of the page: it is made once more, and fails where that is silent too. */
    function journey(says, make) {
      test(says, async (t) => {
        try {
          await make(await visit(t));
        } catch (error) {
          if (!engine.silent) throw error;
          t.diagnostic(error.message);
          await make(await visit(t));
        }
      });
    }

    journey('inside a page at another origin the curve says its result and is moved', async ({ t, site, driver, page }) => {
      const pages = {};
      const origin = await around(t, pages);
      pages['/'] = bare(`<script src="${site.url}embed.js"></script><wellwright-curve motor="5hp" depth="620ft"></wellwright-curve>
        <script>addEventListener('wellwright-result', ({ detail }) => { window.depth = detail.result.at_depth.depth.value; });</script>`);
      await driver.get(`${origin}/`);
      await page.until('return window.depth === 620');
      await page.run('document.querySelector("wellwright-curve").set({ depth: "400ft" })');
      await page.until('return window.depth === 400');
      // The frame has the height that it told.
      await page.until('return heard.some(({ type, height }) => type === "size" && document.querySelector("wellwright-curve").shadowRoot.firstChild.style.height === `${height}px`)');
    });

    journey('a new job is filled, its curve is drawn, and all is there after a reload', async ({ page }) => {
      await page.press('button', 'New job');
      await page.fill(depth, '700');
      await page.turn('pump');
      await page.fill('motor.power', '10');
      await page.turn('cost');
      await page.says('480 V saves');
      await page.drawn();
      const address = await page.run('return location.hash');
      await page.open(address);
      await page.says('480 V saves');
      await page.turn('water');
      await page.has(depth, '700');
    });

    journey('the program comes over the line once, for the page and for its worker', async ({ site, page }) => {
      await page.says('Opens without a network from now on.');
      assert.equal(site.asked.filter((address) => address.endsWith('.wasm')).length, 1, site.asked.join(' '));
    });

    journey('the page works with the host gone, and what is typed then is kept', async ({ site, page }) => {
      await page.says('Opens without a network from now on.');
      await site.stop();
      await page.open();
      await page.openJob();
      await page.fill(depth, '640');
      await page.turn('papers');
      await page.says('Pump power for your well');
      await page.open();
      await page.says('640 ft');
    });

    journey('a newer build waits until it is wanted, and goes without the host then', async ({ site, page }) => {
      await page.says('Opens without a network from now on.');
      const first = await page.style();
      const newer = site.deploy();
      await page.open();
      await page.says('A newer version of the page is ready.');
      assert.equal(await page.style(), first);
      await page.press('button', 'Use it now');
      await page.until('return document.querySelector("link[rel=stylesheet]").href.includes(arguments[0])', newer);
      await site.stop();
      await page.open();
      await page.says(demo);
      assert.ok((await page.style()).includes(newer));
    });

    journey('what one tab changes appears in the other', async ({ driver, page }) => {
      await page.openJob();
      const one = await driver.getWindowHandle();
      const address = await page.run('return location.hash');
      await driver.switchTo().newWindow('tab');
      const other = await driver.getWindowHandle();
      await page.open(address);
      await page.has(depth, '620');
      for (let round = 0; round < 10; round += 1) {
        const value = String(630 + round);
        await page.fill(depth, value);
        await driver.switchTo().window(round % 2 === 0 ? one : other);
        await page.has(depth, value);
      }
      assert.equal((await page.jobs()).get(demo).site.pump_setting.value, 639);
    });

    journey('storage that is full to the last letter is told, and nothing kept is torn', async ({ page }) => {
      await page.openJob();
      const before = await page.jobs();
      await page.run(`(${fillUp})()`);
      // In one go: on the way there may be a figure that takes no more room than the one before.
      await page.run(`
        const input = document.getElementById(arguments[0]);
        input.value = '641.25';
        input.dispatchEvent(new Event('input', { bubbles: true }));`, depth);
      await page.says('Not saved: the browser’s storage is full.');
      assert.deepEqual(await page.jobs(), before);
      await page.run('for (const key of Object.keys(localStorage)) if (key.startsWith("filler.")) localStorage.removeItem(key)');
      await page.fill(depth, '642');
      await page.until('return Object.values(localStorage).some((text) => text.includes(":642"))');
      assert.equal((await page.jobs()).size, 3);
    });

    journey('tabs that are closed while they save leave every job whole', async ({ driver, page }) => {
      await page.openJob();
      const address = await page.run('return location.hash');
      const home = await driver.getWindowHandle();
      for (let round = 0; round < 10; round += 1) {
        await driver.switchTo().newWindow('tab');
        await page.open(address);
        await page.until('return document.getElementById(arguments[0]) !== null', depth);
        await page.run(`
          const input = document.getElementById(arguments[0]);
          let value = 600;
          const type = () => {
            input.value = String((value += 1));
            input.dispatchEvent(new Event('input', { bubbles: true }));
            setTimeout(type);
          };
          type();`, depth);
        await driver.sleep(5 + 11 * round);
        await driver.close();
        await driver.switchTo().window(home);
        const texts = await page.run('return Object.entries(localStorage).filter(([key]) => key.includes(".job.")).map(([, text]) => text)');
        assert.equal(texts.length, 3);
        for (const text of texts) assert.ok(JSON.parse(text).sum >= 0, `round ${round}`);
      }
      await page.open();
      await page.says(demo);
      assert.equal(await page.run('return document.body.innerText.includes("can’t be read")'), false);
    });

    journey('a job goes out as a file and comes in again', async ({ page }) => {
      await page.openJob();
      await page.turn('papers');
      await page.press('h3', 'Save as files');
      await page.press('button', 'Save the file');
      const file = await page.driver.wait(() => engine.files().find((path) => path.endsWith('brindle-wash-7.json')), patience, 'no file');
      const text = await page.driver.wait(() => readFileSync(file, 'utf8'), patience, 'the file is empty');
      assert.equal(JSON.parse(text).name, demo);
      await page.run('location.hash = "#/"');
      const chooser = await page.driver.wait(async () => (await page.driver.findElements(By.css('input[type=file]')))[0], patience);
      await chooser.sendKeys(file);
      await page.says('The very same job is on this device already.');
    });

    // WebKit's driver has no command to print.
    if (name === 'firefox') {
      journey('the customer’s paper prints on one sheet', async ({ driver, page }) => {
        await page.openJob();
        await page.turn('papers');
        await page.says('Pump power for your well');
        const { pages } = await readPdf(Buffer.from(await driver.printPage(), 'base64'));
        assert.equal(pages.length, 1);
        assert.match(pages[0].text, /Brindle Wash 7/);
      });
    }
  });
}
