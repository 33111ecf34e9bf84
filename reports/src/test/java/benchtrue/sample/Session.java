package benchtrue.sample;

import benchtrue.shop.TimeKind;

/**
 * One stretch of a technician's time as it is logged.
 *
 * @param technician who
 * @param day when
 * @param fromSeconds seconds of the working day before it
 * @param seconds how long
 * @param line number of the line it names, 0 for none
 * @param type repair type it names, or {@link Catalogue#ONE_OFF} for none
 * @param kind what it was for
 * @param tickets its tickets as the exports write them; empty for shop time
 */
record Session(
        int technician, int day, int fromSeconds, long seconds, int line, int type, TimeKind kind, String tickets) {}
