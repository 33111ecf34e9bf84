package benchtrue.mapping;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchtrue.ShopFolder;
import benchtrue.settings.ReadSettings;
import benchtrue.shop.Refusal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Time logs of one ticket, whose hours are written in many ways. */
class HoursAsWrittenTest {
    @TempDir
    Path folder;

    private ShopFolder log(String file, String header, String... hours) {
        List<String> lines = new ArrayList<>(List.of(header));
        for (int entry = 0; entry < hours.length; entry++) {
            lines.add("T1,Ada,2026-03-" + (3 + entry % 15 < 10 ? "0" : "") + (3 + entry % 15) + ",\"" + hours[entry]
                    + "\"");
        }
        return new ShopFolder(folder).without("exports/time-log.csv").file(file, lines.toArray(String[]::new));
    }

    private static long seconds(ShopFolder shop) {
        long sum = 0;
        for (int entry = 0; entry < shop.reconciled().ledger().time().size(); entry++) {
            sum += shop.reconciled().ledger().time().seconds(entry);
        }
        return sum;
    }

    private ShopFolder drafted(ShopFolder shop) throws IOException {
        Draft draft = new DraftMapping().draft(folder, new ReadSettings().read(folder), "");
        Files.writeString(folder.resolve(ReadSettings.FILE), draft.text());
        return shop;
    }

    @Test
    void oneFileMayWriteHoursInAllWaysAtOnce() throws IOException {
        ShopFolder shop = drafted(log(
                "exports/clock.csv",
                "Job,Worker,Day,Time",
                "1.5",
                "90 min",
                "1h30'",
                "1 Std. 30 Min.",
                "1\u00bd",
                "1:30 h"));
        assertThat(shop.reconciled().setAside().tables()).isEmpty();
        assertThat(seconds(shop)).isEqualTo(6 * 5_400);
    }

    @Test
    void minutesBehindThePointAreAskedForWithBothReadings() {
        ShopFolder shop = log("exports/time-log.csv", "ticket,technician,work_date,hours", minutes());
        assertThatThrownBy(shop::exports)
                .isInstanceOf(Refusal.class)
                .hasMessageContainingAll(
                        "\"2.45\" is 2 h 27 min if hundredths of an hour stand behind the sign and 2 h 45 min if minutes do",
                        "of 15 such figures none goes beyond 59",
                        "hours = \"hours-minutes\" (or hours = \"hours\")");
    }

    @ParameterizedTest
    @ValueSource(strings = {"hours-minutes", "hours"})
    void theOwnersWordSettlesIt(String unit) {
        ShopFolder shop = log("exports/time-log.csv", "ticket,technician,work_date,hours", minutes())
                .file("shop.toml", "[[files]]", "name = \"time*\"", "table = \"time-log\"", "hours = \"" + unit + "\"");
        assertThat(seconds(shop)).isEqualTo(5 * (unit.equals("hours") ? 17_640 : 19_800));
    }

    @Test
    void aDraftTakesThemForMinutesAndAsks() throws IOException {
        ShopFolder shop = log("exports/clock.csv", "Job,Worker,Day,Time", minutes());
        Draft draft = new DraftMapping().draft(folder, new ReadSettings().read(folder), "");
        assertThat(draft.text()).contains("hours = \"hours-minutes\"  # 70 %");
        assertThat(draft.questions()).singleElement().asString().contains("what stands behind the sign of its hours?");
        Files.writeString(folder.resolve(ReadSettings.FILE), draft.text());
        assertThat(shop.reconciled().setAside().tables()).isEmpty();
    }

    @Test
    void oneFigureThatIsLoggedOftenTellsNothing() {
        String[] hours = new String[20];
        Arrays.fill(hours, "1.20");
        assertThat(seconds(log("exports/time-log.csv", "ticket,technician,work_date,hours", hours)))
                .isEqualTo(20 * 4_320);
    }

    @Test
    void quartersAndHundredthsAreWhatTheyAre() {
        String[] quarters = new String[20];
        for (int entry = 0; entry < quarters.length; entry++) {
            quarters[entry] = List.of("1.25", "0.50", "2.75", "1.10").get(entry % 4);
        }
        assertThat(seconds(log("exports/time-log.csv", "ticket,technician,work_date,hours", quarters)))
                .isEqualTo(5 * (4_500 + 1_800 + 9_900 + 3_960));
    }

    @Test
    void aFewHundredthsBelowSixtyAreChance() {
        String[] hours = "5.01 7.44 1.16 3.59 2.08 6.31 4.22 1.37 2.51 7.03 3.18 5.29".split(" ");
        long expected = Stream.of(hours)
                .mapToLong(text -> Math.round(3_600 * Double.parseDouble(text)))
                .sum();
        assertThat(seconds(log("exports/time-log.csv", "ticket,technician,work_date,hours", hours)))
                .isEqualTo(expected);
    }

    @Test
    void anotherSystemsFilesTellTogether() throws IOException {
        String[] rule = {
            "[[files]]",
            "name = \"clock*\"",
            "table = \"time-log\"",
            "[files.columns]",
            "ticket = \"Job\"",
            "technician = \"Worker\"",
            "work_date = \"Day\"",
            "hours = \"Time\""
        };
        ShopFolder shop = log("exports/clock-1.csv", "Job,Worker,Day,Time", "1.00", "2.30")
                .file("shop.toml", rule);
        assertThat(seconds(shop)).isEqualTo(3_600 + 8_280);
        log("exports/clock-2.csv", "Job,Worker,Day,Time", "1.15", "3.45");
        shop.file("shop.toml", rule);
        assertThatThrownBy(shop::exports).hasMessageContaining("of 4 such figures none goes beyond 59");
        shop = log("exports/clock-3.csv", "Job,Worker,Day,Time", "1.75", "4.90").file("shop.toml", rule);
        assertThat(shop.reconciled().setAside().tables()).isEmpty();
    }

    /** An hour and a half, one and a quarter, and two and three quarters, five times each. */
    private static String[] minutes() {
        String[] minutes = new String[15];
        for (int entry = 0; entry < minutes.length; entry++) {
            minutes[entry] = List.of("1.30", "1.15", "2.45").get(entry % 3);
        }
        return minutes;
    }
}
