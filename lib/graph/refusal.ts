/**
 * The value of a cell that has no answer, and of every cell that waits for it.
 *
 * A refusal travels through the graph as a value, so that one cell's error stops its dependants and nothing else, and
 * so that each of them can say which cell it waits for.
 */
export class Refusal {
  /**
   * @param root key of the cell that refused
   * @param message why, in words; names argument, value and bound
   * @param fault true when the cell broke (a defect in the sheet), false when the numbers have no answer
   */
  constructor(
    readonly root: string,
    readonly message: string,
    readonly fault = false,
  ) {}

  /** The message as a person reads it: without the name of the function that refused. */
  get words(): string {
    return this.message.replace(leadingNames, "");
  }
}

/** Names of functions that stand before a message: "compressor: ", "chargePath: blower: ". A label of several words stays. */
const leadingNames = /^(?:[a-z][A-Za-z0-9]*: )+/;

/** Whether a value is a refusal in a value's place. */
export function isRefusal(value: unknown): value is Refusal {
  return value instanceof Refusal;
}
