// WebKitGTK's browser through its driver: W3C calls, on a separate screen.
import { spawn } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Tablet } from './tablet.js';

export const element_key = 'element-6066-11e4-a52e-4f735466cecf';
const browsers = ['4.1', '4.0', '6.0'].map((version) => `/usr/lib/x86_64-linux-gnu/webkit2gtk-${version}/MiniBrowser`);

async function free_port() {
  const server = createServer();
  await new Promise((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address();
  await new Promise((resolve) => server.close(resolve));
  return port;
}

/// An X server on a number that it chooses itself.
export async function open_screen() {
  const process = spawn('Xvfb', ['-displayfd', '1', '-screen', '0', '1280x900x24'], { stdio: ['ignore', 'pipe', 'ignore'] });
  const number = await new Promise((resolve) => process.stdout.once('data', (text) => resolve(String(text).trim())));
  return { display: `:${number}`, close: () => process.kill() };
}

/// Descendants of a process, by name.
function below(parent, name) {
  const found = [];
  for (const entry of readdirSync('/proc').filter((one) => /^\d+$/.test(one))) {
    try {
      const [, comm, ppid] = readFileSync(`/proc/${entry}/stat`, 'utf8').match(/^\d+ \((.*)\) \S (\d+)/);
      if (Number(ppid) === parent) {
        found.push(...(comm.startsWith(name) ? [Number(entry)] : []), ...below(Number(entry), name));
      }
    } catch {
      // it has just ended
    }
  }
  return found;
}

export class WebKit extends Tablet {
  static async open(url) {
    const home = mkdtempSync(join(tmpdir(), 'hemline-webkit-'));
    const screen = await open_screen();
    const port = await free_port();
    const env = { ...process.env, DISPLAY: screen.display, HOME: home, XDG_DATA_HOME: `${home}/data`, XDG_CACHE_HOME: `${home}/cache`,
      XDG_RUNTIME_DIR: home, LIBGL_ALWAYS_SOFTWARE: '1', GDK_BACKEND: 'x11', WEBKIT_DISABLE_SANDBOX_THIS_IS_DANGEROUS: '1' };
    const driver = spawn('WebKitWebDriver', [`--port=${port}`], { env, stdio: 'ignore' });
    const webkit = new WebKit(driver, screen, home, `http://127.0.0.1:${port}`);
    for (let i = 0; i < 100; ++i) {
      if (await fetch(`http://127.0.0.1:${port}/status`).then((answer) => answer.ok, () => false)) {
        break;
      }
      await new Promise((resolve) => setTimeout(resolve, 100));
    }
    const binary = browsers.find((path) => { try { readFileSync(path); return true; } catch { return false; } });
    const session = await webkit.ask('POST', '/session', { capabilities: { alwaysMatch: { 'webkitgtk:browserOptions': { binary, args: ['--automation'] } } } });
    webkit.base += `/session/${session.sessionId}`;
    await webkit.ask('POST', '/timeouts', { script: 60_000 });
    // As large as the screen: the day's questions then need no scrolling.
    await webkit.ask('POST', '/window/rect', { x: 0, y: 0, width: 1280, height: 900 });
    await webkit.ask('POST', '/url', { url });
    return webkit;
  }
  constructor(driver, screen, home, base) {
    super();
    Object.assign(this, { driver, screen, home, base });
  }

  async ask(method, path, body) {
    const answer = await fetch(this.base + path, { method, body: body && JSON.stringify(body), headers: { 'content-type': 'application/json' } });
    const { value } = await answer.json();
    if (!answer.ok) {
      throw new Error(`${path}: ${value.error} ${value.message}`);
    }
    return value;
  }
  /// What an async function with these arguments returns there.
  async evaluate(what, ...args) {
    const script = `const done = arguments[arguments.length - 1]; (async () => (${what})(...[...arguments].slice(0, -1)))().then((value) => done({ value }), (problem) => done({ problem: String(problem) }));`;
    const { value, problem } = await this.ask('POST', '/execute/async', { script, args });
    if (problem) {
      throw new Error(problem);
    }
    return value;
  }
  press(x, y) {
    const mouse = (type, more = {}) => ({ type, button: 0, ...more });
    return this.ask('POST', '/actions', { actions: [{ type: 'pointer', id: 'finger', parameters: { pointerType: 'mouse' },
      actions: [mouse('pointerMove', { x: Math.round(x), y: Math.round(y), duration: 0 }), mouse('pointerDown'), mouse('pointerUp')] }] });
  }
  /// The process that keeps what pages store, as a sleeping page loses it.
  kill_storage() {
    const all = below(this.driver.pid, 'WebKitNetwork');
    all.forEach((pid) => process.kill(pid, 'SIGKILL'));
    return all.length;
  }
  async close() {
    await this.ask('DELETE', '').catch(() => {});
    this.driver.kill();
    this.screen.close();
    rmSync(this.home, { recursive: true, force: true, maxRetries: 5 });
  }
}
