import { z } from "zod";
import type { Edit, RowChange } from "#lib/editing/edit";
import { rowName } from "#lib/editing/rows";

const MOST_CHANGES = 2000;

const row = z.record(z.string().max(60), z.string().max(4000)).nullable();
const change = z.object({ file: z.string().max(60), before: row, after: row, at: z.number().int().min(0).optional() });
const edit = z.object({ title: z.string().min(1).max(200), changes: z.array(change).max(MOST_CHANGES) });

/** Text of JSON of this shape. */
export const jsonOf = <Shape extends z.ZodType>(shape: Shape) =>
  z.string().transform((text, context): z.output<Shape> => {
    try {
      const parsed = shape.safeParse(JSON.parse(text));
      if (parsed.success) return parsed.data;
    } catch {
      // Not JSON at all: as unreadable as JSON of another shape.
    }
    context.addIssue({ code: "custom", message: "It cannot be read. Open the page again." });
    return z.NEVER;
  });

/** What every form that edits sends besides its own fields. */
export const editFields = z.object({
  production: z.string().min(1),
  /** `look` asks what would follow; `theirs` keeps what another has made and shows it. */
  step: z.enum(["keep", "look", "theirs"]).default("keep"),
  /** Rows as the person saw them: `[{ file, row }]`. */
  was: jsonOf(z.array(z.object({ file: z.string(), row: row.unwrap() }))).default([]),
  /** An edit that the person keeps over what another has made. */
  over: jsonOf(edit).optional(),
});

/** The edit against the rows as the person saw them, not as they are now. */
export const asSeen = (made: Edit, was: z.output<typeof editFields>["was"]): Edit => {
  const seen = new Map(was.map(({ file, row: cells }) => [rowName(file, cells), cells]));
  const changes = made.changes.map((one): RowChange => {
    const before = one.before && seen.get(rowName(one.file, one.before));
    return before ? { ...one, before } : one;
  });
  return { ...made, changes };
};
