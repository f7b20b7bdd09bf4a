import { isRefusal, Refusal } from "../lib/graph";

/**
 * An answer that is worked out when it is first asked for, and kept: for work that a frame has no time for. Cells hold
 * it; figures that are drawn at rest ask for it. Two of them are alike when what they work from is.
 */
export class Later<T, F extends object = object> {
  /** what the answer is worked out from */
  readonly from: F;
  readonly #cell: string;
  readonly #work: (from: F) => T;
  #answer: T | Refusal | undefined;

  constructor(cell: string, from: F, work: (from: F) => T) {
    this.from = from;
    this.#cell = cell;
    this.#work = work;
  }

  /** The answer, or why there is none. @throws what is no RangeError, since that is a fault of the sheet */
  get(): T | Refusal {
    if (this.#answer !== undefined) return this.#answer;
    try {
      this.#answer = this.#work(this.from);
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      this.#answer = new Refusal(this.#cell, error.message);
    }
    return this.#answer;
  }

  /** The answer, where the work is one that always has one. @throws RangeError with the refusal's message if not */
  answer(): T {
    const answer = this.get();
    if (isRefusal(answer)) throw new RangeError(answer.message);
    return answer;
  }
}
