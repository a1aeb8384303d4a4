// Firefox on a separate screen, which has the graphics that a window needs.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import puppeteer from 'puppeteer-core';
import { Tablet } from './tablet.js';
import { open_screen } from './webkit.js';

export class Firefox extends Tablet {
  static async open(url) {
    const screen = await open_screen();
    const home = mkdtempSync(join(tmpdir(), 'hemline-firefox-'));
    const browser = await puppeteer.launch({
      browser: 'firefox', executablePath: process.env.FIREFOX ?? '/usr/bin/firefox-esr', headless: false, userDataDir: join(home, 'profile'),
      env: { ...process.env, HOME: home, DISPLAY: screen.display }, extraPrefsFirefox: { 'webgl.force-enabled': true }, defaultViewport: null,
    });
    const page = (await browser.pages())[0] ?? await browser.newPage();
    await page.setViewport({ width: 1180, height: 820 });
    await page.goto(url);
    return Object.assign(new Firefox(null, page, home, []), { browser, screen });
  }
  press(x, y) { return this.page.mouse.click(x, y); }
  async close() {
    await this.browser.close();
    this.screen.close();
    rmSync(this.profile, { recursive: true, force: true, maxRetries: 5 });
  }
}
