// What the browser keeps, twice: in IndexedDB, where a file is its chunks in the order of their
// offsets, and as a file of the private file system.
//
//   append ─▶ copy, flushed ─▶ transaction, complete ─▶ saved
//              ▲ cut off again ─────┘ failed
//
// At the start the copy with more valid bytes counts, and repairs the other.
import { Copy } from './copy.js';
import { ask, transact, with_database } from './database.js';
import { valid_size } from './frames.js';
import { NotKept, kind_of } from './not_kept.js';

const whole = 'whole';  // names the files that are being put in place together
const chunks_most = 32;  // chunks of a file, before they are joined
const idle_ms = 2000;

let files = new Map();  // path -> its chunks, in order, as they are kept
let device = '';
let known = null;       // the connection that was compared with `files`
let unsure = () => new Map();  // path -> what an interrupted save may have left there, or null
let busy = Promise.resolve();
let joining = 0;
let tell = () => {};

const all_of = (path) => IDBKeyRange.bound([path], [path, []]);

function joined(chunks) {
  if (chunks.length === 1) {
    return chunks[0];
  }
  const bytes = new Uint8Array(chunks.reduce((size, chunk) => size + chunk.length, 0));
  let at = 0;
  for (const chunk of chunks) {
    bytes.set(chunk, at);
    at += chunk.length;
  }
  return bytes;
}

function begins(bytes, start) {
  let at = 0;
  while (at < start.length && bytes[at] === start[at]) {
    ++at;
  }
  return at === start.length;
}

const same = (a, b) => (a && b ? a.length === b.length && begins(a, b) : a === b);
const bytes_of = (path) => (files.has(path) ? joined(files.get(path)) : null);

function new_device() {
  const number = crypto.getRandomValues(new Uint8Array(8));
  return [...number].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}

/// All files of the database, path -> chunks; a gap between chunks is left as zeros.
async function read_chunks(database) {
  const chunks = database.transaction('chunks').objectStore('chunks');
  const [keys, values] = await Promise.all([ask(chunks.getAllKeys()), ask(chunks.getAll())]);
  const read = new Map();
  const sizes = new Map();
  keys.forEach(([path, offset], i) => {
    const size = sizes.get(path) ?? 0;
    const list = read.get(path) ?? read.set(path, []).get(path);
    if (offset > size) {
      list.push(new Uint8Array(offset - size));
    }
    list.push(offset < size ? values[i].subarray(size - offset) : values[i]);
    sizes.set(path, Math.max(size, offset + values[i].length));
  });
  return read;
}

function put_bytes(chunks, path, bytes) {
  chunks.delete(all_of(path));
  if (bytes !== null) {
    chunks.put(bytes, [path, 0]);
  }
}

/// A new connection may show a store that was cleared, or that another page wrote to.
async function compare(database) {
  const there = await read_chunks(database);
  const left = unsure();
  const mends = [];
  for (const path of new Set([...files.keys(), ...left.keys()])) {
    const wanted = bytes_of(path);
    const found = there.has(path) ? joined(there.get(path)) : null;
    if (!same(found, wanted)) {
      const cut_off = left.has(path) && same(found, left.get(path));
      if (!cut_off && !(wanted && begins(wanted, found ?? new Uint8Array()))) {
        throw new NotKept(NotKept.elsewhere, 'another page wrote here');
      }
      mends.push([path, wanted]);
    }
  }
  if (mends.length > 0) {
    await transact(database, 'chunks', (chunks) => mends.forEach(([path, bytes]) => put_bytes(chunks, path, bytes)));
  }
  const settings = database.transaction('settings').objectStore('settings');
  if (await ask(settings.get('device')) === undefined) {  // it was cleared
    await transact(database, 'settings', (store) => store.put(device, 'device'));
    await copy_anew();
  }
  known = database;
}

/// `leaves()`: path -> all bytes of the file when it is done, or null.
async function write_chunks(leaves, change) {
  try {
    await with_database(async (database) => {
      if (database !== known) {
        await compare(database);
      }
      unsure = leaves;
      await transact(database, 'chunks', change);
    });
  } catch (problem) {  // a database without room often says no more than that something went wrong
    throw problem.kind === NotKept.lost && !(await Copy.has_room()) ? new NotKept(NotKept.full, problem) : problem;
  }
}

/// Every operation waits for the operation before.
function in_turn(deed) {
  const done = busy.then(deed);
  busy = done.catch(() => {});
  return done;
}

// ---- the second copy ------------------------------------------------------------------------------
async function copy_anew() {
  for (const path of Copy.there() ? files.keys() : []) {
    await copied(() => Copy.put(path, bytes_of(path)));
  }
}

/// Without room nothing is saved. A copy that fails for another reason is given up, and the crew is
/// told: it goes on with the database alone.
async function copied(deed) {
  if (!Copy.there()) {
    return;
  }
  try {
    await deed();
  } catch (problem) {
    if (kind_of(problem) === NotKept.full) {
      throw new NotKept(NotKept.full, problem);
    }
    Copy.give_up();
    tell('one_copy');
  }
}

async function append_copy(path, offset, bytes) {
  try {
    await Copy.append(path, offset, bytes);
  } catch (problem) {
    if (problem.name !== 'DataError') {
      throw problem;
    }
    await Copy.put(path, joined([bytes_of(path) ?? new Uint8Array(), bytes]));  // it was left behind
  }
}

// ---- the start ------------------------------------------------------------------------------------
/// Of two versions of a file, returns the version that counts.
function better(path, kept, copy) {
  if (kept === undefined || copy === undefined || !path.endsWith('.journal')) {
    return kept ?? copy;
  }
  const [a, b] = [valid_size(kept), valid_size(copy)];
  return b > a || (b === a && copy.length > kept.length && begins(copy, kept)) ? copy : kept;
}

