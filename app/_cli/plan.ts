import { Temporal } from "temporal-polyfill";
import type { PlainDate } from "#lib/calendar/plainDate";
import { writeCsv } from "#lib/exchange/writeCsv";
import { planStaging } from "#lib/planning/planStaging";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import { sheetsOf } from "#lib/sheets/sheets";
import { summaryJson } from "#lib/sheets/summaryJson";
import type { Production } from "#lib/staging/staging";
import { levelInThread } from "../_worker/levelInThread";
import type { PlanCommand } from "./commandLine";
import { faultLines } from "./faultLines";
import type { Output } from "./output";
import { readFolder } from "./readFolder";
import { summaryLines } from "./summaryLines";
import { VERSION } from "./version";
import { writeFolder } from "./writeFolder";

/** More rounds than any search comes to, and longer than anybody waits. */
const NO_LIMIT = { rounds: 1_000_000_000, seconds: 1_000_000 };

/** Plans a folder and writes its tables; the exit code. */
export const plan = async (command: PlanCommand, output: Output): Promise<number> => {
  const read = await readFolder(command.folder);
  if (!read.ok) {
    output.words(faultLines(read.error));
    return 2;
  }
  const staging = read.value;
  const today = command.today ?? dayFrom(staging.production);
  const seconds = command.seconds ?? NO_LIMIT.seconds;
  output.words(`Planning ${staging.production.title} from ${today}${command.seconds === null ? "" : `, ${seconds} s`} ...`);
  const made = await planStaging(staging, {
    today,
    level: (problem) => levelInThread(problem, { seed: command.seed, rounds: command.rounds ?? NO_LIMIT.rounds, seconds }),
  });
  const summary = `${JSON.stringify(summaryJson(made, VERSION), null, 2)}\n`;
  await writeFolder(command.out, filesOf(made, summary));
  output.data(command.json ? summary : summaryLines(made));
  output.words(`Written to ${command.out}.`);
  return 0;
};

const filesOf = (made: StagingPlan, summary: string): ReadonlyMap<string, string> =>
  new Map([
    ...sheetsOf(made).map(({ name, headings, rows }) => [`${name}.csv`, writeCsv(headings, rows, true)] as const),
    ["summary.json", summary],
  ]);

/** Today in the workroom's zone, or the production's first day if that is later: a plan made early stands still until then. */
const dayFrom = ({ zone, starts }: Production): PlainDate => {
  const today = Temporal.Now.plainDateISO(zone).toString() as PlainDate;
  return today > starts ? today : starts;
};
