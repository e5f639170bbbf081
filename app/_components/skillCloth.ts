import type { Skill } from "#lib/labour/skills";
import { weaveOf } from "../_look/weave";

/** How a skill is painted on a picture: its weave, its thread and its pale cloth. Fitting is plum, as its pins are. */
export const skillCloth = (skill: Skill): { readonly weave: string; readonly thread: string; readonly pale: string } => {
  if (skill === "fit") return { weave: "var(--plum-pale)", thread: "var(--plum)", pale: "var(--plum-pale)" };
  const number = weaveOf(skill);
  return { weave: `url(#p${number})`, thread: `var(--c${number})`, pale: `var(--c${number}-pale)` };
};
