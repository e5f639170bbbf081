import type { LengthSystem } from "#lib/units/showLength";

const NAMES = { in: "inches", cm: "centimetres" } as const;

/** Inches or centimetres, as the reader likes: kept in the address. */
export const UnitLinks = ({ lengths }: { readonly lengths: LengthSystem }) => (
  <nav aria-label="Units" className="small no-print">
    {(["in", "cm"] as const).map((each, at) => (
      <span key={each}>
        {at > 0 && " or "}
        {each === lengths ? <b aria-current="true">{NAMES[each]}</b> : <a href={`?units=${each}`}>{NAMES[each]}</a>}
      </span>
    ))}
  </nav>
);

/** The system asked for in the address; the production's own when none is. */
export const askedUnits = (given: string | readonly string[] | undefined, own: LengthSystem): LengthSystem => {
  const asked = [given ?? ""].flat()[0];
  return asked === "in" || asked === "cm" ? asked : own;
};
