import Link from "next/link";
import type { Construction } from "#lib/constructions/construction";
import type { Production } from "#lib/staging/staging";
import { constructionHref } from "../../../../_data/address";

/** All versions, the shown one marked: none of them ever changes, since plans and worked minutes refer to them. */
export const Versions = ({
  versions,
  shown,
  production,
}: {
  readonly versions: readonly Construction[];
  readonly shown: Construction;
  readonly production: Production;
}) => (
  <nav aria-label="Versions" className="lines">
    {versions.map(({ version }) => (
      <Link
        key={version}
        href={`${constructionHref(production.code, shown.code)}?version=${version}`}
        prefetch={false}
        aria-current={version === shown.version ? "page" : undefined}
      >
        Version {version}
        {version === shown.version ? ", shown" : ""}
      </Link>
    ))}
  </nav>
);
