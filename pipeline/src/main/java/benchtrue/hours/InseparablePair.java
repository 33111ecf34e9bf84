package benchtrue.hours;

/**
 * Two repair types that stand together so often that unlabelled hours can't tell them apart.
 *
 * @param first code of one repair type
 * @param second code of the other, greater than {@code first}
 * @param jointLoad load factor of both together
 * @param jointLines closed lines of both on tickets where they stand together
 */
public record InseparablePair(int first, int second, double jointLoad, int jointLines) {}
