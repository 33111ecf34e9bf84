package benchtrue.intake.dialects;

import benchtrue.intake.cells.HoursText;
import benchtrue.intake.cells.NumberText;
import benchtrue.intake.cells.ReadCell;
import benchtrue.intake.cells.Reading;
import benchtrue.intake.columns.Cell;
import benchtrue.intake.columns.Column;
import benchtrue.intake.columns.ExportFile;
import benchtrue.intake.columns.Kind;
import benchtrue.intake.columns.Made;
import benchtrue.intake.columns.Mapping;
import benchtrue.intake.columns.Need;
import benchtrue.intake.columns.PartColumn;
import benchtrue.intake.columns.Problem;
import benchtrue.intake.columns.Table;
import benchtrue.intake.columns.TimeColumn;
import benchtrue.shop.Absent;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Which cells of a file's rows a row of a table needs, and which hold numbers. */
final class RowCells {
    private static final long MINUTE = 60;
    private static final long CENT = 100;
    private static final int REMEMBERED = 20_000;

    private final List<String> header;
    private final Set<Integer> needed = new LinkedHashSet<>();
    private final Set<Integer> wide = new LinkedHashSet<>();
    private final List<Integer> numbers = new ArrayList<>();
    private final List<Column> kinds = new ArrayList<>();
    private final Set<Integer> wanted = new LinkedHashSet<>();
    private final Map<String, Boolean> phrases = new HashMap<>();
    private final boolean keyed;

    /**
     * Takes the column names of a file.
     *
     * @param file with its table and how it is mapped
     */
    RowCells(List<String> header, ExportFile file) {
        this.header = header.stream().map(Mapping::plain).toList();
        keyed = file.table() != Table.TIME_LOG;
        Mapping mapping = file.mapping();
        for (Column column : file.table().columns()) {
            String name = mapping.headers().containsKey(column)
                    ? mapping.headers().get(column).text()
                    : column.header();
            if (!mapping.constants().containsKey(column)) {
                Made.sources(name).forEach(source -> take(column, this.header.indexOf(Mapping.plain(source))));
            }
        }
        for (int cell : mapping.shape().wide(header)) {
            wide.add(cell);
            number(TimeColumn.HOURS, cell);
        }
        mapping.shape()
                .anchor()
                .ifPresent(anchor ->
                        Made.sources(anchor).forEach(source -> need(this.header.indexOf(Mapping.plain(source)))));
    }

    private void take(Column column, int cell) {
        if (cell < 0) {
            return;
        }
        wanted.add(cell);
        boolean isNumber = DialectEvidence.isNumber(column) || column.cell().kind() == Kind.CLOCK;
        if (isNumber) {
            number(column, cell);
        } else if (column.cell().need() != Need.OPTIONAL) {
            need(cell);
        }
    }

    private void number(Column column, int cell) {
        numbers.add(cell);
        kinds.add(column);
        wanted.add(cell);
    }

    private void need(int cell) {
        if (cell >= 0) {
            needed.add(cell);
            wanted.add(cell);
        }
    }

    /** Returns whether a row without numbers may still be one. */
    boolean isKeyed() {
        return keyed;
    }

    int numbers() {
        return numbers.size();
    }

    /** Returns how many cells of a row are read. */
    int wanted() {
        return wanted.size() - Math.max(0, wide.size() - 2);
    }

    /** Returns how many needed cells of a row are empty. */
    int empty(List<String> row) {
        return (int) needed.stream().filter(cell -> text(row, cell).isEmpty()).count();
    }

    boolean lacksAll(List<String> row) {
        return !needed.isEmpty() && empty(row) >= Math.max(1, needed.size() - labels(row));
    }

    /** Returns whether a row lacks what a row must have, a number too. */
    boolean lacks(List<String> row) {
        boolean number = false;
        for (int i = 0; i < numbers.size(); i++) {
            number |= kinds.get(i).cell().need() != Need.OPTIONAL && isBlank(row, i);
        }
        return number || empty(row) > 0;
    }

    /** Returns whether a cell says that the row is a total. */
    boolean says(List<String> row) {
        return row.stream().anyMatch(this::isPhrase);
    }

    private boolean isPhrase(String text) {
        if (text.isEmpty() || text.charAt(0) <= '9' && text.chars().noneMatch(Character::isLetter)) {
            return false;
        }
        if (phrases.size() > REMEMBERED) {
            phrases.clear();
        }
        return phrases.computeIfAbsent(text, TotalWords::isPhrase);
    }

    int filled(List<String> row) {
        return (int) row.stream().filter(text -> !text.isEmpty()).count();
    }

    /** Returns how many cells hold something but numbers. */
    int labels(List<String> row) {
        int labels = 0;
        for (int cell = 0; cell < row.size(); cell++) {
            boolean isNumber = numbers.contains(cell) || row.get(cell).matches("[-+\\d.,: ]*");
            labels += row.get(cell).isEmpty() || isNumber ? 0 : 1;
        }
        return labels;
    }

    String label(List<String> row) {
        return String.join(" ", row.stream().filter(text -> !text.isEmpty()).toList());
    }

    boolean isBlank(List<String> row, int number) {
        return text(row, numbers.get(number)).isEmpty();
    }

    /** Returns a number, read by what it tells itself, or {@link Absent#AMOUNT}. */
    long number(List<String> row, int number) {
        String text = text(row, numbers.get(number));
        if (text.isEmpty()) {
            return Absent.AMOUNT;
        }
        Cell cell = DialectEvidence.isHours(kinds.get(number)) ? TimeColumn.HOURS.cell() : PartColumn.QUANTITY.cell();
        String canonical = cell == TimeColumn.HOURS.cell()
                ? HoursText.canonical(text, DialectEvidence::asItTells)
                : NumberText.canonical(text, DialectEvidence::asItTells);
        Reading read = ReadCell.read(cell, canonical);
        return read.problem() == Problem.NONE ? read.value() : Absent.AMOUNT;
    }

    /** Returns how far a sum may be off by rounding. */
    long rounding(int number) {
        return DialectEvidence.isHours(kinds.get(number)) ? MINUTE : CENT;
    }

    /** Returns how the first needed cell is written; empty where such a cell is no row's key. */
    String key(List<String> row) {
        if (!keyed || needed.isEmpty()) {
            return "";
        }
        int first = needed.iterator().next();
        return text(row, first).replaceAll("\\d+", "9").replaceAll("\\p{L}+", "a");
    }

    boolean repeatsHeader(List<String> row) {
        int same = 0;
        for (int cell = 0; cell < Math.min(row.size(), header.size()); cell++) {
            String plain = Mapping.plain(row.get(cell));
            if (!plain.isEmpty() && !plain.equals(header.get(cell))) {
                return false;
            }
            same += plain.isEmpty() ? 0 : 1;
        }
        return same > 1
                && wanted.stream().filter(cell -> !text(row, cell).isEmpty()).count() > 1;
    }

    private static String text(List<String> row, int cell) {
        return cell < row.size() ? row.get(cell) : "";
    }
}
