// The start: makes sure no other page has the program open, opens the store, loads the program and
// shows how far, and then starts a service worker that keeps it.
import { Store } from './store.js';

const { loading } = globalThis;
const sizes = SIZES;  // of what is loaded here, in bytes
const slow_ms = 8000;

/// Waits until no other page of this browser has the program open. If locks are not available,
/// nobody holds the lock.
function hold_alone() {
  return new Promise((resolve, reject) => {
    const hold = () => {
      resolve();
      return new Promise(() => {});  // as long as the page lives
    };
    navigator.locks.request('hemline', { ifAvailable: true }, (lock) => {
      if (lock) {
        return hold();
      }
      loading.say('other_tab');
      navigator.locks.request('hemline', hold).catch(reject);
      return undefined;
    }).catch(reject);
  });
}

/// How much of the program has come.
class Progress {
  #come = 0;
  #all = Object.values(sizes).reduce((sum, size) => sum + size, 0);
  #waiting = 0;

  add(bytes) {
    this.#come += bytes;
    this.#say('so_far');
    clearTimeout(this.#waiting);
    this.#waiting = setTimeout(() => this.#say('slow'), slow_ms);
  }
  end() { clearTimeout(this.#waiting); }
  #say(key) { loading.say(key, Math.round(this.#come / 1000), Math.round(this.#all / 1000)); }
}

async function fetched(name, progress) {
  let answer;
  const chunks = [];
  try {
    answer = await fetch(name);
    const reader = answer.body.getReader();
    for (let part = await reader.read(); !part.done; part = await reader.read()) {
      chunks.push(part.value);
      progress.add(part.value.length);
    }
  } catch {
    loading.fail('cut', name);
    throw new Error(name);
  }
  const bytes = new Uint8Array(await new Blob(chunks).arrayBuffer());
  if (!answer.ok || bytes.length !== sizes[name]) {
    loading.fail('missing', name);
    throw new Error(name);
  }
  return bytes;
}

function run_script(name) {
  return new Promise((resolve, reject) => {
    const script = document.createElement('script');
    script.src = name;
    script.onload = resolve;
    script.onerror = () => {
      loading.fail('missing', name);
      reject(new Error(name));
    };
    document.head.append(script);
  });
}

/// The screen's setting from versions that did not keep it with the other settings of this device.
function take_older_setting() {
  try {
    const { px_per_mm, left_hand } = JSON.parse(localStorage.getItem('screen') ?? '{}');
    if (!Store.has('screen') && (px_per_mm || left_hand)) {
      const scale = px_per_mm > 0 ? `${px_per_mm} px/mm\n` : px_per_mm < 0 ? 'later\n' : '';
      Store.lay('screen', new TextEncoder().encode(`${scale}${left_hand ? 'left' : 'right'} hand\n`));
    }
    localStorage.removeItem('screen');
  } catch {
    // none, or a torn file: the crew is asked again
  }
}

async function open_store(opened) {
  try {
    await Store.open(loading.tell);
    take_older_setting();
    await opened();
  } catch (problem) {
    if (problem.message === 'NetworkError') {
      loading.fail('missing', 'copy_worker.js');
    } else {
      loading.fail('blocked', problem.message);
    }
    throw problem;
  }
}

/// Starts the program with `module`; waits for `opened` when the store is open. A failure is shown
/// on the screen.
export async function start(module, opened) {
  try {
    await hold_alone();
  } catch (problem) {
    loading.fail('blocked', problem.name);
    return;
  }
  const progress = new Progress();
  progress.add(0);
  try {
    const [wasm, data] = await Promise.all([
      fetched('hemline.wasm', progress), fetched('hemline.data', progress), open_store(opened)]);
    module.wasmBinary = wasm;
    module.getPreloadedPackage = () => data.buffer;
    await run_script('hemline.js');
  } catch {
    // it has been said
  } finally {
    progress.end();
  }
}

/// Called after the start, so that the files it keeps are loaded already. Says when the program is
/// kept for the first time.
export async function keep_program() {
  const registration = await navigator.serviceWorker?.register('sw.js', { updateViaCache: 'none' }).catch(() => undefined);
  const coming = registration?.active ? undefined : registration?.installing ?? registration?.waiting;
  const look = () => {
    if (coming.state === 'activated') {
      loading.pass('offline');
    }
  };
  coming?.addEventListener('statechange', look);
  if (registration?.active) {
    registration.update().catch(() => {});  // no signal: the next start asks again
  }
}
