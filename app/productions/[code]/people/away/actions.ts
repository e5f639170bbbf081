"use server";

import { registerAction } from "../../../../_gate/registerAction";

export const keepAbsences = registerAction({ act: "workroom", file: "absences.csv", title: "Away and closed" });
