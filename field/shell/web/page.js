// The page around the program: it starts it, hands it touches and keys, asks it for frames when
// something happened, and mirrors its controls for a screen reader and for tests.
import { ask_for_file, give, print } from './paper.js';
import { start_search, stop_search } from './searching.js';
import { Store } from './store.js';

const canvas = document.getElementById('screen');
const mirror = document.getElementById('mirror');
const said = document.getElementById('said');
const typing = document.getElementById('typing');

export function say(words) {
  said.textContent = words;
}

// ---- the program ---------------------------------------------------------------------------------
let program = 0;  // its address, once it runs
let frame_asked = false;
let wake = 0;
let tilt_asked = false;
let being_kept = 0;
let whole = [];  // files to be put in place in one transaction
let promise_asked = false;
let keeping = Promise.resolve();  // the bytes given last
const savers = new Map();  // address -> what tells it from a later one there

function ask_frame() {
  if (program && !frame_asked) {
    frame_asked = true;
    requestAnimationFrame(draw);
  }
}

function draw(now) {
  frame_asked = false;
  const again = Module._hemline_frame(program, now);  // seconds; below 0: rest
  watch_tilt();
  clearTimeout(wake);
  if (again === 0) {
    ask_frame();
  } else if (again > 0) {
    wake = setTimeout(ask_frame, again * 1000);
  }
}

function fit() {
  if (!program || canvas.clientWidth === 0) {  // hidden while a page is printed
    return;
  }
  const density = window.devicePixelRatio || 1;
  Module._hemline_fit(program, Math.round(canvas.clientWidth * density),
    Math.round(canvas.clientHeight * density), density);
  ask_frame();
}

// ---- touches and keys ----------------------------------------------------------------------------
const kinds = { pointerdown: 0, pointermove: 1, pointerup: 2, pointercancel: 3 };

function touched(event) {
  if (!program || (event.type === 'pointermove' && event.buttons === 0)) {
    return;
  }
  event.preventDefault();
  if (event.type === 'pointerdown') {
    canvas.setPointerCapture(event.pointerId);
  }
  const density = window.devicePixelRatio || 1;
  Module._hemline_touch(program, kinds[event.type], event.pointerId, event.offsetX * density,
    event.offsetY * density);
  ask_frame();
  if (event.type === 'pointerup' && mirror.querySelector('[data-name="notation degrees"]')) {
    ask_for_tilt();
  }
  if (event.type === 'pointerup' && !promise_asked && mirror.querySelector('[data-name="by"]')
    && mirror.querySelector('[data-name="jobs"]')) {  // a job is open: there is something to keep
    ask_promise();
  }
  if (event.type === 'pointerup' && wants_keys()) {
    typing.focus({ preventScroll: true });  // only inside a touch does a keyboard come up
  }
}

/// The program shows letters to type a name with.
function wants_keys() {
  return mirror.querySelector('[data-name="letter space"]') !== null && !matchMedia('(pointer: coarse)').matches;
}

const keys = { Enter: '\n', Backspace: '\b', Escape: '\x1b' };

/// Calls `take` with the address of the text.
function with_text(text, take) {
  const size = text.length * 3 + 1;
  const at = Module._malloc(size);
  Module.stringToUTF8(text, at, size);
  take(at);
  Module._free(at);
}

function type(text) {
  if (program && text !== '') {
    with_text(text, (at) => Module._hemline_type(program, at));
    ask_frame();
  }
}

function why_not_kept(problem) {
  return problem?.name === 'QuotaExceededError'
    ? 'This browser has no room left for Hemline.'
    : `This browser could not keep it (${problem?.name ?? 'Error'}).`;
}

function key_pressed(event) {
  if (event.ctrlKey || event.metaKey || event.altKey || event.target.closest?.('#mirror')) {
    return;
  }
  const text = keys[event.key] ?? (event.key.length === 1 ? event.key : '');
  if (text !== '') {
    event.preventDefault();
    type(text);
  }
}

// ---- the mirror ----------------------------------------------------------------------------------
/// `page`: {targets: [{name, label, x, y, w, h}], texts: [{words, x, y, w, h}]} in CSS pixels.
function reflect(page) {
  const wanted = [];
  for (const target of page.targets) {
    const button = document.createElement('button');
    button.dataset.name = target.name;
    button.setAttribute('aria-label', target.label || target.name);
    button.textContent = target.label || target.name;
    button.addEventListener('click', () => tap(target));
    wanted.push([button, target]);
  }
  for (const text of page.texts) {
    const words = document.createElement('p');
    words.textContent = text.words;
    wanted.push([words, text]);
  }
  const focused = document.activeElement?.dataset?.name;
  mirror.replaceChildren(...wanted.map(([element, box]) => {
    element.style.cssText = `left:${box.x}px;top:${box.y}px;width:${box.w}px;height:${box.h}px`;
    return element;
  }));
  if (focused) {
    [...mirror.children].find((child) => child.dataset.name === focused)?.focus();
  }
}

