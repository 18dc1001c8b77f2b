/**
 * Green weight (lb/ft³) of species for which the Wood Handbook lists no green moisture, as remembered from older lists of
 * the Forest Products Laboratory (weights of woods grown in the United States, Agriculture Handbook 72).
 */
export const GREEN_WEIGHT: Readonly<
  Record<string, readonly [weight: number, status: "memory" | "uncertain"]>
> = {
  "eastern-white-pine": [36, "memory"],
  "douglas-fir-interior-north": [36, "memory"],
  "slash-pine": [58, "uncertain"],
  "norway-spruce": [34, "uncertain"],
  "northern-white-cedar": [28, "memory"],
  "redwood-young": [50, "uncertain"],
  "black-locust": [58, "memory"],
  "red-maple": [50, "memory"],
  "hickory-shagbark": [64, "memory"],
  aspen: [43, "memory"],
};
