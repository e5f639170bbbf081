import { readFileSync } from "node:fs";
import type { LevellingProblem } from "#lib/levelling/problem";
import { measure } from "./measure";

/** The engine alone in a process, so that its time and memory are its own: file of the problem, seconds, whether to check. */
const [file = "", seconds, check] = process.argv.slice(2);
const problem = JSON.parse(readFileSync(file, "utf8")) as LevellingProblem;
process.stdout.write(JSON.stringify(measure(problem, Number(seconds), check === "true")));
