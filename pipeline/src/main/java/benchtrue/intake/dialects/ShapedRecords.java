package benchtrue.intake.dialects;

import benchtrue.intake.columns.Made;
import benchtrue.intake.columns.Mapping;
import benchtrue.intake.columns.Shape;
import benchtrue.intake.files.Cells;
import benchtrue.intake.files.EncodedRecords;
import benchtrue.intake.files.Records;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Rows of a file as its rule says they lie: cells that hold for the rows below filled in, columns that are made from others
 * at the end, and a row for each filled cell of a wide column.
 */
final class ShapedRecords extends EncodedRecords {
    private final Records raw;
    private final Shape shape;
    private final RowForms forms;
    private final RowsPlace place;
    private List<String> header;
    private List<String> plain = List.of();
    private String[] above = {};
    private int[] wide = {};
    private List<String> row = List.of();
    private int next;
    private String heading;

    /**
     * Takes a file at its header.
     *
     * @param place what stands around the rows
     */
    ShapedRecords(Records raw, Shape shape, RowForms forms, RowsPlace place) {
        this.raw = raw;
        this.shape = shape;
        this.forms = forms;
        this.place = place;
        heading = place.title(); // The first block's heading stands above the column names.
    }

    @Override
    public boolean next() throws IOException {
        if (header == null) {
            return begin();
        }
        while (true) {
            while (next < wide.length) {
                int cell = wide[next++];
                if (holdsHours(text(cell))) {
                    emit(cell);
                    return true;
                }
            }
            if (!raw.next() || forms.isBehind(raw.line())) {
                return false;
            }
            String named = forms.heading(raw.line());
            heading = named == null ? heading : named;
            if (!forms.leftOut().containsKey(raw.line())) {
                take();
                if (row.size() != header.size()) {
                    ragged();
                    return true;
                }
                if (shape.unpivot().isEmpty()) {
                    emit(-1);
                    return true;
                }
                next = 0;
            }
        }
    }

    /** In a wide table a zero and a dash say that there was nothing. */
    private static boolean holdsHours(String text) {
        return !text.isBlank() && !text.matches("[-\u2013\u2014/ ]+|0+(?:[.,:h]0*)?(?: ?h)?");
    }

    private boolean begin() throws IOException {
        if (!raw.next()) {
            return false;
        }
        header = Cells.of(raw);
        plain = header.stream().map(Mapping::plain).toList();
        above = new String[header.size()];
        Arrays.fill(above, "");
        wide = shape.wide(header);
        next = wide.length;
        clear();
        for (int cell = 0; cell < header.size(); cell++) {
            if (!isWide(cell)) {
                add(header.get(cell));
            }
        }
        shape.made().forEach(this::add);
        if (shape.unpivot().isPresent()) {
            add(Made.COLUMN);
            add(Made.CELL);
        }
        return true;
    }

    private boolean isWide(int cell) {
        return Arrays.binarySearch(wide, cell) >= 0;
    }

    private void take() {
        row = new ArrayList<>(Cells.of(raw));
        while (row.size() > header.size() && row.get(row.size() - 1).isEmpty()) {
            row.remove(row.size() - 1);
        }
        next = wide.length;
        for (int cell = 0; cell < Math.min(row.size(), above.length); cell++) {
            if (shape.fillDown().contains(plain.get(cell))) {
                if (row.get(cell).isBlank()) {
                    row.set(cell, above[cell]);
                } else {
                    above[cell] = row.get(cell);
                }
            }
        }
    }

    private void ragged() {
        clear();
        row.forEach(this::add);
        int shaped = header.size()
                - wide.length
                + shape.made().size()
                + (shape.unpivot().isPresent() ? 2 : 0);
        if (row.size() == shaped) {
            add("");
        }
    }

    private void emit(int cell) {
        clear();
        for (int at = 0; at < header.size(); at++) {
            if (!isWide(at)) {
                add(row.get(at));
            }
        }
        shape.made().forEach(name -> add(Made.text(name, this::named)));
        if (cell >= 0) {
            String anchor =
                    shape.anchor().map(name -> Made.text(name, this::named)).orElse("");
            add(place.days().text(header.get(cell), anchor));
            add(row.get(cell));
        }
    }

    private String named(String name) {
        return switch (name) {
            case Made.HEADING -> heading;
            case Made.SHEET -> place.sheet();
            case Made.FILE -> place.file();
            case Made.TITLE -> place.title();
            default -> text(plain.indexOf(Mapping.plain(name)));
        };
    }

    private String text(int cell) {
        return cell >= 0 && cell < row.size() ? row.get(cell).strip() : "";
    }

    @Override
    public int line() {
        return raw.line();
    }

    @Override
    public String column() {
        return wide.length > 0
                        && next > 0
                        && next <= wide.length
                        && shape.unpivot().isPresent()
                ? header.get(wide[next - 1])
                : "";
    }

    @Override
    public void close() throws IOException {
        raw.close();
    }
}
