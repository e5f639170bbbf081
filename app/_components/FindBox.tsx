"use client";

import { useEffect, useRef } from "react";
import styles from "./FindBox.module.css";

/** Finds anything in the production by its name or number; the key / goes there from anywhere. It works before scripts load. */
export const FindBox = ({ address, value = "" }: { readonly address: string; readonly value?: string }) => {
  const field = useRef<HTMLInputElement>(null);
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const inField =
        event.target instanceof Element && event.target.closest("input, textarea, select, [contenteditable], [role=grid]") !== null;
      if (event.key !== "/" || inField || event.ctrlKey || event.metaKey || event.altKey) return;
      event.preventDefault();
      field.current?.focus();
      field.current?.select();
    };
    document.addEventListener("keydown", onKey);
    return () => document.removeEventListener("keydown", onKey);
  }, []);
  return (
    <search className={`${styles.find} no-print`}>
      <form action={address}>
        <input
          ref={field}
          type="search"
          name="q"
          defaultValue={value}
          key={value}
          aria-label="Find a performer, garment, role, material or maker"
          aria-keyshortcuts="/"
          placeholder="Find  /"
          autoComplete="off"
        />
        <button type="submit" className="unseen">
          Find
        </button>
      </form>
    </search>
  );
};
