package benchtrue.sample;

import benchtrue.shop.WaitReason;

/**
 * One stretch of waiting.
 *
 * @param from first day
 * @param to last day, {@link Bench#NEVER} where it still lasts
 * @param reason why
 */
record Pause(int from, int to, WaitReason reason) {}
