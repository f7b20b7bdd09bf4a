import type { Cell } from "../../lib/graph";
import { fromSI, parseQuantity, unitNamed } from "../../lib/quantity";
import { refusedWords } from "../control";
import { h, setAttribute, setText } from "../dom";
import { type Measured, unitSymbol, type UnitChoice, written } from "../state";
import type { Desk } from "./desk";

/** A field for what was measured, beside what is predicted; it takes any unit of the kind, and nothing takes the value away. */
export function measuredPlace(desk: Desk, cell: Cell, id: string): { readonly element: HTMLElement; refresh(): void } {
  const { session, ambient } = desk;
  const measured = cell as Measured;
  const field = h("input", {
    type: "text",
    class: "field number",
    id: `measured-${id}`,
    inputmode: "decimal",
    autocomplete: "off",
    spellcheck: "false",
    "aria-describedby": `measured-remark-${id}`,
  });
  const unit = h("span", { class: "unit" });
  const difference = h("span", { class: "measured-difference" });
  const remark = h("span", { class: "measured-remark", id: `measured-remark-${id}`, role: "status" });
  const element = h("div", { class: "measured" }, h("label", { for: field.id }, "measured"), h("span", { class: "value" }, field, " ", unit), difference, remark);
  let dirty = false;

  const value = (): number | undefined => session.state.build.measured?.[session.state.installation]?.[cell.key];
  const put = (next: number | undefined): void => {
    const text = next === undefined ? "taken away" : written(session.state.units, measured, next).text;
    session.measure(cell.key, next, `${cell.label}, measured: ${text}`);
  };
  const calm = (): void => {
    dirty = false;
    for (const mark of ["data-typing", "aria-invalid"]) setAttribute(field, mark, undefined);
    setText(remark, "");
    refresh();
  };
  const commit = (): void => {
    if (!dirty) return;
    const text = field.value;
    if (text.trim() === "") {
      calm();
      put(undefined);
      return;
    }
    const barometer = ambient();
    const read = parseQuantity(measured.kind, text, {
      unit: unitSymbol(session.state.units, measured),
      ...(barometer !== undefined && { ambient: barometer }),
    });
    if (!read.ok) {
      const now = value();
      setAttribute(field, "aria-invalid", "true");
      setText(remark, now === undefined ? `${read.message}.` : refusedWords(read.message, written(session.state.units, measured, now).text));
      return;
    }
    dirty = false;
    put(read.value);
    calm();
  };
  field.addEventListener("input", () => {
    dirty = true;
    setAttribute(field, "data-typing", true);
    setAttribute(field, "aria-invalid", undefined);
  });
  field.addEventListener("blur", commit);
  field.addEventListener("keydown", (event) => {
    if (event.key === "Enter") commit();
    if (event.key === "Escape" && dirty) {
      event.stopPropagation();
      calm();
    }
  });

  const refresh = (): void => {
    const { units } = session.state;
    const now = value();
    setAttribute(element, "data-measured", now !== undefined);
    setText(unit, unitNamed(measured.kind, unitSymbol(units, measured)).written);
    setAttribute(field, "aria-label", `${cell.label}, measured`);
    const text = now === undefined ? "" : written(units, measured, now).number;
    if (!dirty && field.value !== text) field.value = text;
    const predicted = desk.values.get(cell);
    setText(difference, now !== undefined && typeof predicted === "number" ? differenceWords(units, measured, now, predicted) : "");
  };
  return { element, refresh };
}

/** How far a measured value lies from the predicted one, as a share of the reading: "+2.1 % to what is predicted". */
export function differenceWords(units: UnitChoice, measured: Measured, value: number, predicted: number): string {
  const unit = unitNamed(measured.kind, unitSymbol(units, measured));
  const [reading, expected] = [fromSI(unit, value), fromSI(unit, predicted)];
  if (expected === 0) return reading === 0 ? "as predicted" : "";
  const share = ((reading - expected) / Math.abs(expected)) * 100;
  const size = Math.abs(share).toFixed(Math.abs(share) < 10 ? 1 : 0);
  if (Number(size) === 0) return "as predicted";
  return `${share > 0 ? "+" : "−"}${size}\u00a0% to what is predicted`;
}
