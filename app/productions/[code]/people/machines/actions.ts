"use server";

import { registerAction } from "../../../../_gate/registerAction";

export const keepMachines = registerAction({ act: "workroom", file: "machines.csv", title: "Machines" });
