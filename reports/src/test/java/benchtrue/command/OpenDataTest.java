package benchtrue.command;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.Desk;
import benchtrue.intake.columns.Table;
import benchtrue.sample.SampleOptions;
import benchtrue.sample.Tidiness;
import benchtrue.sample.WriteSample;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Another program's reader of data packages (npm, MIT) meets what the descriptions promise, row by row. */
@Tag("browser")
class OpenDataTest {
    private static final String READER = "datapackage@1.1.10";
    private static final String SCRIPT = "read-package.js";

    @TempDir
    Path folder;

    private Desk desk;

    @BeforeEach
    void fetchTheReader() throws IOException, InterruptedException {
        desk = new Desk(folder);
        desk.npm(READER);
        try (InputStream script = SampleOptions.class.getResourceAsStream(SCRIPT)) {
            Files.copy(script, folder.resolve(SCRIPT));
        }
    }

    private List<String> read(Path described) throws IOException, InterruptedException {
        return desk.run(
                        "on Debian, apt-get install nodejs",
                        "node",
                        SCRIPT,
                        described.resolve("datapackage.json").toString(),
                        described.toString())
                .lines()
                .toList();
    }

    @Test
    void theTablesOfANightAreAsDescribed() throws IOException, InterruptedException {
        assertThat(read(OneNight.onTheSample().results().toRealPath()))
                .hasSizeGreaterThan(9)
                .allMatch(line -> line.matches("read [1-9][0-9]* rows of [-a-z0-9/]+"));
    }

    @Test
    void whatATidyShopHandsOverIsAsDescribed() throws IOException, InterruptedException {
        Path shop = folder.resolve("shop");
        WriteSample.write(SampleOptions.standard(shop).withTickets(300).with(Tidiness.TIDY));
        assertThat(read(shop))
                .hasSize(Table.values().length - 1) // without surcharges
                .allMatch(line -> line.matches("read [1-9][0-9]* rows of [-a-z0-9/]+"));
    }

    @Test
    void anAmountThatIsNoneIsFound() throws IOException, InterruptedException {
        Path night = folder.resolve("night");
        Files.createDirectories(night);
        Path results = OneNight.onTheSample().results();
        for (String name : List.of("datapackage.json", "findings.csv")) {
            Files.copy(results.resolve(name), night.resolve(name));
        }
        Path description = night.resolve("datapackage.json");
        String text = Files.readString(description);
        int begin = text.indexOf("    {\n      \"name\": \"findings\"");
        int end = text.indexOf("\n    }", begin) + "\n    }".length();
        Files.writeString(
                description,
                "{\"profile\": \"tabular-data-package\", \"name\": \"one\", \"resources\": ["
                        + text.substring(begin, end) + "]}");
        Path findings = night.resolve("findings.csv");
        Files.writeString(
                findings, Files.readString(findings).replaceFirst("(\r\n[^,]+,[^,]+,[^,]+),[0-9]+,", "$1,many,"));
        assertThat(read(night)).first().asString().startsWith("findings-0, row 2: ");
    }

    /** Some of its rows are wrong on purpose; its description is not. */
    @Test
    void theCommittedSampleIsADataPackage() throws IOException, InterruptedException {
        assertThat(read(Path.of("..", "sample-exports").toRealPath()))
                .noneMatch(line -> line.startsWith("descriptor"))
                .anyMatch(line -> line.matches("read [1-9][0-9]{2} rows of time-log-2"));
    }
}
