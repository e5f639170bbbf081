import { describe, expect, it } from "vitest";
import { readCommand } from "./commandLine";

const read = (line: string) => {
  const command = readCommand(line.split(" "));
  return command.ok ? command.value : command.error;
};

describe("the ask command", () => {
  it("takes a folder, a question, and whatever options the question has", () => {
    expect(read("ask swans hours-left --skill net --before=parade --json --seed 3")).toEqual({
      name: "ask",
      folder: "swans",
      question: "hours-left",
      json: true,
      seconds: null,
      rounds: 10,
      seed: 3,
      today: null,
      options: new Map([
        ["skill", "net"],
        ["before", "parade"],
      ]),
    });
  });

  it("lists the questions when none is asked, and lets no clock decide unless told to", () => {
    expect(read("ask swans")).toMatchObject({ question: null, rounds: 10, seconds: null });
    expect(read("ask swans net --seconds 3")).toMatchObject({ rounds: null, seconds: 3 });
  });

  it("says what is missing or wrong, and helps", () => {
    expect(read("ask")).toContain("which folder");
    expect(read("ask swans net lace")).toContain('"lace"');
    expect(read("ask swans net --skill")).toBe("--skill needs a value.");
    expect(read("ask swans net --rounds few")).toContain("--rounds");
    expect(read("ask --help")).toEqual({ name: "help", about: "ask" });
  });
});
