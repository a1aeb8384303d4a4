// In a browser at a desk and on any screen: keys, letters, those who hear, small and dark screens.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import { ipad, open_tablet, serve, small } from './tablet.js';

let server;
before(async () => { server = await serve(); });
after(() => server.stop());
const said = async (tablet) => (await tablet.words()).join(' | ');
async function end(tablet) {
  assert.deepEqual(tablet.faults, []);
  await tablet.close();
  tablet.forget();
}

test('Ctrl+Z, Ctrl and arrows and a second Enter do what they do at a desk; Ctrl+A paints nothing', { timeout: 300_000 }, async () => {
  const tablet = await open_tablet(server.url);
  await tablet.ready_to_write();
  await tablet.tap_all('demo', 'edge A');
  const keyboard = async (...keys) => {
    for (const key of keys) {
      await tablet.page.keyboard.press(key);
      await tablet.settle();
    }
  };
  const title = () => tablet.evaluate(() => document.getElementById('title').textContent);
  await keyboard(...'46-0-1/4', 'Enter');
  assert.match(await title(), /Eave A · first reading/);
  assert.match(await said(tablet), /46 \| ft/);  // it lies in its fields, and a second Enter keeps it
  await keyboard('Enter');
  assert.match(await title(), /Eave A · second reading/);
  await keyboard('Control+ArrowDown');
  assert.doesNotMatch(await title(), /Eave A/);
  await keyboard('Control+ArrowUp');
  assert.match(await title(), /Eave A · second reading/);
  await keyboard('Control+z');
  assert.match(await said(tablet), /undone|Undo/);
  await keyboard('Control+a');
  assert.equal(await tablet.evaluate(() => String(getSelection())), '');
  await end(tablet);
});

test('Tab moves the frame on the screen, which those who hear are told; no control is a stop of its own', { timeout: 300_000 }, async () => {
  const tablet = await open_tablet(server.url);
  await tablet.ready_to_write();
  const on = () => tablet.evaluate(() => {
    const mirror = document.getElementById('mirror');
    return [document.activeElement === mirror, document.getElementById(mirror.getAttribute('aria-activedescendant'))?.dataset.name];
  });
  const press = async (key) => {
    await tablet.page.keyboard.press(key);
    await tablet.settle();
  };
  assert.deepEqual(await tablet.evaluate(() => [...document.querySelectorAll('#mirror button')].filter((one) => one.tabIndex >= 0).length), 0);
  await press('Tab');
  const [there, first] = await on();
  assert.ok(there && first !== undefined);
  await press('Tab');
  const [, second] = await on();
  assert.notEqual(second, first);
  await press('Shift+Tab');
  assert.deepEqual(await on(), [true, first]);
  for (let i = 0; i < 60 && (await on())[1] !== 'demo'; ++i) {
    await press('Tab');
  }
  await press('Enter');
  assert.ok(await tablet.has('edge A') || await tablet.has('roof A'));
  await end(tablet);
});

test('composed letters come whole', { timeout: 300_000 }, async () => {
  const tablet = await open_tablet(server.url);
  await tablet.ready();
  await tablet.tap('by');
  await tablet.evaluate(() => {
    const typing = document.getElementById('typing');
    typing.focus();
    const compose = (type, data) => typing.dispatchEvent(new CompositionEvent(type, { data, bubbles: true }));
    compose('compositionstart', '');
    typing.dispatchEvent(new KeyboardEvent('keydown', { key: 'Dead', isComposing: true, bubbles: true }));
    typing.dispatchEvent(new InputEvent('beforeinput', { data: '~', inputType: 'insertCompositionText', isComposing: true, bubbles: true, cancelable: true }));
    typing.dispatchEvent(new KeyboardEvent('keydown', { key: 'ñ', isComposing: true, bubbles: true }));
    compose('compositionend', 'ñ');
  });
  await tablet.settle();
  assert.ok((await tablet.words()).includes('ñ'), await said(tablet));
  await end(tablet);
});

test('those who hear are told title, saved, warnings and doubts, in the screens\' language', { timeout: 300_000 }, async () => {
  const tablet = await open_tablet(server.url);
  await tablet.ready_to_write();
  await tablet.tap_all('demo', 'edge A');
  const heard = (id) => tablet.evaluate((which) => document.getElementById(which).textContent, id);
  assert.match(await heard('title'), /Eave A/);
  await tablet.key_in(46, 0, 4);
  await tablet.tap('keep');
  assert.match(await heard('saved'), /saved \d/);
  await tablet.key_in(20, 0, 0);
  await tablet.tap('keep');
  assert.notEqual(await heard('warning'), '');  // the doubt
  assert.deepEqual(await tablet.evaluate(() => ['title', 'saved', 'warning'].map((id) => document.getElementById(id).getAttribute('role') ?? document.getElementById(id).ariaLive)), ['polite', 'status', 'alert']);
  // Every control says what it is, not what it is called in the program, and which is chosen.
  assert.deepEqual(await tablet.evaluate(() => [...document.querySelectorAll('#mirror button')].map((one) => [one.textContent, one.dataset.name]).filter(([words, name]) => words === '' || words === name)), []);
  assert.ok(await tablet.evaluate(() => document.querySelector('#mirror [aria-pressed="true"]') !== null));
  await end(tablet);
});

