// Browsers of other engines, driven by the WebDriver standard: Firefox, and WebKitGTK in the place of Safari.
import { spawn } from 'node:child_process';
import { mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Builder } from 'selenium-webdriver';

/** Switches off what Firefox does for itself in the background. */
const quiet = {
  'app.normandy.enabled': false,
  'app.update.enabled': false,
  'browser.safebrowsing.update.enabled': false,
  'browser.shell.checkDefaultBrowser': false,
  'datareporting.policy.dataSubmissionEnabled': false,
  'extensions.systemAddon.update.enabled': false,
  'intl.accept_languages': 'en-US',
  'network.captive-portal-service.enabled': false,
  'network.connectivity-service.enabled': false,
  'services.settings.server': 'http://127.0.0.1:9/',
};

// tests/run looks for the programs and sets where they are.
const kinds = {
  firefox: {
    command: (port) => [process.env.GECKODRIVER ?? 'geckodriver', '--port', port, '--log', 'fatal'],
    capabilities: (home) => ({
      browserName: 'firefox',
      'moz:firefoxOptions': {
        binary: process.env.FIREFOX ?? '/usr/bin/firefox-esr',
        args: ['-headless'],
        // Downloads go into a folder of the user's, 2, without a question.
        prefs: { ...quiet, 'browser.download.folderList': 2, 'browser.download.dir': home },
      },
    }),
  },
  webkit: {
    // Its browser has no mode without a window: a screen that nobody sees serves.
    command: (port) => ['xvfb-run', '-a', '-s', '-screen 0 1280x900x24', 'WebKitWebDriver', `--port=${port}`],
    capabilities: () => ({
      browserName: 'MiniBrowser',
      'webkitgtk:browserOptions': { binary: process.env.WEBKIT ?? 'MiniBrowser', args: ['--automation'] },
    }),
  },
};

/** Those that tests/run found. */
export const engines = (process.env.ENGINES ?? 'firefox webkit').split(' ').filter((name) => name !== '');

function freePort() {
  return new Promise((resolve, reject) => {
    const server = createServer();
    server.on('error', reject);
    server.listen(0, '127.0.0.1', () => {
      const { port } = server.address();
      server.close(() => resolve(String(port)));
    });
  });
}

async function answers(url) {
  for (let tries = 0; tries < 150; tries += 1) {
    const up = await fetch(`${url}/status`).then((answer) => answer.ok, () => false);
    if (up) return;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  throw new Error('the driver of the browser does not answer');
}

/** No command takes as long as this, in milliseconds. */
const silence = 90_000;

/** A driver with a home of its own; `session()` starts a browser with nothing kept. */
class Engine {
  constructor(name) {
    this.name = name;
  }

  async start() {
    const { command } = kinds[this.name];
    /** Whether it has left a command without an answer: then it answers to none any more. */
    this.silent = false;
    this.home = mkdtempSync(join(tmpdir(), 'wellwright-home-'));
    const port = await freePort();
    const [program, ...args] = command(port);
    this.driver = spawn(program, args, {
      detached: true,
      stdio: 'ignore',
      env: {
        ...process.env,
        HOME: this.home,
        XDG_RUNTIME_DIR: this.home,
        // No desktop services, no graphics card.
        GIO_USE_VFS: 'local',
        GSETTINGS_BACKEND: 'memory',
        GTK_A11Y: 'none',
        NO_AT_BRIDGE: '1',
        LIBGL_ALWAYS_SOFTWARE: '1',
        LANG: 'C.UTF-8',
        LC_ALL: 'C.UTF-8',
      },
    });
    const failed = new Promise((_, reject) => this.driver.on('error', reject));
    this.url = `http://127.0.0.1:${port}`;
    await Promise.race([answers(this.url), failed]);
    return this;
  }

  async session() {
    const { capabilities } = kinds[this.name];
    const begun = new Builder().disableEnvironmentOverrides().usingServer(this.url).withCapabilities(capabilities(this.home)).build();
    const driver = await this.#answered(begun, 'newSession');
    const executor = driver.getExecutor();
    const execute = executor.execute.bind(executor);
    executor.execute = (command) => this.#answered(execute(command), command.getName());
    return driver;
  }

  #answered(answer, command) {
    let timer;
    const late = new Promise((_, reject) => {
      timer = setTimeout(() => {
        this.silent = true;
        reject(new Error(`the driver of ${this.name} did not answer to ${command}`));
      }, silence);
    });
    return Promise.race([answer, late]).finally(() => clearTimeout(timer));
  }

  /** All files of its home, among them what was downloaded. */
  files() { return readdirSync(this.home, { recursive: true }).map((path) => join(this.home, path)); }

  async stop() {
    const gone = new Promise((resolve) => this.driver.on('exit', resolve));
    // With the screen and all else that it started.
    process.kill(-this.driver.pid);
    const late = setTimeout(() => process.kill(-this.driver.pid, 'SIGKILL'), 5000);
    await gone;
    clearTimeout(late);
    rmSync(this.home, { recursive: true, force: true, maxRetries: 5 });
  }
}

export const startEngine = (name) => new Engine(name).start();
