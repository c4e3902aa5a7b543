// A copy of the build on a host of its own, that can be changed and cut off.
import { createHash } from 'node:crypto';
import { cpSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { address, listen } from '../../../app/build/server.mjs';
import { dist } from './site.mjs';

/** Serves the copy in a folder of the host until the test `t` ends. */
export async function host(t, folder = '') {
  const root = mkdtempSync(join(tmpdir(), 'wellwright-'));
  const site = join(root, folder);
  // Files that are pressed beforehand would stand for what is changed here.
  cpSync(dist, site, { recursive: true, filter: (path) => !/\.(br|gz)$/.test(path) });
  const asked = [];
  const begin = async (port) => {
    const server = await listen(root, port);
    return server.on('request', ({ url }) => asked.push(url));
  };
  let server = await begin(0);
  const url = address(server) + folder;
  const stop = () =>
    new Promise((resolve) => {
      server.close(resolve);
      server.closeAllConnections();
    });
  t.after(async () => {
    await stop();
    rmSync(root, { recursive: true });
  });
  return {
    site,
    url,
    /** Every address that was asked for, in order. */
    asked,
    stop,
    async start() {
      server = await begin(Number(new URL(url).port));
    },
    /** Puts another build in place of the one that is there: its style sheet has one comment more, and so another name,
        whose digest is given and stands for the build, too. */
    deploy() {
      const old = readdirSync(site).find((name) => /^style-.*\.css$/.test(name));
      const text = `${readFileSync(join(site, old), 'utf8')}/* newer */`;
      const mark = createHash('sha256').update(text).digest('hex').slice(0, 16);
      const style = `style-${mark}.css`;
      writeFileSync(join(site, style), text);
      rmSync(join(site, old));
      for (const name of ['index.html', 'worker.js']) {
        const page = readFileSync(join(site, name), 'utf8').replaceAll(old, style);
        writeFileSync(join(site, name), page.replace(/const build = '\w+'/, `const build = '${mark}'`));
      }
      return mark;
    },
  };
}
