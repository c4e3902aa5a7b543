// The page as a user speaks of it: by roles and labels, never by markup.

export class Wellwright {
  constructor(page) {
    this.page = page;
  }

  get newJobButton() { return this.page.getByRole('button', { name: 'New job' }); }
  get jobs() { return this.page.getByRole('main').getByRole('heading', { level: 2 }).getByRole('link'); }
  get alerts() { return this.page.getByRole('alert'); }
  get jobName() { return this.page.getByRole('textbox', { name: 'Job name' }); }
  get depthSlider() { return this.page.getByRole('slider', { name: 'Depth of the pump' }); }
  get undo() { return this.page.getByRole('button', { name: 'Undo' }); }
  get redo() { return this.page.getByRole('button', { name: 'Redo' }); }
  get steps() { return this.page.getByRole('group', { name: 'Every size and how deep it reaches' }).getByRole('row'); }

  job(name) { return this.jobs.filter({ hasText: name }); }
  field(label) { return this.page.getByRole('textbox', { name: label }); }
  choice(label) { return this.page.getByRole('combobox', { name: label }); }

  /** The figure that stands under a title in the answer. */
  answer(title) {
    return this.page.getByRole('region', { name: 'Answer and picture' }).getByRole('term').filter({ hasText: title });
  }

  async openJob(name) {
    await this.job(name).click();
    await this.field('Pump setting').waitFor();
  }

  async newJob({ depth, power } = {}) {
    await this.newJobButton.click();
    if (depth !== undefined) await this.field('Pump setting').fill(depth);
    if (power !== undefined) await this.field('Motor power').fill(power);
  }

  /** What the page says about a field, as a screen reader hears it. */
  async says(label) {
    const id = await this.field(label).getAttribute('aria-describedby');
    return (await this.page.locator(`[id="${id}"]`).innerText()).trim();
  }

  async more(name, action) {
    const row = this.page.getByRole('listitem').filter({ has: this.page.getByRole('link', { name, exact: true }) });
    await row.getByLabel(`More for ${name}`, { exact: true }).click();
    await row.getByRole('button', { name: action }).click();
  }

  /** Text with ordinary spaces. */
  static plain(text) { return text.replaceAll(/\s/g, ' '); }

  async savingTitle() {
    return Wellwright.plain(await this.answer(/saves|same|Waiting|No saving/).first().innerText());
  }
}
