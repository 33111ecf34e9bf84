package benchtrue.answers;

import benchtrue.calendar.Calendar;
import benchtrue.calendar.Call;
import benchtrue.costing.CostedLines;
import benchtrue.costing.Gift;
import benchtrue.findings.Cause;
import benchtrue.findings.Findings;
import benchtrue.findings.RepairFinding;
import benchtrue.findings.Verdict;
import benchtrue.revision.ProposedChange;
import benchtrue.revision.Revision;
import benchtrue.settings.Settings;
import benchtrue.shop.Absent;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * What the owner is told first, selected and ordered for every output.
 *
 * @param notRead what was not read and what hangs on it; empty where nothing does
 * @param allowedFor what every figure allows for: that the whole shop gets slower or faster, that time is written coarsely
 * @param unread where unread hours lie
 * @param worstFirst every repair, the most money lost a year first
 * @param losing the repairs that are surely under-quoted, in that order
 * @param seemLosing those and the ones that lean that way and lose money, the sure ones first
 * @param drafted every row of the draft: what changes and is surely wrong in the book, then what changes though it only
 *     leans, then the rest; each the most money moved first
 * @param changes the rows that change hours or price, in that order
 * @param held titles of what is not changed, by reason; what stands after a reason's colon belongs to one repair
 * @param given what was given away, the most worth first
 * @param calls open instruments about which somebody should be called, what saves most first
 * @param causes what sets jobs of a repair apart and is told, the most money first
 * @param books which price book is in force and which are to come, one sentence each
 */
public record Answers(
        Optional<String> notRead,
        List<String> allowedFor,
        List<Unread> unread,
        List<RepairFinding> worstFirst,
        List<RepairFinding> losing,
        List<RepairFinding> seemLosing,
        List<ProposedChange> drafted,
        List<ProposedChange> changes,
        SortedMap<String, List<ProposedChange>> held,
        List<Gift> given,
        List<Call> calls,
        List<Cause> causes,
        List<String> books) {
    /** Repairs named where there is room for few. */
    public static final int FEW_REPAIRS = 5;

    /** Calls named where there is room for few. */
    public static final int FEW_CALLS = 5;

    private static final Comparator<RepairFinding> WORST_FIRST = Comparator.comparingLong(
                    RepairFinding::annualShortfall)
            .reversed()
            .thenComparingInt(RepairFinding::repairType);

    private static final Comparator<ProposedChange> SURE_FIRST = Comparator.comparing(
                    (ProposedChange change) -> !change.changes())
            .thenComparing(change -> !change.sure())
            .thenComparing(Comparator.comparingLong(Answers::moved).reversed())
            .thenComparingInt(ProposedChange::repairType);

    /** Selects the answers of a night. */
    public static Answers of(
            Findings findings, Revision revision, CostedLines costs, Calendar calendar, Settings settings) {
        List<RepairFinding> worstFirst =
                findings.repairs().stream().sorted(WORST_FIRST).toList();
        List<ProposedChange> drafted =
                revision.changes().stream().sorted(SURE_FIRST).toList();
        return new Answers(
                NotRead.sentence(costs.jobs().ledger(), findings.repairs(), settings.figures()),
                Stream.of(
                                DescribePace.sentence(findings.pace(), settings.figures()),
                                DescribeLogging.sentence(findings.logged(), settings.figures()))
                        .flatMap(Optional::stream)
                        .toList(),
                NotRead.parts(costs.jobs().ledger(), findings.repairs(), settings),
                worstFirst,
                worstFirst.stream().filter(Answers::isUnder).toList(),
                worstFirst.stream()
                        .filter(Answers::seemsToLose)
                        .sorted(Comparator.comparing(finding -> !isUnder(finding)))
                        .toList(),
                drafted,
                drafted.stream().filter(ProposedChange::changes).toList(),
                held(revision),
                costs.shop().gifts(),
                calendar.calls(),
                findings.causes().stream()
                        .filter(cause -> !cause.groups().isEmpty())
                        .sorted(Comparator.comparingLong((Cause cause) -> -Math.abs(cause.annualEffect()))
                                .thenComparingInt(Cause::repairType))
                        .toList(),
                BooksTold.of(costs.jobs().ledger(), revision, settings.figures()));
    }

    /** Returns the changes of rows that are surely wrong in the book, in their order. */
    public List<ProposedChange> sure() {
        return changes.stream().filter(ProposedChange::sure).toList();
    }

    /** Returns the other changes, which only lean or which the policy asks for, in their order. */
    public List<ProposedChange> leaning() {
        return changes.stream().filter(change -> !change.sure()).toList();
    }

    /** Returns the money a year that some changes bring together, as far as it is known. */
    public static long together(List<ProposedChange> changes) {
        return changes.stream()
                .mapToLong(change -> Absent.firstOf(change.annualEffect(), 0))
                .sum();
    }

    private static boolean isUnder(RepairFinding finding) {
        return finding.verdict() == Verdict.UNDER_QUOTED;
    }

    private static boolean seemsToLose(RepairFinding finding) {
        return (isUnder(finding) || finding.verdict() == Verdict.LEANING_UNDER)
                && Absent.has(finding.annualShortfall())
                && finding.annualShortfall() > 0;
    }

    private static long moved(ProposedChange change) {
        return Absent.has(change.annualEffect()) ? Math.abs(change.annualEffect()) : 0;
    }

    private static SortedMap<String, List<ProposedChange>> held(Revision revision) {
        SortedMap<String, List<ProposedChange>> held = new TreeMap<>();
        for (ProposedChange change : revision.changes()) {
            if (!change.changes() && !change.heldBecause().isEmpty()) {
                held.computeIfAbsent(change.heldBecause().split(":", 2)[0], reason -> new ArrayList<>())
                        .add(change);
            }
        }
        return held;
    }
}
