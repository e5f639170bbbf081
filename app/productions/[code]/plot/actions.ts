"use server";

import { productionHref } from "../../../_data/address";
import { registerAction } from "../../../_gate/registerAction";
import { rowAction } from "../../../_gate/rowAction";
import { costumeHref } from "./plotWords";

export const keepScenes = registerAction({ act: "cast", file: "scenes.csv", title: "Scenes" });

export const keepRoles = registerAction({ act: "cast", file: "roles.csv", title: "Roles" });

export const keepAppearances = registerAction({ act: "wardrobe", file: "appearances.csv", title: "Who appears when" });

export const keepCostumes = registerAction({ act: "wardrobe", file: "costumes.csv", title: "Costumes" });

export const keepSets = registerAction({ act: "wardrobe", file: "sets.csv", title: "Sets" });

/** A piece of a costume's list; then back to the costume. */
export const keepPiece = rowAction({
  act: "wardrobe",
  file: "pieces.csv",
  title: ({ name, code }) => `Piece ${name || code}`,
  to: ({ costume = "" }, production) => costumeHref(`${productionHref(production)}/plot`, costume),
});
