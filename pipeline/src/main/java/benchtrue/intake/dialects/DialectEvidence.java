package benchtrue.intake.dialects;

import benchtrue.intake.cells.DateText;
import benchtrue.intake.cells.HoursText;
import benchtrue.intake.cells.NumberText;
import benchtrue.intake.columns.Column;
import benchtrue.intake.columns.Dictionary;
import benchtrue.intake.columns.Kind;
import benchtrue.intake.files.Records;
import benchtrue.settings.DateOrder;
import benchtrue.settings.DecimalSign;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What all rows of a file together tell of how it is written. Mutable. */
public final class DialectEvidence {
    private static final int REMEMBERED = 20_000;

    /** One in so many may be mistyped without the others telling less. */
    private static final int MISTYPED = 20;

    /** So few cells, or a smaller share than one in {@link #MISTYPED}, do not decide for others. */
    private static final int FEWEST = 3;

    private final Header header;
    private final List<Column> dates = new ArrayList<>();
    private final List<Column> numbers = new ArrayList<>();
    private final PointedMinutes pointed = new PointedMinutes();
    private final long[] orders = new long[DateText.Order.values().length];
    private final long[] signs = new long[NumberText.Sign.values().length];
    private final Map<String, DateText.Order> knownDates = new HashMap<>();
    private final Map<String, NumberText.Sign> knownNumbers = new HashMap<>();
    private Place openDate;
    private Place openNumber;
    private long rows;
    private long surplus;
    private long emptyEnds;

    /** A cell, for a message. */
    record Place(int line, String column, String text) {}

    DialectEvidence(Header header) {
        this.header = header;
        for (Column column : header.columns()) {
            switch (column.cell().kind()) {
                case DAY -> dates.add(column);
                case HOURS, SIGNED_HOURS, MONEY, SIGNED_MONEY, QUANTITY -> numbers.add(column);
                default -> {}
            }
        }
    }

    static boolean isNumber(Column column) {
        return switch (column.cell().kind()) {
            case HOURS, SIGNED_HOURS, MONEY, SIGNED_MONEY, QUANTITY, COUNT -> true;
            default -> false;
        };
    }

    public static boolean isHours(Column column) {
        return column.cell().kind() == Kind.HOURS || column.cell().kind() == Kind.SIGNED_HOURS;
    }

    static String text(Records record, int cell) {
        int length = Math.min(record.end(cell) - record.start(cell), Dictionary.LONGEST);
        return new String(record.bytes(), record.start(cell), length, StandardCharsets.UTF_8);
    }

    /** Returns the sign that a number tells, the point where it leaves that open. */
    public static DecimalSign asItTells(NumberText.Sign sign) {
        return sign == NumberText.Sign.COMMA || sign == NumberText.Sign.OPEN_COMMA
                ? DecimalSign.COMMA
                : DecimalSign.POINT;
    }

    /** Takes the next row behind the header. */
    void take(Records record) {
        rows++;
        int size = record.size();
        boolean endsEmpty = record.start(size - 1) == record.end(size - 1);
        emptyEnds += endsEmpty ? 1 : 0;
        surplus += endsEmpty && size == header.size() + 1 ? 1 : 0;
        for (Column column : dates) {
            takeDate(record, column);
        }
        for (Column column : numbers) {
            takeNumber(record, column);
        }
    }

    private void takeDate(Records record, Column column) {
        if (header.cell(column) >= record.size()) {
            return;
        }
        String text = text(record, header.cell(column));
        DateText.Order order = knownDates.get(text);
        if (order == null) {
            order = DateText.tells(text);
            remember(knownDates, text, order);
        }
        orders[order.ordinal()]++;
        if (order == DateText.Order.OPEN && openDate == null) {
            openDate = new Place(record.line(), column.header(), text.strip());
        }
    }

    private void takeNumber(Records record, Column column) {
        if (header.cell(column) >= record.size()) {
            return;
        }
        String text = text(record, header.cell(column));
        NumberText.Sign sign = knownNumbers.get(text);
        if (sign == null) {
            sign = HoursText.tells(text);
            remember(knownNumbers, text, sign);
        }
        signs[sign.ordinal()]++;
        if (isHours(column)) {
            pointed.take(text, 1);
        }
        boolean open = sign == NumberText.Sign.OPEN_COMMA || sign == NumberText.Sign.OPEN_POINT;
        if (open && openNumber == null) {
            openNumber = new Place(record.line(), column.header(), text.strip());
        }
    }

    private static <T> void remember(Map<String, T> known, String text, T tells) {
        if (known.size() < REMEMBERED) {
            known.put(text, tells);
        }
    }

    /** Returns the order that the dates tell, or null where they leave it open. */
    DateOrder dates() {
        return decided(
                orders[DateText.Order.DAY_FIRST.ordinal()],
                orders[DateText.Order.MONTH_FIRST.ordinal()],
                orders[DateText.Order.OPEN.ordinal()]);
    }

    /** Returns the order that so many dates tell, or null where they leave it open. */
    static DateOrder decided(long day, long month, long open) {
        if (decides(day, month, open)) {
            return DateOrder.DAY_MONTH_YEAR;
        }
        return decides(month, day, open) ? DateOrder.MONTH_DAY_YEAR : null;
    }

    /** Returns the decimal sign that the numbers tell, or null where they leave it open. */
    DecimalSign decimals() {
        long point = signs[NumberText.Sign.POINT.ordinal()];
        long comma = signs[NumberText.Sign.COMMA.ordinal()];
        long open = signs[NumberText.Sign.OPEN_COMMA.ordinal()] + signs[NumberText.Sign.OPEN_POINT.ordinal()];
        if (decides(point, comma, open)) {
            return DecimalSign.POINT;
        }
        return decides(comma, point, open) ? DecimalSign.COMMA : null;
    }

    /** One cell never decides for many. */
    private static boolean decides(long telling, long against, long open) {
        boolean enough = open == 0 || telling >= FEWEST && telling * MISTYPED >= open;
        return telling > 0 && enough && against * MISTYPED <= telling;
    }

    /** Returns how many dates and numbers told. */
    long count(DateOrder order) {
        return orders[
                (order == DateOrder.DAY_MONTH_YEAR ? DateText.Order.DAY_FIRST : DateText.Order.MONTH_FIRST).ordinal()];
    }

    long count(DecimalSign sign) {
        return signs[(sign == DecimalSign.POINT ? NumberText.Sign.POINT : NumberText.Sign.COMMA).ordinal()];
    }

    /** Returns the first date that can be read in two ways, or null. */
    Place openDate() {
        return openDate;
    }

    /** Returns the first number that can be read in two ways, or null. */
    Place openNumber() {
        return openNumber;
    }

    /** Returns whether every row ends with an empty cell, which is one more than the header in most. */
    boolean hasSurplusCell() {
        return rows > 0 && emptyEnds >= rows && 2 * surplus >= rows;
    }

    /** Returns whether minutes stand behind the sign of its hours. */
    PointedMinutes pointed() {
        return pointed;
    }
}
