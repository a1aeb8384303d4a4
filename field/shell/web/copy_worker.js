// The second copy, written: the browser's private file system, where only a worker can flush a file.
//
//   hemline/jobs/NAME/DEVICE.journal, each part of the path as encodeURIComponent has it
//   hemline/whole                      paths that are being put in place together, while they are
const handles = new Map();  // path -> open file
let root = null;
const room_least = 1 << 20;

const parts_of = (path) => path.split('/').map(encodeURIComponent);

async function folder_of(parts, create) {
  let folder = root;
  for (const part of parts) {
    folder = await folder.getDirectoryHandle(part, { create });
  }
  return folder;
}

/// The worker of a page that was just closed may hold the file for a moment.
async function open_file(file) {
  for (let attempt = 0; ; ++attempt) {
    try {
      return await file.createSyncAccessHandle();
    } catch (problem) {
      if (problem.name !== 'NoModificationAllowedError' || attempt === 40) {
        throw problem;
      }
      await new Promise((resolve) => setTimeout(resolve, 50));
    }
  }
}

async function handle_of(path) {
  if (!handles.has(path)) {
    const parts = parts_of(path);
    const name = parts.pop();
    const file = await (await folder_of(parts, true)).getFileHandle(name, { create: true });
    handles.set(path, await open_file(file));
  }
  return handles.get(path);
}

async function forget(path) {
  try {
    await handles.get(path)?.close();
  } catch {
    // the browser's storage was cleared, and the file with it
  }
  handles.delete(path);
}

async function write(handle, bytes, at) {
  if (await handle.write(bytes, { at }) !== bytes.length) {
    throw new DOMException('written in part', 'QuotaExceededError');
  }
  await handle.flush();
}

/// Tries once more with the file opened again: a store that was restarted forgets open files.
async function with_file(path, work) {
  try {
    return await work(await handle_of(path));
  } catch (problem) {
    if (problem.name === 'QuotaExceededError' || problem.name === 'DataError') {
      throw problem;
    }
    await forget(path);
    root = await (await navigator.storage.getDirectory()).getDirectoryHandle('hemline', { create: true });
    return work(await handle_of(path));
  }
}

async function remove(path) {
  await forget(path);
  const parts = parts_of(path);
  const name = parts.pop();
  try {
    await (await folder_of(parts, false)).removeEntry(name);
  } catch (problem) {
    if (problem.name !== 'NotFoundError') {
      throw problem;
    }
  }
}

async function read_all(folder, before, files) {
  for await (const [name, entry] of folder.entries()) {
    const path = before + decodeURIComponent(name);
    if (entry.kind === 'directory') {
      await read_all(entry, `${path}/`, files);
    } else {
      files.set(path, new Uint8Array(await (await entry.getFile()).arrayBuffer()));
    }
  }
  return files;
}

const deeds = {
  async start() {
    root = await (await navigator.storage.getDirectory()).getDirectoryHandle('hemline', { create: true });
    if (!('createSyncAccessHandle' in FileSystemFileHandle.prototype)) {
      throw new DOMException('files cannot be flushed', 'NotSupportedError');
    }
    return read_all(root, '', new Map());
  },
  try_room: () => deeds.put({ path: 'room', bytes: new Uint8Array(room_least) }).finally(() => remove('room')),
  append: ({ path, offset, bytes }) => with_file(path, async (handle) => {
    if (await handle.getSize() !== offset) {
      throw new DOMException('the copy has another size', 'DataError');
    }
    try {
      await write(handle, bytes, offset);
    } catch (problem) {
      await handle.truncate(offset);
      throw problem;
    }
  }),
  cut: ({ path, size }) => with_file(path, async (handle) => {
    await handle.truncate(size);
    await handle.flush();
  }),
  /// Grows before it shrinks, so that without room the file stays as long as it was.
  put: ({ path, bytes }) => (bytes === null ? remove(path) : with_file(path, async (handle) => {
    await write(handle, bytes, 0);
    await handle.truncate(bytes.length);
    await handle.flush();
  })),
};

let before = Promise.resolve();  // one deed at a time
self.onmessage = ({ data: { id, deed, what } }) => {
  before = before.then(() => deeds[deed](what ?? {})).then(
    (value) => postMessage({ id, value }),
    (problem) => postMessage({ id, problem: { name: problem.name, message: problem.message } }));
};
