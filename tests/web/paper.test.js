// What leaves the browser on paper and as drawings: the card, templates at true size, SVG and DXF.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { read_eave_a } from './eave.js';
import { desk, open_tablet, serve } from './tablet.js';

let server;
let folder;
let tablet;
before(async () => {
  server = await serve();
  folder = mkdtempSync(join(tmpdir(), 'hemline-paper-'));
});
after(async () => {
  rmSync(folder, { recursive: true });
  await server.stop();
});

/// The card of the next cut of eave A, with the printer's press counted instead of made.
async function open_card() {
  tablet = await open_tablet(server.url, {
    before: (context) => context.addInitScript(() => {
      window.printed = [];
      window.print = () => { window.printed.push(document.title); };
    }),
  });
  await tablet.ready_to_write();
  await read_eave_a(tablet);
  for (let i = 0; i < 40 && !(await tablet.has('folded')); ++i) {
    const names = await tablet.names();
    await tablet.tap(names.includes('tick') ? 'tick' : 'answer');
  }
  await tablet.tap_all('folded', 'papers');
}

/// Sizes of what a printer sees, in millimeters: a CSS inch is 96 pixels.
const printed_boxes = (selector) => tablet.page.$$eval(selector, (all) => all.map((one) => {
  const box = one.getBoundingClientRect();
  return { w: box.width * 25.4 / 96, h: box.height * 25.4 / 96 };
}));

test('templates print at true size, with bars to check it, on the paper that is in the printer', { timeout: 300_000 }, async () => {
  await open_card();
  for (const [paper, wide, tall] of [['letter', 215.9, 279.4], ['a4', 210, 297]]) {
    await tablet.tap_all(paper, 'print templates');
    await tablet.page.emulateMedia({ media: 'print' });
    const bars = await printed_boxes('#paper .bar');
    assert.ok(bars.length >= 4, 'two bars on each sheet');
    for (const [i, bar] of bars.entries()) {
      assert.ok(Math.abs(bar.w - [101.6, 100][i % 2]) < 0.05, `bar of ${bar.w} mm`);
    }
    // Within margins of 12 mm, and a millimeter to spare.
    for (const sheet of await printed_boxes('#paper section > svg')) {
      assert.ok(Math.abs(sheet.w - wide + 24) < 0.1 && Math.abs(sheet.h - tall + 25) < 0.1);
    }
    assert.equal(await tablet.page.$eval('#safe', (one) => getComputedStyle(one).display), 'none');
    const pdf = join(folder, `${paper}.pdf`);
    writeFileSync(pdf, await tablet.page.pdf({ preferCSSPageSize: true }));
    const size = execFileSync('pdfinfo', [pdf], { encoding: 'utf8' });
    const [, w, h] = size.match(/Page size: +([\d.]+) x ([\d.]+) pts/);
    assert.ok(Math.abs(w / 72 * 25.4 - wide) < 0.5 && Math.abs(h / 72 * 25.4 - tall) < 0.5, size);
    assert.equal(Number(size.match(/Pages: +(\d+)/)[1]), bars.length / 2);
    const words = execFileSync('pdftotext', [pdf, '-'], { encoding: 'utf8' });
    assert.match(words, /4 in: measure it/);
    const sheets = bars.length / 2;
    for (let page = 1; page <= sheets; ++page) {
      assert.ok(words.includes(`page ${page} of ${sheets}`));
    }
    await tablet.page.emulateMedia({ media: 'screen' });
  }
  assert.equal((await tablet.page.evaluate(() => window.printed)).length, 2);
  await tablet.close();
  tablet.forget();
});

test('the cut card prints its length and every mark, on one page', { timeout: 300_000 }, async () => {
  await open_card();
  await tablet.tap('print card');
  assert.match((await tablet.page.evaluate(() => window.printed)).join(), /^Edge A, .*piece 1 of /);
  const pdf = join(folder, 'card.pdf');
  await tablet.page.emulateMedia({ media: 'print' });
  writeFileSync(pdf, await tablet.page.pdf({ preferCSSPageSize: true }));
  await tablet.page.emulateMedia({ media: 'screen' });
  assert.match(execFileSync('pdfinfo', [pdf], { encoding: 'utf8' }), /Pages: +1\n/);
  const words = execFileSync('pdftotext', ['-layout', pdf, '-'], { encoding: 'utf8' });
  assert.match(words, /Cut \d+ ft/);
  assert.match(words, /end cut/);
  assert.match(words, / · page 1 of 1/);
  for (const line of words.split('\n').filter((one) => /lap line|bead line|tab fold/.test(one))) {
    assert.match(line, /none/, 'no waste where nothing is cut');
  }
  assert.match(words, /gloves and eye protection/);
  assert.deepEqual(tablet.faults, []);
  await tablet.close();
  tablet.forget();
});

test('drawings come out as files: SVG as the desk writes it, DXF with its layers', { timeout: 300_000 }, async () => {
  await open_card();
  const drawn = await tablet.take_out('save svg', folder);
  const svg = readFileSync(drawn, 'utf8');
  assert.match(svg, /^<\?xml.*<svg /s);
  assert.match(svg, /class="bend"/);
  const dxf = readFileSync(await tablet.take_out('save dxf', folder), 'latin1');
  for (const layer of ['CUT', 'BEND', 'MARK']) {
    assert.ok(dxf.includes(`\r\n${layer}\r\n`));
  }
  assert.ok(dxf.trimEnd().endsWith('EOF'));
  // The same edge at the desk.
  const title = svg.match(/<title>(.*)<\/title>/)[1];
  console.log(`# ${title}`);
  const readings = readFileSync(new URL('../../assets/demo/readings.csv', import.meta.url), 'utf8')
    .replace(/^A,.*$/m, (row) => row.replace(/"?46 ft[^,]*"?/, '46 ft 0 1/4 in'));
  writeFileSync(join(folder, 'demo.csv'), readings);
  desk('pattern', join(folder, 'demo.csv'), 'A', title.match(/piece (\d+)/)[1], '--trim', drawn.match(/A (\w+) \d+\.svg$/)[1],
    '--svg', join(folder, 'desk.svg'), '--dxf', join(folder, 'desk.dxf'));
  const desk_svg = readFileSync(join(folder, 'desk.svg'), 'utf8');
  assert.equal(svg, desk_svg);
  assert.equal(dxf, readFileSync(join(folder, 'desk.dxf'), 'latin1'));
  await tablet.close();
  tablet.forget();
});
