// The program on the tablet: whole or not at all, loaded once, started by any name the host has for it.
import assert from 'node:assert/strict';
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { open_tablet, serve } from './tablet.js';

const site = new URL('../../build/web/', import.meta.url);
const read = (name) => readFileSync(new URL(name, site));

/// A later build of the site, of which only the page itself differs.
function later_site() {
  const page = read('index.html').toString().replace('<title>Hemline</title>', '<title>Hemline, later</title>');
  const hash = createHash('sha256').update(page).digest('hex');
  const worker = read('sw.js').toString()
    .replace(/("\.\/":")[0-9a-f]{64}/, `$1${hash}`)
    .replace(/\$\{mine\}[0-9a-f]{16}/, '${mine}aaaaaaaaaaaaaaaa');
  return { page, worker };
}

const kept = (tablet) => tablet.until(async () => {
  const registration = await navigator.serviceWorker.getRegistration();
  return registration?.active?.state === 'activated';
});
const update = (tablet) => tablet.page.evaluate(async () => {
  const registration = await navigator.serviceWorker.getRegistration();
  await registration.update().catch(() => {});
  for (let i = 0; i < 100 && registration.installing; ++i) {
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  return registration.waiting?.state ?? 'none waits';
});
async function again(tablet, server) {
  const { profile } = tablet;
  await tablet.close();
  const next = await open_tablet(server.url, { profile });
  await next.ready();
  return next;
}

test('the first visit moves each file once, then says that it works without a signal', { timeout: 120_000 }, async () => {
  const server = await serve(0, undefined, {}, { 'cache-control': 'no-cache', etag: '"1"' });
  const tablet = await open_tablet(server.url);
  await tablet.ready();
  await tablet.until(() => document.getElementById('said').textContent === 'Works without a signal now.');
  const times = (name) => server.served.filter((path) => path === `/${name}`).length;
  console.log(`# the first visit moves ${server.moved.bytes} bytes`);
  for (const name of ['hemline.wasm', 'hemline.data', 'hemline.js', 'store.js']) {
    assert.equal(times(name), 1, name);
  }
  await tablet.page.reload();
  await tablet.ready();
  await tablet.settle();
  assert.equal(await tablet.said(), '');  // not each time
  await tablet.close();
  tablet.forget();
  await server.stop();
});

test('half an upload of the site never takes over, a whole one does at the next start', { timeout: 300_000 }, async () => {
  const server = await serve();
  let tablet = await open_tablet(server.url);
  await tablet.ready_to_write();
  await kept(tablet);
  await tablet.tap_all('demo', 'edge A');
  const later = later_site();
  Object.assign(server.more, { '/sw.js': later.worker, '/index.html': later.page.slice(0, -300) });
  assert.equal(await update(tablet), 'none waits');
  assert.ok(await tablet.has('digit 4'));
  tablet = await again(tablet, server);
  assert.equal(await tablet.page.title(), 'Hemline');
  server.more['/index.html'] = later.page;
  assert.equal(await update(tablet), 'installed');
  tablet = await again(tablet, server);
  assert.equal(await tablet.page.title(), 'Hemline, later');
  assert.ok((await tablet.names()).length > 0);
  await server.stop();
  tablet = await again(tablet, server);
  assert.equal(await tablet.page.title(), 'Hemline, later');
  await tablet.close();
  tablet.forget();
});

test('half an upload at the first visit is not kept, and is whole later', { timeout: 120_000 }, async () => {
  const icon = read('icon-512.png');
  const server = await serve(0, undefined, { '/icon-512.png': icon.subarray(0, 100) });
  let tablet = await open_tablet(server.url);
  await tablet.ready();
  await tablet.page.waitForTimeout(2000);
  assert.equal(await tablet.page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.active ?? null), null);
  assert.equal(await tablet.said(), '');
  server.more['/icon-512.png'] = icon;
  tablet = await again(tablet, server);
  await kept(tablet);
  await server.stop();
  tablet = await again(tablet, server);
  await tablet.close();
  tablet.forget();
});

test('a host that redirects index.html breaks no start, by neither name', { timeout: 120_000 }, async () => {
  const server = await serve(0, undefined, { redirects: true });
  let tablet = await open_tablet(server.url);
  await tablet.ready();
  await kept(tablet);
  const manifest = JSON.parse(read('hemline.webmanifest'));
  assert.equal(manifest.start_url, './');
  assert.ok(manifest.id);
  await server.stop();
  for (const name of ['', 'index.html', '?from=home']) {
    await tablet.page.goto(server.url + name);
    await tablet.ready();
    assert.ok(await tablet.has('demo'), name);
  }
  await tablet.close();
  tablet.forget();
});

test('other programs on the same host keep their caches', { timeout: 120_000 }, async () => {
  const server = await serve();
  const tablet = await open_tablet(`${server.url}icon-192.png`);
  await tablet.page.evaluate(() => caches.open('another program'));
  await tablet.page.goto(server.url);
  await tablet.ready();
  await kept(tablet);
  assert.ok(await tablet.page.evaluate(() => caches.has('another program')));
  await tablet.close();
  tablet.forget();
  await server.stop();
});
