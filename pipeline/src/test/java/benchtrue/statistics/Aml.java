package benchtrue.statistics;

import java.util.Arrays;

/** Maintenance of acute myelogenous leukaemia (Miller 1981; R survival::aml); + is censored. */
record Aml(double[] times, boolean[] observed) {
    static final Aml MAINTAINED = of("9 13 13+ 18 23 28+ 31 34 45+ 48 161+");
    static final Aml NONMAINTAINED = of("5 5 8 8 12 16+ 23 27 30 33 43 45");
    static final Aml BOTH = of("9 13 13+ 18 23 28+ 31 34 45+ 48 161+ 5 5 8 8 12 16+ 23 27 30 33 43 45");

    private static Aml of(String text) {
        String[] words = text.split(" ");
        boolean[] observed = new boolean[words.length];
        for (int i = 0; i < words.length; i++) {
            observed[i] = !words[i].endsWith("+");
        }
        return new Aml(
                Arrays.stream(words)
                        .mapToDouble(w -> Double.parseDouble(w.replace("+", "")))
                        .toArray(),
                observed);
    }

    KaplanMeier curve() {
        return KaplanMeier.of(times, observed);
    }
}
