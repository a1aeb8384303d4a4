// A job out into a file and in again, between the browser and the desk; bad files; no promise.
import assert from 'node:assert/strict';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { finish_eave, read_eave_a } from './eave.js';
import { desk, kept_files, lay_out, open_tablet, serve } from './tablet.js';

let server;
let folder;
before(async () => {
  server = await serve();
  folder = mkdtempSync(join(tmpdir(), 'hemline-files-'));
});
after(async () => {
  rmSync(folder, { recursive: true });
  await server.stop();
});

const said = async (tablet) => (await tablet.words()).join(' | ');
const show = (job) => JSON.parse(desk('show', job, '--json'));
/// What depends on the events alone.
const facts = ({ edges, readings, status, next_cut, conflicts, set_aside }) => ({ edges, readings, status, next_cut, conflicts, set_aside });
const journals = (files) => new Map([...files].filter(([path]) => path.endsWith('.journal')).map(([path, bytes]) => [path.split('/').pop(), Buffer.from(bytes).toString('hex')]));

async function leave_for_the_roof(tablet) {
  while (!(await tablet.has('backup'))) {
    await tablet.tap('leave');
  }
}

test('a backup, a wiped browser and a restore give the same bytes, and go on under a new number', { timeout: 300_000 }, async () => {
  let tablet = await open_tablet(server.url);
  await tablet.ready_to_write();
  await read_eave_a(tablet);
  await finish_eave(tablet);
  await leave_for_the_roof(tablet);
  assert.match(await said(tablet), /Never backed up/);
  await tablet.tap('backup');
  const file = await tablet.take_out('back up', folder);
  assert.match(await said(tablet), /Last backup just now; all is in it/);
  const made = await kept_files(tablet);
  // The desk packs the same job to the same bytes.
  const job = lay_out(made, join(folder, 'made'));
  desk('pack', job, join(folder, 'desk.zip'));
  assert.deepEqual(readFileSync(join(folder, 'desk.zip')), readFileSync(file));
  await tablet.close();
  tablet.forget();

  tablet = await open_tablet(server.url);  // a browser that knows nothing
  await tablet.ready_to_write();
  await tablet.put_in('choose file', file);
  assert.match(await said(tablet), /is taken in/);
  const back = await kept_files(tablet);
  assert.deepEqual(journals(back), journals(made));
  // It is kept, and another event goes into a separate journal.
  await tablet.page.reload();
  await tablet.ready_to_write();
  await tablet.at_roof();
  await tablet.tap('edge B');
  await tablet.key_in(39, 11, 0);
  await tablet.tap('keep');
  const on = journals(await kept_files(tablet));
  assert.equal(on.size, 2);
  for (const [name, bytes] of journals(made)) {
    assert.equal(on.get(name), bytes);
  }
  await leave_for_the_roof(tablet);
  await tablet.tap('backup');
  const second = await tablet.take_out('back up', folder);
  desk('unpack', second, join(folder, 'second'));
  assert.equal(show(join(folder, 'second')).readings.length, show(job).readings.length + 1);
  // The first backup once more takes nothing away.
  await tablet.put_in('choose file', file);
  assert.match(await said(tablet), /0 new entries/);
  assert.deepEqual(journals(await kept_files(tablet)), on);
  await tablet.close();
  tablet.forget();
});

test('a job packed at the desk opens in the browser, and its backup is the same job at the desk', { timeout: 300_000 }, async () => {
  const readings = join(folder, 'roof.csv');
  writeFileSync(readings, 'edge,kind,trim,length,left,right,pitch\nA,eave,,46 ft 0 1/4 in,gable,gable,5/12\nB,eave,,31 ft 7 5/8 in,wall,corner_out,7/12\n');
  const job = join(folder, 'desk-job');
  desk('new', job, '--name', 'Orchard barn', '--from', readings, '--by', 'R. Vale');
  desk('take', job, 'A', '46 ft 0 3/16 in');
  const packed = join(folder, 'orchard.hemline.zip');
  desk('pack', job, packed);
  const tablet = await open_tablet(server.url);
  await tablet.ready_to_write();
  await tablet.put_in('choose file', packed);
  assert.match(await said(tablet), /orchard.hemline.zip is taken in/);
  // What has no row in the part of the list that shows has its letter on the plan.
  const names = await tablet.names();
  assert.ok(['A', 'B'].every((edge) => names.includes(`edge ${edge}`) || names.includes(`roof ${edge}`)), names.join(', '));
  await tablet.tap('backup');
  const file = await tablet.take_out('back up', folder);
  const back = join(folder, 'desk-back');
  desk('unpack', file, back);
  assert.deepEqual(facts(show(back)), facts(show(job)));
  assert.equal(desk('journal', back), desk('journal', job));
  assert.ok(show(job).next_cut, 'there is a plan to compare');
  await tablet.close();
  tablet.forget();
});

