package benchtrue.page;

import benchtrue.hours.Evidence;
import benchtrue.hours.JobLines;
import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.shop.Ints;
import java.util.ArrayList;
import java.util.List;

/** The latest jobs behind each repair type's figures; all of them stand in {@code lines.csv}. */
final class TellJobs {
    private static final int MOST = 12;
    private final Told told;
    private final Ledger ledger;
    private final JobLines jobs;

    TellJobs(Told told) {
        this.told = told;
        jobs = told.review().jobs();
        ledger = jobs.ledger();
    }

    List<ReviewView.JobList> tell() {
        Ints[] byType = new Ints[ledger.repairTypes().size()];
        for (int line = 0; line < jobs.size(); line++) {
            if (jobs.judged(line)) {
                int type = ledger.lines().repairType(line);
                byType[type] = byType[type] == null ? new Ints() : byType[type];
                byType[type].add(line);
            }
        }
        List<ReviewView.JobList> lists = new ArrayList<>();
        for (int type = 0; type < byType.length; type++) {
            if (byType[type] != null) {
                lists.add(list(type, byType[type].toArray()));
            }
        }
        return lists;
    }

    private ReviewView.JobList list(int type, int[] lines) {
        long[] order = new long[lines.length];
        for (int i = 0; i < lines.length; i++) {
            order[i] = ((long) day(lines[i]) << Integer.SIZE) + lines[i];
        }
        java.util.Arrays.sort(order);
        List<ReviewView.Job> rows = new ArrayList<>();
        for (int i = order.length - 1; i >= Math.max(0, order.length - MOST); i--) {
            rows.add(job((int) order[i]));
        }
        String note = lines.length <= MOST
                ? told.count(lines.length, "job", "jobs")
                : "the latest " + told.figures().count(MOST) + " of " + told.count(lines.length, "job", "jobs");
        return new ReviewView.JobList(Told.jobsId(type), told.label(type), note, rows);
    }

    private int day(int line) {
        return Absent.firstOf(
                ledger.lines().quotedOn(line),
                ledger.tickets().opened(ledger.lines().ticket(line)));
    }

    private ReviewView.Job job(int line) {
        long quoted = Absent.firstOf(ledger.lines().judgedSeconds(line), jobs.bookSecondsThen(line));
        return new ReviewView.Job(
                ledger.tickets().ticket(ledger.lines().ticket(line)),
                told.figures().day(day(line)),
                told.figures().quote(quoted),
                told.figures().quote(jobs.actualSeconds(line)),
                known(jobs.evidence(line)));
    }

    private static String known(Evidence evidence) {
        return switch (evidence) {
            case NONE -> "no hours logged";
            case LOGGED -> "logged to the job";
            case PARTLY_SPLIT -> "partly a share of the ticket's hours";
            case SPLIT -> "a share of the ticket's hours";
        };
    }
}
