package benchtrue.tables;

import benchtrue.costing.SealedMonth;
import benchtrue.costing.SealedMonth.Figure;
import benchtrue.costing.SealedMonth.Part;
import benchtrue.format.FormulaGuard;
import benchtrue.format.Words;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Months;
import benchtrue.shop.Refusal;
import benchtrue.shop.Sha256;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * A sealed month as a file, {@code close/2026-09.csv}: {@code part,key,figure,value}, and as its last row the SHA-256 of
 * all bytes before that row.
 */
public final class SealFile {
    private record Row(String part, String key, String figure, String value) {}

    private static final ResultTable<Row> TABLE = ResultTable.<Row>of(
                    "close", "One row is one figure of a sealed month")
            .text("part", "what it belongs to", Row::part)
            .text("key", "ticket or account; empty for the month as a whole", Row::key)
            .text("figure", "its name", Row::figure)
            .number("value", "the figure", Row::value);
    private static final String SEAL_ROW = "seal,,sha256,";
    private static final String AS_OF = "as_of";
    private static final String MONTH = "month";
    private static final CSVFormat FORMAT = CSVFormat.RFC4180;

    private SealFile() {}

    /** Returns the name of a month's file. */
    public static String name(int month) {
        return Months.yearMonth(month) + ".csv";
    }

    /** Writes a month into a file that does not exist yet. */
    public static void write(SealedMonth month, Path file) throws IOException {
        List<Row> rows = new ArrayList<>();
        rows.add(new Row(MONTH, "", AS_OF, CellText.day(month.asOf())));
        month.figures()
                .forEach(figure ->
                        rows.add(new Row(Words.of(figure.part()), figure.key(), figure.name(), figure.value())));
        TABLE.writeTo(rows, file);
        String seal = Sha256.of(Files.readAllBytes(file));
        Files.writeString(file, SEAL_ROW + seal + "\r\n", StandardCharsets.UTF_8, StandardOpenOption.APPEND);
    }

    /**
     * Reads a month back.
     *
     * @throws Refusal where the name is no month's, the seal is missing or broken, or a row is not as it was written
     */
    public static SealedMonth read(Path file) {
        int month = month(file);
        try {
            String text = new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
            int last = text.lastIndexOf(SEAL_ROW);
            if (last < 0) {
                throw broken(file, rows(text), "no seal in its last row");
            }
            String expected = Sha256.of(text.substring(0, last).getBytes(StandardCharsets.UTF_8));
            String found = text.substring(last + SEAL_ROW.length()).strip();
            if (!found.equals(expected)) {
                throw broken(
                        file, rows(text), "the seal " + found + ", expected " + expected + " for what stands above");
            }
            return month(file, month, text.substring(0, last));
        } catch (IOException | UncheckedIOException e) {
            throw new Refusal(ExitCode.READ_FAILED, file + ": reading failed part-way: " + e + ".", e);
        }
    }

    private static SealedMonth month(Path file, int month, String text) throws IOException {
        int asOf = 0;
        List<Figure> figures = new ArrayList<>();
        for (CSVRecord row : FORMAT.parse(new StringReader(text))) {
            if (row.getRecordNumber() == 1) {
                continue;
            }
            if (row.size() != TABLE.size()) {
                throw broken(file, row.getRecordNumber(), row.size() + " cells, expected " + TABLE.size());
            }
            if (row.get(0).equals(MONTH)) {
                asOf = (int) LocalDate.parse(row.get(3)).toEpochDay();
            } else {
                figures.add(figure(file, row));
            }
        }
        return new SealedMonth(month, asOf, figures);
    }

    private static Figure figure(Path file, CSVRecord row) {
        Part part = Words.parse(Part.class, row.get(0))
                .orElseThrow(() -> broken(file, row.getRecordNumber(), "the part \"" + row.get(0) + "\""));
        return new Figure(part, FormulaGuard.read(row.get(1)), row.get(2), row.get(3));
    }

    private static int month(Path file) {
        String name = file.getFileName().toString();
        try {
            YearMonth month = YearMonth.parse(name.substring(0, name.length() - ".csv".length()));
            return month.getYear() * 12 + month.getMonthValue() - 1;
        } catch (DateTimeException e) {
            throw new Refusal(
                    ExitCode.UNUSABLE_FILE,
                    file + ": found a file of that name, expected one named by its month, such as 2026-09.csv. Only"
                            + " benchtrue close writes here; move it elsewhere.",
                    e);
        }
    }

    private static Refusal broken(Path file, long line, String found) {
        return new Refusal(
                ExitCode.UNUSABLE_FILE,
                file + ", line " + line + ": found " + found
                        + ". A sealed month is never edited: restore the file as it was, or remove it and close the month"
                        + " again.");
    }

    private static long rows(String text) {
        return text.lines().count();
    }
}
