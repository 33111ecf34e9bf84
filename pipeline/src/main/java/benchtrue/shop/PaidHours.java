package benchtrue.shop;

/**
 * Hours paid in a month.
 *
 * @param technician code of the technician
 * @param month {@code year * 12 + month - 1}
 * @param seconds time paid
 */
public record PaidHours(int technician, int month, long seconds) {}
