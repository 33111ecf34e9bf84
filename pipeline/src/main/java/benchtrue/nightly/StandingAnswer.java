package benchtrue.nightly;

import benchtrue.breakdown.Breakdown;
import benchtrue.settings.Disclosure;

/**
 * The answer to one of the owner's standing questions.
 *
 * @param name of its files, without their ending
 * @param answer what was found
 * @param picture whether it is drawn
 */
public record StandingAnswer(String name, Breakdown answer, Disclosure picture) {}
