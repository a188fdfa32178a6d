import { expect, test } from "vitest";
import { courseCartridge } from "../../../src/build/cartridge/course.ts";

test("a cartridge is called as the department's site is", () => {
  const titled = (title?: string) => courseCartridge([], "https://school.example/science/", title).cartridge;
  expect(titled("Chemistry at Quillstrand School").title).toBe("Chemistry at Quillstrand School");
  expect(titled().title).toBe("Ionwright");
});
