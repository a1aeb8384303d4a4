// What is kept, kept twice: by the store alone, on a page without the program.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { open_tablet, serve } from './tablet.js';

const source = new URL('../../field/shell/web/', import.meta.url).pathname;
const golden = readFileSync(new URL('../golden/eave.journal', import.meta.url));
const journal = 'jobs/A roof/00000000000000a1.journal';
let server;
before(async () => { server = await serve(0, source, { '/blank.html': '<!doctype html><title>store</title>' }); });
after(() => server.stop());

/// The golden journal's frames, one after another (docs/journal_format.md, "Frame").
function frames_of(bytes) {
  const frames = [];
  for (let at = 0; at < bytes.length;) {
    const end = at + 16 + bytes.readUInt32LE(at + 8);
    frames.push([...bytes.subarray(at, end)]);
    at = end;
  }
  return frames;
}
const frames = frames_of(golden);

async function open_store(options) {
  const tablet = await open_tablet(`${server.url}blank.html`, options);
  await start_store(tablet);
  return tablet;
}

/// Opens the store; returns how long it took, in ms, and what it reported.
const start_store = (tablet) => tablet.page.evaluate(async () => {
  const { Store } = await import('/store.js');
  const told = [];
  const from = performance.now();
  await Store.open((what) => told.push(what));
  const ms = performance.now() - from;
  const files = new Map();
  Store.fill({ ENV: {}, FS: { mkdirTree() {}, writeFile: (path, bytes) => files.set(path.replace('/kept/hemline/', ''), bytes) } });
  window.files = files;
  window.told = told;
  window.append = async (path, bytes) => {
    const size = files.get(path)?.length ?? 0;
    try {
      await Store.keep(path, size, new Uint8Array(bytes));
    } catch (problem) {
      return problem.kind ?? String(problem);
    }
    const whole = new Uint8Array(size + bytes.length);
    whole.set(files.get(path) ?? []);
    whole.set(bytes, size);
    files.set(path, whole);
    return 'saved';
  };
  window.Store = Store;
  return { ms, told };
});

/// What each of the two copies holds by itself.
const in_database = (tablet, path) => tablet.page.evaluate(async (wanted) => {
  const request = indexedDB.open('hemline');
  const database = await new Promise((resolve) => { request.onsuccess = () => resolve(request.result); });
  const all = database.transaction('chunks').objectStore('chunks').getAll(IDBKeyRange.bound([wanted], [wanted, []]));
  await new Promise((resolve) => { all.onsuccess = resolve; });
  database.close();
  return all.result.flatMap((bytes) => [...bytes]);
}, path);
const in_copy = (tablet, path) => tablet.page.evaluate(async (wanted) => {
  let folder = await (await navigator.storage.getDirectory()).getDirectoryHandle('hemline');
  const parts = wanted.split('/').map(encodeURIComponent);
  const name = parts.pop();
  for (const part of parts) {
    folder = await folder.getDirectoryHandle(part);
  }
  return [...new Uint8Array(await (await (await folder.getFileHandle(name)).getFile()).arrayBuffer())];
}, path);
/// Writes a file of the copy while no store is open.
const write_copy = (tablet, path, bytes) => tablet.page.evaluate(async ([wanted, content]) => {
  let folder = await (await navigator.storage.getDirectory()).getDirectoryHandle('hemline', { create: true });
  const parts = wanted.split('/').map(encodeURIComponent);
  const name = parts.pop();
  for (const part of parts) {
    folder = await folder.getDirectoryHandle(part, { create: true });
  }
  const file = await folder.getFileHandle(name, { create: true });
  const writable = await file.createWritable();
  await writable.write(new Uint8Array(content));
  await writable.close();
}, [path, bytes]);
const append = (tablet, bytes, path = journal) => tablet.page.evaluate(([to, what]) => window.append(to, what), [path, bytes]);
const held = (tablet, path = journal) => tablet.page.evaluate((of) => [...window.files.get(of) ?? []], path);

async function again(tablet) {
  await tablet.page.goto(`${server.url}blank.html`);
  return start_store(tablet);
}

async function end(tablet) {
  await tablet.close();
  tablet.forget();
}

