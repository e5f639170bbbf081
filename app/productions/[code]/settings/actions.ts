"use server";

import { registerAction } from "../../../_gate/registerAction";
import { rowAction } from "../../../_gate/rowAction";

/** What holds for the whole production: title, budget, units, words. */
export const keepProduction = rowAction({ act: "settings", file: "production.csv", title: ({ title }) => `Settings of ${title}` });

export const keepMilestones = registerAction({ act: "settings", file: "milestones.csv", title: "Milestones" });

export const keepSizes = registerAction({ act: "settings", file: "sizes.csv", title: "Size groups" });

/** Days on which the workroom is closed: absences of nobody. */
export const keepHolidays = registerAction({ act: "settings", file: "absences.csv", title: "Closed days", added: { maker: "" } });
