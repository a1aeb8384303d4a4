// Nothing that was called saved is lost: no signal, a browser killed at any moment, no room left.
import assert from 'node:assert/strict';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test } from 'node:test';
import { desk, kept_files, lay_out, open_tablet, serve } from './tablet.js';

test('with the server gone it reloads, and starts in a new browser, with the job there', { timeout: 300_000 }, async () => {
  const server = await serve();
  let tablet = await open_tablet(server.url);
  await tablet.ready_to_write();
  await tablet.tap('demo');
  await tablet.page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    for (let i = 0; i < 100 && (await navigator.serviceWorker.getRegistration()).active?.state !== 'activated'; ++i) {
      await new Promise((resolve) => setTimeout(resolve, 50));
    }
  });
  await server.stop();
  await tablet.page.reload();
  await tablet.ready();
  await tablet.at_roof();
  const { profile } = tablet;
  await tablet.close();
  const from = Date.now();
  tablet = await open_tablet(server.url, { profile });
  await tablet.ready();
  const seconds = await tablet.page.evaluate(() => performance.now() / 1000);
  console.log(`# offline start ${seconds.toFixed(2)} s in the page, ${((Date.now() - from) / 1000).toFixed(2)} s with the browser`);
  await tablet.at_roof();
  await tablet.close();
  tablet.forget();
});

test('a browser killed at any moment after "saved" has lost nothing that was called saved', { timeout: 2_400_000 }, async () => {
  const server = await serve();
  const moments = Number(process.env.HEMLINE_KILLS ?? 20);  // tools/nightly: 100
  let tablet = await open_tablet(server.url);
  await tablet.ready_to_write();
  await tablet.tap_all('demo', 'edge A');
  const { profile } = tablet;
  const readings = [];
  for (let i = 0; i < moments; ++i) {
    // Readings an inch apart ask for another reading each time, so the screen stays.
    const inches = 46 * 12 + i;
    await tablet.key_in(Math.floor(inches / 12), inches % 12, 0);
    do {  // a doubtful reading is kept on purpose, by a second touch
      await tablet.tap('keep');
    } while (await tablet.has('keep'));
    assert.match((await tablet.words()).join(' | '), /✓ saved/);
    readings.push(inches);
    await new Promise((resolve) => setTimeout(resolve, Math.random() * 60));
    await tablet.kill();
    tablet = await open_tablet(server.url, { profile });
    await tablet.ready_to_write();
    await tablet.at_roof();
    const files = await kept_files(tablet);
    const folder = mkdtempSync(join(tmpdir(), 'hemline-desk-'));
    const shown = JSON.parse(desk('show', lay_out(files, join(folder, 'job')), '--json'));
    rmSync(folder, { recursive: true });
    const kept = shown.readings.filter((reading) => reading.edge === 'A');
    assert.equal(kept.length, readings.length, `after kill ${i + 1}`);
    assert.deepEqual(shown.set_aside, []);
    await tablet.tap('edge A');
    if (!(await tablet.has('inches 0')) && (await tablet.has('start again'))) {
      await tablet.tap('start again');
    }
  }
  await tablet.close();
  tablet.forget();
  await server.stop();
});

test('with no room left nothing is called saved, the reading stays, and the way out is said', { timeout: 300_000 }, async () => {
  const server = await serve();
  const tablet = await open_tablet(server.url);
  await tablet.ready_to_write();
  await tablet.tap_all('demo', 'edge A');
  await tablet.page.evaluate(() => {
    const { add, put } = IDBObjectStore.prototype;
    window.give_room = () => Object.assign(IDBObjectStore.prototype, { add, put });
    IDBObjectStore.prototype.add = IDBObjectStore.prototype.put = () => { throw new DOMException('full', 'QuotaExceededError'); };
  });
  await tablet.key_in(46, 0, 4);
  await tablet.tap('keep');
  const words = (await tablet.words()).join(' | ');
  assert.match(words, /no room left/);
  assert.match(words, /not saved/);
  assert.match(words, /46/);
  await tablet.page.evaluate(() => window.give_room());
  await tablet.tap('keep');
  assert.match((await tablet.words()).join(' | '), /✓ saved/);
  const files = await kept_files(tablet);
  const folder = mkdtempSync(join(tmpdir(), 'hemline-desk-'));
  const shown = JSON.parse(desk('show', lay_out(files, join(folder, 'job')), '--json'));
  rmSync(folder, { recursive: true });
  assert.deepEqual(shown.set_aside, []);
  assert.equal(shown.readings.filter((reading) => reading.edge === 'A').length, 1);
  await tablet.close();
  tablet.forget();
  await server.stop();
});
