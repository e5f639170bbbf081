import { describe, expect, it } from "vitest";
import { readCommand } from "./commandLine";

const read = (line: string) => {
  const command = readCommand(line.split(" ").filter((word) => word !== ""));
  return command.ok ? command.value : command.error;
};

describe("the command line", () => {
  it("plans for ten seconds unless told otherwise", () => {
    expect(read("plan swans --out dir")).toEqual({
      name: "plan",
      folder: "swans",
      out: "dir",
      json: false,
      seconds: 10,
      rounds: null,
      seed: 1,
      today: null,
    });
  });

  it("lets no clock decide when rounds are asked for", () => {
    expect(read("plan swans --out dir --rounds 20 --seed 7 --json --today 2027-01-11")).toMatchObject({
      seconds: null,
      rounds: 20,
      seed: 7,
      json: true,
      today: "2027-01-11",
    });
    expect(read("plan swans --out=dir --rounds 20 --seconds 3")).toMatchObject({ seconds: 3, rounds: 20 });
  });

  it("guesses what was meant", () => {
    expect(read("paln swans")).toContain('Did you mean "plan"?');
    expect(read("plan swans --out dir --secods 3")).toContain('Did you mean "seconds"?');
  });

  it("says what is missing or wrong", () => {
    expect(read("plan")).toContain("which folder");
    expect(read("plan swans")).toContain("--out DIR");
    expect(read("plan swans ducks --out dir")).toContain('"ducks"');
    expect(read("plan swans --out dir --seconds soon")).toContain("--seconds takes a whole number");
    expect(read("plan swans --out dir --rounds -1")).toContain("--rounds");
    expect(read("plan swans --out dir --today tomorrow")).toContain("2027-01-11");
    expect(read("check swans --json")).toBe("check has no option --json.");
    expect(read("plan swans --out dir --json=yes")).toBe("--json takes no value.");
  });

  it("helps without being asked, when asked, and about a command", () => {
    expect(read("")).toEqual({ name: "help", about: "tarlatan" });
    expect(read("--help")).toEqual({ name: "help", about: "tarlatan" });
    expect(read("plan --help")).toEqual({ name: "help", about: "plan" });
    expect(read("help check")).toEqual({ name: "help", about: "check" });
    expect(read("--version")).toEqual({ name: "version" });
  });
});
