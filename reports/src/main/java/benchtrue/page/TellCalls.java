package benchtrue.page;

import benchtrue.hours.JobLines;
import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.shop.LineState;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Fourth answer: which open instruments need a call to the customer before more work is done. */
final class TellCalls {
    private static final int MOST = 6;
    private final Told told;

    TellCalls(Told told) {
        this.told = told;
    }

    private record Overrun(int line, long quoted, long taken) {
        long over() {
            return taken - quoted;
        }
    }

    ReviewView.Calls tell() {
        List<Overrun> overruns = overruns();
        if (overruns.isEmpty()) {
            return new ReviewView.Calls(List.of(), "No open job has used up its quoted hours.");
        }
        int rest = overruns.size() - MOST;
        return new ReviewView.Calls(
                overruns.stream().limit(MOST).map(this::call).toList(),
                "These have used up their quoted hours. Ask before going on: many places require approval before an "
                        + "estimate is exceeded."
                        + (rest > 0 ? " " + told.count(rest, "more", "more") + " in lines.csv." : ""));
    }

    private List<Overrun> overruns() {
        JobLines jobs = told.review().jobs();
        List<Overrun> overruns = new ArrayList<>();
        for (int line = 0; line < jobs.size(); line++) {
            long quoted = jobs.ledger().lines().judgedSeconds(line);
            if (jobs.state(line) == LineState.OPEN
                    && Absent.has(quoted)
                    && quoted > 0
                    && jobs.actualSeconds(line) >= quoted) {
                overruns.add(new Overrun(line, quoted, jobs.actualSeconds(line)));
            }
        }
        overruns.sort(Comparator.comparingLong(Overrun::over).reversed().thenComparingInt(Overrun::line));
        return overruns;
    }

    private ReviewView.Call call(Overrun overrun) {
        Ledger ledger = told.review().ledger();
        return new ReviewView.Call(
                ledger.tickets().ticket(ledger.lines().ticket(overrun.line)),
                told.label(ledger.lines().repairType(overrun.line)),
                told.figures().quote(overrun.taken) + " so far, "
                        + told.figures().quote(overrun.quoted) + " quoted");
    }
}
