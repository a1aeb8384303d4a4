// WebKit: its storage process ends, as it does under a sleeping page, and what is keyed in is kept.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import { serve } from './tablet.js';
import { WebKit } from './webkit.js';

const source = new URL('../../field/shell/web/', import.meta.url).pathname;
let server;
before(async () => { server = await serve(0, source, { '/blank.html': '<!doctype html><title>store</title>' }); });
after(() => server.stop());

test('after WebKit\'s storage process was killed every press is saved again', { timeout: 120_000 }, async () => {
  const webkit = await WebKit.open(`${server.url}blank.html`);
  // The driver gives a page up whose process was killed: the page itself tells how it went on.
  await webkit.evaluate(async () => {
    const { Store } = await import('/store.js');
    await Store.open();
    const go_on = async () => {
      for (let saved = 0; saved < 20;) {
        const told = await Store.keep('jobs/a/b.journal', saved, new Uint8Array([saved])).then(() => 'saved', (problem) => `not-${problem.kind}-${problem.message}`);
        saved += told === 'saved' ? 1 : 0;
        await fetch(`/report/${saved}/${told}`).catch(() => {});
        await new Promise((resolve) => setTimeout(resolve, 250));
      }
      await Store.open();  // what is kept, read again
      Store.fill({ ENV: {}, FS: { mkdirTree() {}, writeFile: (path, bytes) => { if (path.endsWith('.journal')) { fetch(`/held/${[...bytes].join('-')}`); } } } });
    };
    go_on();
  });
  const reports = () => server.served.filter((path) => path.startsWith('/report/'));
  const until = async (what) => {
    for (const end = Date.now() + 60_000; Date.now() < end && !what();) {
      await new Promise((resolve) => setTimeout(resolve, 50));
    }
  };
  await until(() => reports().length >= 3);
  assert.equal(webkit.kill_storage(), 1);
  await until(() => server.served.some((path) => path.startsWith('/held/')));
  console.log(`# ${reports().filter((path) => !path.endsWith('/saved'))}`);
  assert.ok(reports().every((path) => path.endsWith('/saved')));
  assert.ok(server.served.includes(`/held/${[...Array(20).keys()].join('-')}`));
  await webkit.close();
});
