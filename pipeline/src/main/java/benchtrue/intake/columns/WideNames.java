package benchtrue.intake.columns;

import benchtrue.settings.UnpivotHeader;
import java.text.Normalizer;
import java.time.DayOfWeek;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Headers of a wide table's columns: dates, weekdays, days of a month. */
public final class WideNames {
    private static final String[] WEEKDAYS = {
        "mon monday mo montag lun lundi lunes lunedi ma maandag seg segunda man mandag mandag pon",
        "tue tues tuesday di dienstag mar mardi martes martedi dinsdag ter terca tis tirsdag tisdag wt",
        "wed wednesday mi mittwoch mer mercredi mie miercoles mercoledi wo woensdag qua quarta ons onsdag sr",
        "thu thur thurs thursday do donnerstag jeu jeudi jue jueves gio giovedi donderdag qui quinta tor torsdag czw",
        "fri friday fr freitag ven vendredi vie viernes venerdi vr vrijdag sex sexta fre fredag pt",
        "sat saturday sa samstag sonnabend sam samedi sab sabado sabato za zaterdag lor lordag sob",
        "sun sunday so sonntag dim dimanche dom domingo domenica zo zondag son sondag nd"
    };

    public static final Pattern DAY = Pattern.compile("(?:(?:day|tag|jour|dia|dag|giorno) ?)?([12]?\\d|3[01])\\.?");

    /** A day and a month without a year. */
    public static final Pattern DAY_AND_MONTH = Pattern.compile("(\\d{1,2})[./-](\\d{1,2})[./-]?");

    private static final Pattern DATED = Pattern.compile(
            "\\d{1,4}[./-] ?\\d{1,2}[./-] ?\\d{2,4}(?: 00:00.*)?|\\d{1,2}[. -]{1,2}\\p{L}{3,10}\\.?[ -]\\d{2,4}");

    private WideNames() {}

    /** Returns whether a header may be of a kind. */
    public static boolean isOf(UnpivotHeader kind, String name) {
        return switch (kind) {
            case TEXT -> !name.isBlank();
            case DATE ->
                DATED.matcher(bare(name)).matches()
                        || DAY_AND_MONTH.matcher(bare(name)).matches();
            case WEEKDAY -> weekday(name).isPresent();
            case DAY -> DAY.matcher(plain(name)).matches();
        };
    }

    /** Returns a header without the weekday before its date. */
    public static String bare(String name) {
        return name.strip().replaceAll("^\\p{L}{2,10}\\.?,? (?=\\d)", "");
    }

    /** Returns a header in small letters without accents. */
    public static String plain(String name) {
        return Normalizer.normalize(name.strip(), Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .replace("\u00F8", "o")
                .toLowerCase(Locale.ROOT);
    }

    /** Returns the weekday that a header names, alone or before a date. */
    public static Optional<DayOfWeek> weekday(String name) {
        String word = plain(name).split("[^\\p{L}]", 2)[0];
        for (int day = 0; day < WEEKDAYS.length; day++) {
            if (!word.isEmpty() && List.of(WEEKDAYS[day].split(" ")).contains(word)) {
                return Optional.of(DayOfWeek.of(day + 1));
            }
        }
        return Optional.empty();
    }
}
