package benchtrue.revision;

import benchtrue.findings.Driver;
import benchtrue.settings.Settings;
import benchtrue.shop.Hours;
import java.util.List;

/**
 * Drafts surcharge lines for traits that surely make a family of repairs longer: told apart from chance over all traits and
 * families together, with an interval wholly above zero. The owner decides; nothing of it enters the drafted book by itself.
 */
final class DraftSurcharges {
    private DraftSurcharges() {}

    /** Returns the lines, in the order of the drivers. */
    static List<SurchargeLine> of(List<Driver> drivers, long shopRate, Settings settings) {
        return drivers.stream()
                .filter(driver -> driver.extraLower() > 0 && driver.adjustedP() <= settings.falseDiscovery())
                .map(driver -> line(driver, shopRate, settings))
                .filter(line -> line.seconds() > 0)
                .toList();
    }

    private static SurchargeLine line(Driver driver, long shopRate, Settings settings) {
        long seconds = HourGrid.nearest(driver.extraHours() * Hours.SECONDS);
        return new SurchargeLine(
                driver.family(),
                driver.trait(),
                driver.jobsWith(),
                seconds,
                Price.ofHours(driver.family(), seconds, shopRate, settings.policy()),
                driver.extraLower(),
                driver.extraUpper());
    }
}
