// How the program starts in a browser, what it weighs, and that it rests.
import assert from 'node:assert/strict';
import { readdirSync, statSync } from 'node:fs';
import { after, before, test } from 'node:test';
import { ipad, open_tablet, serve, small } from './tablet.js';

let server;
before(async () => { server = await serve(); });
after(() => server.stop());

const site = new URL('../../build/web/', import.meta.url);

test('all that is served is at most 1 MB as brotli', () => {
  const bytes = readdirSync(site).filter((file) => file.endsWith('.br')).reduce((sum, file) => sum + statSync(new URL(file, site)).size, 0);
  console.log(`# ${bytes} bytes as brotli`);
  assert.ok(bytes > 0 && bytes <= 1_000_000);
});

test('every control has a name, and words can be heard', { timeout: 300_000 }, async () => {
  const tablet = await open_tablet(server.url);
  await tablet.ready_to_write();
  assert.ok((await tablet.names()).includes('demo'));
  assert.ok((await tablet.words()).some((words) => words.includes('No job here yet')));
  assert.deepEqual(tablet.faults, []);
  // A screen reader's press does what a finger does.
  await tablet.page.$eval('[data-name="demo"]', (button) => button.click());
  await tablet.settle();
  assert.ok(await tablet.has('edge A'));
  await tablet.close();
  tablet.forget();
});

test('ten seconds at rest draw no frame', { timeout: 300_000 }, async () => {
  const tablet = await open_tablet(server.url);
  await tablet.ready_to_write();
  await tablet.settle();
  await tablet.page.evaluate(() => {
    window.frames_drawn = 0;
    const draw = Module._hemline_frame;
    Module._hemline_frame = (...all) => { ++window.frames_drawn; return draw(...all); };
  });
  await new Promise((resolve) => setTimeout(resolve, 10_000));
  assert.equal(await tablet.page.evaluate(() => window.frames_drawn), 0);
  await tablet.close();
  tablet.forget();
});

test('turned in the hand, the page fits anew and loses no digit', { timeout: 300_000 }, async () => {
  const tablet = await open_tablet(server.url, { viewport: small });
  await tablet.ready_to_write();
  await tablet.tap_all('demo', 'roof A', 'digit 4', 'digit 6');
  await tablet.page.setViewportSize({ width: small.height, height: small.width });
  await tablet.page.waitForTimeout(300);
  await tablet.settle();
  assert.ok((await tablet.words()).includes('46'));
  await tablet.page.setViewportSize(ipad);
  await tablet.page.waitForTimeout(300);
  await tablet.settle();
  assert.ok((await tablet.words()).includes('46'));
  assert.deepEqual(tablet.faults, []);
  await tablet.close();
  tablet.forget();
});

test('a lost graphics context comes back with the same screen', { timeout: 300_000 }, async () => {
  const tablet = await open_tablet(server.url);
  await tablet.ready_to_write();
  await tablet.tap('demo');
  const dark = () => tablet.page.evaluate(() => {
    // Read in the frame that draws: the buffer is cleared afterwards.
    const gl = document.getElementById('screen').getContext('webgl2');
    return new Promise((resolve) => {
      const draw = Module._hemline_frame;
      Module._hemline_frame = (...all) => {
        const again = draw(...all);
        const row = new Uint8Array(4 * gl.drawingBufferWidth * gl.drawingBufferHeight);
        gl.readPixels(0, 0, gl.drawingBufferWidth, gl.drawingBufferHeight, gl.RGBA, gl.UNSIGNED_BYTE, row);
        Module._hemline_frame = draw;
        resolve(row.filter((value, i) => i % 4 === 0 && value < 60).length);
        return again;
      };
      dispatchEvent(new Event('orientationchange'));
    });
  });
  const before_loss = await dark();
  assert.ok(before_loss > 1000);
  await tablet.page.evaluate(() => {
    const gl = document.getElementById('screen').getContext('webgl2');
    const lose = gl.getExtension('WEBGL_lose_context');
    lose.loseContext();
    return new Promise((resolve) => setTimeout(() => { lose.restoreContext(); setTimeout(resolve, 500); }, 200));
  });
  await tablet.settle();
  assert.equal(await dark(), before_loss);
  await tablet.close();
  tablet.forget();
});

test('a second tab writes nothing, says where the program is open, and takes over when that is closed', { timeout: 300_000 }, async () => {
  const tablet = await open_tablet(server.url);
  await tablet.ready_to_write();
  await tablet.tap('demo');
  const second = await tablet.context.newPage();
  await second.goto(server.url);
  await second.waitForTimeout(1500);
  assert.match(await second.textContent('#said'), /open in another tab/);
  assert.equal(await second.locator('#mirror button').count(), 0);
  await tablet.page.close();
  tablet.page = second;
  await tablet.ready();
  await tablet.tap_all('edge A', 'digit 4');
  assert.equal(await tablet.said(), '');
  await tablet.close();
  tablet.forget();
});

test('a browser that keeps nothing is told so before anything is keyed in', { timeout: 300_000 }, async () => {
  const tablet = await open_tablet(server.url, {
    before: (context) => context.addInitScript(() => {
      IDBFactory.prototype.open = () => { throw new DOMException('blocked', 'SecurityError'); };
    }),
  });
  await tablet.ready();
  assert.match(await tablet.said(), /keeps nothing here/);
  assert.deepEqual(await tablet.names(), []);
  await tablet.close();
  tablet.forget();
});
