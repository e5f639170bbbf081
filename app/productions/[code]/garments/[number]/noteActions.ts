"use server";

import { revalidatePath } from "next/cache";
import * as z from "zod";
import { addNote, changeNote } from "#prisma/notes/notes";
import { garmentHref } from "../../../../_data/address";
import { memberAction } from "../../../../_gate/action";
import { done, refused } from "../../../../_gate/outcome";

const at = { production: z.string().min(1).max(100), garment: z.string().min(1).max(40) };
const text = z.string().trim().max(1000, "No more than 1,000 letters.");

export const addGarmentNote = memberAction({
  act: "note",
  name: null,
  input: z.object({ ...at, text: text.min(1, "Write something down.") }),
  run: async (member, { production, garment, text: written }) => {
    await addNote({ company: member.company, user: member.user.id, production }, garment, written);
    revalidatePath(garmentHref(production, garment));
    return done("Noted.");
  },
});

/** Changes a note of one's own; without words it is taken away. */
export const changeGarmentNote = memberAction({
  act: "note",
  name: null,
  input: z.object({ ...at, note: z.uuid(), version: z.coerce.number().int(), text }),
  run: async (member, { production, garment, note, version, text: written }) => {
    const hand = { company: member.company, user: member.user.id, production };
    const kept = await changeNote(hand, { id: note, version }, written);
    revalidatePath(garmentHref(production, garment));
    if (!kept) return refused("That note was changed or taken away since you read it. Read it again; nothing was written.");
    return done(written === "" ? "Taken away." : "Kept.");
  },
});
