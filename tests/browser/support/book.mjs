// The price book of a job's Cost page, as a user speaks of it.
import assert from 'node:assert/strict';

const labels = {
  en: {
    title: 'Prices',
    inUse: 'Price book in use',
    table: 'Prices one by one',
    exchange: 'New book, import, export',
    about: 'About the book',
    keep: 'Keep on this device',
    import: 'Import CSV',
    export: 'Export CSV',
  },
  es: {
    title: 'Precios',
    inUse: 'Lista de precios en uso',
    table: 'Precio por precio',
    exchange: 'Lista nueva, importar, exportar',
    about: 'Sobre la lista',
    keep: 'Guardar en este dispositivo',
    import: 'Importar CSV',
    export: 'Exportar CSV',
  },
};

export class PriceBook {
  constructor(page, language = 'en') {
    this.page = page;
    this.words = labels[language];
  }

  get prices() { return this.page.getByRole('region', { name: this.words.title, exact: true }); }
  get choice() { return this.page.getByRole('combobox', { name: this.words.inUse }); }
  get keepButton() { return this.button(this.words.keep); }
  get importer() { return this.prices.getByLabel(this.words.import); }
  get refusal() { return this.prices.getByRole('alert').filter({ hasText: /./ }); }
  button(name) { return this.prices.getByRole('button', { name, exact: true }); }
  /** A price by what it is for, as `Voltage-doubling drive, fixed part`. */
  price(name) { return this.prices.getByRole('textbox', { name, exact: true }); }

  /** The book that is chosen. */
  chosen() { return this.choice.locator('option:checked').innerText(); }

  /** Opens the table and groups of it. */
  async unfold(...groups) {
    const table = this.page.locator('summary').filter({ hasText: this.words.table });
    if (!(await table.evaluate((summary) => summary.parentElement.open))) await table.click();
    for (const group of groups) {
      const fold = this.prices.locator('summary').filter({ hasText: group });
      await fold.waitFor();
      if (!(await fold.evaluate((summary) => summary.parentElement.open))) await fold.click();
    }
  }

  /** Opens what makes a book, takes one and gives one out. */
  async unfoldExchange() {
    const fold = this.page.locator('summary').filter({ hasText: this.words.exchange });
    if (!(await fold.evaluate((summary) => summary.parentElement.open))) await fold.click();
  }

  /** Types a price and leaves the field. */
  async type(name, text) {
    await this.price(name).fill(text);
    await this.price(name).press('Tab');
  }

  async importText(text, name = 'prices.csv') {
    await this.unfoldExchange();
    await this.importer.setInputFiles({ name, mimeType: 'text/csv', buffer: Buffer.from(text) });
  }

  /** Takes a named table over, and waits until the job holds it. */
  async takeOver(text) {
    await this.importText(text);
    for (let tries = 100; tries > 0 && (await this.ofJob()) !== text; tries -= 1) await this.page.waitForTimeout(50);
    assert.equal(await this.ofJob(), text);
  }

  /** The text of the file that the book is given out as. */
  async exported() {
    await this.unfoldExchange();
    const [download] = await Promise.all([this.page.waitForEvent('download'), this.button(this.words.export).click()]);
    const chunks = [];
    for await (const chunk of await download.createReadStream()) chunks.push(chunk);
    return { name: download.suggestedFilename(), text: Buffer.concat(chunks).toString() };
  }

  /** Texts of the books that are kept. */
  kept() {
    return this.page.evaluate(() =>
      Object.entries(localStorage).filter(([key]) => key.startsWith('wellwright.book.')).map(([, text]) => text));
  }

  /** The table that the open job holds; empty for the built-in book. */
  ofJob() {
    return this.page.evaluate(() => {
      const id = location.hash.split('/')[2];
      return JSON.parse(localStorage.getItem(`wellwright.job.${id}`)).job.prices?.book ?? '';
    });
  }
}
