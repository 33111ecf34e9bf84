package benchtrue.shop;

import java.util.List;

/**
 * One visit of one instrument.
 *
 * @param ticket the shop's own key
 * @param opened day it came in
 * @param promised day it was promised for, or {@link Absent#DAY}
 * @param closed day it was closed, or {@link Absent#DAY}
 * @param finished day the bench work was done, or {@link Absent#DAY}
 * @param status recorded, or derived from {@code closed} and the as-of date
 * @param instrumentClass class of instrument, never a make
 * @param builtYear year built, or {@link Absent#DAY}
 * @param traits words such as {@code bound-board}, in order, without repeats
 * @param quotedBy who wrote the quote; empty where not recorded
 * @param reworkOf index of the earlier ticket this visit puts right, or {@link Absent#INDEX}
 */
public record Ticket(
        String ticket,
        int opened,
        int promised,
        int closed,
        int finished,
        TicketStatus status,
        String instrumentClass,
        int builtYear,
        List<String> traits,
        String quotedBy,
        int reworkOf) {
    public Ticket {
        traits = List.copyOf(traits);
    }
}
