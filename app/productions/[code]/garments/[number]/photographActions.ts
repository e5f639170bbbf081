"use server";

import { revalidatePath } from "next/cache";
import * as z from "zod";
import { addPhoto, dropPhoto } from "#prisma/photos/photos";
import { garmentHref } from "../../../../_data/address";
import { removePhotograph, storePhotograph } from "../../../../_data/photographs";
import { loadProduction } from "../../../../_data/stagingPlan";
import { memberAction } from "../../../../_gate/action";
import { may } from "../../../../_gate/may";
import { done, refused } from "../../../../_gate/outcome";

/** What a phone makes, and no more than a form may send. */
const MOST_BYTES = 11 * 1024 * 1024;
const MISSING = "Choose a photograph.";

const at = { production: z.string().min(1).max(100), garment: z.string().min(1).max(40) };

/** Adds a photograph to a garment, once everybody in it agrees. */
export const addPhotograph = memberAction({
  act: "note",
  name: null,
  input: z.object({
    ...at,
    photograph: z.instanceof(File, { error: MISSING }).refine((file) => file.size > 0, MISSING),
    caption: z.string().trim().max(200),
    agreed: z.literal("yes", { error: "Ask whoever can be seen in it first: without a yes it is not kept." }),
  }),
  run: async (member, { production, garment, photograph, caption }) => {
    const view = await loadProduction(member.company, production);
    if (!view?.prepared.garments.some(({ number }) => number === garment)) return refused("There is no such garment any more.");
    if (photograph.size > MOST_BYTES) return refused("That photograph is over 11 MB: make it smaller first.");
    const stored = await storePhotograph(new Uint8Array(await photograph.arrayBuffer()));
    if (!stored.ok) return refused(stored.error);
    const hand = { company: member.company, user: member.user.id, production };
    await addPhoto(hand, { garment, caption, name: photograph.name.slice(0, 200), ...stored.value });
    revalidatePath(garmentHref(production, garment));
    return done("Added.");
  },
});

/** Takes a photograph away: one's own, or any for who looks after the wardrobe. The picture itself goes too. */
export const dropPhotograph = memberAction({
  act: "note",
  name: null,
  input: z.object({ ...at, photograph: z.uuid() }),
  run: async (member, { production, garment, photograph }) => {
    const hand = { company: member.company, user: member.user.id, production };
    const { gone, path } = await dropPhoto(hand, photograph, !may(member.role, "wardrobe"));
    if (path !== null) await removePhotograph(path);
    revalidatePath(garmentHref(production, garment));
    return gone ? done("Taken away.") : refused("It is gone already, or it is somebody else’s: ask the supervisor.");
  },
});
