package benchtrue.shop;

/**
 * One cost of keeping the doors open.
 *
 * @param month {@code year * 12 + month - 1}
 * @param amount money
 * @param behaviour fixed or variable
 */
public record Overhead(int month, String account, long amount, CostBehaviour behaviour) {}
