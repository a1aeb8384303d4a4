// Keeps the whole program on the tablet: the first visit is enough. Each file is listed with its
// hash, and a new program takes over only when every file of it has checked out, never after half
// an upload. It is kept separately, and used once no page uses the old program.
const mine = `hemline ${self.registration.scope} `;
const version = `${mine}VERSION`;
const files = FILES;  // path -> SHA-256; the page itself is "./"

async function hash_of(bytes) {
  const hash = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  return [...hash].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}

/// Where to get a file, the nearest source first, so that what the page has just loaded is not
/// loaded again.
const places = [
  (path) => caches.match(path),
  (path) => fetch(path, { cache: 'force-cache' }),
  (path) => fetch(path, { cache: 'reload' }),
];

async function keep(cache, path) {
  for (const place of places) {
    const answer = await place(path).catch(() => undefined);
    const bytes = answer?.ok ? await answer.arrayBuffer().catch(() => undefined) : undefined;
    if (bytes && await hash_of(bytes) === files[path]) {
      const headers = new Headers(answer.headers);
      headers.delete('content-encoding');
      headers.delete('content-length');
      await cache.put(path, new Response(bytes, { headers }));  // never one that was redirected
      return;
    }
  }
  throw new Error(`${path} is not whole on its host`);
}

async function keep_all() {
  const cache = await caches.open(version);
  for (const path of Object.keys(files)) {
    await keep(cache, path);
  }
}

async function clear() {
  for (const name of await caches.keys()) {
    if (name !== version && (name.startsWith(mine) || name.startsWith('hemline-'))) {
      await caches.delete(name);
    }
  }
}

self.addEventListener('install', (event) => event.waitUntil(keep_all()));
self.addEventListener('activate', (event) => event.waitUntil(clear().then(() => self.clients.claim())));

/// One entry for the page, whatever name it is asked for by.
function entry_of(request) {
  const path = new URL(request.url).pathname;
  const scope = new URL(self.registration.scope).pathname;
  return path === scope || path === `${scope}index.html` ? './' : request;
}

self.addEventListener('fetch', (event) => {
  if (event.request.method === 'GET' && event.request.url.startsWith(self.registration.scope)) {
    event.respondWith(caches.open(version)
      .then((cache) => cache.match(entry_of(event.request), { ignoreSearch: true }))
      .then((kept) => kept ?? fetch(event.request)));
  }
});
