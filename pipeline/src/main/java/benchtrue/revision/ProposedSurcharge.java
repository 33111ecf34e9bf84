package benchtrue.revision;

import benchtrue.shop.Surcharge;

/**
 * A line with a condition that the next price book could have, or has already.
 *
 * @param line as drafted; as it stands where the book has it
 * @param standing whether the book that the draft stands against has it
 * @param jobs jobs of the repair with the condition; 0 where the book has the line
 * @param basis what it stands on, in words
 */
public record ProposedSurcharge(Surcharge line, boolean standing, int jobs, String basis) {}
