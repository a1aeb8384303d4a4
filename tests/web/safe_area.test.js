// Where a screen has round corners, a notch or a home bar, nothing to see or touch lies under them:
// CSS Environment Variables Module Level 1, safe-area-inset-*, put in through the DevTools protocol.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { ipad, open_tablet, serve } from './tablet.js';

const insets = { top: 31, left: 47, bottom: 23, right: 13 };  // all four told apart
const free = {
  x: insets.left,
  y: insets.top,
  right: ipad.width - insets.right,
  bottom: ipad.height - insets.bottom,
};

async function cover_edges(tablet) {
  const tools = await tablet.context.newCDPSession(tablet.page);
  await tools.send('Emulation.setSafeAreaInsetsOverride', { insets });
}
const place_of = (tablet, selector) => tablet.evaluate((wanted) => {
  const { x, y, right, bottom } = document.querySelector(wanted).getBoundingClientRect();
  return { x, y, right, bottom };
}, selector);

test('the page keeps screen, controls and messages off what covers the edges', { timeout: 60_000 }, async () => {
  // The page as it is written, without the program.
  const server = await serve(0, new URL('../../field/shell/web/', import.meta.url).pathname);
  const tablet = await open_tablet(server.url);
  const whole = await place_of(tablet, '#screen');
  assert.deepEqual(whole, { x: 0, y: 0, right: ipad.width, bottom: ipad.height });
  // Without these words a browser keeps the page off by itself and gives no insets; the override asks for none.
  assert.match(await tablet.evaluate(() => document.querySelector('meta[name=viewport]').content), /viewport-fit=cover/);
  await cover_edges(tablet);
  for (const part of ['#screen', '#mirror']) {
    assert.deepEqual(await place_of(tablet, part), free, part);
  }
  assert.equal((await place_of(tablet, '#words')).bottom, free.bottom);
  await tablet.evaluate(() => document.documentElement.classList.add('started'));
  assert.equal((await place_of(tablet, '#words')).y, free.y);
  await tablet.close();
  tablet.forget();
  await server.stop();
});

test('the program draws into what is free, and a touch meets what it shows', { timeout: 300_000 }, async () => {
  const server = await serve();
  const tablet = await open_tablet(server.url);
  await tablet.ready_to_write();
  await cover_edges(tablet);
  await tablet.page.waitForTimeout(300);
  await tablet.settle();
  const drawn = await tablet.evaluate(() => {
    const { width, height } = document.getElementById('screen');
    return { width, height };
  });
  assert.deepEqual(drawn, { width: free.right - free.x, height: free.bottom - free.y });
  await tablet.tap('demo');
  const controls = await tablet.evaluate(() => [...document.querySelectorAll('#mirror button')].map((one) => {
    const { x, y, right, bottom } = one.getBoundingClientRect();
    return { name: one.dataset.name, x, y, right, bottom };
  }));
  assert.ok(controls.length > 4);
  for (const { name, x, y, right, bottom } of controls) {
    assert.ok(x >= free.x && y >= free.y && right <= free.right + 1 && bottom <= free.bottom + 1, name);
  }
  await tablet.tap_all('edge A', 'digit 4');
  assert.ok((await tablet.words()).includes('4'));
  assert.deepEqual(tablet.faults, []);
  await tablet.close();
  tablet.forget();
  await server.stop();
});
