import { stringify } from "csv-stringify/sync";
import { guard } from "./guard";

/** RFC 4180 text: commas, CRLF, quotes where needed, cells guarded. `bom` for spreadsheets that would not see UTF-8 otherwise. */
export const writeCsv = (headings: readonly string[], rows: readonly (readonly string[])[], bom = false): string =>
  stringify(
    [headings, ...rows].map((row) => row.map(guard)),
    {
      bom,
      record_delimiter: "\r\n",
      // With a CRLF delimiter the library leaves a bare LF unquoted.
      quoted_match: /[\r\n]/,
    },
  );
