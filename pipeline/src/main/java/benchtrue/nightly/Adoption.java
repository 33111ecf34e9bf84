package benchtrue.nightly;

import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.time.LocalDate;
import java.util.Optional;

/**
 * How a decided draft is to become a price book.
 *
 * @param effective first day it is in force
 * @param decidedOn day of the decision
 * @param by who decided
 * @param usedAlready why it is in force from a day that is not after that of the decision; empty where it is
 * @param later what to do where a later book overrides a row
 */
public record Adoption(
        LocalDate effective, LocalDate decidedOn, String by, Optional<String> usedAlready, LaterBook later) {
    /** What to do where a later book overrides what is decided now. */
    public enum LaterBook {
        /** Refuse, and say which rows. */
        ASK,
        /** The owner confirmed that it does. */
        OVERRIDES
    }

    int day() {
        return (int) effective.toEpochDay();
    }

    void expectDay() {
        if (effective.isAfter(decidedOn)) {
            if (usedAlready.isPresent()) {
                throw refused("is after the day of deciding, so that it needs no --effective-past");
            }
        } else if (usedAlready.isEmpty()) {
            throw refused("is not after the day of deciding, " + decidedOn
                    + "; name a later day. Where the book was used from then already, say so with --effective-past and"
                    + " --reason");
        } else if (usedAlready.get().isBlank()) {
            throw refused("lies in the past; say with --reason why the book was used from then already");
        }
    }

    private Refusal refused(String why) {
        return new Refusal(ExitCode.USAGE, "The day " + effective + " " + why + ". Nothing was written.");
    }
}
