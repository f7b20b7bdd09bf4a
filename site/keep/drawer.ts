import type { KeptBuild } from "./record";

/** Where records lie: in the browser's database, or in its plain storage. */
export interface Drawer {
  all(): Promise<readonly unknown[]>;
  /** Replaces a record by what `next` makes of the present one, in one step; undefined leaves it as it is. */
  change(id: string, next: (present: unknown) => KeptBuild | undefined): Promise<void>;
  remove(id: string): Promise<void>;
}

/** A drawer that is quick enough for the last moment of a page. */
export interface PlainDrawer {
  all(): readonly unknown[];
  put(record: KeptBuild): void;
  remove(id: string): void;
}
