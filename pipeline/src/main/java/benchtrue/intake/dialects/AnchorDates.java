package benchtrue.intake.dialects;

import benchtrue.intake.cells.DateSystem;
import benchtrue.intake.cells.DateText;
import benchtrue.intake.columns.ExportFile;
import benchtrue.intake.columns.Made;
import benchtrue.intake.columns.Mapping;
import benchtrue.intake.columns.Shape;
import benchtrue.settings.DateOrder;
import benchtrue.settings.FileRule;
import benchtrue.settings.UnpivotHeader;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Tells the order of the dates that the headers of wide columns are or count from. Mutable. */
final class AnchorDates {
    private final ExportFile file;
    private final List<String> header;
    private final Set<String> texts = new LinkedHashSet<>();

    AnchorDates(List<String> header, ExportFile file) {
        this.file = file;
        this.header = header.stream().map(Mapping::plain).toList();
        Shape shape = file.mapping().shape();
        if (shape.unpivot().filter(said -> said.header() == UnpivotHeader.DATE).isPresent()) {
            for (int cell : shape.wide(header)) {
                texts.add(header.get(cell));
            }
        }
    }

    void take(List<String> row) {
        file.mapping()
                .shape()
                .anchor()
                .ifPresent(name -> texts.add(Made.text(name, source -> {
                    int cell = header.indexOf(Mapping.plain(source));
                    return cell >= 0 && cell < row.size() ? row.get(cell) : "";
                })));
    }

    /** Returns the order, by what some of the dates tell or by all being the same weekday. */
    DateOrder order() {
        return file.rule()
                .flatMap(FileRule::dates)
                .or(() -> Optional.ofNullable(DialectEvidence.decided(
                        count(DateText.Order.DAY_FIRST),
                        count(DateText.Order.MONTH_FIRST),
                        count(DateText.Order.OPEN))))
                .or(() -> sameWeekday(DateOrder.DAY_MONTH_YEAR, DateOrder.MONTH_DAY_YEAR))
                .or(() -> sameWeekday(DateOrder.MONTH_DAY_YEAR, DateOrder.DAY_MONTH_YEAR))
                .orElseThrow(() -> new Refusal(
                        ExitCode.UNUSABLE_FILE,
                        file.name() + ": found dates such as \""
                                + texts.stream()
                                        .filter(text -> DateText.tells(text) == DateText.Order.OPEN)
                                        .findFirst()
                                        .orElse("")
                                + "\" that can be read with the day or the month first. Say which in shop.toml: [[files]]"
                                + " name = \"" + file.fileName() + "\", table = \""
                                + file.table().title()
                                + "\", dates = \"day-month-year\" (or dates = \"month-day-year\")."));
    }

    private long count(DateText.Order order) {
        return texts.stream().filter(text -> DateText.tells(text) == order).count();
    }

    private Optional<DateOrder> sameWeekday(DateOrder order, DateOrder other) {
        return weekdays(order) == 1 && weekdays(other) > 2 ? Optional.of(order) : Optional.empty();
    }

    private long weekdays(DateOrder order) {
        return texts.stream()
                .map(text -> DateText.read(text.strip(), () -> order, DateSystem.FROM_1900))
                .flatMap(Optional::stream)
                .map(LocalDate::getDayOfWeek)
                .distinct()
                .count();
    }
}
