// Why something is not kept: each kind has its own words and its own mend, which the program says.
export class NotKept extends Error {
  // Numbers that page_failure.cpp knows.
  static full = 1;       // no room is left
  static lost = 2;       // the browser's store is gone and did not come back
  static elsewhere = 3;  // another page wrote there
  static refused = 4;    // anything else

  constructor(kind, problem) {
    super(problem?.name ?? String(problem));
    this.kind = kind;
  }
}

const lost = ['InvalidStateError', 'AbortError', 'UnknownError', 'TransactionInactiveError', 'NotFoundError', 'TimeoutError'];
const room_least = 4 * 1024 * 1024;

/// A disk without room often says no more than that something went wrong.
async function has_no_room() {
  const { quota = Infinity, usage = 0 } = await navigator.storage?.estimate?.().catch(() => ({})) ?? {};
  return quota - usage < room_least;
}

export async function kind_of(problem) {
  if (problem instanceof NotKept) {
    return problem.kind;
  }
  if (problem?.name === 'QuotaExceededError') {
    return NotKept.full;
  }
  if (problem?.name === 'ConstraintError') {
    return NotKept.elsewhere;
  }
  if (lost.includes(problem?.name)) {
    return await has_no_room() ? NotKept.full : NotKept.lost;
  }
  return NotKept.refused;
}
