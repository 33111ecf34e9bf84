package benchtrue.findings;

import benchtrue.costing.CostedLines;
import benchtrue.format.Figures;
import benchtrue.hours.InseparablePair;
import benchtrue.settings.Settings;
import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Puts a finding into words for the owner, with the figures in it. */
final class Reason {
    private static final double LITTLE = 0.005;
    private static final double WORTH_SAYING = 0.02;

    private final CostedLines costs;
    private final Settings settings;
    private final Figures figures;
    private final UnreadShares unread;
    private final ShopPace.Corrections today;

    Reason(CostedLines costs, Settings settings, UnreadShares unread, ShopPace.Corrections today) {
        this.today = today;
        this.unread = unread;
        this.costs = costs;
        this.settings = settings;
        this.figures = settings.figures();
    }

    /**
     * Returns the sentence on a finding, whose own sentence is still empty.
     *
     * @param copies what the log owes to copied quotes, or null where that is little
     * @param slowing that the repair got slower, or null where nothing shows that
     * @param causes what sets some of its jobs apart
     */
    String of(RepairFinding finding, CopiedQuotes copies, Slowing slowing, List<Cause> causes) {
        if (finding.lines() == 0) {
            return "No finished job yet.";
        }
        return jobs(finding) + (copies == null ? range(finding) : "") + rework(finding) + slower(slowing)
                + verdict(finding) + copies(finding, copies)
                + causes.stream().map(this::cause).collect(Collectors.joining()) + pairs(finding) + ".";
    }

    private String cause(Cause cause) {
        return switch (cause.kind()) {
            case FEW_HANDS -> "; the excess lies with few hands; figures about people are off; " + cause.remedy();
            case SPREAD -> "; as far as the records tell it is spread over all of them: " + cause.remedy();
            case UNKNOWN -> "; too few jobs have hours of their own to tell where it lies: " + cause.remedy();
            default ->
                "; " + (cause.size() > 1 ? "the excess" : "what is left over") + " lies with the jobs "
                        + cause.label() + ": " + figures.count(cause.jobs()) + " of " + figures.count(cause.of())
                        + " take "
                        + figures.ratio(cause.size()) + " times as long as the others (" + figures.percent(0.9)
                        + " range "
                        + figures.ratio(cause.sizeLower()) + " to " + figures.ratio(cause.sizeUpper()) + ")"
                        + yearly(cause) + "; " + cause.remedy();
        };
    }

    private String yearly(Cause cause) {
        return cause.annualEffect() == 0 || !Absent.has(cause.annualEffect())
                ? ""
                : ", "
                        + figures.moneyRange(
                                StrictMath.min(
                                        StrictMath.abs(cause.annualLower()), StrictMath.abs(cause.annualUpper())),
                                StrictMath.max(
                                        StrictMath.abs(cause.annualLower()), StrictMath.abs(cause.annualUpper())))
                        + " a year";
    }

    private String slower(Slowing slowing) {
        if (slowing == null) {
            return "";
        }
        String since = ", slower by " + figures.percent(slowing.change() - 1) + " since about "
                + figures.monthOf(slowing.startDay());
        return Double.isNaN(slowing.loadSince())
                ? since + " (not yet borne out)"
                : since + " (" + figures.ratio(slowing.loadSince()) + " since)";
    }

    private String copies(RepairFinding finding, CopiedQuotes copies) {
        if (copies == null) {
            return "";
        }
        long copied = StrictMath.round(copies.copied());
        return "; about " + figures.count(copied) + " of " + figures.count(copies.checked())
                + " totals repeat the quote to the minute and say nothing about the work, "
                + (Double.isNaN(copies.loadWithout())
                        ? "and without them nothing is left"
                        : "without them the jobs took " + figures.ratio(copies.loadWithout())
                                + atPace(finding, copies.loadWithout()) + range(finding)
                                + "; verdict and money rest on " + figures.count(copies.checked() - copied)
                                + " measured of " + figures.count(copies.checked()) + " jobs");
    }

    private String jobs(RepairFinding finding) {
        return figures.count(finding.lines(), "job", "jobs") + " took " + figures.ratio(finding.loadFactor())
                + " hours per quoted hour" + atPace(finding, finding.loadFactor());
    }

