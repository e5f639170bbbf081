import { versionMeant } from "#lib/constructions/versions";
import { SKILLS } from "#lib/labour/skills";
import type { Staging } from "#lib/staging/staging";
import type { Remedy } from "#lib/whatif/remedies/remedy";
import { words } from "#lib/words/words";
import type { FormField } from "../../../../_components/FieldsForm";

interface OwnForm {
  readonly kind: Remedy["kind"];
  readonly title: string;
  readonly fields: readonly FormField[];
}

const choice = (name: string, label: string, options: readonly (readonly [value: string, name: string])[]): FormField => ({
  name,
  label,
  kind: "choice",
  options: options.map(([value, shown]) => ({ value, name: shown })),
});
const typed = (name: string, label: string, value: string): FormField => ({ name, label, value, required: true });
const number = (name: string, label: string, value: string): FormField => ({ ...typed(name, label, value), kind: "number" });

/** Between the codes of a piece and its parameter, which are chosen together. */
export const BETWEEN = ":";

/** The small forms in which a remedy of one's own is asked about; those that have nothing to choose from are left out. */
export const ownForms = ({ makers, pieces, materials, machines, constructions, production }: Staging): readonly OwnForm[] => {
  const labels = words(production.words).skills;
  const made = pieces.filter(({ source, construction }) => source === "build" && construction !== null);
  const parameters = made.flatMap(({ construction, version, name, code }) =>
    (versionMeant(constructions, construction!, version)?.parameters ?? [])
      .filter(({ kind }) => kind === "count")
      .map((one) => [code + BETWEEN + one.code, `${name}: ${one.label[production.words]}`] as const),
  );
  const skills = SKILLS.map((skill) => [skill, labels[skill]] as const);
  const forms: OwnForm[] = [
    {
      kind: "maker",
      title: "More hands",
      fields: [choice("skill", "Skill", skills), number("days", "Working days", "10"), number("count", "How many people", "1")],
    },
    {
      kind: "overtime",
      title: "Overtime",
      fields: [
        choice("who", "Who", [
          ...makers.map(({ code, name }) => [code, name] as const),
          ...skills.map(([code, name]) => [code, `Each with ${name.toLowerCase()}`] as const),
        ]),
        { ...typed("hours", "Hours each in all", "6 h"), hint: "two an evening at most" },
      ],
    },
    {
      kind: "outwork",
      title: "Made out of the house",
      fields: [
        choice(
          "what",
          "Garments",
          made.map(({ code, name }) => [code, name]),
        ),
        typed("price", `Price of one, ${production.currency}`, "100"),
        number("days", "Days away", "14"),
      ],
    },
    {
      kind: "simplify",
      title: "Simpler",
      fields: [choice("piece", "What, of which piece", parameters), number("value", "Number instead", "0")],
    },
    {
      kind: "deliver",
      title: "A material sooner",
      fields: [
        choice(
          "material",
          "Material",
          materials.map(({ code, name }) => [code, name]),
        ),
        number("days", "Days sooner", "7"),
      ],
    },
    {
      kind: "machine",
      title: "One more machine or room",
      fields: [
        choice(
          "machine",
          "Kind",
          [...new Set(machines.map(({ kind }) => kind))].map((kind) => [kind, kind]),
        ),
      ],
    },
  ];
  return forms.filter(({ fields }) => fields.every(({ kind, options }) => kind !== "choice" || (options ?? []).length > 0));
};
