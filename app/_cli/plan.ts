import { writeCsv } from "#lib/exchange/writeCsv";
import { planStaging } from "#lib/planning/planStaging";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import { sheetsOf } from "#lib/sheets/sheets";
import { summaryJson } from "#lib/sheets/summaryJson";
import type { PlanCommand } from "./commandLine";
import { faultLines } from "./faultLines";
import type { Output } from "./output";
import { proveCuts } from "./proveCuts";
import { readFolder } from "./readFolder";
import { searching, timeText } from "./searching";
import { summaryLines } from "./summaryLines";
import { VERSION } from "./version";
import { writeFolder } from "./writeFolder";

/** Plans a folder and writes its tables; the exit code. */
export const plan = async (command: PlanCommand, output: Output): Promise<number> => {
  const read = await readFolder(command.folder);
  if (!read.ok) {
    output.words(faultLines(read.error));
    return 2;
  }
  const staging = read.value;
  const options = searching(command, staging.production);
  output.words(`Planning ${staging.production.title} from ${options.today}${timeText(command)} ...`);
  const planned = await planStaging(staging, options);
  const made = command.cut > 0 ? await proveCuts(planned, command.cut) : planned;
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
