package benchtrue.revision;

import benchtrue.findings.QuoteSizes;

/**
 * Two lines that the next price book could have for one repair, where its hours run with the size of the quote. The owner decides;
 * nothing of it enters the drafted book by itself.
 *
 * @param sizes what was found
 * @param small hours of a usual small quote, from and to
 * @param large hours of a usual large quote, from and to
 * @param finding what was found, in a sentence
 * @param proposal what is proposed, in a sentence
 */
public record SizeLines(QuoteSizes sizes, Step small, Step large, String finding, String proposal) {
    /**
     * Hours of one line.
     *
     * @param quotedSeconds as quoted now
     * @param proposedSeconds within the guard rails, on the grid of the price book
     * @param labour price of the proposed hours, ten-thousandths
     * @param heldBecause why it is held or limited, in words; empty where it is not
     */
    public record Step(long quotedSeconds, long proposedSeconds, long labour, String heldBecause) {}
}
