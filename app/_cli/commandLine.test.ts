import { describe, expect, it } from "vitest";
import { readCommand } from "./commandLine";

const read = (line: string) => {
  const command = readCommand(line.split(" ").filter((word) => word !== ""));
  return command.ok ? command.value : command.error;
};

describe("the command line", () => {
  it("plans for four seconds unless told otherwise", () => {
    expect(read("plan swans --out dir")).toEqual({
      name: "plan",
      folder: "swans",
      out: "dir",
      json: false,
      cut: 0,
      seconds: 4,
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

  it("compares two folders, a piece's sources, and versions of a construction", () => {
    expect(read("compare designs cast --rounds 5 --out dir")).toMatchObject({ before: "designs", after: "cast", rounds: 5, out: "dir" });
    expect(read("compare designs")).toContain("which two folders");
    expect(read("sources swans tutu --hire 40 --hire-days 14")).toMatchObject({
      piece: "tutu",
      hire: "40",
      hireDays: 14,
      buy: null,
      buyDays: null,
    });
    expect(read("sources swans tutu")).toMatchObject({ rounds: 3, seconds: null });
    expect(read("sources swans tutu --seconds 2")).toMatchObject({ rounds: null, seconds: 2 });
    expect(read("sources swans tutu --buy-days soon")).toContain("--buy-days");
    expect(read("versions swans skirt new.json --pieces a,b --write")).toMatchObject({ file: "new.json", pieces: ["a", "b"], write: true });
    expect(read("versions swans skirt new.json")).toMatchObject({ pieces: null, write: false });
    expect(read("versions swans skirt")).toContain("NEW.json");
    expect(read("plan swans --out dir --write")).toBe("plan has no option --write.");
    expect(read("help sources")).toEqual({ name: "help", about: "sources" });
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
    expect(read("plan swans --out dir --cut soon")).toContain("--cut takes a whole number");
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
