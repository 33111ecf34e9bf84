package benchtrue.intake.dialects;

import benchtrue.intake.cells.ClockText;
import benchtrue.intake.columns.Problem;
import java.util.HashSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Weighs whether what stands behind the sign of a file's hours are minutes: 1.30 for an hour and a half. Hundredths of an hour
 * go beyond 59 sooner or later, and a shop that logs in quarters writes 25, 50 and 75. Mutable.
 */
public final class PointedMinutes {
    /** Twelve of hundredths at random below 60 are met once in five hundred files. */
    private static final int FEWEST = 12;

    /** One in so many may be mistyped. */
    private static final int MISTYPED = 20;

    private static final Set<Integer> QUARTERS = Set.of(15, 45);

    /** Below an hour, short stretches look like minutes; so only figures from one hour on tell. */
    private static final Pattern TWO_DECIMALS = Pattern.compile("-?0*[1-9]\\d{0,3}[.,](\\d\\d)");
    /** One figure met often tells nothing: so many must differ behind the sign, or both odd quarters of an hour be there. */
    private static final int DIFFERENT = 5;

    private final Set<Integer> different = new HashSet<>();
    private long minutes;
    private long hundredths;
    private String example = "";

    /** Takes the text of a cell that was met so many times. */
    public void take(String text, long times) {
        Matcher found = TWO_DECIMALS.matcher(text.strip());
        if (found.matches()) {
            int behind = Integer.parseInt(found.group(1));
            if (behind >= 60) {
                hundredths += times;
            } else if (behind % 25 != 0) {
                minutes += times;
                different.add(behind);
                example = example.isEmpty() ? text.strip() : example;
            }
        }
    }

    /** Returns whether they may well be minutes, so that somebody must say. */
    public boolean likely() {
        boolean many = different.size() >= DIFFERENT || different.containsAll(QUARTERS);
        return many && minutes >= FEWEST && hundredths * MISTYPED <= minutes;
    }

    /** Returns both readings of the first figure that differs in them. */
    public String readings() {
        String point = example.replace(',', '.');
        double hundredths = Double.parseDouble(point);
        long inMinutes = StrictMath.round(hundredths * 60);
        return "\"" + Problem.shown(example) + "\" is "
                + ClockText.clock(60 * Math.abs(inMinutes)) + " if hundredths of an hour stand behind the sign and "
                + point.replace('.', ':') + " if minutes do; of " + minutes
                + " such figures hardly any goes beyond 59";
    }
}
