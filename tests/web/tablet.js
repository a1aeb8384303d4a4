// A tablet's browser on a page served here: touches by a control's name, and what the screen says.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { createServer } from 'node:http';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, readlinkSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { afterEach } from 'node:test';
import { extname, join, normalize } from 'node:path';
import { chromium } from 'playwright-core';

const site = new URL('../../build/web/', import.meta.url).pathname;
const kinds = {
  '.html': 'text/html', '.js': 'text/javascript', '.css': 'text/css', '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json', '.png': 'image/png', '.data': 'application/octet-stream',
};

/// Serves build/web, or another folder, on loopback; `served` lists what was asked for, `more` are pages
/// beside the files.
export async function serve(port = 0, folder = site, more = {}, headers = {}) {
  const served = [];
  const moved = { bytes: 0 };
  const server = createServer((request, response) => {
    const asked = normalize(new URL(request.url, 'http://x').pathname);
    const path = asked.replace(/\/$/, '/index.html');
    served.push(path);
    if (more.redirects && asked === '/index.html') {  // as some hosts do
      response.writeHead(301, { location: './' }).end();
      return;
    }
    try {
      const packed = /\bbr\b/.test(request.headers['accept-encoding'] ?? '') && !more[path] && existsSync(join(folder, `${path}.br`));
      const bytes = more[path] ?? readFileSync(join(folder, packed ? `${path}.br` : path));
      moved.bytes += bytes.length;
      response.writeHead(200, { 'content-type': kinds[extname(path)] ?? 'application/octet-stream', ...headers, ...(packed ? { 'content-encoding': 'br' } : {}) });
      response.end(bytes);
    } catch {
      response.writeHead(404).end();
    }
  });
  server.unref();  // a failed test does not wait for it
  await new Promise((resolve) => server.listen(port, '127.0.0.1', resolve));
  return {
    served,
    moved,
    more,
    port: server.address().port,
    url: `http://127.0.0.1:${server.address().port}/`,
    stop: async () => new Promise((resolve) => { server.closeAllConnections(); server.close(resolve); }),
  };
}

const flags = ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run',
  '--disable-background-networking', '--disable-component-update', '--disable-sync',
  '--enable-unsafe-swiftshader'];

export const ipad = { width: 1180, height: 820 };
export const small = { width: 960, height: 600 };  // 8 in

/// A browser with a separate profile, kept in `profile` until forget().
export async function open_tablet(url, { profile = mkdtempSync(join(tmpdir(), 'hemline-web-')), viewport = ipad, density = 1, before, more = {}, args = [], until = 'load' } = {}) {
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium', headless: true, args: [...flags, ...args], viewport,
    deviceScaleFactor: density,
    hasTouch: true, serviceWorkers: 'allow', acceptDownloads: true, locale: 'en-US', ...more,
  });
  const page = context.pages()[0] ?? await context.newPage();
  const faults = [];
  page.on('pageerror', (error) => faults.push(error.message));
  if (before) {
    await before(context, page);
  }
  await page.goto(url, { waitUntil: until });
  const tablet = new Tablet(context, page, profile, faults);
  open.add(tablet);
  return tablet;
}

// A failed test leaves no browser behind.
const open = new Set();
afterEach(async () => {
  for (const tablet of open) {
    await tablet.close().catch(() => {});
    tablet.forget();
  }
  open.clear();
});

/// The browser's files as they are kept, path -> bytes.
export async function kept_files(tablet) {
  const files = await tablet.evaluate(async () => {
    const request = indexedDB.open('hemline');
    const database = await new Promise((resolve) => { request.onsuccess = () => resolve(request.result); });
    const store = database.transaction('chunks').objectStore('chunks');
    const wait = (asked) => new Promise((resolve) => { asked.onsuccess = () => resolve(asked.result); });
    const [keys, values] = [await wait(store.getAllKeys()), await wait(store.getAll())];
    database.close();
    return keys.map(([path, offset], i) => [path, offset, [...values[i]]]);
  });
  const whole = new Map();
  for (const [path, offset, bytes] of files.sort((a, b) => a[1] - b[1])) {
    const before = whole.get(path) ?? [];
    assert.equal(before.length, offset, 'chunks follow one another');
    whole.set(path, [...before, ...bytes]);
  }
  return whole;
}

/// Lays the only job of `files` out as a job's folder on this machine.
export function lay_out(files, folder) {
  for (const [path, bytes] of files) {
    const [, , name] = path.split('/');
    if (name !== undefined) {  // this device's settings are not part of a job
      mkdirSync(folder, { recursive: true });
      writeFileSync(join(folder, name), new Uint8Array(bytes));
    }
  }
  return folder;
}

