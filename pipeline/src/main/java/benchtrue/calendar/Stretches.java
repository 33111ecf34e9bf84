package benchtrue.calendar;

import benchtrue.shop.Ints;
import benchtrue.statistics.KaplanMeier;
import java.util.Arrays;

/** Lengths in days, those that still last counted as far as they have come. */
final class Stretches {
    private final Ints lengths = new Ints();
    private final Ints ended = new Ints();

    /** Takes one; a negative length is none. */
    void add(int days, boolean over) {
        if (days >= 0) {
            lengths.add(days);
            ended.add(over ? 1 : 0);
        }
    }

    /** Returns how many have ended. */
    long over() {
        return Arrays.stream(ended.toArray()).filter(end -> end == 1).count();
    }

    KaplanMeier curve() {
        int[] end = ended.toArray();
        boolean[] over = new boolean[end.length];
        for (int i = 0; i < over.length; i++) {
            over[i] = end[i] == 1;
        }
        return KaplanMeier.of(Arrays.stream(lengths.toArray()).asDoubleStream().toArray(), over);
    }
}
