import * as z from "zod";
import { ok, type Result } from "#lib/result";
import type { Unreadable } from "#lib/units/unreadable";

/** How one cell is read and written: text in, value out, and back. */
export type Cell<T> = z.ZodCodec<z.ZodString, z.ZodType<T, T>>;

/** A cell from a reader and a writer that undo each other. What cannot be read becomes an issue that carries its mend. */
export const cell = <T>(read: (text: string) => Result<T, Unreadable>, write: (value: T) => string): Cell<T> =>
  z.codec(z.string(), z.custom<T>(), {
    decode: (text, context) => {
      const value = read(text);
      if (value.ok) return value.value;
      context.issues.push({ code: "custom", input: text, message: value.error.problem, params: { mend: value.error.mend } });
      return z.NEVER;
    },
    encode: (value) => write(value as T),
  });

/** The few words a cell may hold, where it may hold only those. */
export const choicesOf = z.registry<{ readonly choices: readonly string[] }>();

/** Reads a cell by its codec alone. */
export const readCell = <T>(of: z.ZodType<T>, text: string): Result<T, Unreadable> => {
  const read = of.safeDecode(text as never);
  if (read.success) return ok(read.data);
  const issue = read.error.issues[0];
  const mend = issue?.code === "custom" && typeof issue.params?.mend === "string" ? issue.params.mend : "";
  return { ok: false, error: { problem: issue?.message ?? "It cannot be read.", mend } };
};

/** An empty cell stands for `value`; null is written as an empty cell, any other value in full. */
export const emptyMeans = <T, const E>(inner: Cell<T>, value: E): Cell<T | E> => {
  const outer = cell<T | E>(
    (text) => (text === "" ? ok(value) : readCell<T>(inner, text)),
    (written) => (written === null ? "" : z.encode(inner, written as T)),
  );
  const words = choicesOf.get(inner);
  return words ? outer.register(choicesOf, words) : outer;
};

/** An empty cell stands for null. */
export const orNull = <T>(inner: Cell<T>): Cell<T | null> => emptyMeans(inner, null);
