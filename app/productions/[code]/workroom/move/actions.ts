"use server";

import { z } from "zod";
import { readClock } from "#lib/calendar/clock";
import { isoDate } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import { keepMove, letGo, loadHandPins } from "#prisma/plans/handPins";
import { productionHref } from "../../../../_data/address";
import { loadProduction } from "../../../../_data/stagingPlan";
import { memberAction } from "../../../../_gate/action";
import { done, refused } from "../../../../_gate/outcome";
import { followed } from "./followed";

const GONE = "There is no such production any more.";

const wish = z.object({
  production: z.string().min(1),
  key: z.string().min(1),
  maker: z.string().min(1, "Choose who shall do it."),
  date: z.string().refine((text) => isoDate(text) !== null, "Write a day."),
  at: z.string().refine((text) => readClock(text).ok, "Write a time such as 9:30."),
  /** Plan the person saw: another one now means that what follows is another thing too. */
  seen: z.string(),
});

/** Grants a wish: the work is fixed where the hand put it, and the plan that follows is the workroom's. */
export const keepWork = memberAction({
  act: "workroom",
  name: null,
  input: wish,
  run: async (member, input) => {
    const view = await loadProduction(member.company, input.production);
    if (!view) return refused(GONE);
    if (String(view.levelledAt?.getTime() ?? "") !== input.seen)
      return refused("The plan has changed since you looked at it. Nothing was moved: look at what follows again.");
    const at = readClock(input.at);
    const pins = await loadHandPins(member.company, view.productionId);
    const what = { key: input.key, maker: input.maker, date: input.date as PlainDate, at: at.ok ? at.value : 0 };
    const result = await followed(view, pins, what);
    if (!result.ok) return refused(result.error);
    const { pin, stored, moves } = result.value;
    const name = `${moves.moved.find(({ key }) => key === pin.key)?.name ?? input.key} moved by hand`;
    const { productionId, workroomId } = view;
    const kept = await keepMove(member.company, { productionId, workroomId, user: member.user.id, name }, pin, stored);
    if (!kept.ok)
      return refused("Another production of the workroom has some of that time by now. Nothing was moved: look at what follows again.");
    return done(`${name}.`, `${productionHref(input.production)}/workroom`);
  },
});

/** Frees what was fixed by hand; it stays where it is until the workroom is levelled again. */
export const freeWork = memberAction({
  act: "workroom",
  name: null,
  input: wish.pick({ production: true, key: true }),
  run: async (member, { production, key }) => {
    const view = await loadProduction(member.company, production);
    if (!view) return refused(GONE);
    if (!(await letGo(member.company, member.user.id, view.productionId, key))) return refused("It was not fixed any more.");
    return done("It is free again. Level again to let it move.", `${productionHref(production)}/workroom`);
  },
});
