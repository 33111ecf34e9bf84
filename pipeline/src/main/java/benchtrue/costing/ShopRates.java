package benchtrue.costing;

/**
 * Prices of an hour, in ten-thousandths, absent where they can't be known.
 *
 * @param charged labour revenue of finished jobs for an hour quoted
 * @param earned labour revenue of finished jobs for an hour taken
 * @param breakEven labour revenue for an hour quoted that covers all costs
 * @param forTarget labour revenue for an hour quoted that leaves the target margin of the settings
 * @param nextHour what one more bench hour sold earns in time that is paid anyway: revenue less parts and the overhead
 *     that follows bench hours
 * @param nextHourExtra what it earns where the hour is paid extra, at the overtime premium of the settings
 */
public record ShopRates(
        long posted, long charged, long earned, long breakEven, long forTarget, long nextHour, long nextHourExtra) {}
