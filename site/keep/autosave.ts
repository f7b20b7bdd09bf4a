import type { Build } from "../../worksheets/build/build";
import type { Session } from "../state";
import { type KeptBuild, newId } from "./record";
import type { Store } from "./store";

/** Rest after a change before it is kept, in milliseconds. */
const rest = 400;

interface AutosaveParts {
  readonly session: Session;
  readonly store: Store;
  /** This tab's sign. */
  readonly writer: string;
  readonly now: () => number;
  write(build: Build): string;
  /** Another tab has taken the record since: this one goes on with a record of its own. */
  onTaken(): void;
  /** The device kept it, or did not. */
  onKept(kept: boolean): void;
}

/** Keeps what is open on the device, after every change. */
export interface Autosave {
  /** The record that this tab keeps, once there is one. */
  readonly id: string | undefined;
  /** Goes on with a record, or with none yet, once `open` has put its build on the page. */
  follow(record: KeptBuild | undefined, open: () => void): void;
  /** Gives up the record, not what is on the page. */
  forget(): void;
  /** Keeps what is open though it was not changed. */
  insist(): void;
  /** Makes the record one that the reader named. */
  named(): void;
  /** Keeps what is not kept yet. */
  flush(): Promise<void>;
  /** The same in the last moment of a page. */
  atOnce(): void;
}

/** Where the tab keeps what is open. */
interface Place {
  id: string;
  named: boolean;
  /** Whether the device has the record. */
  there: boolean;
  /** Whether it was there when this tab began with it: then it stays, whatever is taken back. */
  readonly adopted: boolean;
  /** What was open at first, of which nothing need be kept; undefined where it must. */
  start: Build | undefined;
  /** Whether something is not kept yet. */
  due: boolean;
}

export function createAutosave({ session, store, writer, now, write, onTaken, onKept }: AutosaveParts): Autosave {
  const placeOf = (record: KeptBuild | undefined): Place => {
    const adopted = record !== undefined;
    return { id: record?.id ?? newId(), named: record?.named ?? false, there: adopted, adopted, start: session.state.build, due: false };
  };
  let place = placeOf(undefined);
  let timer: ReturnType<typeof setTimeout> | undefined;
  let working = Promise.resolve();

  const begin = (record: KeptBuild | undefined): void => {
    place = placeOf(record);
    clearTimeout(timer);
  };
  const isAsAtFirst = (): boolean => !place.adopted && session.state.build === place.start;

  /** Writing takes some milliseconds, and what was opened stays the same for long. */
  let opening: { readonly build: Build; readonly text: string } | undefined;
  const openedText = (build: Build): string => {
    if (opening?.build !== build) opening = { build, text: write(build) };
    return opening.text;
  };

  const recordOf = ({ id, named }: Place): KeptBuild => {
    const { build, opened, installation, units } = session.state;
    const installations = build.installations.length;
    return { id, name: build.name, installations, time: now(), writer, named, text: write(build), openedText: openedText(opened), installation, units };
  };

  const keep = async (here: Place, record: KeptBuild | undefined): Promise<void> => {
    try {
      if (!record) {
        if (here.there) await store.remove(here.id);
        here.there = false;
      } else {
        if (!(await store.put({ ...record, id: here.id }))) {
          here.id = newId();
          here.named = false;
          onTaken();
          await store.put({ ...record, id: here.id, named: false });
        }
        here.there = true;
      }
      onKept(true);
    } catch {
      onKept(false);
    }
  };

  /** What is open is taken down now, as another build may be open before the device has answered. */
  const flush = (): Promise<void> => {
    clearTimeout(timer);
    if (!place.due) return working;
    place.due = false;
    const [here, record] = [place, isAsAtFirst() ? undefined : recordOf(place)];
    working = working.then(() => keep(here, record));
    return working;
  };

  session.subscribe((state, previous) => {
    const otherView = state.installation !== previous.installation || state.units !== previous.units;
    if (state.build !== previous.build || (place.there && otherView)) place.due = true;
    if (!place.due) return;
    clearTimeout(timer);
    // While the hand moves, nothing else is done.
    if (!state.gesture) timer = setTimeout(flush, rest);
  });

  const insist = (): void => {
    place.start = undefined;
    place.due = true;
    void flush();
  };
  return {
    get id() {
      return place.there ? place.id : undefined;
    },
    follow: (record, open) => {
      open();
      begin(record);
    },
    forget: () => begin(undefined),
    insist,
    named: () => {
      place.named = true;
      insist();
    },
    flush,
    atOnce: () => {
      if (!place.due) return;
      if (!isAsAtFirst()) {
        try {
          store.putAtOnce(recordOf(place));
        } catch {
          // The database may still take it; who leaves cannot be told.
        }
      }
      void flush();
    },
  };
}
