package benchtrue.costing;

import java.util.List;

/**
 * What a bench hour costs and earns, over up to twelve whole months.
 *
 * @param from first month
 * @param to last month
 * @param seconds hours sold or put into the shop's own stock in those months
 * @param cost what such an hour costs
 * @param rates what an hour is priced at, and should be
 * @param result revenue of the jobs finished in those months less all costs, in ten-thousandths; absent without wages or
 *     overheads
 * @param breakEvenHours hours on finished jobs that cover all costs; infinite where an hour contributes nothing, NaN where
 *     unknown
 * @param marginOfSafety share by which those hours may fall before they only break even, NaN where unknown
 * @param variableOverhead overhead that followed the hours of the jobs finished in those months, ten-thousandths
 * @param sensitivity the result under other prices and other hours sold; empty where unknown
 */
public record BenchHour(
        int from,
        int to,
        long seconds,
        HourCost cost,
        ShopRates rates,
        long result,
        double breakEvenHours,
        double marginOfSafety,
        long variableOverhead,
        List<WhatIf> sensitivity) {
    public BenchHour {
        sensitivity = List.copyOf(sensitivity);
    }
}
