import type { Session } from "../state";

/** A hand on an input: everything it sets from `take` to `leave` is one entry. */
export interface Hand {
  readonly holds: boolean;
  take(): void;
  leave(): void;
}

export function handOn(session: Session, key: string): Hand {
  let holds = false;
  return {
    get holds() {
      return holds;
    },
    take: () => {
      if (holds) return;
      holds = true;
      session.begin(key);
    },
    leave: () => {
      if (!holds) return;
      holds = false;
      session.end();
    },
  };
}
