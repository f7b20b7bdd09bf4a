/** An answer that is worked out when it is first asked for, and kept: dear ones wait until the hand rests. */
export class Deferred<T> {
  readonly #work: () => T;
  #found: { readonly answer: T } | undefined;

  constructor(work: () => T) {
    this.#work = work;
  }

  answer(): T {
    this.#found ??= { answer: this.#work() };
    return this.#found.answer;
  }
}
