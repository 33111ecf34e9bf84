package benchtrue.command;

import benchtrue.breakdown.Breakdown;
import benchtrue.format.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** A breakdown as lines of a screen: names left, figures right, the total below a rule. */
final class PrintBreakdown {
    private static final String GAP = "  ";
    private static final int WIDTH = 100;

    private final Figures figures;

    PrintBreakdown(Figures figures) {
        this.figures = figures;
    }

    List<String> lines(Breakdown answer) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(Stream.concat(answer.down().stream(), answer.columns().stream().map(Breakdown.Column::heading))
                .toList());
        answer.rows().forEach(row -> rows.add(cells(row)));
        answer.rest().ifPresent(row -> rows.add(cells(row)));
        rows.add(cells(answer.total()));
        int[] widths = new int[rows.get(0).size()];
        rows.forEach(row -> {
            for (int i = 0; i < widths.length; i++) {
                widths[i] = Math.max(widths[i], length(row.get(i)));
            }
        });
        List<String> lines = new ArrayList<>(List.of(answer.title()));
        answer.notes().forEach(note -> wrapped(note, lines));
        if (answer.rows().isEmpty()) {
            return lines;
        }
        for (int i = 0; i < rows.size(); i++) {
            if (i == 1 || i == rows.size() - 1) {
                lines.add(rule(widths));
            }
            lines.add(line(rows.get(i), widths, answer.down().size()));
        }
        return lines;
    }

    private List<String> cells(Breakdown.Row row) {
        return Stream.concat(row.names().stream(), row.figures().stream().map(figure -> figure.text(figures)))
                .toList();
    }

    private static String line(List<String> row, int[] widths, int names) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < widths.length; i++) {
            String fill = " ".repeat(widths[i] - length(row.get(i)));
            line.append(i == 0 ? "" : GAP).append(i < names ? row.get(i) + fill : fill + row.get(i));
        }
        return line.toString().stripTrailing();
    }

    private static String rule(int[] widths) {
        int width = GAP.length() * (widths.length - 1);
        for (int column : widths) {
            width += column;
        }
        return "-".repeat(width);
    }

    private static int length(String text) {
        return text.codePointCount(0, text.length());
    }

    private static void wrapped(String note, List<String> lines) {
        StringBuilder line = new StringBuilder();
        for (String word : note.split(" ")) {
            if (line.length() + word.length() >= WIDTH) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        lines.add(line.toString());
    }
}