test('a saved event lies in the database and in the copy', { timeout: 60_000 }, async () => {
  const tablet = await open_store();
  for (const frame of frames) {
    assert.equal(await append(tablet, frame), 'saved');
  }
  assert.deepEqual(await in_database(tablet, journal), [...golden]);
  assert.deepEqual(await in_copy(tablet, journal), [...golden]);
  await again(tablet);
  assert.deepEqual(await held(tablet), [...golden]);
  await end(tablet);
});

test('a really full disk, room made, a reload and a new browser: every saved event is there', { timeout: 300_000, skip: process.getuid() !== 0 && 'only root may mount a small disk' }, async () => {
  const disk = mkdtempSync(join(tmpdir(), 'hemline-disk-'));
  execFileSync('mount', ['-t', 'tmpfs', '-o', 'size=90m', 'none', disk]);
  try {
    const profile = join(disk, 'profile');
    let tablet = await open_store({ profile });
    const saved = [];
    const keep = async (frame) => {
      const what = await append(tablet, frame);
      if (what === 'saved') {
        saved.push(...frame);
      }
      return what;
    };
    for (const frame of frames) {
      assert.equal(await keep(frame), 'saved');
    }
    try {  // to the last block
      execFileSync('dd', ['if=/dev/zero', `of=${join(disk, 'fill')}`, 'bs=4096'], { stdio: 'ignore' });
    } catch {
      // there is no room, as intended
    }
    const refused = [];
    // Not for ever: Chromium itself ends after some hundred writes without a disk.
    for (let i = 0; i < 300 && refused.filter((what) => what !== 'saved').length < 8; ++i) {
      refused.push(await keep(frames[i % frames.length]));
    }
    console.log(`# full: ${JSON.stringify(Object.fromEntries([...new Set(refused)].map((what) => [what, refused.filter((one) => one === what).length])))}`);
    assert.ok(refused.includes(1), 'the disk is full, and that is said');
    assert.ok(refused.every((what) => what === 'saved' || what === 1), 'and nothing else is said');
    rmSync(join(disk, 'fill'));
    for (const frame of frames) {
      assert.equal(await keep(frame), 'saved');
    }
    await again(tablet);
    assert.deepEqual(await held(tablet), saved);
    for (const frame of frames) {
      assert.equal(await keep(frame), 'saved');
    }
    await tablet.close();
    tablet = await open_tablet(`${server.url}blank.html`, { profile });
    console.log(`# after it: ${(await start_store(tablet)).told}`);
    assert.deepEqual(await held(tablet), saved);
    assert.deepEqual(await in_database(tablet, journal), saved);
    await tablet.close();
  } finally {
    execFileSync('umount', ['-l', disk]);
    rmSync(disk, { recursive: true, force: true });
  }
});

test('a database that the browser made anew comes back from the copy, under a new number', { timeout: 60_000 }, async () => {
  const tablet = await open_store();
  for (const frame of frames) {
    await append(tablet, frame);
  }
  const number = await held(tablet, 'device');
  await tablet.page.goto('about:blank');
  await tablet.page.goto(`${server.url}blank.html`);
  await tablet.page.evaluate(() => new Promise((resolve) => { indexedDB.deleteDatabase('hemline').onsuccess = resolve; }));
  assert.deepEqual((await start_store(tablet)).told, ['came_back']);
  assert.deepEqual(await held(tablet), [...golden]);
  assert.deepEqual(await in_database(tablet, journal), [...golden]);
  assert.notDeepEqual(await held(tablet, 'device'), number);
  await end(tablet);
});

test('of two versions the one of which more checks out counts, and mends the other', { timeout: 60_000 }, async () => {
  const tablet = await open_store();
  const half = frames.slice(0, 3).flat();
  for (const frame of frames.slice(0, 3)) {
    await append(tablet, frame);
  }
  await tablet.page.goto(`${server.url}blank.html`);
  await write_copy(tablet, journal, [...golden]);  // the copy is longer
  assert.deepEqual((await start_store(tablet)).told, ['mended']);
  assert.deepEqual(await held(tablet), [...golden]);
  assert.deepEqual(await in_database(tablet, journal), [...golden]);

  for (const wrong of [half, [...golden, 1, 2, 3], [...golden.subarray(0, -1), golden.at(-1) ^ 1], []]) {
    await tablet.page.goto(`${server.url}blank.html`);
    await write_copy(tablet, journal, wrong);
    await start_store(tablet);
    const kept = wrong.length > golden.length ? [...golden, 1, 2, 3] : [...golden];  // a torn tail is the engine's to set aside
    assert.deepEqual(await held(tablet), kept);
    assert.deepEqual(await in_copy(tablet, journal), kept);
    await tablet.page.evaluate(([path, bytes]) => window.Store.put_whole([[path, new Uint8Array(bytes)]]), [journal, [...golden]]);
  }
  await end(tablet);
});

