import type { Metadata } from "next";
import { requireProduction } from "../../../../_data/requireProduction";
import { PeopleRegister } from "../PeopleRegister";
import { keepAbsences } from "./actions";

type Props = { readonly params: Promise<{ readonly code: string }> };

export const generateMetadata = async ({ params }: Props): Promise<Metadata> => {
  const { view } = await requireProduction("read", (await params).code);
  return { title: `Away and closed, ${view.prepared.staging.production.title}` };
};

const Away = async ({ params }: Props) => (
  <PeopleRegister code={(await params).code} file="absences.csv" page="/away" heading="Away and closed" action={keepAbsences}>
    A row without a maker closes the workroom: holidays, and days on which nobody works. Calendars, plans and fittings step around them.
  </PeopleRegister>
);

export default Away;
