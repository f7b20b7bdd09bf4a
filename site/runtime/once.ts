/** A function that works again only for another argument than the last. */
export function onceFor<A, R>(work: (argument: A) => R): (argument: A) => R {
  let last: { readonly argument: A; readonly result: R } | undefined;
  return (argument) => {
    if (last === undefined || !Object.is(last.argument, argument)) last = { argument, result: work(argument) };
    return last.result;
  };
}
