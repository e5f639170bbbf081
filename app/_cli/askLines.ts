import type { Answer, Table } from "#lib/questions/answer";
import type { Question } from "#lib/questions/question";
import { QUESTIONS } from "#lib/questions/registry";
import type { Usage } from "#lib/words/words";
import { columns } from "./columns";

const WIDE = 100;

/** An answer as lines: the question, what it comes to, its tables, its reasons. */
export const answerLines = ({ number, asks }: Question, usage: Usage, { says, tables, reasons }: Answer): string =>
  [
    `${number}. ${asks[usage]}`,
    "",
    ...says,
    ...tables.flatMap((table) => ["", ...tableLines(table)]),
    ...(reasons.length > 0 ? ["", "How it was worked", ...reasons.flatMap((reason) => wrapped(reason, "  - ", "    "))] : []),
    "",
  ].join("\n");

/** An answer for programs: what is said, why, and the figures. */
export const answerJson = ({ number, code, asks }: Question, usage: Usage, { says, reasons, data }: Answer): string =>
  `${JSON.stringify({ question: number, code, asks: asks[usage], says, reasons, data }, null, 2)}\n`;

/** Every question with its name and options; those not answered yet apart. */
export const questionLines = (usage: Usage, json: boolean): string => {
  const all = QUESTIONS.map(({ number, code, asks, options, answer }) => ({
    number,
    code,
    asks: asks[usage],
    options,
    answered: answer !== null,
  }));
  if (json) return `${JSON.stringify(all, null, 2)}\n`;
  const width = Math.max(...all.map(({ code }) => code.length));
  const lines = (answered: boolean) =>
    all
      .filter((one) => one.answered === answered)
      .flatMap(({ number, code, asks, options }) => [
        `${String(number).padStart(4)}  ${code.padEnd(width)}  ${asks}`,
        ...(answered ? options.map(({ name, meaning }) => `${" ".repeat(width + 8)}--${name}  ${meaning}`) : []),
      ]);
  return ["Questions", ...lines(true), "", "Not answered yet", ...lines(false), ""].join("\n");
};

const tableLines = ({ title, headings, rows }: Table): readonly string[] => [title, ...columns([headings, ...rows], "  ")];

const wrapped = (text: string, first: string, then: string): string[] => {
  const lines: string[] = [];
  let line = first;
  for (const word of text.split(" ")) {
    if (line.length + word.length > WIDE && line.trim() !== "-") {
      lines.push(line.trimEnd());
      line = then;
    }
    line += `${word} `;
  }
  return [...lines, line.trimEnd()];
};
