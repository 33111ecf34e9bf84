package benchtrue.revision;

import benchtrue.findings.Verdict;
import benchtrue.shop.Absent;

/**
 * One repair type's proposed row in the next price book.
 *
 * @param repairType code of the repair type
 * @param bookSeconds today's hours
 * @param proposedSeconds proposed hours; today's where held
 * @param bookLabour today's labour price
 * @param proposedLabour proposed labour price
 * @param coverageBefore share of jobs that fit today's hours, NaN where unknown
 * @param coverageAfter share of jobs expected to fit the proposed hours, NaN where unknown
 * @param annualEffect money a year at today's volume, ten-thousandths
 * @param basis what the proposal stands on, in words
 * @param heldBecause why it is held or limited, in words; empty where it is not
 * @param grounds the figures behind it
 * @param verdict what the evidence says of today's hours
 */
public record ProposedChange(
        int repairType,
        long bookSeconds,
        long proposedSeconds,
        long bookLabour,
        long proposedLabour,
        double coverageBefore,
        double coverageAfter,
        long annualEffect,
        String basis,
        String heldBecause,
        ProposalInputs grounds,
        Verdict verdict) {
    /**
     * Returns hours in seconds that a share of its jobs are expected to fit, putting right apart, rounded up as a book is
     * written; absent where that is not known.
     */
    public long secondsThatFit(double share) {
        double factor = grounds.fits().at(share);
        return Double.isFinite(factor) ? HourGrid.atLeast(factor * bookSeconds - 1) : Absent.AMOUNT;
    }

    /** Returns whether the evidence is sure that today's hours are wrong; else it only leans, or the policy asks for more. */
    public boolean sure() {
        return verdict == Verdict.UNDER_QUOTED || verdict == Verdict.OVER_QUOTED;
    }

    /** Returns whether hours or price are to change. */
    public boolean changes() {
        return proposedSeconds != bookSeconds || proposedLabour != bookLabour;
    }
}
