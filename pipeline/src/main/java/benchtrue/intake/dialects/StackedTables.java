package benchtrue.intake.dialects;

import benchtrue.intake.files.Encoding;
import benchtrue.intake.files.TextLayout;
import benchtrue.intake.files.TextLine;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToIntFunction;

/** Tells where tables begin that stand one below the other. */
public final class StackedTables {
    private static final int FEWEST_NAMES = 3;

    private StackedTables() {}

    /**
     * Returns whether a row can only be the names of columns: most of its cells are, and none has a figure.
     *
     * @param familiar counts the names of a header that look like columns
     */
    public static boolean isHeader(List<String> row, ToIntFunction<List<String>> familiar) {
        List<String> told = row.stream().filter(text -> !text.isBlank()).toList();
        int names = told.size() < FEWEST_NAMES ? 0 : familiar.applyAsInt(told);
        return names >= FEWEST_NAMES
                && 2 * names > told.size()
                && told.stream().noneMatch(text -> text.chars().anyMatch(Character::isDigit))
                && told.stream().distinct().count() == told.size();
    }

    /** Returns the layout of the first table, where the names of columns stand above those that are known best. */
    public static TextLayout first(TextLayout layout, List<String> lines, ToIntFunction<List<String>> familiar) {
        for (int line = 1; line < layout.headerLine(); line++) {
            if (isHeader(TextLine.cells(lines.get(line - 1), layout.delimiter(), layout.quote()), familiar)) {
                return new TextLayout(layout.delimiter(), layout.quote(), line, layout.reasons());
            }
        }
        return layout;
    }

    /** Returns the layout of the table whose names stand anywhere in a file; the one known where they do not. */
    static TextLayout below(Path file, Encoding encoding, TextLayout layout, Predicate<List<String>> names)
            throws IOException {
        try (InputStream bytes = Files.newInputStream(file);
                BufferedReader lines = new BufferedReader(new InputStreamReader(bytes, encoding.charset()))) {
            int line = 0;
            for (String text = lines.readLine(); text != null; text = lines.readLine()) {
                line++;
                if (names.test(TextLine.cells(text, layout.delimiter(), layout.quote()))) {
                    return new TextLayout(layout.delimiter(), layout.quote(), line, layout.reasons());
                }
            }
        }
        return layout;
    }
}
