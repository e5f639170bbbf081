import type { Leaf } from "#lib/constructions/leaves";
import type { DraftColumn } from "./columns";
import styles from "./Draft.module.css";

/** One value in hand; what could not be read stays as it was typed. */
export const DraftCell = ({
  path,
  leaf,
  unread,
  label,
  room,
}: {
  readonly path: string;
  readonly leaf: Leaf;
  readonly unread: Readonly<Record<string, string>>;
  readonly label: string;
  readonly room: DraftColumn["room"];
}) =>
  typeof leaf === "boolean" ? (
    <select name={`v.${path}`} defaultValue={leaf ? "yes" : "no"} aria-label={label} className={styles.figure}>
      <option>yes</option>
      <option>no</option>
    </select>
  ) : (
    <input
      name={`v.${path}`}
      defaultValue={unread[path] ?? String(leaf ?? "")}
      aria-label={label}
      aria-invalid={unread[path] !== undefined}
      className={styles[room]}
      inputMode={typeof leaf === "number" ? "decimal" : undefined}
      autoComplete="off"
      spellCheck={false}
    />
  );