/// A screen reader's or a keyboard's press of a control.
function tap(target) {
  const density = window.devicePixelRatio || 1;
  const x = (target.x + target.w / 2) * density;
  const y = (target.y + target.h / 2) * density;
  Module._hemline_touch(program, kinds.pointerdown, -2, x, y);
  Module._hemline_touch(program, kinds.pointerup, -2, x, y);
  ask_frame();
}

// ---- the tilt sensor ------------------------------------------------------------------------------
let tilt = null;  // as the sensor said last
let tilt_clock = 0;
const tilt_every_ms = 50;

/// A tablet without a sensor sends nothing, or nulls: neither is ever taken for a level deck.
function tilted(event) {
  if (event.beta !== null && event.gamma !== null) {
    const first = tilt === null;
    tilt = { beta: event.beta, gamma: event.gamma };
    if (first) {
      take_tilt();
    }
  }
}

function take_tilt() {
  if (program && tilt !== null && Module._hemline_tilt(program, tilt.beta, tilt.gamma)) {
    ask_frame();
  }
}

/// While a tilt is read, samples are taken by the clock: some browsers are silent as long as the
/// tablet moves by less than a tenth of a degree, and one that lies still is what is wanted.
function watch_tilt() {
  const reads = Module._hemline_reads_tilt(program) === 1;
  if (reads && tilt_clock === 0) {
    tilt_clock = setInterval(take_tilt, tilt_every_ms);
  } else if (!reads && tilt_clock !== 0) {
    clearInterval(tilt_clock);
    tilt_clock = 0;
  }
}

/// Some browsers ask the crew first, and only inside a touch.
function ask_for_tilt() {
  const ask = window.DeviceOrientationEvent?.requestPermission;
  if (ask && !tilt_asked) {
    tilt_asked = true;
    ask.call(window.DeviceOrientationEvent).then((answer) => {
      if (answer === 'granted') {  // one that listened before is not told everywhere
        window.removeEventListener('deviceorientation', tilted);
        window.addEventListener('deviceorientation', tilted);
      }
    }, () => { tilt_asked = false; });
  }
}

// ---- what is kept, and whether it lasts -----------------------------------------------------------
function keep(keeping_it) {
  ++being_kept;
  return keeping_it.finally(() => { --being_kept; });
}

/// All that one call put in place is kept together.
function keep_whole() {
  const changes = whole;
  whole = [];
  const answer = (why_not) => with_text(why_not, (text) => Module._hemline_kept_whole(program, changes.length, text));
  keep(Store.put_whole(changes).then(() => answer(''), (problem) => answer(why_not_kept(problem)))).then(ask_frame);
}

function say_promise(given) {
  if (program) {
    Module._hemline_promised(program, given ? 1 : 0);
    ask_frame();
  }
}

/// Inside a touch, once there is something to keep: some browsers ask the crew.
function ask_promise() {
  promise_asked = true;
  const asked = navigator.storage?.persist ? navigator.storage.persist() : Promise.resolve(false);
  asked.then(say_promise, () => say_promise(false));
}

/// An earlier visit may have been given the promise.
function look_for_promise() {
  navigator.storage?.persisted?.().then((given) => {
    if (given) {
      promise_asked = true;
      say_promise(true);
    }
  }, () => {});
}

/// A job file that was chosen or dropped. One larger than any job file is not read to its end.
async function take_file(file) {
  const size_most = 21 * 1024 * 1024;
  if (!program) {
    return;
  }
  const bytes = new Uint8Array(await file.slice(0, size_most).arrayBuffer());
  const path = `/in/${file.name.replaceAll('/', '-')}`;
  Module.FS.mkdirTree('/in');
  Module.FS.writeFile(path, bytes);
  with_text(path, (text) => Module._hemline_take_file(program, text));
  Module.FS.unlink(path);
  ask_frame();
}

