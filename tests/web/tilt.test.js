// The pitch by the tablet's sensor: values put in through the DevTools protocol, as if it lay there.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import { open_tablet, serve } from './tablet.js';

let server;
before(async () => { server = await serve(); });
after(() => server.stop());

async function reach_pitch(tablet) {
  await tablet.ready_to_write();
  await tablet.tap_all('demo', 'edge A');
  for (const sixteenths of [4, 3]) {
    await tablet.key_in(46, 0, sixteenths);
    await tablet.tap('keep');
  }
}
const said = async (tablet) => (await tablet.words()).join(' | ');

test('laid down and turned end for end, the sensor gives the pitch, and its own error cancels', { timeout: 300_000 }, async () => {
  const tablet = await open_tablet(server.url);
  const tools = await tablet.context.newCDPSession(tablet.page);
  const lie = (beta) => tools.send('DeviceOrientation.setDeviceOrientationOverride', { alpha: 0, beta, gamma: 0 });
  await tablet.ready_to_write();
  assert.ok(!(await tablet.has('lay down')));
  await lie(23.6);
  await reach_pitch(tablet);
  await tablet.tap_all('lay down', 'take');
  assert.match(await said(tablet), /Hold still/);
  await lie(24.0);  // the hand trembles
  await tablet.until(() => document.querySelector('#mirror').textContent.includes('First reading taken'));
  await lie(-21.4);
  await tablet.tap('take');
  await tablet.until(() => document.querySelector('[data-name="keep"]'));
  // Half the difference of 23.6 to 24.0 and -21.4: 22.5 to 22.7.
  const words = await said(tablet);
  const [, degrees] = words.match(/(\d+\.\d)°, \d+\.\d in 12/);
  console.log(`# ${words}`);
  assert.ok(Number(degrees) >= 22.5 && Number(degrees) <= 22.7);
  assert.match(words, /own error of 1\.\d° has cancelled/);
  await tablet.tap('keep');
  // A card's long title leaves no room for the word beside it.
  assert.match(await tablet.evaluate(() => document.getElementById('saved').textContent), /^saved \d/);
  assert.deepEqual(tablet.faults, []);
  await tablet.close();
  tablet.forget();
});

test('a tablet without a sensor is never offered it, though the browser sends nulls', { timeout: 300_000 }, async () => {
  const tablet = await open_tablet(server.url);
  await tablet.ready_to_write();
  await tablet.page.evaluate(() => dispatchEvent(new DeviceOrientationEvent('deviceorientation', {})));
  await reach_pitch(tablet);
  assert.ok(await tablet.has('notation degrees'));
  assert.ok(!(await tablet.has('lay down')));
  await tablet.close();
  tablet.forget();
});

test('a tablet moved while it is read is told so', { timeout: 300_000 }, async () => {
  const tablet = await open_tablet(server.url);
  await tablet.ready_to_write();
  const send = (beta) => tablet.page.evaluate((value) => dispatchEvent(new DeviceOrientationEvent('deviceorientation', { alpha: 0, beta: value, gamma: 0 })), beta);
  await send(20);
  await reach_pitch(tablet);
  await tablet.tap_all('lay down', 'take');
  await tablet.page.waitForTimeout(600);
  await send(35);
  await tablet.until(() => document.querySelector('#mirror').textContent.includes('First reading taken'));
  await send(-20);
  await tablet.tap('take');
  await tablet.page.waitForTimeout(2500);
  await tablet.settle();
  assert.ok(!(await tablet.has('keep')));
  assert.match(await said(tablet), /moved/);
  await tablet.close();
  tablet.forget();
});
