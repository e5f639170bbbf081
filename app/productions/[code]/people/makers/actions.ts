"use server";

import type { RowTexts } from "#lib/editing/edit";
import { rowsOf } from "#lib/editing/rows";
import { makerHref, productionHref } from "../../../../_data/address";
import { registerAction } from "../../../../_gate/registerAction";
import { rowAction } from "../../../../_gate/rowAction";

const absencesOf = (staging: Parameters<typeof rowsOf>[0], { code }: RowTexts) =>
  rowsOf(staging, "absences.csv")
    .filter(({ maker }) => maker === code)
    .map((before) => ({ file: "absences.csv", before, after: null }));

/** Adds a maker, changes one, or takes one out with their absences. */
export const keepMaker = rowAction({
  act: "workroom",
  file: "makers.csv",
  title: ({ name }) => `Maker ${name}`,
  to: (row, production, out) => (out || !row.code ? `${productionHref(production)}/people/makers` : makerHref(production, row.code)),
  outWith: absencesOf,
});

export const keepMakers = registerAction({ act: "workroom", file: "makers.csv", title: "Makers" });
