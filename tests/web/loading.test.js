// Never blank: words before any script, how far the loading is, and what failed and what to do.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { after, before, test } from 'node:test';
import { open_tablet, serve } from './tablet.js';

const site = new URL('../../build/web/', import.meta.url);
let server;
before(async () => { server = await serve(); });
after(() => server.stop());

/// Opens the page, waits until it says what failed, and returns that.
async function said_of(options, ended = () => document.querySelector('#again:not([hidden])')) {
  const tablet = await open_tablet(server.url, options);
  await tablet.until(ended);
  const words = await tablet.said();
  const faults = tablet.faults;
  await tablet.close();
  tablet.forget();
  return { words, faults };
}
const on_route = (glob, answer) => ({ before: (context) => context.route(glob, answer) });
const cut_short = (name) => (route) => route.fulfill({ status: 200, contentType: 'application/wasm', body: readFileSync(new URL(name, site)).subarray(0, 5000) });

test('words stand in the page before any script has come', { timeout: 60_000 }, async () => {
  const { words } = await said_of({ ...on_route('**/*.js', () => {}), until: 'commit' }, () => document.getElementById('said')?.textContent);
  assert.match(words, /loading.*cargando/);
});

for (const name of ['page.js', 'store.js', 'copy_worker.js', 'hemline.js', 'hemline.wasm', 'hemline.data']) {
  test(`${name} missing on the host: said, with what to do`, { timeout: 60_000 }, async () => {
    const { words } = await said_of(on_route(`**/${name}`, (route) => route.fulfill({ status: 404, body: 'not here' })));
    assert.match(words, /missing on its host/);
    assert.ok(words.includes(name), words);
    assert.match(words, /Load the page again/);
  });
}

for (const name of ['hemline.wasm', 'hemline.data']) {
  test(`half of ${name} uploaded: said by its name`, { timeout: 60_000 }, async () => {
    const { words, faults } = await said_of(on_route(`**/${name}`, cut_short(name)));
    assert.match(words, new RegExp(`only in part: ${name}`));
    assert.deepEqual(faults, []);
  });
}

test('a connection that is cut while it loads: said, with what to do', { timeout: 60_000 }, async () => {
  const { words, faults } = await said_of(on_route('**/hemline.wasm', (route) => route.abort('connectionreset')));
  assert.match(words, /connection was cut.*Get a signal/);
  assert.deepEqual(faults, []);
});

test('no WebGL 2: said, with what to do', { timeout: 60_000 }, async () => {
  const { words, faults } = await said_of({ before: (context) => context.addInitScript(() => { HTMLCanvasElement.prototype.getContext = () => null; }) });
  assert.match(words, /no WebGL 2.*Update the browser/);
  assert.deepEqual(faults, []);
});

test('an engine without Web Locks is too old, and the least versions are said', { timeout: 60_000 }, async () => {
  const { words } = await said_of({ before: (context) => context.addInitScript(() => { Object.defineProperty(Navigator.prototype, 'locks', { value: undefined }); }) });
  assert.match(words, /too old.*15\.4.*86.*96/);
});

test('no script at all: said in both languages', { timeout: 60_000 }, async () => {
  const tablet = await open_tablet(server.url, { more: { javaScriptEnabled: false } });
  const words = await tablet.page.locator('noscript').innerText();
  assert.match(words, /needs scripts/);
  assert.match(words, /necesita scripts/);
  await tablet.close();
  tablet.forget();
});

test('storage that is blocked in any way: said, and nothing is uncaught', { timeout: 120_000 }, async () => {
  for (const block of [
    () => { IDBFactory.prototype.open = () => { throw new DOMException('blocked', 'SecurityError'); }; },
    () => { LockManager.prototype.request = () => Promise.reject(new DOMException('blocked', 'SecurityError')); },
  ]) {
    const { words, faults } = await said_of({ before: (context) => context.addInitScript(block) });
    assert.match(words, /keeps nothing here/);
    assert.deepEqual(faults, []);
  }
  // Where only the small settings are blocked, the program starts.
  const tablet = await open_tablet(server.url, { before: (context) => context.addInitScript(() => {
    Object.defineProperty(window, 'localStorage', { get() { throw new DOMException('blocked', 'SecurityError'); } });
  }) });
  await tablet.ready();
  assert.ok(await tablet.has('demo'));
  assert.deepEqual(tablet.faults, []);
  await tablet.close();
  tablet.forget();
});

