import { ProductionFrame } from "../../../_components/ProductionFrame";
import { SubRail } from "../../../_components/SubRail";
import type { ProductionView } from "../../../_data/stagingPlan";
import type { Member } from "../../../_gate/member";
import { type BuyingPage, buyingHref, buyingPages } from "./buyingPages";

/** The frame of a page of cloth and buying, with the others beside it. */
export const BuyingFrame = ({
  member,
  view,
  page,
  children,
}: {
  readonly member: Member;
  readonly view: ProductionView;
  readonly page: BuyingPage;
  readonly children: React.ReactNode;
}) => {
  const { code } = view.prepared.staging.production;
  return (
    <ProductionFrame member={member} view={view} room="/purchase">
      <SubRail label="Cloth and buying" pages={buyingPages(member, code)} page={buyingHref(code, page)} />
      {children}
    </ProductionFrame>
  );
};
