package benchtrue.sample;

/**
 * What is known of a visit before its lines.
 *
 * @param dice the visit's own stream
 * @param index place in the history
 * @param opened day it came in
 * @param instrument its class
 * @param traits its traits
 * @param writer who writes the quote
 */
record Draft(Dice dice, int index, int opened, int instrument, int traits, int writer) {
    Draft withTraits(int others) {
        return new Draft(dice, index, opened, instrument, others, writer);
    }
}
