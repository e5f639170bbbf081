import type { Metadata } from "next";
import { loadShelf } from "#prisma/stock/shelf";
import { PrintThis } from "../../../../../_components/PrintThis";
import { ownAddress } from "../../../../../_data/ownAddress";
import { plural } from "../../../../../_data/plural";
import { requireProduction } from "../../../../../_data/requireProduction";
import { BuyingFrame } from "../../BuyingFrame";
import { shelfMaterials } from "../shelfRows";
import styles from "./Labels.module.css";
import { LotSticker } from "./LotSticker";

type Props = {
  readonly params: Promise<{ readonly code: string }>;
  readonly searchParams: Promise<{ readonly find?: string | string[]; readonly lot?: string | string[] }>;
};

export const generateMetadata = async ({ params }: Props): Promise<Metadata> => {
  const { view } = await requireProduction("shelf", (await params).code);
  return { title: `Labels of lots, ${view.prepared.staging.production.title}` };
};

const Labels = async ({ params, searchParams }: Props) => {
  const { member, view } = await requireProduction("shelf", (await params).code);
  const { production } = view.prepared.staging;
  const asked = await searchParams;
  const only = [asked.lot ?? []].flat();
  const entries = (await loadShelf(member.company)).filter(
    ({ arrives, code }) => arrives === null && (only.length === 0 || only.includes(code)),
  );
  const lots = shelfMaterials(entries, [asked.find ?? ""].flat()[0]).flatMap(({ here }) => here);
  const host = await ownAddress();
  return (
    <BuyingFrame member={member} view={view} page="/shelf">
      <div className="top no-print">
        <h1>Labels</h1>
        <p className="say">
          <b>{plural(lots.length, "label")}</b>, 63.5 by 38.1 mm each, cut along the dashes. The square code opens the lot’s page, to count
          it or cut from it.
        </p>
        <div className="acts">
          <PrintThis>Print the labels</PrintThis>
        </div>
      </div>
      <ul className={styles.sheet}>
        {lots.map((lot) => (
          <LotSticker key={lot.code} lot={lot} production={production} host={host} />
        ))}
      </ul>
    </BuyingFrame>
  );
};

export default Labels;
