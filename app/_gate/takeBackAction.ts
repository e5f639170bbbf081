import { revalidatePath } from "next/cache";
import { z } from "zod";
import { type ToTakeBack, takeBack } from "#prisma/editing/takeBack";
import { productionHref } from "../_data/address";
import { type Action, memberAction } from "./action";
import { clashOf } from "./clash";
import type { Edited } from "./editAction";
import { editFields } from "./editInput";
import { mayChange } from "./mayChange";
import { faulty, type Outcome, refused } from "./outcome";

/** An action that takes an edit back, or does again what was taken back, as far as the person may change what it changed. */
export const takeBackAction = <Input extends z.ZodObject>(input: Input, what: (input: z.output<Input>) => ToTakeBack): Action<Edited> =>
  memberAction({
    act: "read",
    name: null,
    input: editFields.pick({ production: true, over: true }).extend({ step: z.string().optional() }).and(input),
    run: async (member, form): Promise<Outcome<Edited>> => {
      const { production, over, step } = form;
      const answer = (message: string, edit: string | null): Outcome<Edited> => {
        revalidatePath(productionHref(production), "layout");
        return { ok: true, message, to: null, value: { edit, effect: null, kept: {} } };
      };
      if (step === "theirs") return answer("Theirs stays.", null);
      const back = await takeBack(member.company, member.user.id, production, {
        what: what(form as z.output<Input>),
        may: (file) => mayChange(member.role, file),
        ...(over ? { changes: over.changes } : {}),
      });
      if (back.ok) return answer(`${back.value.kind === "undo" ? "Put back" : "Done again"}: ${back.value.title}.`, back.value.id);
      const { error } = back;
      switch (error.kind) {
        case "nothing":
          return refused("There is nothing to put back: it was put back already, or nothing was done.");
        case "no production":
          return refused("There is no such production any more.");
        case "not yours":
          return refused("Part of this is not yours to change. Ask the supervisor; nothing was changed.");
        case "faults":
          return faulty("It cannot be put back: what was changed since leans on it. Nothing was written.", error.faults);
        case "conflict":
          return {
            ...refused("Somebody has changed this since. Nothing was written."),
            clash: clashOf({ title: "Put back", changes: error.changes }, error.conflicts),
          };
      }
    },
  });
