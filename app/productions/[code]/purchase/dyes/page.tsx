import type { Metadata } from "next";
import { DYE_CAUTIONS } from "#lib/dyeing/dyeBook";
import { loadDyeBook } from "#prisma/stock/dyeBook";
import { FieldsForm } from "../../../../_components/FieldsForm";
import { PrintThis } from "../../../../_components/PrintThis";
import { colourBeside } from "../../../../_data/colourBeside";
import { plural } from "../../../../_data/plural";
import { requireProduction } from "../../../../_data/requireProduction";
import { may } from "../../../../_gate/may";
import { BuyingFrame } from "../BuyingFrame";
import { writeDye } from "./actions";
import { DyePages } from "./DyePages";
import { ToDye } from "./ToDye";

type Props = { readonly params: Promise<{ readonly code: string }> };

export const generateMetadata = async ({ params }: Props): Promise<Metadata> => {
  const { view } = await requireProduction("shelf", (await params).code);
  return { title: `Dye book, ${view.prepared.staging.production.title}` };
};

const DyeBook = async ({ params }: Props) => {
  const { member, view } = await requireProduction("shelf", (await params).code);
  const { production, materials, lots } = view.prepared.staging;
  const pages = await loadDyeBook(member.company);
  const named = new Map(materials.map(({ code, name }) => [code, name]));
  return (
    <BuyingFrame member={member} view={view} page="/dyes">
      <div className="top">
        <h1>Dye book</h1>
        <p className="say">
          <b>{plural(pages.length, "page")}</b>. The book is the company’s: a colour once come to can be come to again.
        </p>
        <div className="acts">
          <PrintThis>Print the book</PrintThis>
        </div>
      </div>
      <section className="slip" aria-label="Take care">
        <ul>
          {DYE_CAUTIONS.map((caution) => (
            <li key={caution}>{caution}</li>
          ))}
        </ul>
      </section>
      <ToDye view={view} />
      <DyePages pages={pages} code={production.code} />
      {may(member.role, "take") && (
        <section className="part no-print" aria-labelledby="page">
          <header>
            <h2 id="page">A new page</h2>
          </header>
          <FieldsForm
            action={writeDye}
            hidden={{ production: production.code }}
            press="Write it down"
            busy="Writing"
            fields={[
              {
                ...{ name: "material", label: "Material", kind: "choice", required: true },
                options: materials.map(({ code, name, colour }) => ({
                  value: code,
                  name: [name, colourBeside(name, colour)].filter(Boolean).join(", "),
                })),
              },
              {
                ...{ name: "lot", label: "From lot", kind: "choice" },
                options: [
                  { value: "", name: "none" },
                  ...lots.map(({ code, material }) => ({ value: code, name: `${code}, ${named.get(material) ?? material}` })),
                ],
              },
              { name: "garments", label: "Garments", hint: "dyed when made, by comma" },
              { name: "colour", label: "Colour", required: true },
              { name: "dyedOn", label: "Dyed on", kind: "date", value: view.today, required: true },
              { name: "swatch", label: "Photograph of the swatch", kind: "file", accept: "image/png,image/jpeg,image/webp" },
              {
                ...{ name: "recipe", label: "Recipe", kind: "words", required: true },
                hint: "dyes and salts by weight of dry cloth, water, heat, minutes",
              },
              { name: "cautions", label: "Take care of", kind: "words", hint: "beside the cautions above" },
            ]}
          />
        </section>
      )}
    </BuyingFrame>
  );
};

export default DyeBook;
