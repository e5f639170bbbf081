"use server";

import { z } from "zod";
import type { Fault } from "#lib/exchange/fault";
import { pastedTexts, type SheetTexts, sheetFrom } from "#lib/measurements/pastedSheet";
import { sheetsOf, withSheet } from "#lib/measurements/sheets";
import { failed, ok } from "#lib/result";
import { productionHref } from "../../../../../../_data/address";
import { loadProduction } from "../../../../../../_data/stagingPlan";
import { memberAction } from "../../../../../../_gate/action";
import { type EditProblem, editAction } from "../../../../../../_gate/editAction";
import { faulty, refused, shown } from "../../../../../../_gate/outcome";
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
export const keepSheet = editAction({
  act: "measure",
  input: z.object({ ...whose, replace: z.string().optional() }).catchall(z.unknown()),
  make: (staging, { production: _, performer, replace, ...texts }) => {
    const name = staging.performers.find(({ code }) => code === performer)?.name;
    if (name === undefined) return failed({ message: GONE });
    const sheet = sheetFrom(texts as SheetTexts, performer, staging.production);
    if (!sheet.ok) return failed(wrongFields(sheet.error));
    if (replace === undefined && sheetsOf(staging, performer).some(({ taken }) => taken === sheet.value.taken))
      return failed({ message: "There is a sheet of that day already.", fields: { replace: "Put this one in its place" } });
    return ok({ title: `Measurements: ${name}`, next: withSheet(staging, sheet.value) });
  },
  to: ({ performer }, production) => `${productionHref(production)}/people/performers/${encodeURIComponent(performer)}`,
});

/** Faults beside their fields. */
const wrongFields = (faults: readonly Fault[]): EditProblem => ({
  message: faults.find(({ column }) => column === null)?.problem ?? "Some of it cannot be read. Nothing was written.",
  fields: sheetFields(faults),
});
