// The second copy of what is kept, from the page's side: its worker writes it.
//
// After a full disk a browser may silently create its database again, empty; its private file
// system has survived that. A browser without a private file system (a private window, an old
// engine) keeps only one copy.
let worker = null;
let number = 0;
const waiting = new Map();  // number of a message -> resolve and reject of its promise

function tell(deed, what) {
  return new Promise((resolve, reject) => {
    waiting.set(++number, { resolve, reject });
    worker.postMessage({ id: number, deed, what });
  });
}

function hear({ data: { id, value, problem } }) {
  const { resolve, reject } = waiting.get(id);
  waiting.delete(id);
  if (problem) {
    reject(new DOMException(problem.message, problem.name));
  } else {
    resolve(value);
  }
}

function give_up(problem) {
  worker?.terminate();
  worker = null;
  for (const { reject } of waiting.values()) {
    reject(problem);
  }
  waiting.clear();
}

export const Copy = {
  there: () => worker !== null,
  give_up: () => give_up(new DOMException('the copy was given up', 'InvalidStateError')),

  /// All of its files, path -> bytes; empty where the browser has no private file system.
  async start() {
    Copy.give_up();
    if (!navigator.storage?.getDirectory) {
      return new Map();
    }
    worker = new Worker('copy_worker.js');
    worker.onmessage = hear;
    worker.onerror = (event) => {
      event.preventDefault();
      give_up(new DOMException('the worker did not run', 'NetworkError'));
    };
    try {
      return await tell('start');
    } catch (problem) {
      Copy.give_up();
      if (problem.name === 'NetworkError') {  // a file of the program failed to load
        throw new DOMException('copy_worker.js', 'NetworkError');
      }
      return new Map();
    }
  },
  /// False when there is no room for even a small file; true where that cannot be told.
  async has_room() {
    try {
      await (worker && tell('try_room'));
      return true;
    } catch (problem) {
      return problem.name !== 'QuotaExceededError';
    }
  },
  append: (path, offset, bytes) => tell('append', { path, offset, bytes }),
  cut: (path, size) => tell('cut', { path, size }),
  put: (path, bytes) => tell('put', { path, bytes }),
};
