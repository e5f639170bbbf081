"use server";

import { revalidatePath } from "next/cache";
import * as z from "zod";
import { changesBetween } from "#lib/editing/changesBetween";
import { failed, ok } from "#lib/result";
import { changePieces } from "#lib/whatif/changePieces";
import { keepEdit } from "#prisma/editing/keepEdit";
import { takeBack } from "#prisma/editing/takeBack";
import { productionHref } from "../../../../_data/address";
import { plural } from "../../../../_data/plural";
import { memberAction } from "../../../../_gate/action";
import { done, faulty, refused } from "../../../../_gate/outcome";
import { given } from "../garmentQuery";
import { readChange, seenOf } from "./changeInput";

/** Keeps a change of many lines of the piece list as one edit, unless somebody has changed the same of one of them since it was looked at. */
export const keepPieces = memberAction({
  act: "wardrobe",
  name: null,
  input: z.object({
    production: z.string().min(1).max(100),
    /** Codes, one to a line. */
    pieces: z.string().min(1),
    /** The form as the address has it. */
    asked: z.string().min(1).max(20_000),
    seen: z.string(),
    /** Where to go on, inside the production. */
    to: z.string().regex(/^\/garments(\/[\w%.~-]+)?(\?.*)?$/),
  }),
  run: async (member, { production, pieces, asked, seen, to }) => {
    const codes = pieces.split("\n");
    const base = productionHref(production);
    const kept = await keepEdit<{ readonly kind: "said"; readonly text: string }>(member.company, member.user.id, production, (staging) => {
      const { change, faults } = readChange(given(new URLSearchParams(asked).entries()), staging);
      const [fault] = Object.values(faults);
      if (fault !== undefined) return failed({ kind: "said", text: fault });
      if (seenOf(staging.pieces, codes, change) !== seen)
        return failed({ kind: "said", text: "Somebody has changed one of these since. Nothing was written: look at it again." });
      const names = staging.pieces.filter(({ code }) => codes.includes(code)).map(({ name }) => name);
      const title = `Pieces: ${names.length === 1 ? names[0] : plural(names.length, "line")}, ${Object.keys(change).join(", ")}`;
      return ok({ title, changes: changesBetween(staging, changePieces(staging, codes, change)) });
    });
    if (!kept.ok) {
      if (kept.error.kind === "said") return refused(kept.error.text);
      if (kept.error.kind === "faults") return faulty("It cannot be kept so. Nothing was written.", kept.error.faults);
      if (kept.error.kind === "conflict")
        return refused("Somebody changed the same at this moment. Nothing was written: look at it again.");
      return refused("There is no such production any more.");
    }
    revalidatePath(base, "layout");
    if (kept.value.id === null) return refused("Nothing would be different.");
    return done("Kept.", `${base}${to}${to.includes("?") ? "&" : "?"}kept=${kept.value.id}`);
  },
});

/** Takes a kept change of the piece list back, whole. */
export const takePiecesBack = memberAction({
  act: "wardrobe",
  name: null,
  input: z.object({ production: z.string().min(1).max(100), edit: z.uuid() }),
  run: async (member, { production, edit }) => {
    const back = await takeBack(member.company, member.user.id, production, { what: { id: edit }, may: (file) => file === "pieces.csv" });
    revalidatePath(productionHref(production), "layout");
    return back.ok
      ? done("Taken back: everything is as it was.")
      : refused("It cannot be taken back here: it was taken back already, or somebody has changed the same since.");
  },
});
