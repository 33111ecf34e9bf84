package benchtrue.intake.dialects;

import benchtrue.intake.files.TextLayout;
import benchtrue.intake.files.TextLine;
import benchtrue.settings.FileRule;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToIntFunction;

/** Tells delimiter, quote and header line: by the names of the columns, else by the rows' shape. */
public final class LayoutDetector {
    private static final char[] DELIMITERS = {',', ';', '\t', '|'};
    private static final int MOST_PREAMBLE = 60;
    private final List<String> lines;
    private final Optional<FileRule> rule;

    private LayoutDetector(List<String> lines, Optional<FileRule> rule) {
        this.lines = lines;
        this.rule = rule;
    }

    /**
     * Tells the layout from a file's first lines.
     *
     * @param lines without their ends
     * @param known counts the known columns among a header's names
     */
    public static TextLayout of(List<String> lines, Optional<FileRule> rule, ToIntFunction<List<String>> known) {
        LayoutDetector tell = new LayoutDetector(lines, rule);
        TextLayout named = tell.byNames(known);
        return named != null ? named : tell.byShape();
    }

    private TextLayout byNames(ToIntFunction<List<String>> known) {
        TextLayout best = null;
        int most = 1;
        for (int line = firstLine(); line <= lastLine(); line++) {
            for (char delimiter : delimiters()) {
                for (char quote : quotes(lines.get(line - 1))) {
                    List<String> cells = TextLine.cells(lines.get(line - 1), delimiter, quote);
                    int names = known.applyAsInt(cells);
                    if (names > most) {
                        most = names;
                        best = layout(
                                delimiter,
                                quote,
                                line,
                                names + " known columns of line " + line + " stand apart with it");
                    }
                }
            }
        }
        return best;
    }

    private TextLayout byShape() {
        char delimiter = ',';
        int most = 0;
        for (char candidate : delimiters()) {
            int rows = linesOf(usual(candidate), candidate);
            if (usual(candidate) > 1 && rows > most) {
                most = rows;
                delimiter = candidate;
            }
        }
        char quote = rule.flatMap(FileRule::quote).orElse('"');
        if (most == 0) {
            int line = Math.min(firstLine(), Math.max(1, lines.size()));
            return layout(rule.flatMap(FileRule::delimiter).orElse(','), quote, line, "nothing speaks for another");
        }
        int line = firstLine();
        while (line < lastLine() && size(line, delimiter) != usual(delimiter)) {
            line++;
        }
        return layout(delimiter, quote, line, most + " of the first lines have as many cells with it");
    }

    private TextLayout layout(char delimiter, char quote, int line, String why) {
        List<String> reasons = new ArrayList<>();
        reasons.add("delimiter " + TextLayout.name(delimiter) + " ("
                + (rule.flatMap(FileRule::delimiter).isPresent() ? "shop.toml says so" : why) + ")");
        if (quote != '"') {
            reasons.add("quote " + (quote == FileRule.NO_QUOTE ? "none" : String.valueOf(quote)) + " ("
                    + (rule.flatMap(FileRule::quote).isPresent() ? "shop.toml says so" : "it stands around the names")
                    + ")");
        }
        if (line > 1) {
            reasons.add("column names on line " + line + " ("
                    + (rule.isPresent() && rule.get().headerLine().isPresent()
                            ? "shop.toml says so"
                            : "the lines before hold none")
                    + ")");
        }
        return new TextLayout(delimiter, quote, line, reasons);
    }

    private int firstLine() {
        return rule.isPresent() ? rule.get().headerLine().orElse(1) : 1;
    }

    private int lastLine() {
        boolean told = rule.isPresent() && rule.get().headerLine().isPresent();
        return Math.min(lines.size(), told ? firstLine() : MOST_PREAMBLE);
    }

    private char[] delimiters() {
        return rule.flatMap(FileRule::delimiter)
                .map(delimiter -> new char[] {delimiter})
                .orElse(DELIMITERS);
    }

    private char[] quotes(String line) {
        return rule.flatMap(FileRule::quote)
                .map(quote -> new char[] {quote})
                .orElse(line.strip().startsWith("'") ? new char[] {'"', '\''} : new char[] {'"'});
    }

    private int size(int line, char delimiter) {
        return TextLine.cells(lines.get(line - 1), delimiter, '"').size();
    }

    /** Returns the number of cells that most lines have, of those with more than one. */
    private int usual(char delimiter) {
        Map<Integer, Integer> counts = new HashMap<>();
        for (int line = firstLine(); line <= lines.size(); line++) {
            counts.merge(size(line, delimiter), 1, Integer::sum);
        }
        int usual = 1;
        for (Map.Entry<Integer, Integer> count : counts.entrySet()) {
            boolean more = usual == 1
                    || count.getValue() > counts.get(usual)
                    || count.getValue().equals(counts.get(usual)) && count.getKey() > usual;
            usual = count.getKey() > 1 && more ? count.getKey() : usual;
        }
        return usual;
    }

    private int linesOf(int size, char delimiter) {
        int count = 0;
        for (int line = firstLine(); line <= lines.size(); line++) {
            count += size(line, delimiter) == size ? 1 : 0;
        }
        return count;
    }
}
