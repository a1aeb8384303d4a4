// The page around the program: it starts it, hands it touches and keys, asks it for frames when
// something happened, and mirrors its controls for a screen reader and for tests.
import { ask_for_file, give, print, shares } from './paper.js';
import { start_search, stop_search } from './searching.js';
import { keep_program, start } from './starting.js';
import { Store } from './store.js';

const canvas = document.getElementById('screen');
const mirror = document.getElementById('mirror');
const typing = document.getElementById('typing');
const { loading } = globalThis;

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
  const again = Module._hemline_frame(program, now);  // seconds; below 0: nothing to draw
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
    event.offsetY * density, event.timeStamp / 1000);
  ask_frame();
  if (event.type === 'pointerup' && mirror.querySelector('[data-name="notation degrees"]')) {
    ask_for_tilt();
  }
  if (event.type === 'pointerup' && !promise_asked && mirror.querySelector('[data-name="by"]')
    && mirror.querySelector('[data-name="jobs"]')) {  // a job is open: ask
    ask_promise();
  }
}

/// The program shows letter keys for a name.
function wants_keys() {
  return mirror.querySelector('[data-name="letter space"]') !== null && !matchMedia('(pointer: coarse)').matches;
}

// keys.h. The mirror is one stop; Tab and arrows move the program's focus, which a screen reader is told.
const keys = { Enter: '\n', Backspace: '\b', Escape: '\x1b', ArrowUp: '\x11', ArrowDown: '\x12',
  ArrowLeft: '\x13', ArrowRight: '\x14', PageUp: '\x15', PageDown: '\x16', F1: '\x17' };
const commands = { z: '\x1a', c: '\x03', arrowdown: '\x0e', arrowup: '\x10' };

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

/// A letter that is being composed (´ and n) arrives complete, from the field being typed into.
function key_pressed(event) {
  const pressing = event.target.closest?.('#mirror button, #words') && ['Enter', ' '].includes(event.key);
  if (event.isComposing || pressing) {
    return;
  }
  const command = event.ctrlKey || event.metaKey;
  if (command && event.key.toLowerCase() === 'a') {
    event.preventDefault();  // nothing here is to be highlighted as selected
  } else if (command && !event.altKey && commands[event.key.toLowerCase()]) {
    event.preventDefault();
    type(commands[event.key.toLowerCase()]);
  } else if (event.key === 'Tab' && !command && !event.altKey && program && !event.target.closest?.('#words')) {
    event.preventDefault();
    if (event.target !== typing) {
      mirror.focus({ preventScroll: true });
    }
    type(event.shiftKey ? '\x0b' : '\t');
  } else if (event.repeat && event.key === 'Enter') {
    event.preventDefault();  // held down, it acts once
  } else if (!command && !event.altKey && (keys[event.key] || event.target !== typing)) {
    const text = keys[event.key] ?? (event.key.length === 1 ? event.key : '');
    if (text !== '') {
      event.preventDefault();
      if (event.key.startsWith('Arrow') && mirror.contains(document.activeElement)) {
        mirror.focus({ preventScroll: true });  // Enter is for the program's focus now
      }
      type(text);
    }
  }
}

// ---- the mirror ----------------------------------------------------------------------------------
/// Announces it to a screen reader, once when it changes.
function say_aloud(id, words) {
  const place = document.getElementById(id);
  if (place.textContent !== words) {
    place.textContent = words;
  }
}

