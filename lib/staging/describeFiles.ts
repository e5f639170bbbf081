import type * as z from "zod";
import { columnNotes, headingOf } from "./column";
import { FILES } from "./files";

/** The columns of every file as Markdown, out of the schemas that read them. */
export const describeFiles = (): string =>
  Object.values(FILES)
    .map((file) => {
      const columns: readonly [string, z.ZodType][] = Object.entries(file.schema({ lengths: "in", currency: "GBP" }).shape);
      const lines = columns.map(([key, cell]) => {
        const note = columnNotes.get(cell);
        const meaning = note?.refersTo ? `${note.meaning} (${place(note.refersTo)})` : (note?.meaning ?? "");
        return `| \`${headingOf(key)}\` | ${meaning} | ${note?.unit ?? "text"} | \`${note?.example ?? ""}\` | ${note?.empty ?? "must be filled in"} |`;
      });
      return [
        `### ${file.name}`,
        "",
        file.about,
        "",
        "| column | meaning | unit | example | if empty |",
        "|---|---|---|---|---|",
        ...lines,
      ].join("\n");
    })
    .join("\n\n");

const place = (target: string): string =>
  target === "constructions" ? "of `constructions/`" : `of \`${FILES[target as keyof typeof FILES].name}\``;
