declare const valueBrand: unique symbol;

/** Something a cell can depend on. The value type exists for the compiler only. */
export interface Ref<T = unknown> {
  /** Name in build files, on the command line and in the runtime; unique in a graph. */
  readonly key: string;
  /** What the sheet calls it. */
  readonly label: string;
  readonly [valueBrand]?: T;
}

export type ValueOf<R> = R extends Ref<infer T> ? T : never;

export type References = Readonly<Record<string, Ref>>;

export type ValuesOf<F extends References> = { readonly [Name in keyof F]: ValueOf<F[Name]> };
