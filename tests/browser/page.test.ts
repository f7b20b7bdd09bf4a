import { afterAll, afterEach, beforeAll, describe, expect } from "vitest";
import { journeys } from "./page/journeys";
import { looks } from "./page/looks";
import { newcomer } from "./page/newcomer";
import { settingMarks } from "./page/settingMarks";
import { type Opened, type Opening, type Served, serve } from "./page/served";
import { tables } from "./page/tables";

let served: Served;
let opened: Opened[] = [];

beforeAll(async () => {
  served = await serve();
});
afterAll(() => served?.close());

/** Each test has pages of its own; a complaint on the console of any of them fails it. */
afterEach(async () => {
  const complaints = opened.flatMap((each) => each.complaints);
  for (const each of opened) await each.close();
  opened = [];
  expect(complaints).toEqual([]);
});

const open = async (options?: Opening): Promise<Opened> => {
  const page = await served.open(options);
  opened.push(page);
  return page;
};

describe("the page", () => journeys(open));
describe("a newcomer", () => newcomer(open));
describe("marks that set inputs", () => settingMarks(open));
describe("its tables", () => tables(open));
describe("its looks", () => looks(open));
