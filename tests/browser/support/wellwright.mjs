// The page as a user speaks of it: by roles and labels, never by markup.
import { labels, slugs } from './labels.mjs';

export class Wellwright {
  constructor(page, language = 'en') {
    this.page = page;
    this.words = labels[language];
  }

  // The list of jobs.
  get newJobButton() { return this.page.getByRole('button', { name: this.words.newJob, exact: true }); }
  get jobs() { return this.page.getByRole('main').getByRole('heading', { level: 2 }).getByRole('link'); }
  get fileChooser() { return this.page.getByLabel(this.words.openFile); }
  get alerts() { return this.page.getByRole('alert').filter({ hasText: /./ }); }
  job(name) { return this.page.getByRole('main').getByRole('link', { name, exact: true }); }
  row(name) {
    return this.page.getByRole('listitem').filter({ has: this.page.getByRole('link', { name, exact: true }) });
  }

  // A job.
  get jobName() { return this.page.getByRole('textbox', { name: this.words.jobName }); }
  get undo() { return this.page.getByRole('banner').getByRole('button', { name: this.words.undo }); }
  get redo() { return this.page.getByRole('banner').getByRole('button', { name: this.words.redo }); }
  get stations() { return this.page.getByRole('navigation', { name: this.words.pagesOfJob }); }
  get depthSlider() { return this.page.getByRole('slider', { name: this.words.depthSlider }); }
  get bigButton() { return this.page.getByRole('button', { name: this.words.big }); }
  get setpoint() { return this.page.getByRole('slider', { name: this.words.setpoint }); }
  get curve() { return this.page.getByRole('group', { name: this.words.curve }); }
  get ways() { return this.page.getByRole('region', { name: this.words.ways }); }
  get well() { return this.page.getByRole('img', { name: this.words.well }); }
  get workings() { return this.page.getByRole('button', { name: this.words.workingOf }); }
  get settings() { return this.page.getByRole('button', { name: this.words.settings, exact: true }); }
  get steps() { return this.table(this.words.steps).getByRole('row'); }
  get messages() { return this.page.getByRole('status'); }

  field(label) { return this.page.getByRole('textbox', { name: label }); }
  /** A choice; behind its label may stand that it is assumed. */
  choice(label) { return this.page.getByRole('combobox', { name: new RegExp(`^${label}( |$)`) }); }
  table(title) { return this.page.getByRole('group', { name: title, exact: true }); }
  heading(slug) {
    return this.page.getByRole('heading', { level: 2, name: this.words.pages[slugs.indexOf(slug)], exact: true });
  }

  /** The figure that stands under a title in the answer. */
  answer(title) {
    return this.page.getByRole('region', { name: this.words.answer }).getByRole('term').filter({ hasText: title });
  }

  async openJob(name) {
    await this.job(name).click();
    await this.heading('water').waitFor();
  }

  async newJob({ depth, power } = {}) {
    await this.newJobButton.click();
    await this.heading('water').waitFor();
    if (depth !== undefined) await this.field(this.words.depth).fill(depth);
    if (power !== undefined) {
      await this.turn('pump');
      await this.field(this.words.power).fill(power);
    }
  }

  /** Turns to a page of the job: by its station, on a phone by the menu in the dock. */
  async turn(slug) {
    const name = new RegExp(`^${this.words.pages[slugs.indexOf(slug)]}`);
    const station = this.stations.getByRole('listitem').getByRole('link', { name });
    if ((await station.count()) === 0) await this.stations.getByRole('button').click();
    await station.click();
    await this.heading(slug).waitFor();
  }

  /** Opens every way of the comparison to its figures. */
  async unfoldWays() {
    const folds = this.page.getByRole('listitem').locator('summary');
    await folds.first().waitFor();
    for (const fold of await folds.all()) await fold.click();
  }

  /** Goes to a page of a job by its address. */
  async goTo(id, slug) {
    await this.page.evaluate((address) => { location.hash = address; }, `#/job/${id}/${slug}`);
    await this.heading(slug).waitFor();
  }

  /** The id of a job of the list. */
  async idOf(name) {
    return (await this.job(name).getAttribute('href')).split('/')[2];
  }

  /** What the page says about a field, as a screen reader hears it. */
  async says(label) {
    const id = await this.field(label).getAttribute('aria-describedby');
    return (await this.page.locator(`[id="${id}"]`).innerText()).trim();
  }

  async more(name, action) {
    await this.row(name).getByRole('button', { name: `${this.words.moreFor} ${name}`, exact: true }).click();
    await this.row(name).getByRole('button', { name: action }).click();
  }

  /** Chooses one of a few in the menu of settings. */
  async set(group, option) {
    await this.settings.click();
    await this.page.getByRole('group', { name: group }).getByRole('radio', { name: option }).click({ force: true });
  }

  /** Text with ordinary spaces. */
  static plain(text) { return text.replaceAll(/\s+/g, ' ').trim(); }

  async savingTitle() {
    const title = await this.answer(/saves|same|Waiting|wrong|No saving/).first().innerText();
    return Wellwright.plain(title.replace(/=\s*$/, ''));
  }

  /** Everything that is kept of jobs. */
  kept() {
    return this.page.evaluate(() => Object.entries(localStorage).filter(([key]) => key.includes('.job.')).sort());
  }
}
