package benchtrue.page;

import benchtrue.hours.JobLines;
import benchtrue.hours.SplitEvidence;
import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.shop.Ints;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The latest jobs behind each repair type's figures; all of them stand in {@code lines.csv}. */
final class FormatJobs {
    private static final int MOST = 12;
    private final PageFormatter told;
    private final Ledger ledger;
    private final JobLines jobs;

    FormatJobs(PageFormatter told) {
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
        List<ReviewView.Job> rows =
                Arrays.stream(latest(lines)).mapToObj(this::job).toList();
        String note = lines.length <= MOST
                ? told.count(lines.length, "job", "jobs")
                : "the latest " + told.figures().count(MOST) + " of " + told.count(lines.length, "job", "jobs");
        return new ReviewView.JobList(PageFormatter.jobsId(type), told.label(type), note, rows);
    }

    /** Returns the lines of the latest days, the latest first; of one day, the last in their order first. */
    private int[] latest(int[] lines) {
        long[] latest = new long[Math.min(MOST, lines.length)];
        Arrays.fill(latest, Long.MIN_VALUE);
        for (int line : lines) {
            long key = ((long) day(line) << Integer.SIZE) + line;
            int place = latest.length;
            while (place > 0 && latest[place - 1] < key) {
                place--;
            }
            if (place < latest.length) {
                System.arraycopy(latest, place, latest, place + 1, latest.length - 1 - place);
                latest[place] = key;
            }
        }
        return Arrays.stream(latest).mapToInt(key -> (int) key).toArray();
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

    private static String known(SplitEvidence evidence) {
        return switch (evidence) {
            case NONE -> "no hours logged";
            case LOGGED -> "logged to the job";
            case PARTLY_SPLIT -> "partly a share of the ticket's hours";
            case SPLIT -> "a share of the ticket's hours";
        };
    }
}
