// What app/serve builds and serves: file names, kinds, caching, ports, options.
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { readFileSync, readdirSync } from 'node:fs';
import { createServer, get } from 'node:http';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { fileURLToPath } from 'node:url';
import { address, listen } from '../../app/build/server.mjs';
import { dist, startSite } from './support/site.mjs';

const command = fileURLToPath(new URL('../../app/serve', import.meta.url));
let site;

before(async () => {
  site = await startSite();
});
after(() => site?.stop());

const fileOf = (ending) => readdirSync(dist).find((name) => name.endsWith(ending));

const kinds = {
  '.html': 'text/html;charset=utf-8',
  '.js': 'text/javascript',
  '.wasm': 'application/wasm',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
};
for (const [ending, kind] of Object.entries(kinds)) {
  test(`${ending} files come as ${kind}`, async () => {
    const answer = await fetch(site.url + fileOf(ending));
    assert.equal(answer.status, 200);
    assert.equal(answer.headers.get('content-type'), kind);
    await answer.arrayBuffer();
  });
}

test('what is named by its bytes may be kept, everything else is asked for anew', async () => {
  const caching = async (name) => {
    const answer = await fetch(site.url + name);
    await answer.arrayBuffer();
    return answer.headers.get('cache-control');
  };
  for (const name of ['', '?embed', 'index.html', 'worker.js', 'embed.js', 'training.html', 'icon.svg', 'manifest.webmanifest']) {
    assert.equal(await caching(name), 'no-cache', name);
  }
  const named = readdirSync(dist).filter((name) => /-[0-9a-f]{16}\.\w+$/.test(name));
  assert.ok(named.length >= 5, `${named}`);
  for (const name of named) assert.equal(await caching(name), 'public, max-age=31536000, immutable', name);
});

test('the folder itself gives the page', async () => {
  const answer = await fetch(site.url);
  assert.match(await answer.text(), /<title>Wellwright<\/title>/);
});

test('an unknown file is not found', async () => {
  assert.equal((await fetch(`${site.url}no-such-file.js`)).status, 404);
});

test('files outside the folder are not served', async () => {
  // A plain request: fetch would tidy the path.
  const { hostname, port } = new URL(site.url);
  const answer = await new Promise((resolve, reject) => {
    get({ hostname, port, path: '/../Cargo.toml' }, resolve).on('error', reject);
  });
  answer.resume();
  assert.equal(answer.statusCode, 404);
});

test('scripts, the program and the one style sheet are named by their bytes', () => {
  const names = readdirSync(dist).filter((name) => /\.(js|wasm|css)$/.test(name));
  assert.deepEqual(names.map((name) => name.replace(/-.*\./, '.')).sort(), [
    'early.js', 'embed.js', 'start.js', 'style.css', 'wellwright.js', 'wellwright.wasm', 'worker.js',
  ]);
  // A browser knows the worker by its one name, and asks for it past its cache; pages of other people name the loader.
  for (const name of names.filter((name) => !['worker.js', 'embed.js'].includes(name))) {
    const digest = createHash('sha256').update(readFileSync(join(dist, name))).digest('hex');
    assert.match(name, new RegExp(`-${digest.slice(0, 16)}\\.(js|wasm|css)$`));
  }
});

test('a taken port gives the next free one', async (t) => {
  const other = createServer();
  await new Promise((resolve) => other.listen(0, '127.0.0.1', resolve));
  t.after(() => other.close());
  const server = await listen(dist, other.address().port);
  t.after(() => server.close());
  assert.ok(server.address().port > other.address().port);
  assert.match(address(server), /^http:\/\/127\.0\.0\.1:\d+\/$/);
});

test('an unknown option gives the usage and status 2', () => {
  const { status, stderr } = spawnSync(command, ['--unknown'], { encoding: 'utf8' });
  assert.equal(status, 2);
  assert.match(stderr, /^Usage: app\/serve/);
});
