import { readFileSync } from "node:fs";
import { parseArgs } from "node:util";
import type { ZodType } from "zod";

/** What both cutting benches are asked for. */
export interface BenchCall {
  readonly file: string;
  readonly seconds: number;
  readonly limit: number;
  readonly rotate: boolean;
  readonly cpu: boolean;
  readonly json: boolean;
  readonly out: string | undefined;
}

/** The call of a bench; ends the process with its help where there is no file. */
export const benchCall = (help: string, seconds: number): BenchCall => {
  const { values } = parseArgs({
    options: {
      file: { type: "string" },
      seconds: { type: "string" },
      limit: { type: "string" },
      out: { type: "string" },
      rotate: { type: "boolean", default: false },
      cpu: { type: "boolean", default: false },
      json: { type: "boolean", default: false },
      help: { type: "boolean", default: false },
    },
  });
  if (values.help || values.file === undefined) {
    process.stderr.write(`${help}\n`);
    process.exit(values.help ? 0 : 2);
  }
  return {
    file: values.file,
    seconds: Number(values.seconds ?? seconds),
    limit: Number(values.limit ?? Number.POSITIVE_INFINITY),
    rotate: values.rotate,
    cpu: values.cpu,
    json: values.json,
    out: values.out,
  };
};

/** The instances of a JSON-lines file; ends the process with the first line that is none. */
export const readLines = <T>({ file, limit }: BenchCall, schema: ZodType<T>): readonly T[] => {
  const lines = readFileSync(file, "utf8").split("\n");
  const instances: T[] = [];
  for (const [index, line] of lines.entries()) {
    if (line.trim() === "" || instances.length >= limit) continue;
    const read = schema.safeParse(JSON.parse(line));
    if (!read.success) {
      process.stderr.write(`${file}: line ${index + 1} is not an instance: ${read.error.issues[0]?.message}\n`);
      process.exit(2);
    }
    instances.push(read.data);
  }
  return instances;
};

/** The figures, as JSON or a line each. */
export const told = (figures: object, json: boolean): string =>
  json
    ? `${JSON.stringify(figures)}\n`
    : Object.entries(figures)
        .map(([name, value]) => `${name}: ${value}\n`)
        .join("");