test('a job file that is dropped on the page is taken in', { timeout: 300_000 }, async () => {
  const job = join(folder, 'dropped-job');
  desk('new', job, '--name', 'Dropped roof');
  desk('pack', job, join(folder, 'dropped.zip'));
  const tablet = await open_tablet(server.url);
  await tablet.ready_to_write();
  await tablet.page.evaluate((bytes) => {
    const carried = new DataTransfer();
    carried.items.add(new File([new Uint8Array(bytes)], 'dropped.zip'));
    document.getElementById('screen').dispatchEvent(new DragEvent('drop', { dataTransfer: carried, bubbles: true, cancelable: true }));
  }, [...readFileSync(join(folder, 'dropped.zip'))]);
  await tablet.until(() => [...document.querySelectorAll('#mirror p')].some((one) => one.textContent.includes('is taken in')));
  await tablet.close();
  tablet.forget();
});

test('files that are no whole job file are refused by name, and nothing is lost', { timeout: 300_000 }, async () => {
  const tablet = await open_tablet(server.url);
  await tablet.ready_to_write();
  await read_eave_a(tablet);
  await leave_for_the_roof(tablet);
  await tablet.tap('backup');
  const good = readFileSync(await tablet.take_out('back up', folder));
  const kept = await kept_files(tablet);
  const flipped = Buffer.from(good);
  flipped[Math.floor(good.length / 3)] ^= 0x10;
  const bad = {
    'words.zip': Buffer.from('no zip at all'),
    'empty.zip': Buffer.alloc(0),
    'cut.zip': good.subarray(0, good.length - 40),
    'flipped.zip': flipped,
    'huge.zip': Buffer.concat([good, Buffer.alloc(40 * 1024 * 1024)]),
  };
  for (const [name, bytes] of Object.entries(bad)) {
    writeFileSync(join(folder, name), bytes);
    const from = Date.now();
    await tablet.put_in('choose file', join(folder, name));
    let words = await said(tablet);
    for (const until = Date.now() + 60_000; !words.includes(name) && Date.now() < until; words = await said(tablet)) {
      await tablet.page.waitForTimeout(100); // a large one takes a slow machine a while to judge
    }
    console.log(`# ${name}: ${words.slice(words.indexOf(name) - 1).split(' | ')[0]} (${Date.now() - from} ms)`);
    assert.ok(words.includes(name), `${name} is named in: ${words}`);
    assert.doesNotMatch(words, /taken in:/);
    assert.deepEqual(await kept_files(tablet), kept);
  }
  await tablet.tap('leave');
  assert.ok(await tablet.has('edge A'));
  assert.deepEqual(tablet.faults, []);
  await tablet.close();
  tablet.forget();
});

test('with no room left a job file is not taken in at all, and the way out is said', { timeout: 300_000 }, async () => {
  const job = join(folder, 'roomless-job');
  desk('new', job, '--name', 'Large roof');
  const packed = join(folder, 'roomless.zip');
  desk('pack', job, packed);
  const tablet = await open_tablet(server.url);
  await tablet.ready_to_write();
  await tablet.page.evaluate(() => {
    const { add, put } = IDBObjectStore.prototype;
    window.give_room = () => Object.assign(IDBObjectStore.prototype, { add, put });
    IDBObjectStore.prototype.add = IDBObjectStore.prototype.put = () => { throw new DOMException('full', 'QuotaExceededError'); };
  });
  await tablet.put_in('choose file', packed);
  assert.match(await said(tablet), /not taken in.*no room left/);
  assert.equal(journals(await kept_files(tablet)).size, 0);
  assert.deepEqual((await tablet.names()).filter((name) => name.startsWith('job ')), []);
  await tablet.page.evaluate(() => window.give_room());
  await tablet.put_in('choose file', packed);
  assert.match(await said(tablet), /roomless.zip is taken in/);
  assert.match(await said(tablet), /✓ saved/);
  await tablet.close();
  tablet.forget();
});

for (const given of [true, false]) {
  test(`a browser that ${given ? 'promises' : 'refuses'} to keep what is saved is quoted on the screen`, { timeout: 300_000 }, async () => {
    const tablet = await open_tablet(server.url, {
      before: (context) => context.addInitScript((answer) => {
        StorageManager.prototype.persisted = async () => false;
        StorageManager.prototype.persist = async () => {
          window.asked_in_touch = navigator.userActivation.isActive;
          return answer;
        };
      }, given),
    });
    await tablet.ready_to_write();
    await tablet.tap('demo');
    assert.equal(await tablet.page.evaluate(() => window.asked_in_touch), undefined);  // nothing to keep yet
    await tablet.tap('edge A');
    assert.equal(await tablet.page.evaluate(() => window.asked_in_touch), true);
    await leave_for_the_roof(tablet);
    await tablet.tap('backup');
    assert.match(await said(tablet), given ? /promised to keep/ : /refused to promise.*may clear it/);
    assert.equal(await tablet.has('ask promise'), !given);
    if (!given) {
      await tablet.tap_all('leave', 'jobs');
      assert.match(await said(tablet), /refused to promise/);
    }
    await tablet.close();
    tablet.forget();
  });
}
