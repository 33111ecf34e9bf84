package benchtrue.truth;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.calendar.Calendar;
import benchtrue.calendar.OpenState;
import benchtrue.calendar.OpenTicket;
import benchtrue.calendar.PlanCalendar;
import benchtrue.calendar.PromiseTrial;
import benchtrue.settings.Settings;
import benchtrue.shop.Absent;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Promises given at past cut-offs with what was known then, in invented shops whose visits end as they end. */
class PromiseTruthTest {
    /** Share of promises kept over all shops, and days against what rivals need for the same share. */
    private static final class Together {
        private int shops;
        private int inRange;
        private double kept;
        private double days;
        private double usual;
        private double beside;
        private double own;
        private double open;
        private int openInRange;
        private int waiting;
        private int told;

        void add(long seed, PromiseTrial trial, PromiseTrial open) {
            shops++;
            inRange += inRange(trial);
            openInRange += inRange(open);
            this.open += open.kept();
            kept += trial.kept();
            days += trial.days();
            usual += trial.usualDays();
            beside += trial.daysBesideOwn();
            own += trial.ownDays();
            System.out.printf(
                    Locale.ROOT,
                    "shop %d: %d promises, kept %.3f in %.1f days, usual plus queue %.1f; %d of its own, kept %.3f,"
                            + " %.1f days beside %.1f; of %d open visits kept %.3f in %.1f days%n",
                    seed,
                    trial.tried(),
                    trial.kept(),
                    trial.days(),
                    trial.usualDays(),
                    trial.ownTried(),
                    trial.ownKept(),
                    trial.daysBesideOwn(),
                    trial.ownDays(),
                    open.tried(),
                    open.kept(),
                    open.days());
        }

        /** What waits for something is not left lying; it is told a day. */
        void waiting(List<OpenTicket> open) {
            for (OpenTicket ticket : open) {
                waiting += ticket.state() == OpenState.WAITING ? 1 : 0;
                told += ticket.state() == OpenState.WAITING && Absent.has(ticket.promise()) ? 1 : 0;
            }
        }

        private static int inRange(PromiseTrial trial) {
            return trial.kept() >= 0.76 && trial.kept() <= 0.86 ? 1 : 0;
        }

        void holds(double leastInRange) {
            System.out.printf(
                    Locale.ROOT,
                    "%d shops, %d of them kept 76 to 86 %%; kept %.3f in %.2f days, usual plus queue %.2f; %.2f beside"
                            + " the shop's own %.2f; of open visits kept %.3f, %d shops in range%n",
                    shops,
                    inRange,
                    kept / shops,
                    days / shops,
                    usual / shops,
                    beside / shops,
                    own / shops,
                    open / shops,
                    openInRange);
            assertThat(kept / shops).isBetween(0.78, 0.84);
            assertThat(inRange / (double) shops).isGreaterThanOrEqualTo(leastInRange);
            assertThat(open / shops).isBetween(0.78, 0.84);
            assertThat(openInRange / (double) shops).isGreaterThanOrEqualTo(leastInRange);
            assertThat(told / (double) waiting).as("of %d waiting", waiting).isGreaterThanOrEqualTo(0.9);
            assertThat(days).isLessThan(usual);
            assertThat(beside).isLessThan(own);
        }
    }

    private static void promisesHold(long from, int shops, double leastInRange) {
        Together together = new Together();
        for (long seed = from; seed < from + shops; seed++) {
            Calendar calendar =
                    new PlanCalendar().plan(KnownShop.of(seed, shop -> shop).costs(), Settings.DEFAULTS);
            together.add(seed, calendar.trial(), calendar.openTrial());
            together.waiting(calendar.open());
        }
        together.holds(leastInRange);
    }

    @Test
    void fourPromisesInFiveAreKeptInFewerDaysThanByRuleOfThumb() {
        promisesHold(9_001, 3, 0.6);
    }

    @Test
    @Tag("proof")
    void soTheyAreInAHundredShops() {
        promisesHold(9_501, 100, 0.95);
    }
}
