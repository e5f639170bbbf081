/** Mean of low, likely and high by the usual beta rule: (low + 4 likely + high) / 6. (D. G. Malcolm and others, PERT, 1959.) */
export const threePointMean = ([low, likely, high]: readonly [number, number, number]): number => (low + 4 * likely + high) / 6;

/** Variance by the same rule: ((high - low) / 6) squared. */
export const threePointVariance = ([low, , high]: readonly [number, number, number]): number => ((high - low) / 6) ** 2;
