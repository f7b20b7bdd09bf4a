/** A time as a reader finds it: "14:05" today, "24 Nov, 14:05" in this year, else with the year. */
export function timeWords(time: number, now: number): string {
  const [then, today] = [new Date(time), new Date(now)];
  const clock = then.toLocaleTimeString([], { hour: "2-digit", minute: "2-digit", hour12: false });
  if (then.toDateString() === today.toDateString()) return clock;
  const year = then.getFullYear() === today.getFullYear() ? undefined : "numeric";
  return `${then.toLocaleDateString("en-GB", { day: "numeric", month: "short", year })}, ${clock}`;
}
