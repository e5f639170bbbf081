import type { Operation } from "#lib/constructions/construction";
import { learningFactor } from "#lib/labour/learning";
import { showHours } from "#lib/units/hours";
import { LENGTH_PER_MM } from "#lib/units/quantities";
import type { MakingRequest } from "./request";
import { sayMetres, sayNumber, sayOrdinal, saySeconds } from "./say";
import type { DriverValue, ThreePoint, WorkOperation } from "./work";

type Time = Pick<WorkOperation, "minutes" | "setup" | "learningFactor" | "arithmetic">;

const METRE = 1000 * LENGTH_PER_MM;
/** Binary fractions leave dust that must not cost a minute. */
const DUST = 1e-6;

/** Time of one operation: set-up + sum (rate x driver), times the learning factor of the ordinal, rounded up once to minutes. */
export const operationTime = (operation: Operation, drivers: readonly DriverValue[], request: MakingRequest): Time => {
  const factor = learningFactor(request.ordinal, operation.learning);
  const rated = operation.rates.flatMap((rate) => {
    const driver = drivers.find(({ code }) => code === rate.driver);
    if (!driver || driver.value === 0) return [];
    const amount = driver.unit === "length" ? driver.value / METRE : driver.value;
    return [{ driver, amount, seconds: rate.seconds }];
  });
  const at = (point: 0 | 1 | 2, withRates: boolean) => {
    const seconds =
      operation.setupMinutes[point] * 60 + (withRates ? rated.reduce((sum, { amount, seconds }) => sum + amount * seconds[point], 0) : 0);
    return Math.ceil((seconds * factor) / 60_000 - DUST);
  };
  const minutes: ThreePoint = [at(0, true), at(1, true), at(2, true)];
  const figure = ({ driver, amount, seconds }: (typeof rated)[number]) => {
    const label = driver.label[request.reader.words];
    return driver.unit === "length"
      ? `${sayMetres(driver.value, request.reader)} of ${label} x ${saySeconds(seconds[1])} a metre`
      : `${sayNumber(amount)} ${label} x ${saySeconds(seconds[1])}`;
  };
  const setup = operation.setupMinutes[1] > 0 ? [`${sayNumber(operation.setupMinutes[1])} min`] : [];
  const learnt = factor === 1000 ? "" : `, x ${(factor / 1000).toFixed(2)} as ${sayOrdinal(request.ordinal)} of its set`;
  return {
    minutes,
    setup: [at(0, false), at(1, false), at(2, false)],
    learningFactor: factor,
    arithmetic: `${[...setup, ...rated.map(figure)].join(" + ") || "nothing to do"}${learnt} = ${showHours(minutes[1])}`,
  };
};
