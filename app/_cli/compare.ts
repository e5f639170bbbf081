import { writeCsv } from "#lib/exchange/writeCsv";
import { planStaging } from "#lib/planning/planStaging";
import { comparisonSheets } from "#lib/sheets/comparisonSheets";
import { compareStagingPlans } from "#lib/whatif/comparePlans";
import { comparisonLines } from "./comparisonLines";
import { faultLines } from "./faultLines";
import type { Output } from "./output";
import { readFolder } from "./readFolder";
import { searching, timeText } from "./searching";
import type { CompareCommand } from "./whatIfCommands";
import { writeFolder } from "./writeFolder";

/** Plans two folders alike and tells what changes from the first to the second; the exit code. */
export const compare = async (command: CompareCommand, output: Output): Promise<number> => {
  const stagings = [];
  for (const folder of [command.before, command.after]) {
    const read = await readFolder(folder);
    if (!read.ok) {
      output.words(`${folder}\n${faultLines(read.error)}`);
      return 2;
    }
    stagings.push(read.value);
  }
  const [before, after] = stagings as [(typeof stagings)[0], (typeof stagings)[0]];
  if (before.production.currency !== after.production.currency) {
    output.words(
      `${command.before} counts in ${before.production.currency}, ${command.after} in ${after.production.currency}: bring one to the other.`,
    );
    return 2;
  }
  const options = searching(command, after.production);
  output.words(`Planning both from ${options.today}${timeText(command)} ...`);
  const plan = await planStaging(after, options);
  const compared = compareStagingPlans(await planStaging(before, options), plan);
  if (command.out !== null) {
    const sheets = comparisonSheets(compared, plan);
    await writeFolder(command.out, new Map(sheets.map(({ name, headings, rows }) => [`${name}.csv`, writeCsv(headings, rows, true)])));
  }
  output.data(command.json ? `${JSON.stringify(compared, null, 2)}\n` : comparisonLines(compared, plan));
  if (command.out !== null) output.words(`Written to ${command.out}.`);
  return 0;
};
