import type { Metadata } from "next";
import Link from "next/link";
import { loadShelf } from "#prisma/stock/shelf";
import { plural } from "../../../../_data/plural";
import { requireProduction } from "../../../../_data/requireProduction";
import { BuyingFrame } from "../BuyingFrame";
import { buyingHref } from "../buyingPages";
import { SaveFiles } from "../SaveFiles";
import { ShelfTable } from "./ShelfTable";
import { shelfMaterials } from "./shelfRows";

type Props = {
  readonly params: Promise<{ readonly code: string }>;
  readonly searchParams: Promise<{ readonly find?: string | string[] }>;
};

export const generateMetadata = async ({ params }: Props): Promise<Metadata> => {
  const { view } = await requireProduction("shelf", (await params).code);
  return { title: `Shelf, ${view.prepared.staging.production.title}` };
};

const Shelf = async ({ params, searchParams }: Props) => {
  const { member, view } = await requireProduction("shelf", (await params).code);
  const { code, lengths } = view.prepared.staging.production;
  const find = [(await searchParams).find ?? ""].flat()[0] ?? "";
  const entries = await loadShelf(member.company);
  const materials = shelfMaterials(entries, find);
  const here = entries.filter(({ arrives }) => arrives === null).length;
  const asked = find === "" ? "" : `?find=${encodeURIComponent(find)}`;
  return (
    <BuyingFrame member={member} view={view} page="/shelf">
      <div className="top">
        <h1>Shelf</h1>
        <p className="say">
          <b>{plural(here, "lot")} here</b>, {entries.length - here} awaited. The shelf is the company’s: every production takes from it.
        </p>
        <div className="acts">
          <SaveFiles href={`${buyingHref(code, "/shelf")}/list`} />
          <Link className="press second" href={`${buyingHref(code, "/shelf")}/labels${asked}`} prefetch={false}>
            Labels to print
          </Link>
        </div>
      </div>
      <form className="acts no-print" action={buyingHref(code, "/shelf")}>
        <label>
          Find <input type="search" name="find" defaultValue={find} placeholder="material, lot, dye lot, place" />
        </label>
        <button type="submit" className="press second">
          Find
        </button>
      </form>
      {materials.length === 0 ? (
        <p className="board">{find === "" ? "Nothing is on the shelf." : `Nothing on the shelf is called “${find}”.`}</p>
      ) : (
        <ShelfTable materials={materials} code={code} lengths={lengths} />
      )}
    </BuyingFrame>
  );
};

export default Shelf;
