"use server";

import { revalidatePath } from "next/cache";
import { z } from "zod";
import { rowOf } from "#lib/editing/rows";
import { failed, ok } from "#lib/result";
import { keepEdit } from "#prisma/editing/keepEdit";
import { markTask } from "#prisma/work/marks";
import { makerHref } from "../../../../../_data/address";
import { loadProduction } from "../../../../../_data/stagingPlan";
import { memberAction } from "../../../../../_gate/action";
import { done, refused } from "../../../../../_gate/outcome";

const MINUTES_OF_A_DAY = 1440;

const minutes = z
  .string()
  .default("")
  .transform((text) => (text.trim() === "" ? 0 : Number(text)))
  .pipe(z.number("Write minutes.").int("Write whole minutes.").min(0, "Write minutes.").max(MINUTES_OF_A_DAY, "A day has 1,440 minutes."));

const SAID = { open: "Put down.", begun: "Begun.", stuck: "Stuck: the supervisor sees it.", done: "Done." } as const;

/** Begins a task, puts it down, says that it is stuck or done, and how long it really took. */
export const markMyTask = memberAction({
  act: "work",
  name: null,
  input: z.object({
    production: z.string().min(1),
    maker: z.string().min(1),
    task: z.string().min(1),
    did: z.enum(["open", "begun", "stuck", "done"]),
    said: z.string().trim().max(500, "Say it in 500 letters.").default(""),
    minutes,
  }),
  run: async (member, { production, maker, task: key, did, said, minutes: worked }) => {
    const view = await loadProduction(member.company, production);
    const task = view?.plan?.tasks.find((one) => one.key === key);
    if (!view || !task) return refused("The plan has no such task any more. Open the page again.");
    if (did === "stuck" && said === "") return refused("Say what is in the way.", { said: "Say what is in the way." });
    if (task.origin !== "operation") {
      const doneOn = did === "done" ? view.today : "";
      const kept = await keepEdit(member.company, member.user.id, production, (staging) => {
        const before = rowOf(staging, "other_work.csv", task.operation);
        if (!before) return failed({ kind: "gone" } as const);
        return ok({ title: `${task.name}: ${did}`, changes: [{ file: "other_work.csv", before, after: { ...before, done_on: doneOn } }] });
      });
      if (!kept.ok) return refused("It cannot be marked: the work was changed or taken out. Open the page again.");
    }
    const hand = { company: member.company, user: member.user.id, production };
    if (!(await markTask(hand, { task, maker, to: did, said, minutes: worked, today: view.today })))
      return refused("It cannot be marked: the maker or the work is gone. Open the page again.");
    revalidatePath(makerHref(production, maker));
    return done(SAID[did]);
  },
});
