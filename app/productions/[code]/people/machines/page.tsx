import type { Metadata } from "next";
import { requireProduction } from "../../../../_data/requireProduction";
import { PeopleRegister } from "../PeopleRegister";
import { keepMachines } from "./actions";

type Props = { readonly params: Promise<{ readonly code: string }> };

export const generateMetadata = async ({ params }: Props): Promise<Metadata> => {
  const { view } = await requireProduction("read", (await params).code);
  return { title: `Machines, ${view.prepared.staging.production.title}` };
};

const Machines = async ({ params }: Props) => (
  <PeopleRegister code={(await params).code} file="machines.csv" page="/machines" heading="Machines" action={keepMachines}>
    Machines, vats, tables and fitting rooms, those that are alike in one row. An operation asks for a kind; a fitting room is of the kind
    fitting room.
  </PeopleRegister>
);

export default Machines;
