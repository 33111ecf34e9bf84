package benchtrue.statistics;

/** A smooth function of several numbers, to be minimised. */
@FunctionalInterface
interface Surface {
    /** Returns the function's point at {@code x}, which is not kept. */
    Point at(double[] x);

    /** A point of the surface. */
    interface Point {
        double value();

        /** Computed on demand. */
        double[] gradient();
    }
}
