// A page of somebody else: a host at another origin, whose pages hold frames of the built page.
import { readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { fileURLToPath } from 'node:url';

const sample = fileURLToPath(new URL('../../../app/embed/training.html', import.meta.url));

/** The sample page as somebody copies it: with the address of the built page in place of its own folder. */
export const training = (site) => readFileSync(sample, 'utf8').replaceAll('"./embed.js"', `"${site}embed.js"`).replaceAll('href="./"', `href="${site}"`);

/** A bare page with something in it, that keeps every message it is sent in `window.heard`. */
export const bare = (inside) => `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>Around</title>
  <link rel="icon" href="data:,"><style>body { margin: 0 } iframe { border: 0 }</style>
  <script>window.heard = []; addEventListener('message', ({ data, origin }) => heard.push({ ...data, origin }));</script>
  </head><body>${inside}</body></html>`;

/** Serves pages by their paths until the test `t` ends; gives the origin. */
export async function around(t, pages) {
  const server = createServer((request, response) => {
    const page = pages[new URL(request.url, 'http://a').pathname];
    response.writeHead(page === undefined ? 404 : 200, { 'content-type': 'text/html; charset=utf-8' });
    response.end(page ?? '');
  });
  await new Promise((resolve) => {
    server.listen(0, '127.0.0.1', resolve);
  });
  t.after(
    () =>
      new Promise((resolve) => {
        server.close(resolve);
        server.closeAllConnections();
      }),
  );
  return `http://127.0.0.1:${server.address().port}`;
}
