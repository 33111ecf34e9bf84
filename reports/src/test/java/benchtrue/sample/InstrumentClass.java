package benchtrue.sample;

/**
 * A class of instrument of the invented shop.
 *
 * @param name the word in the exports
 * @param acoustic whether it has a soundboard
 * @param electric whether it has wiring
 * @param share its share of the visits, unnormalised
 * @param effect what it multiplies bench hours by, before the seed's jitter
 */
record InstrumentClass(String name, boolean acoustic, boolean electric, double share, double effect) {
    static final InstrumentClass[] ALL = {
        new InstrumentClass("flat-top", true, false, 30, 1.00),
        new InstrumentClass("nylon-string", true, false, 9, 0.96),
        new InstrumentClass("archtop", true, true, 6, 1.16),
        new InstrumentClass("mandolin", true, false, 8, 1.10),
        new InstrumentClass("ukulele", true, false, 7, 0.92),
        new InstrumentClass("banjo", false, false, 4, 1.05),
        new InstrumentClass("solid-body", false, true, 24, 0.97),
        new InstrumentClass("electric-bass", false, true, 12, 1.03)
    };

    static final double[] SHARES = shares();

    private static double[] shares() {
        double[] shares = new double[ALL.length];
        for (int i = 0; i < shares.length; i++) {
            shares[i] = ALL[i].share();
        }
        return Dice.cumulative(shares);
    }
}
