package benchtrue.calendar;

import benchtrue.shop.WaitReason;

/**
 * Instruments that waited for one reason; calendar days, never bench hours.
 *
 * @param reason why
 * @param waits waits in the 365 days up to the as-of date
 * @param days their calendar days in that time
 * @param waitingNow instruments that wait now; one that waits for several reasons counts with the newest
 * @param atCost what those have cost so far, in ten-thousandths; absent without a wage list
 * @param worth what they bring when they are handed over
 */
public record Waiting(WaitReason reason, int waits, long days, int waitingNow, long atCost, long worth) {}
