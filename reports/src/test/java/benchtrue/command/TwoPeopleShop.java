package benchtrue.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;

/**
 * What two people and a spreadsheet leave behind in fourteen months: sixty tickets, a list of quotes and a time log, nothing else.
 * Refrets take 1.35 hours and neck resets 1.30 for each hour quoted, the other repairs what they are quoted at.
 */
final class TwoPeopleShop {
    private static final int TICKETS = 60;
    private static final Map<String, double[]> REPAIRS = Map.of(
            "Setup", new double[] {1.5, 1.0},
            "Refret", new double[] {11, 1.35},
            "Bone nut", new double[] {1.25, 1.0},
            "Neck reset", new double[] {10, 1.3},
            "Pickup swap", new double[] {1.75, 1.0});
    private static final Map<String, List<String>> SPELLINGS = Map.of(
            "Setup", List.of("Setup", "set-up", "Set up", "SETUP"),
            "Refret", List.of("Refret", "re-fret", "Refrett", "refret "),
            "Bone nut", List.of("Bone nut", "bone-nut", "nut, bone", "Bone Nutt"),
            "Neck reset", List.of("Neck reset", "neck-reset", "reset neck", "Neck rest"),
            "Pickup swap", List.of("Pickup swap", "pickup-swap", "Pick-up swap", "pickup swapp"));

    /** Whether a repair is called the same each time. */
    enum Spelling {
        ONE,
        MANY
    }

    private final Random random;
    private final Spelling spelling;
    private final List<String> quotes = new ArrayList<>(List.of("Job,Date,Repair,Hours,Price"));
    private final List<String> log = new ArrayList<>();
    private double logged;

    private TwoPeopleShop(long seed, Spelling spelling) {
        random = new Random(seed);
        this.spelling = spelling;
    }

    /** Returns the repair that a spelling is one of. */
    static String repair(String name) {
        return SPELLINGS.entrySet().stream()
                .filter(entry -> entry.getKey().equals(name) || entry.getValue().contains(name))
                .findFirst()
                .orElseThrow()
                .getKey();
    }

    /** Writes the shop's two files and returns the hours in its log. */
    static double write(Path shop, long seed, Spelling spelling) throws IOException {
        TwoPeopleShop made = new TwoPeopleShop(seed, spelling);
        LocalDate day = LocalDate.of(2025, 8, 4);
        for (int ticket = 0; ticket < TICKETS; ticket++) {
            day = day.plusDays(4 + made.random.nextInt(5));
            made.ticket(String.valueOf(1_001 + ticket), day);
        }
        Collections.sort(made.log);
        made.log.add(0, "Day,Who,Job,Time");
        Files.createDirectories(shop.resolve("exports"));
        Files.write(shop.resolve("exports/Quotes.csv"), made.quotes, StandardCharsets.UTF_8);
        Files.write(shop.resolve("exports/Hours.csv"), made.log, StandardCharsets.UTF_8);
        return made.logged;
    }

    private void ticket(String key, LocalDate quoted) {
        List<String> repairs = new ArrayList<>(REPAIRS.keySet());
        Collections.sort(repairs);
        Collections.shuffle(repairs, random);
        double minutes = 0;
        for (String repair : repairs.subList(0, 1 + random.nextInt(3) / 2)) {
            double[] hours = REPAIRS.get(repair);
            String name =
                    spelling == Spelling.ONE ? repair : SPELLINGS.get(repair).get(random.nextInt(4));
            quotes.add(
                    String.format(Locale.ROOT, "%s,%s,\"%s\",%.2f,%.2f", key, quoted, name, hours[0], hours[0] * 85));
            minutes += 60 * hours[0] * hours[1] * StrictMath.exp(0.15 * random.nextGaussian());
        }
        LocalDate day = quoted.plusDays(2 + random.nextInt(18));
        String who = random.nextBoolean() ? "Ada" : "Ben";
        while (minutes >= 1) {
            long stretch = StrictMath.round(Math.min(minutes, 60 + 60 * random.nextInt(4)));
            day = day.getDayOfWeek() == DayOfWeek.SUNDAY ? day.plusDays(1) : day;
            log.add(day + "," + who + "," + key + "," + written(stretch));
            logged += stretch / 60.0;
            minutes -= stretch;
            day = day.plusDays(1 + random.nextInt(6));
        }
    }

    private String written(long minutes) {
        String clock = minutes / 60 + ":" + (minutes % 60 < 10 ? "0" : "") + minutes % 60;
        return spelling == Spelling.ONE || minutes >= 60 ? clock : minutes + " min";
    }
}
