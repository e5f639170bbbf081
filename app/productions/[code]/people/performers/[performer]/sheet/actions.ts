"use server";

import { revalidatePath } from "next/cache";
import { z } from "zod";
import { changesBetween } from "#lib/editing/changesBetween";
import type { Fault } from "#lib/exchange/fault";
import type { MeasurementSheet } from "#lib/measurements/measurement";
import { pastedTexts, type SheetTexts, sheetFrom } from "#lib/measurements/pastedSheet";
import { sheetsOf, withSheet } from "#lib/measurements/sheets";
import { failed, ok } from "#lib/result";
import { keepEdit } from "#prisma/editing/keepEdit";
import { productionHref } from "../../../../../../_data/address";
import { loadProduction } from "../../../../../../_data/stagingPlan";
import { memberAction } from "../../../../../../_gate/action";
import { done, faulty, type Refusal, refused, shown } from "../../../../../../_gate/outcome";
import { sheetFields } from "./sheetFields";

const whose = { production: z.string().min(1), performer: z.string().min(1) };
const GONE = "There is no such performer any more.";

/** Reads a row copied from a spreadsheet, and says what it would be as a sheet; writes nothing. */
export const lookAtRow = memberAction({
  act: "measure",
  name: null,
  input: z.object({ ...whose, pasted: z.string() }),
  run: async (member, { production, performer, pasted }) => {
    const view = await loadProduction(member.company, production);
    if (!view) return refused(GONE);
    const texts = pastedTexts(pasted);
    if (!texts.ok) return faulty("The row cannot be read. Nothing was written.", texts.error);
    const sheet = sheetFrom(texts.value, performer, view.prepared.staging.production);
    return sheet.ok ? shown("The row has no fault.", texts.value) : faulty("The row cannot be read. Nothing was written.", sheet.error);
  },
});

/** Keeps a sheet as an edit; one of the same day only where that is asked for. */
export const keepSheet = memberAction({
  act: "measure",
  name: null,
  input: z.object({ ...whose, replace: z.string().optional() }).catchall(z.string()),
  run: async (member, { production, performer, replace, ...texts }) => {
    const kept = await keepEdit<Refusal>(member.company, member.user.id, production, (staging) => {
      const name = staging.performers.find(({ code }) => code === performer)?.name;
      const sheet = sheetFrom(texts as SheetTexts, performer, staging.production);
      if (!sheet.ok) return failed(wrongFields(sheet.error));
      if (name === undefined) return failed(refused(GONE));
      if (replace === undefined && isThere(staging, sheet.value))
        return failed(refused("There is a sheet of that day already.", { replace: "Tick this to put the new one in its place." }));
      return ok({ title: `Measurements: ${name}`, changes: changesBetween(staging, withSheet(staging, sheet.value)) });
    });
    const back = `${productionHref(production)}/people/performers/${encodeURIComponent(performer)}`;
    if (kept.ok) {
      revalidatePath(back);
      return done("The sheet is kept.", back);
    }
    if (!("kind" in kept.error)) return kept.error;
    return kept.error.kind === "faults"
      ? faulty("It cannot be kept so.", kept.error.faults)
      : refused("Somebody has changed it at this moment: try again.");
  },
});

const isThere = (staging: Parameters<typeof sheetsOf>[0], { of, taken }: MeasurementSheet): boolean =>
  "performer" in of && sheetsOf(staging, of.performer).some((one) => one.taken === taken);

/** Faults beside their fields. */
const wrongFields = (faults: readonly Fault[]): Refusal => {
  const fields = sheetFields(faults);
  return { ...refused(faults.find(({ column }) => column === null)?.problem ?? "Some of it cannot be read. Nothing was written."), fields };
};
