package benchtrue.hours;

import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import benchtrue.shop.LineState;
import benchtrue.shop.Outcome;
import benchtrue.shop.QuotedLines;
import benchtrue.shop.RepairType;
import benchtrue.shop.TicketStatus;
import benchtrue.shop.TimeEntries;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Job lines of a shop whose every hour names its line, under one price book: nothing is left to split. Hours that name a
 * repair type and no line count as work that was never quoted.
 */
public final class LabelledShop {
    private LabelledShop() {}

    /** Returns the lines with their hours; rework is found only where a line names the line it puts right. */
    public static JobLines of(Ledger ledger) {
        QuotedLines lines = ledger.lines();
        int n = lines.size();
        byte[] state = new byte[n];
        long[] labelled = new long[n];
        long[] rework = new long[n];
        long[] book = new long[n];
        double[] quoted = new double[n];
        int[] technician = new int[n];
        boolean[] judged = new boolean[n];
        Arrays.fill(technician, Absent.INDEX);
        for (int entry = 0; entry < ledger.time().size(); entry++) {
            int line = ledger.time().line(entry);
            if (line != Absent.INDEX) {
                labelled[line] += ledger.time().seconds(entry);
                technician[line] = ledger.time().technician(entry);
            }
        }
        for (int line = 0; line < n; line++) {
            LineState stands = state(ledger, line);
            state[line] = (byte) stands.ordinal();
            book[line] = ledger.books()
                    .type(ledger.repairTypes().name(lines.repairType(line)), ledger.asOf())
                    .map(RepairType::bookSeconds)
                    .orElse(Absent.AMOUNT);
            quoted[line] = Absent.has(lines.judgedSeconds(line)) ? Hours.of(lines.judgedSeconds(line)) : Double.NaN;
            int failed = lines.reworkOfLine(line);
            judged[line] = stands == LineState.CLOSED && quoted[line] > 0 && failed == Absent.INDEX;
            if (failed != Absent.INDEX) {
                rework[failed] += labelled[line];
            }
        }
        JobLines.LineColumns columns = new JobLines.LineColumns(
                state,
                labelled,
                new long[n],
                rework,
                new long[n],
                book,
                quoted,
                technician,
                judged,
                new byte[n],
                new byte[n]);
        return new JobLines(
                ledger, columns, new Sums(ledger, columns), unquoted(ledger), List.of(), List.of(), places(ledger));
    }

    private static List<UnquotedWork> unquoted(Ledger ledger) {
        TimeEntries time = ledger.time();
        return IntStream.range(0, time.size())
                .filter(entry -> time.line(entry) == Absent.INDEX && time.repairType(entry) != Absent.INDEX)
                .mapToObj(entry -> new UnquotedWork(time.ticket(entry), time.repairType(entry), time.seconds(entry)))
                .toList();
    }

    private static EntryPlaces places(Ledger ledger) {
        byte[] place = new byte[ledger.time().size()];
        int[] line = new int[place.length];
        for (int entry = 0; entry < place.length; entry++) {
            line[entry] = ledger.time().line(entry);
            boolean named = line[entry] != Absent.INDEX;
            place[entry] = (byte) (named ? EntryPlaces.Place.ON_LINE : EntryPlaces.Place.BY_KIND).ordinal();
        }
        return new EntryPlaces(place, line, Map.of());
    }

    private static LineState state(Ledger ledger, int line) {
        TicketStatus status = ledger.tickets().status(ledger.lines().ticket(line));
        if (status == TicketStatus.VOID) {
            return LineState.VOID;
        }
        if (ledger.lines().outcome(line) == Outcome.DECLINED) {
            return LineState.DECLINED;
        }
        return status == TicketStatus.OPEN ? LineState.OPEN : LineState.CLOSED;
    }

    private record Sums(Ledger ledger, JobLines.LineColumns columns) implements SplitModel {
        @Override
        public int tickets() {
            return ledger.tickets().size();
        }

        @Override
        public double[] loads(double[] ticketWeights) {
            double[] hours = new double[ledger.repairTypes().size()];
            double[] quoted = new double[hours.length];
            for (int line = 0; line < columns.judged().length; line++) {
                if (columns.judged()[line]) {
                    int type = ledger.lines().repairType(line);
                    double weight = ticketWeights[ledger.lines().ticket(line)];
                    hours[type] += weight * Hours.of(columns.labelledSeconds()[line] + columns.reworkSeconds()[line]);
                    quoted[type] += weight * columns.todayQuotedHours()[line];
                }
            }
            for (int type = 0; type < hours.length; type++) {
                hours[type] = quoted[type] > 0 ? hours[type] / quoted[type] : Double.NaN;
            }
            return hours;
        }
    }
}