/// The desk's program; what it prints.
export const desk = (...words) => execFileSync(process.env.HEMLINE_CLI, words, { encoding: 'utf8' });

export class Tablet {
  constructor(context, page, profile, faults) {
    Object.assign(this, { context, page, profile, faults });
  }
  // What a browser with another engine does differently (engines.js).
  evaluate(what, given) { return this.page.evaluate(what, given); }
  press(x, y) { return this.page.touchscreen.tap(x, y); }

  /// Waits until the program shows its controls, or says why it does not.
  async ready() {
    await this.until(() => document.querySelector('#mirror button, #again:not([hidden])') !== null);
  }
  /// And somebody holds the tablet: without that nothing is written.
  async ready_to_write() {
    await this.ready();
    if ((await this.label('by'))?.includes('Who holds it')) {
      await this.tap_all('by', 'name Installer');
    }
  }
  /// The roof of the only job: it opens by itself where it was left.
  async at_roof() {
    while (!(await this.has('backup'))) {
      await this.tap((await this.names()).find((name) => name.startsWith('job ')) ?? 'leave');
    }
  }
  label(name) {
    return this.evaluate((wanted) => [...document.querySelectorAll('#mirror button')].find((one) => one.dataset.name === wanted)?.textContent, name);
  }
  /// Asks until it is true (Playwright's waiting needs eval, which the page forbids).
  async until(what) {
    for (const end = Date.now() + 60_000; Date.now() < end;) {
      if (await this.evaluate(what)) {
        return;
      }
      await new Promise((resolve) => setTimeout(resolve, 10));
    }
    throw new Error(`never came true: ${what}; it says: ${(await this.words()).join(' | ')} ${await this.said()}`);
  }
  said() { return this.evaluate(() => document.getElementById('said').textContent); }
  names() { return this.evaluate(() => [...document.querySelectorAll('#mirror button')].map((one) => one.dataset.name)); }
  words() { return this.evaluate(() => [...document.querySelectorAll('#mirror p')].map((one) => one.textContent)); }
  async has(name) { return (await this.names()).includes(name); }

  /// Touches the middle of a control once what is to be read first can have been read, then waits for the screen to settle.
  async tap(name) {
    await this.until(() => document.getElementById('mirror').dataset.waits !== 'true');
    const place = await this.evaluate((wanted) => {
      const one = [...document.querySelectorAll('#mirror button')].find((button) => button.dataset.name === wanted);
      const box = one?.getBoundingClientRect();
      return box && { x: box.x + box.width / 2, y: box.y + box.height / 2 };
    }, name);
    if (!place) {
      throw new Error(`no control "${name}"; there are: ${(await this.names()).join(', ')}; it says: ${(await this.words()).join(' | ')}`);
    }
    await this.press(place.x, place.y);
    await this.settle();
  }
  async tap_all(...names) {
    for (const name of names) {
      await this.tap(name);
    }
  }
  /// Touches a control and returns the path of the file that comes out, named as the page named it.
  async take_out(name, folder) {
    const coming = this.page.waitForEvent('download');
    await this.tap(name);
    const download = await coming;
    const file = join(folder, download.suggestedFilename());
    await download.saveAs(file);
    return file;
  }
  /// Touches a control that asks for a file, and chooses this file.
  async put_in(name, file) {
    const asking = this.page.waitForEvent('filechooser');
    await this.tap(name);
    await (await asking).setFiles(file);
    await this.page.waitForTimeout(100);
    await this.settle();
  }
  /// Until no frame is wanted and nothing is being kept.
  async settle() {
    await this.until(() => Module.hemline.at_rest());
  }

  /// Keys in a length: feet, inches, and the fraction in sixteenths.
  async key_in(feet, inches, sixteenths) {
    for (const digit of feet > 0 ? String(feet) : '') {
      await this.tap(`digit ${digit}`);
    }
    await this.tap('field inches');
    await this.tap(`inches ${inches}`);
    if (sixteenths > 0) {
      if (await this.has(`sixteenths ${sixteenths}`)) {
        await this.tap(`sixteenths ${sixteenths}`);
      } else {
        await this.tap_all(`sixteenths ${sixteenths - 1}`, 'a sixteenth more');
      }
    }
  }

  close() {
    open.delete(this);
    return this.context.close();
  }
  /// The battery is out: no page event, no goodbye.
  async kill() {
    const gone = new Promise((resolve) => this.context.once('close', resolve));
    // The profile's lock names the browser, which leads a separate process group.
    const [, browser] = readlinkSync(join(this.profile, 'SingletonLock')).match(/-(\d+)$/);
    process.kill(-Number(browser), 'SIGKILL');
    await gone;
    open.delete(this);
  }
  forget() { rmSync(this.profile, { recursive: true, force: true, maxRetries: 5 }); }
}
