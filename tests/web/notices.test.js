// What it is made of, in the browser: every part that docs/notices.md lists, with its notice, without a server.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { ipad, open_tablet, serve, small } from './tablet.js';

const page = readFileSync(new URL('../../docs/notices.md', import.meta.url), 'utf8');
const parts = [...page.matchAll(/^### (.+) (\S+)$/gm)].map(([, part, version]) => ({ part, version }));

for (const [what, viewport] of [['an iPad', ipad], ['8 in', small], ['a phone upright', { width: 390, height: 844 }]]) {
  test(`on ${what} every part and its notice are in reach, to the last line`, { timeout: 300_000 }, async () => {
    const server = await serve();
    const tablet = await open_tablet(server.url, { viewport });
    await tablet.ready();
    await server.stop();
    const shot = async (name) => process.env.HEMLINE_SHOTS
      && tablet.page.screenshot({ path: `${process.env.HEMLINE_SHOTS}/notices-${what.replaceAll(' ', '-')}-${name}.png` });
    const scroll = async (pixels) => {
      await tablet.page.mouse.move(viewport.width / 2, viewport.height / 2);
      await tablet.page.mouse.wheel(0, pixels);
      await tablet.page.waitForTimeout(50);
      await tablet.settle();
    };
    // Down until it shows: a control, or words.
    const down_to = async (shows) => {
      for (let i = 0; i < 200 && !(await shows()); ++i) {
        await scroll(200);
      }
      assert.ok(await shows(), `${shows}`);
    };
    assert.ok(parts.length >= 15);
    for (const { part, version } of parts) {
      await down_to(() => tablet.has('made of'));
      await tablet.tap('made of');
      if (part === parts[0].part) {
        await shot('list');
        assert.match((await tablet.words()).join(' '), /none is given yet/);
      }
      await down_to(() => tablet.has(`part ${part}`));
      await tablet.tap(`part ${part}`);
      const said = (await tablet.words()).join(' | ');
      assert.ok(said.includes(part) && said.includes(version), said);
      if (part === 'B612') {
        await shot('notice');
        await down_to(async () => (await tablet.words()).join(' ').includes('DEALINGS IN THE FONT SOFTWARE.'));
      }
      await tablet.tap_all('parts', 'leave');
    }
    assert.deepEqual(tablet.faults, []);
    await tablet.close();
    tablet.forget();
  });
}
