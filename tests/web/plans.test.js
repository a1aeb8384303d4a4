// Plans to choose from are looked for in a worker, not between two frames.
import assert from 'node:assert/strict';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test } from 'node:test';
import { desk, open_tablet, serve } from './tablet.js';

test('a worker finds the plans worth a choice, and no frame waits for it', { timeout: 300_000 }, async () => {
  const server = await serve();
  const folder = mkdtempSync(join(tmpdir(), 'hemline-plans-'));
  // Two edges of 160 in, sticks of 10 ft, by hand: 4 sticks balanced, 3 run out, 3 with a lap more.
  const readings = join(folder, 'two.csv');
  writeFileSync(readings, 'edge,kind,trim,length,left,right,pitch\nA,eave,,160 in,gable,gable,5/12\nB,eave,,160 in,gable,gable,5/12\n');
  desk('new', join(folder, 'two'), '--name', 'Two eaves', '--from', readings);
  for (const edge of ['A', 'B']) {
    desk('take', join(folder, 'two'), edge, '160 in');
  }
  desk('pack', join(folder, 'two'), join(folder, 'two.zip'));
  const tablet = await open_tablet(server.url);
  await tablet.ready_to_write();
  await tablet.page.evaluate(() => {
    const { _hemline_frame: frame, _hemline_search: search } = Module;
    window.longest = 0;
    window.searched = 0;
    Module._hemline_search = (...all) => { ++window.searched; return search(...all); };
    Module._hemline_frame = (...all) => {
      const from = performance.now();
      const again = frame(...all);
      window.longest = Math.max(window.longest, performance.now() - from);
      return again;
    };
  });
  await tablet.put_in('choose file', join(folder, 'two.zip'));
  await tablet.tap_all('sticks', 'choices');
  await tablet.until(() => !document.getElementById('mirror').textContent.includes('Still looking'));
  await tablet.settle();
  const words = (await tablet.words()).join(' | ');
  assert.match(words, /4 sticks \| Ends equal wherever they can be, no lap more/);
  assert.match(words, /3 sticks \| 2 edges run out to one side, no lap more/);
  assert.match(words, /3 sticks \| Ends equal wherever they can be, 1 lap more/);
  const { longest, searched } = await tablet.page.evaluate(() => ({ longest: window.longest, searched: window.searched }));
  console.log(`# longest frame ${longest.toFixed(1)} ms`);
  assert.equal(searched, 0);
  assert.deepEqual(tablet.faults, []);
  await tablet.close();
  tablet.forget();
  rmSync(folder, { recursive: true });
  await server.stop();
});
