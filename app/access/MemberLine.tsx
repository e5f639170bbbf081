import type { ListedMember } from "#prisma/people/members";
import { ActionForm } from "../_components/ActionForm";
import { State } from "../_components/State";
import styles from "./Access.module.css";
import { changePart, endOrGiveAccess, giveNewPassword } from "./actions";
import { RoleField } from "./RoleField";

type Shown = Omit<ListedMember, "since" | "ended"> & { readonly since: string; readonly ended: string | null };

/** One person: their part, and the presses that change it. */
export const MemberLine = ({ who, self }: { readonly who: Shown; readonly self: boolean }) => {
  const read = (
    <>
      <input type="hidden" name="user" value={who.user} />
      <input type="hidden" name="version" value={who.version} />
    </>
  );
  return (
    <li className={styles.line}>
      <div>
        <p>
          <b>{who.name}</b> {self && <span className="units">you</span>}
        </p>
        <p className="small q">{who.email}</p>
        <p className="cap">since {who.since}</p>
        {who.ended && <State code="cut">access ended {who.ended}</State>}
      </div>
      <div className={styles.part}>
        <ActionForm action={changePart} press="Keep the part" busy="Keeping">
          {read}
          <RoleField value={who.role} label={`Part of ${who.name}`} />
        </ActionForm>
      </div>
      <div className={styles.end}>
        <ActionForm action={endOrGiveAccess} press={who.ended ? "Let in again" : "End access"} busy="One moment">
          {read}
          <input type="hidden" name="ended" value={who.ended ? "no" : "yes"} />
        </ActionForm>
      </div>
      <details className={styles.end}>
        <summary className="small q">A new password</summary>
        <ActionForm action={giveNewPassword} press="Give it" busy="Giving">
          {read}
          <label className="field">
            New password of {who.name}, ten characters or more
            <input name="password" type="text" autoComplete="off" minLength={10} required />
          </label>
        </ActionForm>
      </details>
    </li>
  );
};
