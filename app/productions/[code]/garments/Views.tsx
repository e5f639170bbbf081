import type { KeptView } from "#prisma/views/views";
import { ActionForm } from "../../../_components/ActionForm";
import { dropGarmentView, keepGarmentView } from "./actions";
import styles from "./Views.module.css";

/** Lists kept under a name, and the way to keep the one that is shown. */
export const Views = ({
  base,
  code,
  views,
  query,
}: {
  readonly base: string;
  readonly code: string;
  readonly views: readonly KeptView[];
  /** What the list shows now, as the address has it. */
  readonly query: string;
}) => (
  <div className={`${styles.views} no-print`}>
    {views.length > 0 && (
      <nav aria-label="Kept views">
        <ul>
          {views.map((view) => (
            <li key={view.id}>
              {/* Loaded anew, so that the search shows what the view asks for. */}
              <a
                href={`${base}/garments${view.query && `?${view.query}`}`}
                aria-current={query === (view.query && `?${view.query}`) ? "page" : undefined}
              >
                {view.name}
              </a>
              {view.shared && <span className="units"> for everybody</span>}
            </li>
          ))}
        </ul>
      </nav>
    )}
    <details className={styles.keep}>
      <summary>Keep this view</summary>
      <div>
        <ActionForm action={keepGarmentView} press="Keep" busy="Keeping">
          <input type="hidden" name="production" value={code} />
          <input type="hidden" name="query" value={query.replace(/^\?/, "")} />
          <label className="field">
            Name
            <input name="name" required maxLength={60} autoComplete="off" />
          </label>
          <label className={styles.tick}>
            <input type="checkbox" name="shared" value="yes" /> for everybody in the company
          </label>
        </ActionForm>
        {views
          .filter((view) => view.own)
          .map((view) => (
            <ActionForm key={view.id} action={dropGarmentView} press={`Put away ${view.name}`} busy="Putting away" look="plain">
              <input type="hidden" name="production" value={code} />
              <input type="hidden" name="view" value={view.id} />
            </ActionForm>
          ))}
      </div>
    </details>
  </div>
);
