import type { Fault } from "#lib/exchange/fault";
import { failed, ok, type Result } from "#lib/result";
import { checkConstruction } from "./checkConstruction";
import type { Construction } from "./construction";
import { constructionSchema } from "./constructionSchema";

/** Largest construction file that is read, in characters. */
const LONGEST_FILE = 500_000;

/** Reads a construction from JSON and judges all of it: shape, names, limits, formulas and their units, references, and that nothing waits for itself. */
export const readConstruction = (text: string, file: string): Result<Construction, readonly Fault[]> => {
  const fault = (column: string | null, problem: string, mend: string): Fault => ({ file, row: null, column, problem, mend });
  if (text.length > LONGEST_FILE) return failed([fault(null, "The file is too long.", "A construction takes under 500,000 characters.")]);
  const json = readJson(text);
  if (!json.ok) return failed([fault(null, `It is not JSON: ${json.error}.`, "Check commas, brackets and quotes near that place.")]);
  const shape = constructionSchema.safeParse(json.value);
  if (!shape.success)
    return failed(
      shape.error.issues.map((issue) =>
        fault(
          issue.path.map(String).join(".") || null,
          `${issue.message}.`.replace(/\.\.$/, "."),
          "Write it as seed/constructions/README.md describes.",
        ),
      ),
    );
  const faults = checkConstruction(shape.data);
  return faults.length > 0 ? failed(faults.map(({ where, problem, mend }) => fault(where, problem, mend))) : ok(shape.data);
};

const readJson = (text: string): Result<unknown, string> => {
  try {
    return ok(JSON.parse(text.replace(/^\uFEFF/, "")));
  } catch (error) {
    return failed(error instanceof Error ? error.message : String(error));
  }
};
