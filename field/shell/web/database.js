// IndexedDB: a connection that is opened again when the browser lost it, and transactions that are
// done only when they are on the disk.
//
//   chunks   [path, offset] -> bytes
//   settings name -> value            (this device's number, where the program was left)
import { NotKept, kind_of } from './not_kept.js';

let connection = null;  // promise of the database, while it is open
let factory = globalThis.indexedDB;
let frame = null;       // the frame whose factory it is, where it is not the page's
const pauses_ms = [0, 100, 400, 1500];  // a browser's store may need a moment to start again

export function ask(request) {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

function make(event) {
  event.target.result.createObjectStore('chunks');
  event.target.result.createObjectStore('settings');
}

/// When its storage process has ended, WebKit gives that page no other connection ("Refresh the
/// page to try again"); but a frame made afterwards gets one.
function take_factory_of_a_new_frame() {
  frame?.remove();
  frame = document.createElement('iframe');
  frame.hidden = true;
  document.body.append(frame);
  factory = frame.contentWindow.indexedDB;
}

async function open() {
  const request = factory.open('hemline', 1);
  request.onupgradeneeded = make;
  const database = await ask(request);
  const forget = () => { connection = null; };
  database.onclose = forget;
  database.onversionchange = () => {  // being cleared: do not make it wait
    database.close();
    forget();
  };
  return database;
}

function connected() {
  connection ??= open().catch((problem) => {
    connection = null;
    throw problem;
  });
  return connection;
}

/// Resolves only when the transaction has completed: then it is on the disk. All of it or none.
export function transact(database, store, change, durability = 'strict') {
  return new Promise((resolve, reject) => {
    const transaction = database.transaction(store, 'readwrite', { durability });
    transaction.oncomplete = () => resolve();
    transaction.onabort = () => reject(transaction.error ?? new DOMException('the browser gave up the save', 'AbortError'));
    try {
      change(transaction.objectStore(store));
    } catch (problem) {
      transaction.abort();
      reject(problem);
    }
  });
}

/// Does `work` with the database; again with a new connection if the old connection was lost.
export async function with_database(work) {
  for (const [attempt, pause] of pauses_ms.entries()) {
    await new Promise((resolve) => setTimeout(resolve, pause));
    try {
      return await work(await connected());
    } catch (problem) {
      const kind = kind_of(problem);
      if (kind !== NotKept.lost || attempt + 1 === pauses_ms.length) {
        throw problem instanceof NotKept ? problem : new NotKept(kind, problem);
      }
      (await connection?.catch(() => null))?.close();
      connection = null;
      if (attempt > 0) {
        take_factory_of_a_new_frame();
      }
    }
  }
}