for (const [what, viewport, density] of [['a phone upright', { width: 390, height: 844 }, 3], ['a phone lying', { width: 844, height: 390 }, 3],
  ['half an iPad', { width: 590, height: 820 }, 2], ['an iPad', ipad, 2], ['8 in', small, 2]]) {
  test(`on ${what} every control and the main action are in reach`, { timeout: 300_000 }, async () => {
    const tablet = await open_tablet(server.url, { viewport, density });
    await tablet.ready_to_write();
    const beyond = () => tablet.evaluate(() => [...document.querySelectorAll('#mirror button')].map((one) => [one.dataset.name, one.getBoundingClientRect()])
      .filter(([, box]) => box.left < -1 || box.top < -1 || box.right > innerWidth + 1 || box.bottom > innerHeight + 1).map(([name]) => name));
    assert.ok(await tablet.has('demo'));
    assert.deepEqual(await beyond(), []);
    await tablet.tap('demo');
    // Where neither its row nor its letter has room, the next touch leads there, as one near the edge would.
    await tablet.tap(await tablet.has('edge A') ? 'edge A' : await tablet.has('roof A') ? 'roof A' : 'next');
    if (await tablet.has('near A')) {  // its letter covers others too: which is meant is asked
      await tablet.tap('near A');
    }
    await tablet.key_in(46, 0, 4);
    assert.ok(await tablet.has('keep'));
    assert.deepEqual(await beyond(), []);
    if (process.env.HEMLINE_SHOTS) {
      await tablet.page.screenshot({ path: `${process.env.HEMLINE_SHOTS}/${what.replaceAll(' ', '-')}.png` });
    }
    await tablet.tap('keep');
    assert.match(await tablet.evaluate(() => document.getElementById('saved').textContent), /^saved \d/);
    await end(tablet);
  });
}

test('a dark browser opens dark, until somebody chooses', { timeout: 300_000 }, async () => {
  const tablet = await open_tablet(server.url, { more: { colorScheme: 'dark' } });
  await tablet.ready();
  const ground = () => tablet.evaluate(() => document.body.style.background);
  assert.equal(await ground(), 'rgb(20, 24, 28)');
  await tablet.tap('light');
  assert.equal(await ground(), 'rgb(251, 250, 246)');
  await tablet.page.reload();
  await tablet.ready();
  assert.equal(await ground(), 'rgb(251, 250, 246)');
  await end(tablet);
});

test('a palm that rests on the glass does not deaden the fingers', { timeout: 300_000 }, async () => {
  const tablet = await open_tablet(server.url);
  await tablet.ready_to_write();
  await tablet.tap_all('demo', 'edge A');
  await tablet.evaluate(() => {
    const canvas = document.getElementById('screen');
    canvas.setPointerCapture = () => {};
    window.touch = (type, pointerId, x, y) => canvas.dispatchEvent(new PointerEvent(type, { pointerId, clientX: x, clientY: y, buttons: 1, pointerType: 'touch', bubbles: true, cancelable: true }));
    window.touch('pointerdown', 71, 30, 400);
  });
  await tablet.page.waitForTimeout(800);
  await tablet.evaluate(() => {
    const box = document.querySelector('[data-name="digit 4"]').getBoundingClientRect();
    window.touch('pointerdown', 72, box.x + 20, box.y + 20);
    window.touch('pointerup', 72, box.x + 20, box.y + 20);
  });
  await tablet.settle();
  assert.ok((await tablet.words()).includes('4'), await said(tablet));
  await end(tablet);
});

test('the tilt sensor is asked for when the pitch is opened, and a refusal is explained', { timeout: 300_000 }, async () => {
  const tablet = await open_tablet(server.url, { before: (context) => context.addInitScript(() => {
    DeviceOrientationEvent.requestPermission = async () => {
      window.asked = { in_touch: navigator.userActivation.isActive };
      return 'denied';
    };
  }) });
  await tablet.ready_to_write();
  await tablet.tap_all('demo', 'edge A');
  for (const sixteenths of [4, 3]) {
    await tablet.key_in(46, 0, sixteenths);
    await tablet.tap('keep');
  }
  assert.deepEqual(await tablet.evaluate(() => window.asked), { in_touch: true });
  assert.match(await tablet.said(), /tilt sensor was refused.*level and the tape/);
  await tablet.page.click('#again');
  assert.equal(await tablet.said(), '');
  await end(tablet);
});
