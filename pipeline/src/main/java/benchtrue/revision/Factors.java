package benchtrue.revision;

/** Hours per hour of the book of an earlier day that a method would have quoted. */
@FunctionalInterface
interface Factors {
    /**
     * Returns the factor of a quote.
     *
     * @param type code of the repair type
     * @param quotedHours as quoted, against the book of that day
     */
    double of(int type, double quotedHours);
}
