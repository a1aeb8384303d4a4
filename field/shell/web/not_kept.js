// Why something is not kept: for each kind the program says what is wrong and what to do.
export class NotKept extends Error {
  // The same numbers as in page_failure.cpp.
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

export function kind_of(problem) {
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
    return NotKept.lost;
  }
  return NotKept.refused;
}