/// See page_mirror.h.
function reflect(page) {
  const wanted = [];
  mirror.dataset.waits = page.waits;
  for (const target of page.targets) {
    const button = document.createElement('button');
    button.dataset.name = target.name;
    button.textContent = target.label || target.name;
    button.tabIndex = -1;
    if (target.focused) {
      button.id = 'on';
    }
    if (target.chosen) {
      button.setAttribute('aria-pressed', 'true');
    }
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
  mirror.setAttribute('aria-activedescendant', page.targets.some((one) => one.focused) ? 'on' : '');
  if (focused) {
    [...mirror.children].find((child) => child.dataset.name === focused)?.focus();
  }
  if (wants_keys()) {
    typing.focus({ preventScroll: true });
  } else if (document.activeElement === typing) {
    typing.blur();
  }
  document.body.style.background = page.ground;
  loading.language(page.language);
  say_aloud('title', page.title);
  say_aloud('saved', page.saved);
  say_aloud('warning', page.warning);
  if (mirror.querySelector('[data-name="notation degrees"]')) {  // the pitch has just been opened
    ask_for_tilt();
  }
}

/// A screen reader's or a keyboard's press of a control.
function tap(target) {
  const density = window.devicePixelRatio || 1;
  const x = (target.x + target.w / 2) * density;
  const y = (target.y + target.h / 2) * density;
  Module._hemline_touch(program, kinds.pointerdown, -2, x, y, performance.now() / 1000);
  Module._hemline_touch(program, kinds.pointerup, -2, x, y, performance.now() / 1000);
  ask_frame();
}

// ---- the tilt sensor ------------------------------------------------------------------------------
let tilt = null;  // as the sensor said last
let tilt_clock = 0;
const tilt_every_ms = 50;

/// A tablet without a sensor sends nothing, or nulls; neither is ever taken for a level deck.
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

/// While a tilt is read, samples are taken by the clock: some browsers send nothing while the
/// tablet moves by less than a tenth of a degree, and the tablet should lie still.
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
      if (answer === 'granted') {  // listen again: needed by some browsers
        window.removeEventListener('deviceorientation', tilted);
        window.addEventListener('deviceorientation', tilted);
      } else {
        loading.tell('tilt_refused');
      }
    }, () => { tilt_asked = false; });  // not inside a touch: the next touch asks again
  }
}

// ---- what is kept, and whether it lasts -----------------------------------------------------------
function keep(keeping_it) {
  ++being_kept;
  return keeping_it.finally(() => { --being_kept; });
}

/// Everything that a call put in place is kept together.
function keep_whole() {
  const changes = whole;
  whole = [];
  const answer = (why) => Module._hemline_kept_whole(program, changes.length, why);
  keep(Store.put_whole(changes).then(() => answer(0), (problem) => answer(problem.kind))).then(ask_frame);
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

/// The browser may have given the promise on an earlier visit.
function look_for_promise() {
  navigator.storage?.persisted?.().then((given) => {
    if (given) {
      promise_asked = true;
      say_promise(true);
    }
  }, () => {});
}

/// A job file that was chosen or dropped. A file larger than any job file is not read to its end.
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
globalThis.Module = {
  canvas,
  preRun: [() => Store.fill(Module)],
  printErr: (words) => { console.error(words); },
  onAbort: (words) => loading.fail('stopped', words),
  // called by the program
  hemline: {
    started(address) {
      program = address;
      with_text(left, (text) => Module._hemline_go_back_to(program, text));
      take_tilt();
      look_for_promise();
      loading.started();
      fit();
      keep_program();
    },
    failed: loading.fail_in_words,
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
    give: (name, kind, bytes) => give(name, kind, bytes, (what) => {
      Module._hemline_given(program, what);
      ask_frame();
    }),
    choose: () => ask_for_file(take_file),
    print,
    ask_promise,
    is_dark: () => matchMedia('(prefers-color-scheme: dark)').matches,
    shares,
    copy: (text) => { navigator.clipboard?.writeText(text).catch(() => {}); },
    /// Saves where the program is, and what is half keyed in, for the next start.
    leave: (text) => keep(Store.set('left', text).catch(() => {})),
    /// Tells the saver what happened to the bytes given last, unless the saver is gone by then.
    when_kept(saver, sequence) {
      const mark = savers.get(saver) ?? Symbol('saver');
      savers.set(saver, mark);
      const answer = (why) => {
        if (savers.get(saver) === mark) {
          Module._hemline_kept(program, saver, sequence, why);
          ask_frame();
        } else if (why) {
          loading.tell('not_saved');
        }
      };
      keeping.then(() => answer(0), (problem) => answer(problem.kind));
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
    const notch = event.deltaMode === 1 ? 3 : 100;  // some browsers count lines, others pixels
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
typing.addEventListener('compositionend', (event) => {
  type(event.data ?? '');
  typing.value = '';
});
typing.addEventListener('beforeinput', (event) => {
  if (event.isComposing) {
    return;
  }
  event.preventDefault();
  type(event.inputType === 'deleteContentBackward' ? '\b' : event.inputType === 'insertLineBreak' ? '\n' : event.data ?? '');
});
window.addEventListener('keydown', key_pressed);
window.addEventListener('paste', (event) => {
  const text = event.clipboardData?.getData('text/plain') ?? '';
  if (program && text !== '') {
    event.preventDefault();
    with_text(text, (at) => Module._hemline_paste(program, at));
    ask_frame();
  }
});
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

let left = '';
start(globalThis.Module, async () => { left = await Store.setting('left').catch(() => '') ?? ''; });
