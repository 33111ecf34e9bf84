package benchtrue.calendar;

import benchtrue.calendar.Call.Reason;
import benchtrue.calendar.CallDraft.Ground;
import benchtrue.format.Figures;
import benchtrue.format.Words;
import benchtrue.hours.UnquotedWork;
import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import benchtrue.shop.QuoteBasis;
import benchtrue.shop.WaitReason;
import java.util.Locale;

/** Puts the grounds for a call into words: why, what it costs not to call, and what to say. No customer is named. */
final class TellCall {
    private static final String NOBODY_AGREED = " of bench time that nobody agreed to pay.";
    /** No forecast is surer than that. */
    private static final double SURE = 0.99;

    private final Ledger ledger;
    private final Figures figures;

    TellCall(Ledger ledger, Figures figures) {
        this.ledger = ledger;
        this.figures = figures;
    }

    private String repair(OpenLine line) {
        return ledger.title(ledger.lines().repairType(line.line()));
    }

    private static String sentence(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private String lost(long saves, String what) {
        return saves > 0 ? sentence(figures.aboutMoney(saves)) + what : "What it costs is not known.";
    }

    /** An accepted price holds; only an estimate may be exceeded, and only with a yes. */
    private String price(OpenLine line) {
        return ledger.lines().quoteBasis(line.line()) == QuoteBasis.FIXED
                ? " The price we agreed holds without your yes."
                : "";
    }

    Ground likelyOver(OpenLine line, boolean notBegun, long saves) {
        String hours = figures.hours(line.expectedHours());
        String why = repair(line) + " will likely take about " + hours + ", quoted are "
                + figures.quote(line.quotedSeconds()) + " (" + figures.percent(StrictMath.min(SURE, line.chanceOver()))
                + " chance of more)";
        return new Ground(
                Reason.LIKELY_OVER,
                saves,
                why,
                lost(saves, NOBODY_AGREED),
                (notBegun ? "Before we begin: " : "Before we go on: ") + repair(line) + " looks like about " + hours
                        + " rather than " + figures.quote(line.quotedSeconds())
                        + ". May we go that far, or shall we leave something out?" + price(line));
    }

    Ground usedUp(OpenLine line, double ahead, long saves) {
        return new Ground(
                Reason.OVER_THE_QUOTE,
                saves,
                repair(line) + " has used up its " + figures.quote(line.quotedSeconds()) + ": "
                        + figures.quote(line.secondsSoFar()) + " so far, about " + figures.hours(line.expectedHours())
                        + " in all",
                lost(saves, NOBODY_AGREED),
                "The time quoted for " + repair(line) + " is used up; about " + figures.hours(ahead)
                        + " more are needed. Shall we go on?" + price(line));
    }

    Ground neverQuoted(UnquotedWork work, long saves) {
        String what = figures.hours(Hours.of(work.seconds())) + " of " + ledger.title(work.repairType());
        return new Ground(
                Reason.NEVER_QUOTED,
                saves,
                what + " were done and never quoted",
                lost(saves, " given away."),
                "The bench also found work that the quote does not name: " + ledger.title(work.repairType())
                        + ". Is that all right with you?");
    }

    Ground approval(OpenTicket ticket) {
        return new Ground(
                Reason.WAITS_FOR_APPROVAL,
                0,
                "it waits for the customer's yes since " + figures.day(ticket.since()),
                "The work stands still" + bill(ticket) + ".",
                "We have stopped until you decide on what the bench found. May we go on?");
    }

    Ground notCollected(OpenTicket ticket, double stands, long saves) {
        return new Ground(
                Reason.NOT_COLLECTED,
                saves,
                "ready since " + figures.day(ticket.since()) + " and not collected",
                (Absent.has(ticket.worth()) ? "A bill of " + figures.price(ticket.worth()) : "Its bill")
                        + " is open, less what was paid ahead"
                        + "; of such instruments about " + figures.percent(stands) + " still stood a month later.",
                "Your instrument is ready. On which day will you collect it?");
    }

    Ground overdue(Promise promise, OpenTicket ticket) {
        return late(Reason.OVERDUE, promise, ticket, "it was promised for " + figures.day(promise.promised()));
    }

    Ground likelyLate(Promise promise, OpenTicket ticket) {
        return late(
                Reason.LIKELY_LATE,
                promise,
                ticket,
                "the day promised, " + figures.day(promise.promised()) + ", will likely be missed");
    }

    private Ground late(Reason reason, Promise promise, OpenTicket ticket, String why) {
        return new Ground(
                reason,
                0,
                why,
                "The customer hears of it at the counter" + bill(ticket) + ".",
                "It takes longer than we said, and we are sorry."
                        + (Absent.has(promise.readyOn())
                                ? " It should be ready by " + figures.day(promise.readyOn()) + "."
                                : " We will name a new day."));
    }

    Ground waitsTooLong(OpenTicket ticket) {
        boolean parts = ticket.waitsFor() == WaitReason.PARTS || ticket.waitsFor() == WaitReason.OUTSIDE_WORK;
        return new Ground(
                Reason.WAITS_TOO_LONG,
                0,
                Words.of(ticket.waitsFor()).replace('-', ' ') + " since " + figures.day(ticket.since())
                        + "; four in five such waits were over by " + figures.day(ticket.until()),
                "The work stands still" + bill(ticket) + ".",
                parts
                        ? "Ask the supplier for a day, then tell the customer the new one."
                        : "It needs longer than usual to settle, and we will not hurry it. We will name a new day.");
    }

    private String bill(OpenTicket ticket) {
        return Absent.has(ticket.worth()) && ticket.worth() > 0
                ? "; a bill of " + figures.price(ticket.worth()) + " waits"
                : "";
    }
}
