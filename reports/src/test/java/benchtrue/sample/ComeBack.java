package benchtrue.sample;

import benchtrue.shop.Absent;
import benchtrue.shop.ReturnReason;

/**
 * Why an instrument is back.
 *
 * @param ticket index of the earlier visit, or {@link Absent#INDEX} for an instrument that is not back
 * @param line number of the line that failed
 * @param type its repair type
 * @param instrument class of the instrument
 * @param traits its traits
 * @param due first day it may come back
 * @param reason why
 * @param lineKnown whether the exports name the line
 */
record ComeBack(
        int ticket, int line, int type, int instrument, int traits, int due, ReturnReason reason, boolean lineKnown) {
    static final ComeBack NONE =
            new ComeBack(Absent.INDEX, 0, Catalogue.ONE_OFF, 0, 0, Integer.MAX_VALUE, ReturnReason.NEW_DAMAGE, false);

    boolean is() {
        return ticket != Absent.INDEX;
    }

    /** Returns whether the visit puts earlier work right, rather than being a new job. */
    boolean putsRight() {
        return is() && reason != ReturnReason.NEW_DAMAGE;
    }

    /** Returns whether the earlier work failed for reasons of the shop's own. */
    boolean failed() {
        return is() && (reason == ReturnReason.OUR_FAULT || reason == ReturnReason.PART);
    }
}
