package benchtrue.mapping;

import benchtrue.intake.ColumnProfile;
import benchtrue.intake.FileProfile;
import benchtrue.intake.OrderOfDates;
import benchtrue.intake.WideColumns;
import benchtrue.intake.columns.Kind;
import benchtrue.intake.columns.WideNames;
import benchtrue.settings.DateOrder;
import benchtrue.settings.UnpivotHeader;
import java.util.List;
import java.util.stream.Stream;

/** Whether day or month stands first in the dates of a rule's files: one week's file may leave open what the others tell. */
final class WrittenOrder {
    private boolean isOpen;
    private boolean dayFirst;
    private boolean monthFirst;

    WrittenOrder(Guess guess, List<FileProfile> alike) {
        List<String> headers = Stream.concat(
                        guess.matches().stream()
                                .filter(match -> match.column().cell().kind() == Kind.DAY)
                                .map(match -> match.source().header()),
                        guess.wide().flatMap(WideColumns::anchor).map(WideColumns.Anchor::name).stream())
                .toList();
        for (FileProfile file : alike) {
            OrderOfDates told = OrderOfDates.of(dates(file, headers));
            isOpen |= told.open() && !told.dayFirst() && !told.monthFirst();
            dayFirst |= told.dayFirst();
            monthFirst |= told.monthFirst();
        }
    }

    private static Stream<String> dates(FileProfile file, List<String> headers) {
        Stream<String> cells = file.columns().stream()
                .filter(column -> headers.contains(column.header()))
                .map(ColumnProfile::texts)
                .flatMap(texts -> texts.keySet().stream());
        return Stream.concat(cells, file.headers().stream().filter(name -> WideNames.isOf(UnpivotHeader.DATE, name)));
    }

    /** Returns whether a file alone leaves it open. */
    boolean isOpen() {
        return isOpen;
    }

    /** Returns whether the files together leave it open, or contradict each other. */
    boolean isAsked() {
        return dayFirst == monthFirst;
    }

    /** Returns what stands first where the files together tell. */
    DateOrder order() {
        return dayFirst ? DateOrder.DAY_MONTH_YEAR : DateOrder.MONTH_DAY_YEAR;
    }
}
