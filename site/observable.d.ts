// The Observable packages ship no types; these cover what the page uses of them.

declare module "@observablehq/runtime" {
  export interface Observer {
    pending?(): void;
    fulfilled?(value: unknown, name?: string | null): void;
    rejected?(error: unknown, name?: string | null): void;
  }

  export interface Variable {
    define(name: string, inputs: readonly string[], definition: unknown): this;
    delete(): this;
  }

  export interface Module {
    variable(observer?: Observer | boolean): Variable;
    redefine(name: string, inputs: readonly string[], definition: unknown): Variable;
    value(name: string): Promise<unknown>;
  }

  export class Runtime {
    constructor(builtins?: Readonly<Record<string, unknown>> | null, global?: (name: string) => unknown);
    module(): Module;
    dispose(): void;
  }
}

declare module "@observablehq/inputs" {
  interface ChooserOptions<T> {
    readonly label?: string | Node;
    readonly value?: T;
    readonly format?: (entry: T) => string | Node;
    readonly keyof?: (entry: T) => string;
    readonly disabled?: boolean | readonly T[];
  }

  /** An Inputs form: an element whose `value` may be read and set, and that dispatches "input" events. */
  type InputForm<T> = HTMLFormElement & { value: T };

  export function radio<T>(entries: Iterable<T>, options?: ChooserOptions<T>): InputForm<T | null>;
  export function select<T>(entries: Iterable<T>, options?: ChooserOptions<T>): InputForm<T | null>;
}
