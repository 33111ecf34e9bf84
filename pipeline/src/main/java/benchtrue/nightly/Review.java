package benchtrue.nightly;

import benchtrue.answers.Answers;
import benchtrue.answers.PriceList;
import benchtrue.answers.QuoteTable;
import benchtrue.calendar.Calendar;
import benchtrue.costing.CostedLines;
import benchtrue.costing.Restatement;
import benchtrue.findings.Findings;
import benchtrue.hours.JobLines;
import benchtrue.reconcile.Ledger;
import benchtrue.revision.Revision;
import benchtrue.settings.Settings;
import benchtrue.shop.Balance;
import benchtrue.shop.Notice;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Everything a report may show of one night.
 *
 * @param settings the shop's settings
 * @param ledger what the shop recorded
 * @param jobs every line with its hours
 * @param costs every line with its money
 * @param calendar where every open ticket stands, whom to call, work in the shop
 * @param findings what the review found
 * @param revision the drafted price book
 * @param balances rows, hours and money: read against where it went, all proved
 * @param notices doubtful, changed and unread things, counted, with a few examples
 * @param restatements figures of sealed months that the records now tell otherwise
 * @param setAside how many rows of a table were set aside, by the table's name; tables without any are left out
 * @param breakdowns answers to the owner's standing questions, in the owner's order
 * @param before day of the published review of about a month before, where there is one
 */
public record Review(
        Settings settings,
        Ledger ledger,
        JobLines jobs,
        CostedLines costs,
        Calendar calendar,
        Findings findings,
        Revision revision,
        List<Balance> balances,
        List<Notice> notices,
        List<Restatement> restatements,
        SortedMap<String, Long> setAside,
        List<StandingAnswer> breakdowns,
        Optional<LocalDate> before) {
    public Review {
        balances = List.copyOf(balances);
        notices = List.copyOf(notices);
        restatements = List.copyOf(restatements);
        breakdowns = List.copyOf(breakdowns);
        setAside = Collections.unmodifiableSortedMap(new TreeMap<>(setAside));
    }

    /** Returns each price book to come beside the one before it. */
    public List<PriceList> priceLists() {
        return PriceList.of(ledger, revision.coming());
    }

    /** Returns what whoever writes quotes needs of each repair. */
    public QuoteTable quoteTable() {
        return QuoteTable.of(jobs, findings, revision, settings.figures());
    }

    /** Returns the same review with the answers to standing questions. */
    Review answering(List<StandingAnswer> answers) {
        return beside(answers, before);
    }

    /** Returns the same review, which leads to one before. */
    Review after(Optional<LocalDate> earlier) {
        return beside(breakdowns, earlier);
    }

    private Review beside(List<StandingAnswer> answers, Optional<LocalDate> earlier) {
        return new Review(
                settings,
                ledger,
                jobs,
                costs,
                calendar,
                findings,
                revision,
                balances,
                notices,
                restatements,
                setAside,
                answers,
                earlier);
    }

    /** Returns what every output tells first, in its order. */
    public Answers answers() {
        return Answers.of(findings, revision, costs, calendar, settings);
    }
}
