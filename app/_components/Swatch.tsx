import type { Skill } from "#lib/labour/skills";
import { weaveOf } from "../_look/weave";

/** A skill's weave, beside its name. */
export const Swatch = ({ skill }: { readonly skill: Skill }) => (
  <svg className="swatch" width="16" height="14" aria-hidden="true">
    <rect x=".5" y=".5" width="15" height="13" style={{ fill: `url(#p${weaveOf(skill)})`, stroke: `var(--c${weaveOf(skill)})` }} />
  </svg>
);
