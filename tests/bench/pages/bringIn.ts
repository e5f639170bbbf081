import { readdir } from "node:fs/promises";
import { join } from "node:path";
import type { Page } from "@playwright/test";

/** Brings a folder in as a person does, levels it, and gives the address of its overview. */
export async function bringIn(page: Page, address: string, folder: string): Promise<string> {
  const files = (await readdir(folder)).filter((name) => name.endsWith(".csv")).map((name) => join(folder, name));
  await page.goto(`${address}/import`);
  await page.getByLabel("Files of one production").setInputFiles(files);
  await page.getByRole("button", { name: "Look at them" }).click();
  await page.getByRole("button", { name: /^Keep/ }).click();
  await page.waitForURL(/\/productions\/[^/]+$/, { timeout: 120_000 });
  const home = new URL(page.url()).pathname;
  await page.goto(`${address}${home}/workroom`);
  await page.getByRole("button", { name: /^Level/ }).click();
  await page.getByText(/^Levelled/).waitFor({ timeout: 180_000 });
  return home;
}
