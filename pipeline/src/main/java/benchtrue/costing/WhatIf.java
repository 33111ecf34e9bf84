package benchtrue.costing;

/**
 * The result of the months if prices and hours sold had been others.
 *
 * @param pricePercent change of all labour prices in per cent
 * @param hoursPercent change of the hours sold in per cent; wages and overhead that follow bench hours change with them
 * @param result revenue less all costs, in ten-thousandths
 */
public record WhatIf(int pricePercent, int hoursPercent, long result) {}
