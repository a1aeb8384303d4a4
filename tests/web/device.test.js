// What this tablet remembers between starts: who held it, how it is set, where it was left.
import assert from 'node:assert/strict';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { desk, kept_files, lay_out, open_tablet, serve } from './tablet.js';

let server;
before(async () => { server = await serve(); });
after(() => server.stop());
const said = async (tablet) => (await tablet.words()).join(' | ');

async function reload(tablet) {
  await tablet.page.reload();
  await tablet.ready();
  await tablet.settle();
}

test('people, language, units, hand and night are there after a reload and in a new browser', { timeout: 300_000 }, async () => {
  let tablet = await open_tablet(server.url);
  await tablet.ready();
  await tablet.tap_all('by', 'tablet', 'hand', 'units', 'leave', 'by', 'name Foreman', 'language', 'light');
  const screen = () => tablet.page.evaluate(() => document.body.style.background);
  assert.equal(await screen(), 'rgb(20, 24, 28)');
  for (const start of ['reload', 'browser']) {
    if (start === 'reload') {
      await reload(tablet);
    } else {
      const { profile } = tablet;
      await tablet.close();
      tablet = await open_tablet(server.url, { profile });
      await tablet.ready();
    }
    assert.match(await tablet.label('by'), /Capataz|Foreman/);
    assert.equal(await tablet.label('language'), 'English');
    assert.equal(await tablet.page.evaluate(() => document.documentElement.lang), 'es');
    assert.equal(await screen(), 'rgb(20, 24, 28)');
    const kept = Buffer.from((await kept_files(tablet)).get('screen')).toString();
    assert.match(kept, /left hand\nlanguage es\nboth units\nnight\ntick off Foreman\n/);
  }
  await tablet.close();
  tablet.forget();
});

test('nobody holds the tablet until somebody said so, and nothing is written before', { timeout: 300_000 }, async () => {
  const tablet = await open_tablet(server.url);
  await tablet.ready();
  await tablet.tap('demo');
  assert.match(await said(tablet), /Who holds the tablet/);
  assert.equal((await kept_files(tablet)).size, 0);
  await tablet.tap('leave');
  assert.ok(await tablet.has('demo'));
  await tablet.tap_all('demo', 'name Installer', 'demo');
  assert.ok(await tablet.has('edge A'));
  await tablet.close();
  tablet.forget();
});

test('a reading half keyed survives the page\'s end, and the job opens where it was left', { timeout: 300_000 }, async () => {
  let tablet = await open_tablet(server.url);
  await tablet.ready_to_write();
  await tablet.tap_all('demo', 'edge B', 'digit 3', 'digit 9', 'field inches', 'inches 11');
  const words = await said(tablet);
  await reload(tablet);
  assert.equal((await said(tablet)).replace(/saved \d+:\d+/, ''), words.replace(/saved \d+:\d+/, ''));
  const { profile } = tablet;
  await tablet.kill();
  tablet = await open_tablet(server.url, { profile });
  await tablet.ready();
  await tablet.settle();
  await tablet.tap('keep');
  assert.match(await said(tablet), /39 ft 11 in|39.*11/);
  await tablet.close();
  tablet.forget();
});

test('what is half keyed in on two screens is there after a reload, and no reading', { timeout: 300_000 }, async () => {
  const tablet = await open_tablet(server.url);
  await tablet.ready_to_write();
  await tablet.tap_all('demo', 'edge B', 'digit 3', 'digit 9', 'field inches', 'inches 11', 'leave');
  await tablet.tap_all('add edge', 'kind gable', 'left end eave');
  await reload(tablet);
  assert.ok(await tablet.has('right end ridge'));  // the question that it was left at
  await tablet.tap_all('before', 'before');
  assert.ok(await tablet.has('kind gable'));
  const files = await kept_files(tablet);
  const folder = mkdtempSync(join(tmpdir(), 'hemline-desk-'));
  const shown = JSON.parse(desk('show', lay_out(files, join(folder, 'job')), '--json'));
  rmSync(folder, { recursive: true });
  assert.equal(shown.readings.length, 0);
  await tablet.at_roof();
  await tablet.tap_all('edge B', 'keep');
  assert.match(await said(tablet), /39 ft 11 in|39.*11/);
  await tablet.close();
  tablet.forget();
});

test('a torn text of where it was left is said, and loses nothing that was saved', { timeout: 300_000 }, async () => {
  const tablet = await open_tablet(server.url);
  await tablet.ready_to_write();
  await tablet.tap_all('demo', 'edge B', 'digit 3', 'digit 9');
  await tablet.page.evaluate(async () => {
    const request = indexedDB.open('hemline');
    const database = await new Promise((resolve) => { request.onsuccess = () => resolve(request.result); });
    const settings = database.transaction('settings', 'readwrite').objectStore('settings');
    const left = await new Promise((resolve) => { settings.get('left').onsuccess = (event) => resolve(event.target.result); });
    await new Promise((resolve) => { settings.put(left.slice(0, left.length / 2), 'left').onsuccess = resolve; });
    database.close();
  });
  await reload(tablet);
  assert.match(await said(tablet), /cannot be read back/);
  await tablet.at_roof();
  assert.ok(await tablet.has('edge B'));
  await tablet.close();
  tablet.forget();
});

test('on an iOS home screen a backup goes through the share sheet, and counts when that resolved', { timeout: 300_000 }, async () => {
  const tablet = await open_tablet(server.url, { before: (context) => context.addInitScript(() => {
    Object.defineProperty(Navigator.prototype, 'standalone', { value: true });
    Navigator.prototype.canShare = () => true;
    Navigator.prototype.share = ({ files }) => new Promise((resolve, reject) => {
      window.shared = { name: files[0].name, size: files[0].size, in_touch: navigator.userActivation.isActive, resolve, reject };
    });
  }) });
  await tablet.ready_to_write();
  await tablet.tap_all('demo', 'backup', 'back up');
  const shared = await tablet.page.evaluate(() => window.shared);
  assert.match(shared.name, /\.zip$/);
  assert.ok(shared.size > 0 && shared.in_touch);
  assert.match(await said(tablet), /Never backed up/);
  await tablet.page.evaluate(() => window.shared.reject(new DOMException('', 'AbortError')));
  await tablet.settle();
  assert.match(await said(tablet), /not handed over: it was put away/);
  assert.match(await said(tablet), /Never backed up/);
  await tablet.tap('back up');
  await tablet.page.evaluate(() => window.shared.resolve());
  await tablet.settle();
  assert.match(await said(tablet), /Last backup just now; all is in it/);
  await tablet.close();
  tablet.forget();
});

test('a failed save offers the backup at once, and it works', { timeout: 300_000 }, async () => {
  const tablet = await open_tablet(server.url);
  await tablet.ready_to_write();
  await tablet.tap_all('demo', 'edge A');
  await tablet.page.evaluate(() => {
    IDBObjectStore.prototype.add = () => { throw new DOMException('full', 'QuotaExceededError'); };
  });
  await tablet.key_in(46, 0, 4);
  await tablet.tap('keep');
  const out = await tablet.take_out('back up now', tablet.profile);
  const job = `${tablet.profile}/unpacked`;
  desk('unpack', out, job);
  assert.equal(JSON.parse(desk('show', job, '--json')).readings.length, 0);
  assert.match(await said(tablet), /46/);  // and what was keyed in is still there
  await tablet.close();
  tablet.forget();
});
