package benchtrue.statistics;

/** 24 determinations of copper in flour, ppm (Analytical Methods Committee 1989; R MASS::chem). */
final class Copper {
    static final double[] SORTED =
            ReferenceData.numbersIn("2.20 2.20 2.40 2.40 2.50 2.70 2.80 2.90 3.03 3.03 3.10 3.37 3.40"
                    + " 3.40 3.40 3.50 3.60 3.70 3.70 3.70 3.70 3.77 5.28 28.95");

    private Copper() {}
}
