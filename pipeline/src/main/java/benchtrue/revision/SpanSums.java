package benchtrue.revision;

import java.util.ArrayList;
import java.util.List;

/** Quotes and jobs of one span of time, added up. Mutable. */
final class SpanSums {
    private final List<Double> taken = new ArrayList<>();
    private final List<Double> booked = new ArrayList<>();
    private int quotes;
    private int accepted;
    private long labour;

    void quoted(boolean wasAccepted) {
        quotes++;
        accepted += wasAccepted ? 1 : 0;
    }

    void charged(long amount) {
        labour = Math.addExact(labour, amount);
    }

    void took(double hours, double bookHours) {
        taken.add(hours);
        booked.add(bookHours);
    }

    void addAll(SpanSums other) {
        taken.addAll(other.taken);
        booked.addAll(other.booked);
        quotes += other.quotes;
        accepted += other.accepted;
        labour = Math.addExact(labour, other.labour);
    }

    long labour() {
        return labour;
    }

    BookedHours hours() {
        return BookedHours.of(array(taken), array(booked));
    }

    Acceptance acceptance() {
        return Acceptance.of(quotes, accepted);
    }

    private static double[] array(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
