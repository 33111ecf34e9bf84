package benchtrue.sample;

import benchtrue.shop.ChargeKind;
import benchtrue.shop.Outcome;
import benchtrue.shop.PaidBy;
import benchtrue.shop.QuoteBasis;

/** What was agreed about a line. */
record Terms(Outcome outcome, ChargeKind kind, QuoteBasis basis, PaidBy payer) {
    static final Terms PLAIN = new Terms(Outcome.ACCEPTED, ChargeKind.REPAIR, QuoteBasis.FIXED, PaidBy.CUSTOMER);

    Terms with(Outcome other) {
        return new Terms(other, kind, basis, payer);
    }

    Terms with(ChargeKind other) {
        return new Terms(outcome, other, basis, payer);
    }

    Terms with(QuoteBasis other) {
        return new Terms(outcome, kind, other, payer);
    }

    Terms with(PaidBy other) {
        return new Terms(outcome, kind, basis, other);
    }
}
