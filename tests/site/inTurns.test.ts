import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { inTurns } from "../../site/page/in-turns";
import type { Session } from "../../site/state";

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

/** Pieces that write down when they were done, and a hand that takes inputs and lets go. */
function subject() {
  const done: string[] = [];
  const state = { gesture: undefined as { key: string } | undefined };
  const turns = inTurns({ state } as unknown as Pick<Session, "state">, ["a", "b", "c"].map((name) => () => void done.push(name)));
  const frames = (count: number): string => {
    done.length = 0;
    for (let i = 0; i < count; i++) turns.refresh();
    return done.join("");
  };
  const hold = (key: string | undefined): void => {
    state.gesture = key === undefined ? undefined : { key };
  };
  return { frames, done, hold };
}

describe("inTurns", () => {
  test("does all in every frame while no hand moves", () => {
    expect(subject().frames(2)).toBe("abcabc");
  });

  test("does one piece a frame while a hand moves, each in its turn", () => {
    const { frames, hold } = subject();
    hold("power");
    expect(frames(7)).toBe("abcabca");
  });

  test("begins with the first piece when another input is taken", () => {
    const { frames, hold } = subject();
    hold("power");
    frames(2);
    hold("speed");
    expect(frames(2)).toBe("ab");
  });

  test("does the others one by one once the hand rests, and not before", () => {
    const { frames, hold, done } = subject();
    hold("power");
    frames(2);
    vi.advanceTimersByTime(100);
    expect(done.join("")).toBe("ab");
    vi.advanceTimersByTime(25);
    expect(done.join("")).toBe("abc");
    vi.advanceTimersByTime(1000);
    expect(done.join("")).toBe("abca");
  });

  test("does all in the frame in which the hand lets go, and nothing later", () => {
    const { frames, hold, done } = subject();
    hold("power");
    frames(1);
    hold(undefined);
    expect(frames(1)).toBe("abc");
    vi.advanceTimersByTime(1000);
    expect(done.join("")).toBe("abc");
  });
});
