package benchtrue.nightly;

import benchtrue.calendar.OpenTicket;
import benchtrue.calendar.Promise;
import benchtrue.format.Figures;
import benchtrue.shop.Absent;
import benchtrue.tables.EarlierResult.EarlierPromise;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Which days given to customers, or named by the result before, no longer hold. */
final class PromiseNews {
    private static final int MOST_NAMED = 4;

    /** A day that moved by less is no news. */
    private static final int DAYS = 3;

    private final Review review;
    private final Figures figures;

    PromiseNews(Review review) {
        this.review = review;
        figures = review.settings().figures();
    }

    private String ticket(int ticket) {
        return review.ledger().tickets().ticket(ticket);
    }

    /** Returns which promised days to come are in danger; nothing where none is. */
    List<String> inDanger() {
        List<String> named = review.calendar().backlog().promises().stream()
                .filter(promise -> promise.promised() >= review.ledger().asOf() && promise.atRisk())
                .map(this::inDanger)
                .toList();
        return line("Promised days that will likely not hold: ", named);
    }

    private String inDanger(Promise promise) {
        return ticket(promise.ticket()) + " (" + figures.day(promise.promised())
                + (Absent.has(promise.readyOn()) ? ", rather " + figures.day(promise.readyOn()) : "") + ")";
    }

    /** Returns which days of the result before no longer hold; nothing where all do. */
    List<String> moved(List<EarlierPromise> earlier) {
        Map<String, Integer> before = earlier.stream()
                .collect(Collectors.toMap(EarlierPromise::ticket, EarlierPromise::day, (first, second) -> first));
        List<String> named = new ArrayList<>();
        for (OpenTicket ticket : review.calendar().open()) {
            int then = before.getOrDefault(ticket(ticket.ticket()), Absent.DAY);
            if (Absent.has(then) && Absent.has(ticket.promise()) && ticket.promise() > then + DAYS) {
                named.add(ticket(ticket.ticket()) + " (" + figures.day(then) + ", now " + figures.day(ticket.promise())
                        + ")");
            }
        }
        return line("Days to promise of the result before that no longer hold: ", named);
    }

    private List<String> line(String what, List<String> named) {
        int rest = named.size() - MOST_NAMED;
        return named.isEmpty()
                ? List.of()
                : List.of(what
                        + String.join(", ", named.subList(0, Math.min(MOST_NAMED, named.size())))
                        + (rest > 0 ? " and " + figures.count(rest) + " more, see open-tickets.csv." : "."));
    }
}
