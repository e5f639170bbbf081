"use server";

import { revalidatePath } from "next/cache";
import * as z from "zod";
import { writeDyePage } from "#prisma/stock/dyeBook";
import { memberAction } from "../../../../_gate/action";
import { done, refused } from "../../../../_gate/outcome";
import { buyingHref } from "../buyingPages";
import { asDay, productionInput, text } from "../inputs";
import { numbersIn } from "../shelf/lotActing";
import { readSwatch } from "./swatchFile";

const GONE = {
  production: "There is no such production any more.",
  material: "There is no such material any more. Look at the page again.",
  lot: "That lot is of another material. Choose one of this material, or none.",
} as const;

/** Writes a page into the dye book. */
export const writeDye = memberAction({
  act: "take",
  name: null,
  input: productionInput.extend({
    ...{ material: text(100), lot: z.string().trim().max(100), garments: z.string().max(1000), colour: text(100) },
    ...{ recipe: text(4000), cautions: z.string().trim().max(2000), dyedOn: asDay, swatch: z.unknown() },
  }),
  run: async (member, { swatch: file, lot, garments, ...input }) => {
    const { swatch, wrong } = await readSwatch(file);
    if (wrong !== null) return refused("The photograph cannot be kept.", { swatch: wrong });
    const page = { ...input, lot: lot || null, garments: numbersIn(garments), swatch, user: member.user.id };
    const missing = await writeDyePage(member.company, page);
    if (missing) return refused(GONE[missing], { [missing]: GONE[missing] });
    revalidatePath(buyingHref(input.production, "/dyes"));
    return done(`${input.colour} is in the dye book.`);
  },
});