test('files put in place together are all there or none, wherever the page ends', { timeout: 60_000 }, async () => {
  const tablet = await open_store();
  await append(tablet, frames[0]);
  await tablet.page.goto(`${server.url}blank.html`);
  await write_copy(tablet, 'whole', [...Buffer.from(JSON.stringify([journal, 'jobs/Another/b.journal']))]);
  await write_copy(tablet, journal, [...golden]);
  await write_copy(tablet, 'jobs/Another/b.journal', [...golden]);
  await start_store(tablet);
  assert.deepEqual(await held(tablet), frames[0]);
  assert.deepEqual(await held(tablet, 'jobs/Another/b.journal'), []);
  assert.deepEqual(await in_copy(tablet, journal), frames[0]);
  // And what is removed does not come back.
  await tablet.page.evaluate((path) => window.Store.put_whole([[path, null], ['screen', new Uint8Array([1])]]), journal);
  await again(tablet);
  assert.deepEqual(await held(tablet), []);
  assert.deepEqual(await held(tablet, 'screen'), [1]);
  await end(tablet);
});

for (const [what, lose] of Object.entries({
  'that the browser closed': async (tablet) => {
    const tools = await tablet.context.newCDPSession(tablet.page);
    await tools.send('Storage.clearDataForOrigin', { origin: server.url.slice(0, -1), storageTypes: 'indexeddb' });
  },
  'that was deleted beside it': (tablet) => tablet.page.evaluate(() => new Promise((resolve) => { indexedDB.deleteDatabase('hemline').onsuccess = resolve; })),
  'whose connection is dead without a word': (tablet) => tablet.page.evaluate(async () => {
    const transaction = IDBDatabase.prototype.transaction;
    const dead = new WeakSet();
    let first = null;
    IDBDatabase.prototype.transaction = function (...all) {
      first ??= this;
      dead.add(first);
      if (dead.has(this)) {
        throw new DOMException('Connection to Indexed Database server lost', 'InvalidStateError');
      }
      return transaction.apply(this, all);
    };
  }),
})) {
  test(`a connection ${what} is opened anew, and what is keyed in is saved`, { timeout: 60_000 }, async () => {
    const tablet = await open_store();
    const number = await held(tablet, 'device');
    for (const [i, frame] of frames.entries()) {
      if (i === 4) {
        await lose(tablet);
      }
      assert.equal(await append(tablet, frame), 'saved');
    }
    assert.deepEqual(await in_database(tablet, journal), [...golden]);
    assert.deepEqual(await in_copy(tablet, journal), [...golden]);
    assert.deepEqual((await again(tablet)).told, []);
    assert.deepEqual(await held(tablet), [...golden]);
    assert.deepEqual(await held(tablet, 'device'), number);
    await end(tablet);
  });
}

test('a store that does not come back is said to be lost, and nothing half kept is taken for saved', { timeout: 60_000 }, async () => {
  const tablet = await open_store();
  await append(tablet, frames[0]);
  await tablet.page.evaluate(() => {
    const open = IDBFactory.prototype.open;
    const transaction = IDBDatabase.prototype.transaction;
    window.give_back = () => Object.assign(IDBFactory.prototype, { open }) && Object.assign(IDBDatabase.prototype, { transaction });
    IDBDatabase.prototype.transaction = () => { throw new DOMException('closed', 'InvalidStateError'); };
    IDBFactory.prototype.open = () => { throw new DOMException('no server', 'UnknownError'); };
    Object.defineProperty(HTMLIFrameElement.prototype, 'contentWindow', { get: () => window });  // nor in a frame
  });
  assert.equal(await append(tablet, frames[1]), 2);
  assert.deepEqual(await in_copy(tablet, journal), frames[0]);  // cut off again
  await tablet.page.evaluate(() => { window.give_back(); });
  assert.equal(await append(tablet, frames[1]), 'saved');
  assert.deepEqual(await in_database(tablet, journal), frames.slice(0, 2).flat());
  await end(tablet);
});

