package benchtrue.answers;

import benchtrue.findings.RepairFinding;
import benchtrue.findings.Verdict;
import benchtrue.format.Figures;
import benchtrue.reconcile.Completeness;
import benchtrue.reconcile.Completeness.RowsRead;
import benchtrue.reconcile.Ledger;
import benchtrue.settings.Disclosure;
import benchtrue.settings.Settings;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What was not read and what hangs on it, in a sentence that every output opens with. */
final class NotRead {
    /** Less than this share of the hours is said with the rows set aside, not first of all. */
    private static final double WORTH_SAYING = 0.01;

    private static final int MOST_NAMED = 4;

    private static final Comparator<Unread> MOST_FIRST =
            Comparator.comparingDouble(Unread::unreadSeconds).reversed().thenComparing(Unread::what);

    private NotRead() {}

    /** Returns the sentence; empty where what was not read changes nothing that matters. */
    static Optional<String> sentence(Ledger ledger, List<RepairFinding> repairs, Figures figures) {
        if (ledger.books().newest().types().isEmpty()) {
            return Optional.of(
                    "Nothing can be judged: no hours quoted could be read, and no price of a bench hour turns quoted"
                            + " prices into hours. Map the column of the quoted hours, or say shop_rate in shop.toml.");
        }
        Completeness read = ledger.completeness();
        List<RepairFinding> held = repairs.stream()
                .filter(finding -> finding.verdict() == Verdict.NOT_JUDGED)
                .toList();
        if (held.isEmpty() && read.unreadShare() < WORTH_SAYING) {
            return Optional.empty();
        }
        return what(read, figures).map(what -> what + " " + meaning(read, held, ledger, figures));
    }

    /**
     * Returns where the unread hours lie, the most first of each kind: repairs, months and, where figures about people are shown,
     * technicians.
     */
    static List<Unread> parts(Ledger ledger, List<RepairFinding> repairs, Settings settings) {
        Completeness read = ledger.completeness();
        List<Unread> parts = new ArrayList<>();
        repairs.stream()
                .filter(finding -> finding.repairType() < read.missing().length)
                .filter(finding -> read.missing()[finding.repairType()] > 0)
                .map(finding -> new Unread(
                        ledger.title(finding.repairType()),
                        read.missing()[finding.repairType()],
                        finding.actualSeconds()))
                .sorted(MOST_FIRST)
                .forEach(parts::add);
        read.months().entrySet().stream()
                .map(month -> part(settings.figures().month(month.getKey()), month.getValue()))
                .sorted(MOST_FIRST)
                .forEach(parts::add);
        if (settings.people() == Disclosure.SHOWN) {
            read.technicians().entrySet().stream()
                    .map(technician -> part(technician.getKey(), technician.getValue()))
                    .sorted(MOST_FIRST)
                    .forEach(parts::add);
        }
        return parts;
    }

    private static Unread part(String what, Completeness.Part part) {
        return new Unread(what, part.unread(), part.read());
    }

    private static Optional<String> what(Completeness read, Figures figures) {
        Optional<RowsRead> most = read.tables().stream()
                .filter(table -> List.of("time-log", "quoted-lines", "tickets").contains(table.table()))
                .max(Comparator.comparingDouble(table -> table.setAside() / (double) table.read()));
        if (read.unreadSeconds() > 0) {
            return Optional.of("Of " + figures.hours(read.readSeconds() + (long) read.unreadSeconds())
                    + " logged about " + figures.hours((long) read.unreadSeconds()) + " could not be read (mostly: "
                    + read.reason() + ").");
        }
        return most.map(table -> figures.count(table.setAside()) + " of " + figures.count(table.read()) + " rows of "
                + table.table() + " could not be read (mostly: " + table.reason() + ").");
    }

    private static String meaning(Completeness read, List<RepairFinding> held, Ledger ledger, Figures figures) {
        String mend = "Mend first what stands in the folder set-aside.";
        if (read.tooLittle()) {
            return "No repair is judged and no price is drafted until they are. " + mend;
        }
        if (held.isEmpty()) {
            return "Every verdict below holds whatever they were. " + mend;
        }
        String named = held.stream()
                .limit(MOST_NAMED)
                .map(finding -> ledger.title(finding.repairType()))
                .collect(Collectors.joining(", "));
        int rest = held.size() - MOST_NAMED;
        return figures.count(held.size(), "repair is", "repairs are") + " not judged until they are: " + named
                + (rest > 0 ? " and " + figures.count(rest) + " more. " : ". ") + mend;
    }
}
