package benchtrue.sample;

import benchtrue.format.Words;
import benchtrue.shop.ChargeKind;
import benchtrue.shop.PaidBy;
import benchtrue.shop.QuoteBasis;

/** Counts what is less tidy about a visit. */
final class Untidiness {
    private Untidiness() {}

    static void count(Worked worked, Tally tally) {
        Visit visit = worked.visit();
        if (visit.fate() != Fate.STEADY) {
            tally.add("visit " + Words.of(visit.fate()));
        }
        if (visit.back().is()) {
            tally.add("back " + Words.of(visit.back().reason()));
        }
        for (int i = 0; i < worked.lines().size(); i++) {
            line(worked.lines().get(i), worked.loggedSeconds()[i], tally);
        }
    }

    private static void line(Line line, long logged, Tally tally) {
        Terms terms = line.terms();
        if (terms.kind() != ChargeKind.REPAIR) {
            tally.add("charge " + Words.of(terms.kind()));
        }
        if (terms.basis() == QuoteBasis.TIME) {
            tally.add("quoted by time");
        }
        if (terms.payer() != PaidBy.CUSTOMER) {
            tally.add("paid by " + Words.of(terms.payer()));
        }
        if (line.type() == Catalogue.ONE_OFF) {
            tally.add("one-off");
        }
        if (line.form() == QuoteForm.BLANK || line.form() == QuoteForm.FIRST_KEPT) {
            tally.add("quote " + Words.of(line.form()));
        }
        if (line.found()) {
            tally.add("found work");
        }
        if (line.copied() && logged > 0) {
            tally.add("copied quote");
        }
    }
}