test('a transaction that completed though its connection was lost is not kept twice', { timeout: 60_000 }, async () => {
  const tablet = await open_store();
  await append(tablet, frames[0]);
  await tablet.page.evaluate(() => {  // the answer of one transaction is lost on the way
    const transaction = IDBDatabase.prototype.transaction;
    IDBDatabase.prototype.transaction = function (...all) {
      const real = transaction.apply(this, all);
      if (all[1] === 'readwrite') {
        IDBDatabase.prototype.transaction = transaction;
        Object.defineProperty(real, 'oncomplete', { set: (done) => real.addEventListener('complete', () => real.onabort()), get: () => null });
      }
      return real;
    };
  });
  assert.equal(await append(tablet, frames[1]), 'saved');
  assert.equal(await append(tablet, frames[2]), 'saved');
  assert.deepEqual(await in_database(tablet, journal), frames.slice(0, 3).flat());
  await end(tablet);
});

test('what another page wrote at that place is never written over', { timeout: 60_000 }, async () => {
  const tablet = await open_store();
  await append(tablet, frames[0]);
  await tablet.page.evaluate(async ([path, offset, bytes]) => {
    const request = indexedDB.open('hemline');
    const database = await new Promise((resolve) => { request.onsuccess = () => resolve(request.result); });
    const transaction = database.transaction('chunks', 'readwrite');
    transaction.objectStore('chunks').add(new Uint8Array(bytes), [path, offset]);
    await new Promise((resolve) => { transaction.oncomplete = resolve; });
    database.close();
  }, [journal, frames[0].length, frames[2]]);
  assert.equal(await append(tablet, frames[1]), 3);
  assert.deepEqual(await in_database(tablet, journal), [frames[0], frames[2]].flat());
  await end(tablet);
});

test('a copy that fails for another reason than room is given up, and that is said', { timeout: 60_000 }, async () => {
  const tablet = await open_store({
    before: (context) => context.route('**/copy_worker.js', async (route) => {
      const answer = await route.fetch();
      const text = (await answer.text()).replace('async function write(', 'async function write() { throw new DOMException("broken", "NotReadableError"); }\nasync function unused(');
      await route.fulfill({ response: answer, body: text });
    }),
  });
  assert.equal(await append(tablet, frames[0]), 'saved');
  assert.deepEqual(await tablet.page.evaluate(() => window.told), ['one_copy']);
  assert.deepEqual(await in_database(tablet, journal), frames[0]);
  await end(tablet);
});

test('thirty thousand small chunks are joined while idle, and the start grows with the bytes alone', { timeout: 300_000 }, async () => {
  const tablet = await open_store();
  const large = Array.from({ length: 30_000 }, (_, i) => frames[i % frames.length]);
  await tablet.page.goto(`${server.url}blank.html`);
  await tablet.page.evaluate(async ([path, all]) => {
    const request = indexedDB.open('hemline');
    const database = await new Promise((resolve) => { request.onsuccess = () => resolve(request.result); });
    const transaction = database.transaction('chunks', 'readwrite');
    let at = 0;
    for (const bytes of all) {
      transaction.objectStore('chunks').add(new Uint8Array(bytes), [path, at]);
      at += bytes.length;
    }
    await new Promise((resolve) => { transaction.oncomplete = resolve; });
    database.close();
  }, [journal, large]);
  const chunked = await start_store(tablet);
  await tablet.page.evaluate(() => window.Store.settle());
  const chunks = await tablet.page.evaluate(async () => {
    const request = indexedDB.open('hemline');
    const database = await new Promise((resolve) => { request.onsuccess = () => resolve(request.result); });
    const count = database.transaction('chunks').objectStore('chunks').count();
    await new Promise((resolve) => { count.onsuccess = resolve; });
    database.close();
    return count.result;
  });
  const starts = [];
  for (let i = 0; i < 3; ++i) {
    starts.push((await again(tablet)).ms);
  }
  console.log(`# 30,000 chunks of ${large.flat().length} bytes: ${chunked.ms.toFixed(0)} ms before they were joined, then ${starts.map((ms) => ms.toFixed(0))} ms`);
  assert.equal(chunks, 1);
  assert.equal((await held(tablet)).length, large.flat().length);
  assert.ok(Math.min(...starts) < 500);
  await end(tablet);
});
