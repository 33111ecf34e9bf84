package benchtrue.costing;

import java.util.List;
import java.util.Optional;

/**
 * The figures of one month as they stood when it was closed, with the tickets and accounts behind them.
 *
 * @param month {@code year * 12 + month - 1}
 * @param asOf the as-of date they were reckoned on
 * @param figures the figures, in a fixed order
 */
public record SealedMonth(int month, int asOf, List<Figure> figures) {
    public SealedMonth {
        figures = List.copyOf(figures);
    }

    /**
     * One figure.
     *
     * @param part what it belongs to
     * @param key ticket or account; empty for the month as a whole
     * @param name what it is, such as {@code labour_cost}
     * @param value decimal text, empty where not known
     */
    public record Figure(Part part, String key, String name, String value) {}

    /** What a figure belongs to. */
    public enum Part {
        /** Rates and settings that the month was reckoned with. */
        RATE,
        /** Jobs finished in the month. */
        EARNED,
        /** Time worked in the month. */
        WORKED,
        /** Overheads of the month. */
        OVERHEAD
    }

    /** Returns a figure's text, if it is there. */
    Optional<String> value(Part part, String key, String name) {
        return figures.stream()
                .filter(figure -> figure.part() == part
                        && figure.key().equals(key)
                        && figure.name().equals(name))
                .map(Figure::value)
                .findFirst();
    }
}