test('on plain http nothing starts, in no tab, and the https address is said', { timeout: 120_000 }, async () => {
  const tablet = await open_tablet(server.url, { args: ['--host-resolver-rules=MAP roof.test 127.0.0.1'] });
  const plain = server.url.replace('127.0.0.1', 'roof.test');
  for (const page of [tablet.page, await tablet.context.newPage()]) {
    await page.goto(plain);
    assert.equal(await page.evaluate(() => window.isSecureContext), false);
    assert.match(await page.textContent('#said'), /plain http.*https:\/\/roof\.test/);
    assert.equal(await page.locator('#mirror button').count(), 0);
    assert.deepEqual(await page.evaluate(() => indexedDB.databases()), []);
  }
  await tablet.close();
  tablet.forget();
});

test('a setting of this tablet that is torn is as none, older ones are taken over', { timeout: 120_000 }, async () => {
  const tablet = await open_tablet(server.url);
  await tablet.ready();
  await tablet.page.evaluate(async () => {
    localStorage.setItem('screen', '{"px_per_mm": 7');
    const request = indexedDB.open('hemline');
    const database = await new Promise((resolve) => { request.onsuccess = () => resolve(request.result); });
    const transaction = database.transaction('chunks', 'readwrite');
    transaction.objectStore('chunks').put(new TextEncoder().encode('5.9 px/mm\nspan'), ['screen', 0]);
    await new Promise((resolve) => { transaction.oncomplete = resolve; });
  });
  await tablet.page.reload();
  await tablet.ready();
  assert.ok(await tablet.has('demo'));
  assert.deepEqual(tablet.faults, []);
  await tablet.page.evaluate(async () => {
    localStorage.setItem('screen', '{"px_per_mm": 6.5, "left_hand": true}');
    indexedDB.deleteDatabase('hemline');
    await (await navigator.storage.getDirectory()).removeEntry('hemline', { recursive: true }).catch(() => {});
  });
  await tablet.close();
  tablet.forget();
});

test('the words follow the browser\'s language, and the page says so', { timeout: 60_000 }, async () => {
  const tablet = await open_tablet(server.url, { more: { locale: 'es-MX' }, ...on_route('**/hemline.wasm', (route) => route.abort()) });
  await tablet.until(() => document.querySelector('#again:not([hidden])'));
  assert.match(await tablet.said(), /Se cortó la conexión/);
  assert.equal(await tablet.page.evaluate(() => document.documentElement.lang), 'es');
  await tablet.close();
  tablet.forget();
});

for (const megabits of [1.6, 0.4]) {
  test(`at ${megabits} Mbit/s words stand within a second, and how far it is`, { timeout: 300_000 }, async () => {
    const tablet = await open_tablet('about:blank');
    const tools = await tablet.context.newCDPSession(tablet.page);
    await tools.send('Network.enable');
    await tools.send('Network.emulateNetworkConditions', { offline: false, latency: 150, downloadThroughput: megabits * 125_000, uploadThroughput: megabits * 125_000 });
    const from = Date.now();
    await tablet.page.goto(server.url, { waitUntil: 'commit' });
    await tablet.page.waitForSelector('#said');
    const first = await tablet.page.evaluate(() => new Promise((resolve) => {
      const look = () => {
        const [painted] = performance.getEntriesByName('first-contentful-paint');
        if (painted) { resolve(painted.startTime); } else { setTimeout(look, 20); }
      };
      look();
    }));
    await tablet.until(() => /\d+ of \d+ KB/.test(document.getElementById('said')?.textContent ?? ''));
    await tablet.ready();
    console.log(`# ${megabits} Mbit/s: first words ${first.toFixed(0)} ms, usable ${((Date.now() - from) / 1000).toFixed(1)} s`);
    assert.ok(first <= 1000);
    await tablet.close();
    tablet.forget();
  });
}
