package benchtrue.breakdown;

import java.util.List;
import java.util.Optional;

/**
 * The answer to a question.
 *
 * @param title what the question is called; made from its groups where nobody named it
 * @param down what the names of each row are
 * @param columns what the figures of each row are
 * @param rows one a group, in the question's order
 * @param rest what rows beyond those shown come to, together
 * @param total over all jobs of the question, not a sum of rounded figures
 * @param notes which jobs these are, what was left out, what to mind; in the order of reading
 */
public record Breakdown(
        String title,
        List<String> down,
        List<Column> columns,
        List<Row> rows,
        Optional<Row> rest,
        Row total,
        List<String> notes) {
    public Breakdown {
        down = List.copyOf(down);
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
        notes = List.copyOf(notes);
    }

    /**
     * One column of figures.
     *
     * @param across which of what stands across; empty for all of it
     * @param measure the figure
     */
    public record Column(String across, Measure measure) {
        /** Returns what stands above it. */
        public String heading() {
            return across.isEmpty() ? measure.heading() : measure.heading() + ", " + across;
        }
    }

    /**
     * One row.
     *
     * @param names one for each of {@link Breakdown#down}
     * @param figures one for each of {@link Breakdown#columns}
     */
    public record Row(List<String> names, List<Figure> figures) {
        public Row {
            names = List.copyOf(names);
            figures = List.copyOf(figures);
        }

        /** Returns the names as one label. */
        public String label() {
            return String.join(", ", names);
        }
    }
}
