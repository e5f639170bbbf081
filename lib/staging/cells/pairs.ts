import * as z from "zod";
import { ok } from "#lib/result";
import { unreadable } from "#lib/units/unreadable";
import { type Cell, cell, readCell } from "./cell";

const MEND = "Write it like layers=12; hoop=single.";

/** `name=value; name=value` in the order written; an empty cell is none. `names` and `values` are cells themselves. */
export const pairs = <N, V>(names: Cell<N>, values: Cell<V>): Cell<readonly (readonly [N, V])[]> =>
  cell<readonly (readonly [N, V])[]>(
    (text) => {
      const found: [N, V][] = [];
      const seen = new Set<string>();
      for (const part of text.split(";").map((each) => each.trim())) {
        if (part === "") continue;
        const at = part.indexOf("=");
        if (at < 1) return unreadable(`"${part}" is not a name and a value.`, MEND);
        const written = part.slice(0, at).trim();
        const name = readCell<N>(names, written);
        const value = readCell<V>(values, part.slice(at + 1).trim());
        if (!name.ok) return name;
        if (!value.ok) return value;
        if (seen.has(written.toLowerCase())) return unreadable(`"${written}" is given twice.`, "Keep one of them.");
        seen.add(written.toLowerCase());
        found.push([name.value, value.value]);
      }
      return ok(found);
    },
    (entries) => entries.map(([name, value]) => `${z.encode(names, name)}=${z.encode(values, value)}`).join("; "),
  );

/** The same as a record by name. */
export const record = <V>(values: Cell<V>, names: Cell<string>): Cell<Readonly<Record<string, V>>> =>
  cell<Readonly<Record<string, V>>>(
    (text) => {
      const read = readCell(pairs(names, values), text);
      return read.ok ? ok(Object.fromEntries(read.value)) : read;
    },
    (values_) => z.encode(pairs(names, values), Object.entries(values_)),
  );
