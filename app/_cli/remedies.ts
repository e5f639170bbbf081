import type { PlainDate } from "#lib/calendar/plainDate";
import { planStaging } from "#lib/planning/planStaging";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import { ok, type Result } from "#lib/result";
import { remediesSheet } from "#lib/sheets/remediesSheet";
import { candidates } from "#lib/whatif/remedies/candidates";
import { REMEDY_FIELDS, readRemedy } from "#lib/whatif/remedies/readRemedy";
import type { Remedy } from "#lib/whatif/remedies/remedy";
import { type WhatHelps, whatHelps } from "#lib/whatif/remedies/whatHelps";
import { faultLines } from "./faultLines";
import type { Output } from "./output";
import { readFolder } from "./readFolder";
import type { RemediesCommand } from "./remediesCommand";
import { searching, timeText } from "./searching";
import { tableLines } from "./sheetLines";

/** So many rounds at least for the plan that is to be helped: a hasty one needs other help than a good one. */
const ROUNDS_OF_PLAN = 10;

/** Tells what would help a plan, each as a plan of its own; the exit code. */
export const remedies = async (command: RemediesCommand, output: Output): Promise<number> => {
  const read = await readFolder(command.folder);
  if (!read.ok) {
    output.words(faultLines(read.error));
    return 2;
  }
  const staging = read.value;
  const options = searching(command, staging.production);
  output.words(`Planning ${staging.production.title}${timeText(command)} ...`);
  const first = command.rounds === null ? command : { ...command, rounds: Math.max(ROUNDS_OF_PLAN, command.rounds) };
  const plan = await planStaging(staging, searching(first, staging.production));
  const asked = askedOf(command, plan, options.today);
  if (!asked.ok) {
    output.words(asked.error);
    return 2;
  }
  if (asked.value.length === 0) {
    output.data(command.json ? "null\n" : "Nothing is late, so nothing needs help. Ask about something of your own; see --help.\n");
    return 0;
  }
  const found = await whatHelps(plan, asked.value, options, (made, all) => made < all && output.words(`Plan ${made + 1} of ${all} ...`));
  output.data(command.json ? `${JSON.stringify(found, null, 2)}\n` : helpLines(found, plan));
  return 0;
};

const askedOf = ({ asked }: RemediesCommand, plan: StagingPlan, today: PlainDate): Result<readonly Remedy[], string> => {
  if (asked.length === 0) return ok(candidates(plan, today));
  const found: Remedy[] = [];
  for (const { kind, parts } of asked) {
    const given = Object.fromEntries(REMEDY_FIELDS[kind].map((name, at) => [name, parts[at] ?? ""]));
    const remedy = readRemedy(kind, given, plan.staging, today);
    if (!remedy.ok) return remedy;
    found.push(remedy.value);
  }
  return ok(found);
};

const helpLines = (found: WhatHelps, plan: StagingPlan): string => {
  const late = plan.garmentStates.filter(({ minutesLate }) => minutesLate > 0);
  const why = late.map(({ garment, why: reasons }) => `${garment} is late. ${reasons[0] ?? ""}`.trim());
  return [...why, ...(why.length > 0 ? [""] : []), ...tableLines(remediesSheet(found, plan.staging.production)), ""].join("\n");
};
