import { productionHref } from "../../../_data/address";

/** The one way back from a page under the plot. */
export const BackToPlot = ({ code }: { readonly code: string }) => <a href={`${productionHref(code)}/plot`}>Back to the plot</a>;
