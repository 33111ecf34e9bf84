package benchtrue.reconcile;

import benchtrue.shop.Hours;
import benchtrue.shop.Money;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/** What a ledger says, whatever rows it came from: tickets, lines, and the hours of each person, ticket and day. */
final class LedgerText {
    private LedgerText() {}

    /** Returns a line of text for each, in an order of their own. */
    static List<String> of(Ledger ledger) {
        List<String> texts = new ArrayList<>();
        for (int row = 0; row < ledger.tickets().size(); row++) {
            texts.add("ticket " + ledger.tickets().ticket(row) + " "
                    + day(ledger.tickets().opened(row)) + " "
                    + day(ledger.tickets().closed(row)) + " " + ledger.tickets().instrumentClass(row));
        }
        for (int row = 0; row < ledger.lines().size(); row++) {
            texts.add("line " + ledger.tickets().ticket(ledger.lines().ticket(row)) + " "
                    + ledger.lines().line(row) + " "
                    + ledger.repairTypes().name(ledger.lines().repairType(row)) + " "
                    + Hours.text(ledger.lines().quotedSeconds(row)) + " "
                    + ledger.lines().quotedLabour(row) / Money.UNIT);
        }
        texts.sort(null);
        TreeMap<String, Long> time = new TreeMap<>();
        for (int row = 0; row < ledger.time().size(); row++) {
            int ticket = ledger.time().ticket(row);
            String who =
                    ledger.technicians().name(ledger.time().technician(row)).replace(" of the shop", "");
            time.merge(
                    "time " + (ticket < 0 ? "of the shop" : ledger.tickets().ticket(ticket)) + " " + who + " "
                            + day(ledger.time().workDay(row)),
                    ledger.time().seconds(row),
                    Long::sum);
        }
        time.forEach((where, seconds) -> texts.add(where + " " + seconds + " s"));
        return texts;
    }

    private static String day(int day) {
        return LocalDate.ofEpochDay(day).toString();
    }
}
