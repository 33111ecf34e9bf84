package benchtrue.revision;

import benchtrue.findings.Verdict;
import benchtrue.format.Figures;
import benchtrue.settings.Policy;
import benchtrue.settings.Settings;
import benchtrue.shop.Absent;
import benchtrue.shop.RepairType;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * How far the program may go without the owner (methods, section 8): nothing on too few jobs, no shorter hours for hazardous
 * work, for structural or finish work without shortest safe hours, or below those; one step at a time.
 *
 * @param seconds hours that may be proposed; today's where held
 * @param reasons why it is held or limited
 */
record GuardRails(long seconds, List<String> reasons) {
    private static final long NONE = -1;
    private static final Set<String> NEED_LEAST_HOURS = Set.of("structural", "finish");

    GuardRails {
        reasons = List.copyOf(reasons);
    }

    /** Returns the least hours one revision may go down to. */
    static long lowest(RepairType type, Policy policy) {
        long step = (long) StrictMath.ceil(type.bookSeconds() * (1 - policy.largestStep()));
        return Math.max(step, Absent.has(type.leastSeconds()) ? type.leastSeconds() : 0);
    }

    /** Returns the most hours one revision may go up to: the step's end, or what the shortest safe hours need. */
    static long highest(RepairType type, Policy policy) {
        long step = (long) StrictMath.floor(type.bookSeconds() * (1 + policy.largestStep()));
        return Absent.has(type.leastSeconds()) && type.leastSeconds() > step
                ? HourGrid.atLeast(type.leastSeconds())
                : step;
    }

    static ProposalInputs.Shortening shortening(RepairType type, Verdict verdict) {
        if (verdict == Verdict.TOO_FEW_JOBS || verdict == Verdict.NOT_JUDGED || type.bookSeconds() <= 0) {
            return ProposalInputs.Shortening.NO_CHANGE;
        }
        boolean unsafe = !type.hazards().isEmpty()
                || (!Absent.has(type.leastSeconds()) && NEED_LEAST_HOURS.contains(type.family()));
        return unsafe ? ProposalInputs.Shortening.OWNER_ONLY : ProposalInputs.Shortening.MAY;
    }

    static GuardRails of(RepairType type, Verdict verdict, double factor, Settings settings) {
        double wanted = factor * type.bookSeconds();
        if (type.bookSeconds() <= 0) {
            return held(settings, type, "no hours in the book to start from");
        }
        if (verdict == Verdict.NOT_JUDGED) {
            return held(settings, type, "not judged: too many of its hours could not be read");
        }
        if (verdict == Verdict.TOO_FEW_JOBS || Double.isNaN(factor)) {
            return held(settings, type, "too few jobs to change it");
        }
        if (StrictMath.abs(factor - 1) <= settings.tolerance()) {
            return held(settings, type, "within " + settings.figures().percent(settings.tolerance()) + " of the book");
        }
        return factor < 1 ? down(type, wanted, settings) : step(type, wanted, settings, new ArrayList<>());
    }

    /** Returns today's hours, since the owner decided so. */
    static GuardRails kept(RepairType type, Kept kept, Settings settings) {
        return held(settings, type, "kept by you until " + settings.figures().day(kept.until()) + ": " + kept.reason());
    }

    /** Returns the hours of a coming book, which the owner decided and is not asked about again. */
    static GuardRails decided(RepairType type, int decidedOn, int effective, Settings settings) {
        Figures figures = settings.figures();
        return held(
                settings, type, "decided on " + figures.day(decidedOn) + ", in force from " + figures.day(effective));
    }

    private static GuardRails held(Settings settings, RepairType type, String reason) {
        List<String> reasons = new ArrayList<>(List.of(reason));
        if (Absent.has(type.leastSeconds()) && type.bookSeconds() < type.leastSeconds()) {
            reasons.add("today's hours stand below the shortest safe hours ("
                    + settings.figures().quote(type.leastSeconds()) + "): check this entry");
        }
        return new GuardRails(type.bookSeconds(), reasons);
    }

    private static GuardRails down(RepairType type, double wanted, Settings settings) {
        if (!type.hazards().isEmpty()) {
            return held(
                    settings,
                    type,
                    "yours to decide: work with " + String.join(", ", type.hazards())
                            + " is never shortened by the program; ventilation, cure and clean-up belong in the quote");
        }
        if (!Absent.has(type.leastSeconds())) {
            return NEED_LEAST_HOURS.contains(type.family())
                    ? held(
                            settings,
                            type,
                            "yours to decide: " + type.family() + " work without shortest safe hours in the book")
                    : step(type, wanted, settings, new ArrayList<>());
        }
        List<String> reasons = new ArrayList<>();
        if (wanted < type.leastSeconds()) {
            reasons.add(
                    "not below the shortest safe hours (" + settings.figures().quote(type.leastSeconds()) + ")");
        }
        return step(type, wanted, settings, reasons);
    }

    private static GuardRails step(RepairType type, double wanted, Settings settings, List<String> reasons) {
        double step = settings.policy().largestStep();
        double lowest = type.bookSeconds() * (1 - step);
        double highest = type.bookSeconds() * (1 + step);
        double least = Absent.has(type.leastSeconds()) ? type.leastSeconds() : 0;
        double safe = StrictMath.max(wanted, least);
        if (least > highest) {
            String raised = "raised to the shortest safe hours, more than "
                    + settings.figures().percent(step) + " at once";
            return new GuardRails(HourGrid.atLeast(least), List.of(raised));
        }
        if (safe < lowest || safe > highest) {
            reasons.add("one revision moves at most " + settings.figures().percent(step) + "; the rest, to "
                    + settings.figures().quote((long) StrictMath.rint(safe)) + ", is carried forward");
        }
        double clipped = StrictMath.max(lowest, StrictMath.min(highest, safe));
        long rounded = rounded(clipped, StrictMath.max(lowest, least), highest);
        return settled(type, wanted, rounded == NONE ? Math.max(type.bookSeconds(), (long) least) : rounded, reasons);
    }

    /** Returns the nearest hours a book is written in between two limits, or {@link #NONE}. */
    private static long rounded(double seconds, double low, double high) {
        long nearest = HourGrid.nearest(seconds);
        if (nearest > high) {
            nearest = HourGrid.atMost(high);
        }
        if (nearest < low) {
            nearest = HourGrid.atLeast(low);
        }
        return nearest >= low && nearest <= high ? nearest : NONE;
    }

    /** Rounding must not turn a longer job into a shorter quote, nor the other way round. */
    private static GuardRails settled(RepairType type, double wanted, long rounded, List<String> reasons) {
        boolean turned = (rounded - type.bookSeconds()) * (wanted - type.bookSeconds()) <= 0
                && !(Absent.has(type.leastSeconds()) && type.bookSeconds() < type.leastSeconds());
        if (turned) {
            reasons.add("rounding leaves today's hours");
            return new GuardRails(type.bookSeconds(), reasons);
        }
        return new GuardRails(rounded, reasons);
    }
}