// ---- the start -----------------------------------------------------------------------------------
/// One page writes; another one waits until it is closed.
function hold_alone() {
  if (!navigator.locks) {
    return Promise.resolve(true);
  }
  return new Promise((resolve) => {
    navigator.locks.request('hemline', { ifAvailable: true }, (lock) => {
      resolve(lock !== null);
      return lock === null ? undefined : new Promise(() => {});  // held as long as the page lives
    });
  });
}

async function start() {
  if (!(await hold_alone())) {
    say('Hemline is open in another tab. Use it there, or close it and load this page again.');
    return;
  }
  try {
    await Store.open();
  } catch (problem) {
    say(`This browser keeps nothing here (${problem.message}). Leave private browsing, or allow this page to store data, then load it again.`);
    return;
  }
  const script = document.createElement('script');
  script.src = 'hemline.js';
  document.head.append(script);
}

globalThis.Module = {
  canvas,
  preRun: [() => Store.fill(Module)],
  printErr: (words) => { console.error(words); },
  onAbort: (words) => say(`Hemline stopped: ${words}. What was saved is safe. Load the page again.`),
  // called by the program
  hemline: {
    started(address) {
      program = address;
      take_tilt();
      look_for_promise();
      fit();
    },
    failed: say,
    reflect,
    keep(path, offset, bytes) {
      keeping = keep(Store.keep(path, offset, bytes));
    },
    put(path, bytes) {
      if (whole.push([path, bytes]) === 1) {
        queueMicrotask(keep_whole);
      }
    },
    search: (owner, events) => start_search(events, (choices, is_last) => {
      with_text(choices, (text) => Module._hemline_found(program, owner, text, is_last ? 1 : 0));
      ask_frame();
    }),
    stop_search,
    give,
    choose: () => ask_for_file(take_file),
    print,
    ask_promise,
    /// How the screen is set on this device; px_per_mm 0: nobody measured it, below 0: not now.
    screen: () => JSON.parse(localStorage.getItem('screen') ?? '{"px_per_mm": 0, "left_hand": false}'),
    keep_screen: (px_per_mm, left_hand) => localStorage.setItem('screen', JSON.stringify({ px_per_mm, left_hand })),
    /// Tells the saver what became of the bytes given last, unless it is gone by then.
    when_kept(saver, sequence) {
      const mark = savers.get(saver) ?? Symbol('saver');
      savers.set(saver, mark);
      const answer = (why_not) => {
        if (savers.get(saver) === mark) {
          with_text(why_not, (text) => Module._hemline_kept(program, saver, sequence, text));
          ask_frame();
        } else if (why_not) {
          say(`Not saved: ${why_not}`);
        }
      };
      keeping.then(() => answer(''), (problem) => answer(why_not_kept(problem)));
    },
    forget: (saver) => savers.delete(saver),
    /// Nothing to draw and nothing being kept: for tests.
    at_rest: () => program !== 0 && !frame_asked && being_kept === 0 && whole.length === 0,
  },
};

for (const kind of Object.keys(kinds)) {
  canvas.addEventListener(kind, touched);
}
canvas.addEventListener('wheel', (event) => {
  event.preventDefault();
  if (program) {
    const notch = event.deltaMode === 1 ? 3 : 100;  // lines or pixels that browsers give one
    Module._hemline_wheel(program, event.offsetX * (window.devicePixelRatio || 1),
      event.offsetY * (window.devicePixelRatio || 1), -event.deltaY / notch);
    ask_frame();
  }
}, { passive: false });
canvas.addEventListener('contextmenu', (event) => event.preventDefault());
canvas.addEventListener('webglcontextlost', (event) => event.preventDefault());
canvas.addEventListener('webglcontextrestored', () => {
  Module._hemline_context_restored(program);
  fit();
});
typing.addEventListener('beforeinput', (event) => {
  event.preventDefault();
  type(event.inputType === 'deleteContentBackward' ? '\b' : event.inputType === 'insertLineBreak' ? '\n' : event.data ?? '');
});
window.addEventListener('keydown', (event) => { if (event.target !== typing) { key_pressed(event); } });
window.addEventListener('dragover', (event) => event.preventDefault());
window.addEventListener('drop', (event) => {
  event.preventDefault();
  if (event.dataTransfer.files.length > 0) {
    take_file(event.dataTransfer.files[0]);
  }
});
new ResizeObserver(fit).observe(canvas);
window.addEventListener('orientationchange', fit);
window.addEventListener('deviceorientation', tilted);
document.addEventListener('visibilitychange', ask_frame);

if ('serviceWorker' in navigator) {
  navigator.serviceWorker.register('sw.js').then((registration) => registration.update()).catch(() => {});
}
start();
