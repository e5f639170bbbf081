"use server";

import { productionHref } from "../../../../_data/address";
import { rowAction } from "../../../../_gate/rowAction";

/** A performer's name, size group and whether they are of age. */
export const keepPerformer = rowAction({
  act: "measure",
  file: "performers.csv",
  title: ({ name, code }) => `Performer ${name || code}`,
  to: ({ code }, production) => `${productionHref(production)}/people/performers${code ? `/${encodeURIComponent(code)}` : ""}`,
});
