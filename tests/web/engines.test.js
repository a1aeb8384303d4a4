// The same eave in three engines: Chromium, Firefox, WebKit.
import assert from 'node:assert/strict';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { finish_eave, read_eave_a } from './eave.js';
import { Firefox } from './firefox.js';
import { desk, kept_files, lay_out, open_tablet, serve } from './tablet.js';
import { WebKit } from './webkit.js';

let server;
before(async () => { server = await serve(); });
after(() => server.stop());

const engines = { Chromium: () => open_tablet(server.url), Firefox: () => Firefox.open(server.url), WebKit: () => WebKit.open(server.url) };
for (const [name, open] of Object.entries(engines)) {
  test(`an eave goes to the tick in ${name}, and the desk reads the same bytes`, { timeout: 600_000 }, async () => {
    const tablet = await open();
    await tablet.ready_to_write();
    const two = await tablet.evaluate(async () => (navigator.storage?.getDirectory ? (await Array.fromAsync?.((await navigator.storage.getDirectory()).keys()) ?? ['there']).length : 0));
    await read_eave_a(tablet);
    const steps = await finish_eave(tablet);
    console.log(`# ${name}: ${steps} steps, ${two > 0 ? 'two copies' : 'one copy'}`);
    const folder = mkdtempSync(join(tmpdir(), 'hemline-desk-'));
    const shown = JSON.parse(desk('show', lay_out(await kept_files(tablet), join(folder, 'job')), '--json'));
    rmSync(folder, { recursive: true });
    assert.deepEqual(shown.set_aside, []);
    assert.match(JSON.stringify(shown.status.find?.((one) => one.edge === 'A') ?? shown.status.A), /finished/);
    await tablet.close();
  });
}
