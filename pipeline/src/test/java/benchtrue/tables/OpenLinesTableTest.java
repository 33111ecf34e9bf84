package benchtrue.tables;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.ShopBuilder;
import benchtrue.calendar.PlanCalendar;
import benchtrue.costing.CostLines;
import benchtrue.costing.CostedLines;
import benchtrue.hours.SplitHours;
import benchtrue.settings.Settings;
import benchtrue.shop.ChargeKind;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OpenLinesTableTest {
    @TempDir
    Path folder;

    @Test
    void everyLineOfAnOpenTicketIsForecastWhereItCanBe() throws IOException {
        ShopBuilder shop = new ShopBuilder().type("setup", 2, "setup");
        for (int job = 0; job < 10; job++) {
            shop.ticket("A" + job).line("setup", 2).logged("ann", "1", 2);
        }
        shop.ticket("B1")
                .stillOpen()
                .line("setup", 2)
                .logged("ann", "1", 2.5)
                .line("setup", 1)
                .charged(ChargeKind.STORAGE);
        CostedLines costs =
                new CostLines().cost(new SplitHours().split(shop.build(), Settings.DEFAULTS), Settings.DEFAULTS);
        SmallTables.openLines(costs)
                .write(
                        new PlanCalendar()
                                .plan(costs, Settings.DEFAULTS)
                                .backlog()
                                .lines(),
                        folder);
        List<String> rows = Files.readAllLines(folder.resolve("open-lines.csv"));
        assertThat(rows.get(0))
                .isEqualTo("ticket,line,repair_type,opened,promised,quoted_hours,hours_so_far,expected_hours,lower,"
                        + "upper,chance_over_quote");
        assertThat(rows.get(1)).matches("B1,1,setup,2026-01-10,,2\\.0000,2\\.5000,2\\.[5-9].*,1\\.000000");
        assertThat(rows.get(2)).isEqualTo("B1,2,setup,2026-01-10,,1.0000,0.0000,,,,");
        assertThat(rows).hasSize(3);
    }
}
