import { meant } from "#lib/exchange/nearest";
import { ok } from "#lib/result";
import { unreadable } from "#lib/units/unreadable";
import { type Cell, cell, choicesOf } from "./cell";

const LONGEST_TEXT = 2000;
const LONGEST_CODE = 60;

/** Text that may be empty. */
export const anyText = (): Cell<string> =>
  cell(
    (text) => (text.length > LONGEST_TEXT ? unreadable("The text is longer than 2,000 letters.", "Shorten it.") : ok(text)),
    (text) => text,
  );

/** Text that must be there. */
export const someText = (): Cell<string> =>
  cell(
    (text) => {
      if (text === "") return unreadable("The cell is empty.", "Write something here.");
      return text.length > LONGEST_TEXT ? unreadable("The text is longer than 2,000 letters.", "Shorten it.") : ok(text);
    },
    (text) => text,
  );

/** The short name other rows refer to it by. */
export const codeText = (): Cell<string> =>
  cell(
    (text) => {
      if (text === "") return unreadable("The cell is empty.", "Write a short code that other rows can refer to.");
      return text.length > LONGEST_CODE || /[;=\r\n]/.test(text)
        ? unreadable(`"${text.slice(0, LONGEST_CODE)}" is not a code.`, "Use at most 60 letters, without ; and =.")
        : ok(text);
    },
    (code) => code,
  );

const plain = (word: string): string => word.toLowerCase().replace(/[\s_-]+/g, " ");

/** One of a few words, in any case and with any spaces. */
export const oneOf = <W extends string>(options: readonly W[]): Cell<W> =>
  cell(
    (text) => {
      const found = options.find((option) => plain(option) === plain(text));
      if (found !== undefined) return ok(found);
      const problem = text === "" ? "The cell is empty." : `"${text}" is not one of the words for this.`;
      return unreadable(problem, meant(text, options, `Write ${options.slice(0, -1).join(", ")} or ${options.at(-1)}.`));
    },
    (option) => option,
  ).register(choicesOf, { choices: options });

/** `yes` or `no`. */
export const yesNo = (): Cell<boolean> =>
  cell(
    (text) => {
      if (/^(?:yes|y|true|1|x)$/i.test(text)) return ok(true);
      return /^(?:no|n|false|0)$/i.test(text) ? ok(false) : unreadable(`"${text}" is neither yes nor no.`, "Write yes or no.");
    },
    (value) => (value ? "yes" : "no"),
  ).register(choicesOf, { choices: ["yes", "no"] });
