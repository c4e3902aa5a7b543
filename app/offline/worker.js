// Keeps one whole build on the device and answers from it, so that the page opens without a network.
// The build puts two lines ahead of this file: `build`, a digest over all files, and `files`, their addresses.
/* global build, files */
const own = `wellwright ${self.registration.scope} `;
const kept = own + build;

// Named by the first of its bytes' digest: such a name never stands for two contents.
const named = /-([0-9a-f]{16})\.\w+$/;

async function isWhole(name, response) {
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', await response.clone().arrayBuffer()));
  return name === [...digest.slice(0, 8)].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}

/** A file of this build. What its name tells may come from an older build that is kept here, from where the page has just
    laid it, or from the browser's own cache: nothing comes over the line twice. Every other file may have changed at the host. */
async function fetched(file) {
  const fromHost = () => fetch(new Request(file, { cache: 'reload' }));
  const name = named.exec(file)?.[1];
  for (const source of name ? [() => caches.match(file, { ignoreVary: true }), () => fetch(file), fromHost] : [fromHost]) {
    const response = await source().catch(() => null);
    if (response?.ok && (!name || (await isWhole(name, response)))) return response;
  }
  throw new Error(`This did not come whole: ${file}`);
}

// All files or none: one that is missing, as in a half-copied new build, leaves the old build in charge.
self.addEventListener('install', (event) => {
  const take = async () => {
    const cache = await caches.open(kept);
    await Promise.all(files.map(async (file) => cache.put(file, await fetched(file))));
    // A page that names files of another build was put there before or after the others.
    const page = await (await cache.match('./')).text();
    const strange = [...page.matchAll(/"(\.\/[^"]+\.(?:js|css))"/g)].map(([, name]) => name).filter((name) => !files.includes(name));
    if (strange.length > 0) throw new Error(`The page is of another build: ${strange}`);
  };
  event.waitUntil(
    take().catch(async (why) => {
      await caches.delete(kept);
      throw why;
    }),
  );
});

// Only now is no page of an older build left, or the user has agreed. What the page has laid out goes with the older ones.
self.addEventListener('activate', (event) => {
  const settle = async () => {
    const names = await caches.keys();
    const older = names.filter((name) => name.startsWith(own) && name !== kept);
    await Promise.all(older.map((name) => caches.delete(name)));
    await self.clients.claim();
  };
  event.waitUntil(settle());
});

self.addEventListener('message', (event) => {
  if (event.data === 'take over') self.skipWaiting();
});

self.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || new URL(request.url).origin !== self.location.origin) return;
  const answer = async () => {
    const cache = await caches.open(kept);
    // The page has two names.
    const isPage = new URL(request.url).pathname === new URL('index.html', self.registration.scope).pathname;
    const found = await cache.match(isPage ? './' : request, { ignoreSearch: true, ignoreVary: true });
    return found ?? fetch(request);
  };
  event.respondWith(answer());
});
