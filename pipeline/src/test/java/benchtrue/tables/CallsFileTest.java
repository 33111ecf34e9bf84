package benchtrue.tables;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.ReviewOf;
import benchtrue.ShopBuilder;
import benchtrue.nightly.Review;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.component.VEvent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The calls as another program's reader of RFC 5545 takes them. */
class CallsFileTest {
    @TempDir
    Path folder;

    private static ShopBuilder shop(String ticket) {
        ShopBuilder shop = new ShopBuilder().asOf("2026-10-31").type("refret", 10);
        for (int job = 0; job < 20; job++) {
            shop.ticket("A" + (10 + job))
                    .opened("2026-10-05")
                    .line("refret", 10)
                    .logged("ada", "1", 15 + job % 2);
        }
        return shop.ticket(ticket).opened("2026-10-30").stillOpen().line("refret", 10);
    }

    private String write(ShopBuilder shop) throws IOException {
        Review review = ReviewOf.shop(shop);
        new WriteTables(review.costs(), review.calendar(), review.findings(), review.settings()).calls(folder);
        Path file = folder.resolve(CallsFile.NAME);
        return Files.exists(file) ? Files.readString(file) : "";
    }

    private static List<VEvent> read(String text) throws IOException, ParserException {
        Calendar calendar = new CalendarBuilder().build(new StringReader(text));
        assertThat(calendar.validate().getEntries()).isEmpty();
        return calendar.getComponents("VEVENT");
    }

    @Test
    void eachCallIsOneWholeDayEntryOnTheNextDayOfWork() throws IOException, ParserException {
        List<VEvent> entries = read(write(shop("X-1")));
        assertThat(entries).hasSize(1);
        VEvent call = entries.get(0);
        assertThat(call.getSummary().orElseThrow().getValue()).isEqualTo("Call about X-1: refret");
        assertThat(call.getDescription().orElseThrow().getValue())
                .startsWith("Refret will likely take about")
                .contains("Say: Before we begin: refret looks like");
        // All work was logged on Wednesdays; the day after the night is a Sunday.
        assertThat(call.getDateTimeStart().orElseThrow().getDate()).hasToString("2026-11-04");
    }

    @Test
    void signsThatTheFormatUsesItselfAndForeignLettersComeBackAsTheyWere() throws IOException, ParserException {
        String ticket = "Größe; 5,1 \\ 弦楽器修理票弦楽器修理票弦楽器修理票弦楽器修理票弦楽器修理票";
        String text = write(shop(ticket));
        assertThat(text.lines())
                .allSatisfy(line ->
                        assertThat(line.getBytes(StandardCharsets.UTF_8)).hasSizeLessThanOrEqualTo(75));
        assertThat(text.replace("\r\n", "")).doesNotContain("\n");
        assertThat(read(text).get(0).getSummary().orElseThrow().getValue())
                .isEqualTo("Call about " + ticket + ": refret");
    }

    @Test
    void nobodyToCallLeavesNoFile() throws IOException {
        assertThat(write(new ShopBuilder()
                        .type("refret", 10)
                        .ticket("A")
                        .line("refret", 10)
                        .logged("ada", "1", 10)))
                .isEmpty();
    }
}
