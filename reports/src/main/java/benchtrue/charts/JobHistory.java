package benchtrue.charts;

import benchtrue.charts.drawing.JobChart;
import benchtrue.charts.drawing.Mark;
import benchtrue.findings.RepairFinding;
import benchtrue.hours.JobLines;
import benchtrue.hours.SplitEvidence;
import benchtrue.reconcile.Ledger;
import benchtrue.revision.ProposedChange;
import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import benchtrue.shop.PriceBook;
import benchtrue.shop.RepairType;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Every job of one repair type over time, against the book and the proposal. */
final class JobHistory {
    private static final int MOST_JOBS = 400;
    private final ChartContext subject;
    private final RepairFinding finding;
    private final Ledger ledger;
    private final JobLines jobs;
    private final String key;

    JobHistory(ChartContext subject, RepairFinding finding) {
        this.subject = subject;
        this.finding = finding;
        ledger = subject.review().ledger();
        jobs = subject.review().jobs();
        key = ledger.repairTypes().name(finding.repairType());
    }

    /**
     * Returns the picture.
     *
     * @param lines the type's judged lines
     */
    Picture picture(int[] lines) {
        int step = Math.max(1, (lines.length + MOST_JOBS - 1) / MOST_JOBS);
        int[] ordered = byDay(lines);
        List<JobChart.Job> points = new ArrayList<>();
        for (int i = (ordered.length - 1) % step; i < ordered.length; i += step) {
            points.add(job(ordered[i]));
        }
        int from = day(ordered[0]);
        int to = Math.max(ledger.asOf(), from + 1);
        return new Picture(
                "jobs-" + FileName.of(key, finding.repairType()),
                title(),
                note(step),
                new JobChart(points, book(), turns(), from, to, subject.figures()),
                Picture.Scope.ONE_REPAIR);
    }

    private int[] byDay(int[] lines) {
        long[] order = new long[lines.length];
        for (int i = 0; i < lines.length; i++) {
            order[i] = ((long) day(lines[i]) << Integer.SIZE) + lines[i];
        }
        Arrays.sort(order);
        return Arrays.stream(order).mapToInt(key -> (int) key).toArray();
    }

    private int day(int line) {
        return Absent.firstOf(
                ledger.lines().quotedOn(line),
                ledger.tickets().opened(ledger.lines().ticket(line)));
    }

    private JobChart.Job job(int line) {
        long quoted = Absent.firstOf(ledger.lines().judgedSeconds(line), jobs.bookSecondsThen(line));
        boolean over = jobs.actualSeconds(line) > quoted;
        boolean logged = jobs.evidence(line) == SplitEvidence.LOGGED;
        Mark mark = over ? (logged ? Mark.JOB_OVER : Mark.SHARE_OVER) : (logged ? Mark.JOB_WITHIN : Mark.SHARE_WITHIN);
        return new JobChart.Job(day(line), Hours.of(jobs.actualSeconds(line)), mark);
    }

    private String title() {
        return subject.label(finding.repairType()) + " takes "
                + subject.figures().ratio(finding.loadFactor()) + " hours for each hour quoted"
                + change().filter(change -> change.proposedSeconds() != change.bookSeconds())
                        .map(change -> "; proposed: " + subject.figures().quote(change.proposedSeconds())
                                + " instead of " + subject.figures().quote(change.bookSeconds()))
                        .orElse("");
    }

    private String note(int step) {
        return subject.count(finding.lines(), "closed job", "closed jobs") + ", 90\u00a0% range "
                + subject.figures().ratio(finding.lower()) + " to "
                + subject.figures().ratio(finding.upper())
                + ", putting right included. A point is a job on the day it was quoted."
                + (step > 1 ? " Drawn: one job in " + subject.figures().count(step) + "." : "");
    }

    private List<JobChart.Turn> turns() {
        return subject.slowing(finding.repairType()).stream()
                .map(slowing -> new JobChart.Turn(
                        slowing.startDay(),
                        "slower since about " + subject.figures().day(slowing.startDay()) + ", by "
                                + subject.figures().percent(slowing.change() - 1) + " ("
                                + subject.figures().percent(slowing.lower() - 1) + " to "
                                + subject.figures().percent(slowing.upper() - 1) + ")"))
                .toList();
    }

    private Optional<ProposedChange> change() {
        return subject.review().revision().changes().stream()
                .filter(change -> change.repairType() == finding.repairType())
                .findFirst();
    }

    private List<JobChart.Line> book() {
        List<JobChart.Line> lines = new ArrayList<>();
        List<Integer> days = new ArrayList<>();
        List<Double> hours = new ArrayList<>();
        for (PriceBook version : ledger.books().versions()) {
            Optional<RepairType> type = version.type(key);
            if (type.isPresent() && version.effective() <= ledger.asOf()) {
                days.add(days.isEmpty() ? Integer.MIN_VALUE : version.effective());
                hours.add(Hours.of(type.get().bookSeconds()));
            }
        }
        if (!days.isEmpty()) {
            long today = subject.book(finding.repairType()).orElseThrow().bookSeconds();
            lines.add(line("book, today " + subject.figures().quote(today), days, hours, JobChart.Look.BOOK));
        }
        change().filter(change -> change.proposedSeconds() != change.bookSeconds())
                .ifPresent(change -> lines.add(line(
                        "proposed " + subject.figures().quote(change.proposedSeconds()),
                        List.of(Integer.MIN_VALUE),
                        List.of(Hours.of(change.proposedSeconds())),
                        JobChart.Look.PROPOSED)));
        return lines;
    }

    private static JobChart.Line line(String words, List<Integer> days, List<Double> hours, JobChart.Look look) {
        return new JobChart.Line(
                words,
                days.stream().mapToInt(Integer::intValue).toArray(),
                hours.stream().mapToDouble(Double::doubleValue).toArray(),
                look);
    }

    /** A repair type's key as part of a file name that every system takes. */
    static final class FileName {
        private static final int LONGEST = 40;

        private FileName() {}

        /** Returns small letters, digits and hyphens; the type's number is added where a key had to be changed. */
        static String of(String key, int repairType) {
            StringBuilder name = new StringBuilder();
            for (int i = 0; i < key.length() && name.length() < LONGEST; i++) {
                char c = key.charAt(i);
                c += c >= 'A' && c <= 'Z' ? 'a' - 'A' : 0;
                boolean plain = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-';
                name.append(plain ? c : '-');
            }
            return name.toString().equals(key) ? key : name + "-" + (repairType + 1);
        }
    }
}
