import { startApp } from "./startApp";

/** One app for all browser tests. Its address and users reach the tests through the environment, which the workers inherit. */
export default async function globalSetup(): Promise<() => Promise<void>> {
  const app = await startApp();
  process.env.TARLATAN_TEST_ADDRESS = app.address;
  process.env.TARLATAN_TEST_PEOPLE = JSON.stringify(app.people);
  return app.stop;
}