/// Paths that were being put in place when the page ended. Half a list: none was in place yet.
function put_together(list) {
  try {
    return list ? JSON.parse(new TextDecoder().decode(list)) : [];
  } catch {
    return [];
  }
}

/// Chooses file by file; `anew`: the browser created its database again.
async function choose(database, there, copy, anew) {
  const undone = anew ? [] : put_together(copy.get(whole));
  copy.delete(whole);
  const mends = [];
  for (const path of new Set([...there.keys(), ...copy.keys()])) {
    const kept = there.has(path) ? joined(there.get(path)) : undefined;
    const best = undone.includes(path) ? kept : better(path, kept, copy.get(path));
    if (best) {
      files.set(path, best === kept ? there.get(path) : [best]);
      if (best !== kept) {
        mends.push([path, best]);
        if (kept && !begins(best, kept)) {
          mends.push([`aside/${path}`, kept]);
        }
      }
    }
    if (Copy.there() && !same(best, copy.get(path))) {
      if (best && copy.has(path) && !begins(best, copy.get(path)) && path.endsWith('.journal')) {
        mends.push([`aside/${path}`, copy.get(path)]);
      }
      // No room now: the next save finds it incomplete, and writes it completely.
      await Copy.put(path, best ?? null).catch(() => {});
    }
  }
  await copied(() => Copy.put(whole, null)).catch(() => {});
  if (mends.length > 0) {
    await transact(database, 'chunks', (chunks) => mends.forEach(([path, bytes]) => put_bytes(chunks, path, bytes)));
    tell(anew ? 'came_back' : 'mended');
  }
}

// ---- many small chunks ----------------------------------------------------------------------------
async function join() {
  for (const [path, chunks] of files) {
    if (chunks.length > chunks_most) {
      const bytes = joined(chunks);
      await write_chunks(() => new Map([[path, bytes]]), (store) => put_bytes(store, path, bytes));
      files.set(path, [bytes]);
    }
  }
}

function join_while_idle() {
  clearTimeout(joining);
  joining = setTimeout(() => in_turn(join).catch(() => {}), idle_ms);  // if possible
}

export const Store = {
  /// Opens the database and reads all of it. Rejects where the browser keeps nothing. `say`: is
  /// told what happened to the store: 'one_copy', 'came_back', 'mended'.
  async open(say = () => {}) {
    tell = say;
    await with_database(async (database) => {
      files = new Map();
      const settings = database.transaction('settings').objectStore('settings');
      const [there, kept_device, copy] = await Promise.all([read_chunks(database), ask(settings.get('device')), Copy.start()]);
      device = kept_device ?? new_device();  // events of the old number may be lost
      await choose(database, there, copy, kept_device === undefined);
      if (kept_device === undefined) {
        await transact(database, 'settings', (store) => store.put(device, 'device'));
      }
      known = database;
    });
    join_while_idle();
  },
  setting: (name) => with_database((database) => ask(database.transaction('settings').objectStore('settings').get(name))),
  /// Nobody waits for it, so without strict durability.
  set: (name, value) => with_database((database) => transact(database, 'settings', (store) => store.put(value, name), 'relaxed')),

  has: (path) => files.has(path),
  /// As if it had been kept: the program finds it, and keeps it with the next change.
  lay: (path, bytes) => files.set(path, [bytes]),

  /// Puts the files where the program looks for them.
  fill(module) {
    module.ENV.XDG_DATA_HOME = '/kept';
    const lay = (path, bytes) => {
      const there = `/kept/hemline/${path}`;
      module.FS.mkdirTree(there.slice(0, there.lastIndexOf('/')));
      module.FS.writeFile(there, bytes);
    };
    for (const path of files.keys()) {
      lay(path, bytes_of(path));
    }
    lay('device', new TextEncoder().encode(`${device}\n`));
  },

  /// Keeps `bytes` of the file from `offset` on, where it ends. Rejects with NotKept.
  keep: (path, offset, bytes) => in_turn(async () => {
    await copied(() => append_copy(path, offset, bytes));
    try {
      const leaves = () => new Map([[path, joined([...files.get(path) ?? [], bytes])]]);
      await write_chunks(leaves, (chunks) => chunks.add(bytes, [path, offset]));
    } catch (problem) {
      await copied(() => Copy.cut(path, offset)).catch(() => {});
      throw problem;
    }
    const chunks = files.get(path) ?? files.set(path, []).get(path);
    chunks.push(bytes);
    if (chunks.length > chunks_most) {
      join_while_idle();
    }
  }),

  /// Replaces whole files, or removes them (null): all of it or nothing.
  put_whole: (changes) => in_turn(async () => {
    const undo = async () => {
      for (const [path] of changes) {
        await copied(() => Copy.put(path, bytes_of(path))).catch(() => {});
      }
      await copied(() => Copy.put(whole, null)).catch(() => {});
    };
    try {
      await copied(() => Copy.put(whole, new TextEncoder().encode(JSON.stringify(changes.map(([path]) => path)))));
      for (const [path, bytes] of changes) {
        await copied(() => Copy.put(path, bytes));
      }
      await write_chunks(() => new Map(changes), (chunks) => changes.forEach(([path, bytes]) => put_bytes(chunks, path, bytes)));
    } catch (problem) {
      await undo();
      throw problem;
    }
    for (const [path, bytes] of changes) {
      if (bytes === null) {
        files.delete(path);
      } else {
        files.set(path, [bytes]);
      }
    }
    await copied(() => Copy.put(whole, null)).catch(() => {});
  }),

  /// Does the pending joining at once: for tests.
  settle: () => { clearTimeout(joining); return in_turn(join); },
};
