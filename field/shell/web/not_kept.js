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
