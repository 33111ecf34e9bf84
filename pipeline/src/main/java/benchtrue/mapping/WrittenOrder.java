package benchtrue.mapping;

import benchtrue.intake.ColumnProfile;
import benchtrue.intake.FileProfile;
import benchtrue.intake.WideColumns;
import benchtrue.intake.cells.DateText;
import benchtrue.intake.columns.Kind;
import benchtrue.intake.columns.WideNames;
import benchtrue.settings.DateOrder;
import benchtrue.settings.UnpivotHeader;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Whether day or month stands first in the dates of a rule's files: one week's file may leave open what the others tell. */
final class WrittenOrder {
    private final Set<DateText.Order> all = EnumSet.noneOf(DateText.Order.class);
    private boolean isOpen;

    WrittenOrder(Guess guess, List<FileProfile> alike) {
        List<String> headers = Stream.concat(
                        guess.matches().stream()
                                .filter(match -> match.column().cell().kind() == Kind.DAY)
                                .map(match -> match.source().header()),
                        guess.wide().flatMap(WideColumns::anchor).map(WideColumns.Anchor::name).stream())
                .toList();
        for (FileProfile file : alike) {
            Set<DateText.Order> told = EnumSet.noneOf(DateText.Order.class);
            dates(file, headers).map(DateText::tells).forEach(told::add);
            isOpen |= told.contains(DateText.Order.OPEN) && !tells(told);
            all.addAll(told);
        }
    }

    private static Stream<String> dates(FileProfile file, List<String> headers) {
        Stream<String> cells = file.columns().stream()
                .filter(column -> headers.contains(column.header()))
                .map(ColumnProfile::texts)
                .flatMap(texts -> texts.keySet().stream());
        return Stream.concat(cells, file.headers().stream().filter(name -> WideNames.isOf(UnpivotHeader.DATE, name)));
    }

    private static boolean tells(Set<DateText.Order> told) {
        return told.contains(DateText.Order.DAY_FIRST) || told.contains(DateText.Order.MONTH_FIRST);
    }

    /** Returns whether a file alone leaves it open. */
    boolean isOpen() {
        return isOpen;
    }

    /** Returns whether the files together leave it open, or contradict each other. */
    boolean isAsked() {
        return all.contains(DateText.Order.DAY_FIRST) == all.contains(DateText.Order.MONTH_FIRST);
    }

    /** Returns what stands first where the files together tell. */
    DateOrder order() {
        return all.contains(DateText.Order.DAY_FIRST) ? DateOrder.DAY_MONTH_YEAR : DateOrder.MONTH_DAY_YEAR;
    }
}
