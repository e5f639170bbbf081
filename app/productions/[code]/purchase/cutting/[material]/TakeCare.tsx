import type { MaterialKind } from "#lib/materials/material";

const STEEL = [
  "Goggles on: nipped steel flies. Cut away from the face, and file or tip every end before it goes near a body.",
  "Coils spring: hold both ends, and cut the tie last.",
];
const CLOTH = [
  "Rotary blade: guard down between cuts, cut away from the hand that holds, and bin blades in a sharps tin.",
  "Check the dye lot on the roll against the label before the first cut: what is cut cannot go back.",
];
const NET = "Net burns fast: no naked light near it, on the table or on the body; ask what flame-proofing the house’s code demands.";

/** What can hurt at the cutting table. */
export const TakeCare = ({ kind }: { readonly kind: MaterialKind | undefined }) => {
  const cautions = kind === "bone" || kind === "hoop" || kind === "wire" ? STEEL : kind === "net" ? [...CLOTH, NET] : CLOTH;
  return (
    <section className="slip" aria-label="Take care">
      <ul>
        {cautions.map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
        <li>The workroom’s own rules, and local ones, come first.</li>
      </ul>
    </section>
  );
};
