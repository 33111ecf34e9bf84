package benchtrue.calendar;

import benchtrue.shop.WaitReason;
import java.util.List;

/**
 * An open ticket and the one place where it stands.
 *
 * @param ticket index of the ticket
 * @param state where it stands
 * @param since first day of that
 * @param until day by which four in five such stretches are over, or the end that was recorded;
 *     {@link benchtrue.shop.Absent#DAY} where nothing tells it
 * @param waitsFor what a waiting ticket waits for, else null
 * @param repairs codes of the repair types on its accepted lines, in their order
 * @param reason why it stands there, in plain words
 * @param promise day to promise, kept four times in five; {@link benchtrue.shop.Absent#DAY} where the past does not tell
 * @param worth what it brings when it is handed over, in ten-thousandths; absent where a line has no price
 */
public record OpenTicket(
        int ticket,
        OpenState state,
        int since,
        int until,
        WaitReason waitsFor,
        List<Integer> repairs,
        String reason,
        int promise,
        long worth) {
    public OpenTicket {
        repairs = List.copyOf(repairs);
    }
}
