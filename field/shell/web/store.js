// What the browser keeps: the journals' bytes in IndexedDB, each append a transaction of its own
// with strict durability. A file is its chunks in the order of their offsets.
//
//   chunks   [path, offset] -> bytes
//   settings name -> value            (this device's number, when the last backup was made)

let database = null;
let files = new Map();  // path -> bytes, as they were at the start

function ask(request) {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

/// Resolves only when the transaction has completed: then it is on the disk.
function write(store, change) {
  return new Promise((resolve, reject) => {
    let transaction;
    try {
      transaction = database.transaction(store, 'readwrite', { durability: 'strict' });
      change(transaction.objectStore(store));
    } catch (problem) {
      reject(problem);
      return;
    }
    transaction.oncomplete = () => resolve();
    transaction.onabort = transaction.onerror = () => reject(transaction.error ?? new Error('the browser gave up the save'));
  });
}

function make(event) {
  event.target.result.createObjectStore('chunks');
  event.target.result.createObjectStore('settings');
}

function joined(chunks) {
  const size = chunks.reduce((most, [offset, bytes]) => Math.max(most, offset + bytes.length), 0);
  const whole = new Uint8Array(size);
  for (const [offset, bytes] of chunks) {
    whole.set(bytes, offset);
  }
  return whole;
}

function new_device() {
  const number = crypto.getRandomValues(new Uint8Array(8));
  return [...number].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}

export const Store = {
  /// Opens the database and reads all of it. Rejects where the browser keeps nothing.
  async open() {
    const request = indexedDB.open('hemline', 1);
    request.onupgradeneeded = make;
    database = await ask(request);
    database.onversionchange = () => database.close();
    const chunks = database.transaction('chunks').objectStore('chunks');
    const [keys, values] = await Promise.all([ask(chunks.getAllKeys()), ask(chunks.getAll())]);
    const parts = new Map();
    keys.forEach(([path, offset], i) => {
      parts.set(path, [...(parts.get(path) ?? []), [offset, values[i]]]);
    });
    files = new Map([...parts].map(([path, list]) => [path, joined(list)]));
    if ((await Store.setting('device')) === undefined) {
      await Store.set('device', new_device());
    }
    files.set('device', new TextEncoder().encode(`${await Store.setting('device')}\n`));
  },
  setting: (name) => ask(database.transaction('settings').objectStore('settings').get(name)),
  set: (name, value) => write('settings', (store) => store.put(value, name)),

  /// Lays the files where the program looks for them.
  fill(module) {
    module.ENV.XDG_DATA_HOME = '/kept';
    for (const [path, bytes] of files) {
      const whole = `/kept/hemline/${path}`;
      module.FS.mkdirTree(whole.slice(0, whole.lastIndexOf('/')));
      module.FS.writeFile(whole, bytes);
    }
    files = new Map();
  },

  /// Keeps `bytes` of the file from `offset` on.
  keep: (path, offset, bytes) => write('chunks', (store) => store.put(bytes, [path, offset])),

  /// Whole files in place of what was there, or nothing in their place (null): all of it or none.
  put_whole: (changes) => write('chunks', (store) => {
    for (const [path, bytes] of changes) {
      store.delete(IDBKeyRange.bound([path], [path, []]));
      if (bytes) {
        store.put(bytes, [path, 0]);
      }
    }
  }),

  /// All chunks of all files whose path begins so, as whole files.
  async read(prefix) {
    const range = IDBKeyRange.bound([prefix], [`${prefix}\uffff`]);
    const chunks = database.transaction('chunks').objectStore('chunks');
    const [keys, values] = await Promise.all([ask(chunks.getAllKeys(range)), ask(chunks.getAll(range))]);
    const parts = new Map();
    keys.forEach(([path, offset], i) => {
      parts.set(path, [...(parts.get(path) ?? []), [offset, values[i]]]);
    });
    return new Map([...parts].map(([path, list]) => [path, joined(list)]));
  },
};
