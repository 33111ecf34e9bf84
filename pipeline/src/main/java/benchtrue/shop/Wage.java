package benchtrue.shop;

/**
 * One wage from a date on.
 *
 * @param technician code of the technician
 * @param hourlyWage money an hour
 * @param effectiveFrom first day it holds
 * @param weeklyBenchSeconds bench time a week, or {@link Absent#AMOUNT}
 * @param grade trainee, technician, senior, ...; empty where not recorded
 * @param payBasis how the technician is paid, or null where not recorded
 */
public record Wage(
        int technician, long hourlyWage, int effectiveFrom, long weeklyBenchSeconds, String grade, PayBasis payBasis) {}