    private String range(RepairFinding finding) {
        return Double.isNaN(finding.lower())
                ? ""
                : " (" + figures.percent(0.9) + " range " + figures.ratio(finding.lower()) + " to "
                        + figures.ratio(finding.upper()) + ")";
    }

    private String atPace(RepairFinding finding, double load) {
        int type = finding.repairType();
        double factor = today.factor()[type];
        double middle = unread.reach().middle()[type];
        double putBack = unread.reach().putBack()[type];
        List<String> parts = new ArrayList<>();
        if (matters(factor / middle)) {
            parts.add("at today's pace");
        }
        if (matters(middle / putBack)) {
            parts.add("without what rounding may have added");
        }
        if (matters(putBack)) {
            parts.add("with time on wrong tickets put back");
        }
        return parts.isEmpty() ? "" : ", " + figures.ratio(load * factor) + " " + String.join(" and ", parts);
    }

    private static boolean matters(double factor) {
        return StrictMath.abs(factor - 1) >= LITTLE;
    }

    private String rework(RepairFinding finding) {
        double share = Hours.of(finding.reworkSeconds()) / finding.quotedHours();
        return share < 0.005
                ? ""
                : ", of which " + figures.ratio(share) + " hours went into putting earlier work right";
    }

    private String verdict(RepairFinding finding) {
        return switch (finding.verdict()) {
            case UNDER_QUOTED -> ", more than chance explains: it loses " + yearly(finding);
            case OVER_QUOTED -> ", too few for chance to explain: its quotes run over by " + yearlyGain(finding);
            case LEANING_UNDER -> leaning(finding, "above");
            case LEANING_OVER -> leaning(finding, "below");
            case ON_THE_MARK -> ", within " + figures.percent(settings.tolerance()) + " of the quote";
            case TOO_FEW_JOBS ->
                ": too few to judge, at least " + FindVerdicts.ENOUGH_TICKETS + " tickets with logged hours are needed";
            case NOT_JUDGED -> ": not judged, since " + unread(finding.repairType());
        };
    }

    private String unread(int type) {
        double missing = unread.missing(type);
        return missing > unread.foreign(type)
                ? "about " + figures.percent(missing) + " of its hours may be among those that could not be read"
                : "up to " + figures.percent(unread.foreign(type))
                        + " of its hours may belong to quoted lines that could not be read";
    }

    private String leaning(RepairFinding finding, String side) {
        return finding.adjustedP() <= settings.falseDiscovery()
                ? ", surely " + side + " the quote, but only "
                        + figures.aboutMoney(StrictMath.abs(finding.annualShortfall()))
                        + " a year: too little to matter"
                : ", " + side + " the quote, but chance" + (inDoubt(finding.repairType()) ? "" : " alone")
                        + " could do that" + doubt(finding.repairType());
    }

    private boolean inDoubt(int type) {
        return unread.reach().lower()[type] < 1 - WORTH_SAYING || unread.reach().higher()[type] > 1 + WORTH_SAYING;
    }

    private String doubt(int type) {
        double most = Math.max(1 - unread.reach().lower()[type], unread.reach().higher()[type] - 1);
        return inDoubt(type)
                ? " together with " + figures.percent(most)
                        + " that coarse entries, wrong tickets or the shop's pace leave in doubt"
                : "";
    }

    private String yearly(RepairFinding finding) {
        return figures.moneyRange(finding.annualShortfallLower(), finding.annualShortfallUpper()) + " a year at "
                + figures.price(costs.shopRate()) + " an hour";
    }

    private String yearlyGain(RepairFinding finding) {
        return figures.moneyRange(-finding.annualShortfallUpper(), -finding.annualShortfallLower()) + " a year at "
                + figures.price(costs.shopRate()) + " an hour";
    }

    private String pairs(RepairFinding finding) {
        StringBuilder text = new StringBuilder();
        for (InseparablePair pair : costs.jobs().inseparable()) {
            if (pair.first() == finding.repairType() || pair.second() == finding.repairType()) {
                int other = pair.first() + pair.second() - finding.repairType();
                text.append("; its hours can't be told apart from those of ")
                        .append(costs.jobs().ledger().repairTypes().name(other))
                        .append(", both together took ")
                        .append(figures.ratio(pair.jointLoad()));
            }
        }
        return text.toString();
    }
}
