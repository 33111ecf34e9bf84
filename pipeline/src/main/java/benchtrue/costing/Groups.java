package benchtrue.costing;

import java.util.List;

/**
 * Jobs finished in the 365 days up to the as-of date, grouped; in each list the largest contribution a bench hour first.
 *
 * @param all all of them together, one row
 * @param types by repair type
 * @param families by family
 * @param classes by instrument class
 * @param writers by quote writer; empty unless the settings show people
 * @param payers by who pays
 * @param ownStock work on the shop's own stock, at most one row: cost of the stock, not a loss; in no other list
 * @param worstTickets the twenty tickets that lost most, the largest loss first; empty without a wage list
 * @param quotes quotes given in that time and how many were accepted, by repair type
 */
public record Groups(
        List<GroupMoney> all,
        List<GroupMoney> types,
        List<GroupMoney> families,
        List<GroupMoney> classes,
        List<GroupMoney> writers,
        List<GroupMoney> payers,
        List<GroupMoney> ownStock,
        List<GroupMoney> worstTickets,
        List<QuoteOutcome> quotes) {
    public Groups {
        all = List.copyOf(all);
        types = List.copyOf(types);
        families = List.copyOf(families);
        classes = List.copyOf(classes);
        writers = List.copyOf(writers);
        payers = List.copyOf(payers);
        ownStock = List.copyOf(ownStock);
        worstTickets = List.copyOf(worstTickets);
        quotes = List.copyOf(quotes);
    }
}
