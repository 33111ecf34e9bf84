package benchtrue.sample;

import benchtrue.shop.Absent;
import benchtrue.shop.ChargeKind;
import benchtrue.shop.Outcome;
import benchtrue.shop.QuoteBasis;

/**
 * One quoted line with what the shop's records do not know.
 *
 * @param number its key within the ticket
 * @param type place in the catalogue, or {@link Catalogue#ONE_OFF}
 * @param technician who does it
 * @param adjustment log of the quote over the book, before rounding: the writer's habit and the condition seen
 * @param bookSeconds book hours on the day of the quote
 * @param quotedSeconds first accepted quote, 0 where none is given
 * @param expectedSeconds expected bench time, all but chance being known
 * @param workedSeconds bench time it takes
 * @param loggedSeconds bench time that reaches the log: as worked, or as quoted where the quote is copied
 * @param copied whether the quote is copied into the log
 * @param found whether it was found on the bench and quoted then
 * @param quotedOn day it was quoted where found, else {@link Absent#DAY}
 * @param terms what was agreed
 * @param form how the quote stands in the exports
 * @param label what the technician writes beside the hours
 */
record Line(
        int number,
        int type,
        int technician,
        double adjustment,
        long bookSeconds,
        long quotedSeconds,
        double expectedSeconds,
        long workedSeconds,
        long loggedSeconds,
        boolean copied,
        boolean found,
        int quotedOn,
        Terms terms,
        QuoteForm form,
        Label label) {

    boolean accepted() {
        return terms.outcome() == Outcome.ACCEPTED;
    }

    /** Returns whether the line, once closed, is evidence about its repair type, the ticket not being a return. */
    boolean judged() {
        return type != Catalogue.ONE_OFF
                && accepted()
                && terms.kind() == ChargeKind.REPAIR
                && terms.basis() != QuoteBasis.TIME;
    }

    /** Returns the first accepted quote; the book's hours where none was given. */
    long judgedQuoteSeconds() {
        return form == QuoteForm.BLANK || quotedSeconds == 0 ? bookSeconds : quotedSeconds;
    }

    Line with(Terms other) {
        return copy(quotedSeconds, other, form);
    }

    Line with(QuoteForm other) {
        return copy(quotedSeconds, terms, other);
    }

    Line with(Terms otherTerms, QuoteForm otherForm, long otherQuote) {
        return copy(otherQuote, otherTerms, otherForm);
    }

    Line with(Label other) {
        return new Line(
                number,
                type,
                technician,
                adjustment,
                bookSeconds,
                quotedSeconds,
                expectedSeconds,
                workedSeconds,
                loggedSeconds,
                copied,
                found,
                quotedOn,
                terms,
                form,
                other);
    }

    private Line copy(long quote, Terms newTerms, QuoteForm newForm) {
        return new Line(
                number,
                type,
                technician,
                adjustment,
                bookSeconds,
                quote,
                expectedSeconds,
                workedSeconds,
                loggedSeconds,
                copied,
                found,
                quotedOn,
                newTerms,
                newForm,
                label);
    }

    /** Returns a found line as it is quoted on the day it is found. */
    Line quotedOn(int day, long book) {
        return new Line(
                number,
                type,
                technician,
                adjustment,
                book,
                LineMaker.quote(book, adjustment),
                expectedSeconds,
                workedSeconds,
                loggedSeconds,
                copied,
                true,
                day,
                terms,
                form,
                label);
    }
}
