import { readFileSync, writeFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { describeFiles } from "#lib/staging/describeFiles";

const README = new URL("../../seed/README.md", import.meta.url);
const BEGIN = "<!-- columns: written by tests/seed/columns.test.ts -->\n\n";
const END = "\n\n<!-- end of columns -->";

/** `WRITE_COLUMNS=1 npx vitest run --config tests/config/vitest.ts --project seed tests/seed/columns.test.ts` writes the part anew. */
const writeColumns = (text: string, columns: string) => {
  const [before, rest = ""] = text.split(BEGIN);
  writeFileSync(README, `${before}${BEGIN}${columns}${END}${rest.slice(rest.indexOf(END) + END.length)}`);
};

describe("seed/README.md", () => {
  it("describes the columns as the schemas define them", () => {
    if (process.env.WRITE_COLUMNS) writeColumns(readFileSync(README, "utf8"), describeFiles());
    const text = readFileSync(README, "utf8");
    expect(text).toContain(`${BEGIN}${describeFiles()}${END}`);
  });
});
