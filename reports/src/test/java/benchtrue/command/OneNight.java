package benchtrue.command;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.sample.SampleOptions;
import benchtrue.sample.WriteSample;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Two nights of the whole program on one invented shop, a month apart, for every test that only looks at what they left.
 * Who changes something works on a copy.
 */
record OneNight(Path shop, String out, String err) {
    static final String AS_OF = "2026-10-31";
    private static final String MONTH_BEFORE = "2026-09-30";
    private static final int TICKETS = 400;
    private static OneNight made;
    private static OneNight whole;

    /** Writes a shop into a folder that is not there yet. */
    private interface Shop {
        void write(Path folder) throws IOException;
    }

    /** Returns the nights, which run once in the life of the tests. */
    static synchronized OneNight onTheSample() {
        if (made == null) {
            made = run(shop -> {
                WriteSample.write(
                        SampleOptions.standard(shop).withTickets(TICKETS).withYears(2));
                Path settings = shop.resolve("shop.toml");
                Files.writeString(settings, "wall_copy = true\n" + Files.readString(settings));
            });
        }
        return made;
    }

    /** Returns the same nights on the committed sample, which has 1,200 tickets. */
    static synchronized OneNight onTheWholeSample() {
        if (whole == null) {
            whole = run(shop -> {
                Path sample = Path.of("..", "sample-exports");
                try (Stream<Path> files = Files.walk(sample)) {
                    for (Path file : files.toList()) {
                        Files.copy(file, shop.resolve(sample.relativize(file).toString()));
                    }
                }
            });
        }
        return whole;
    }

    Path results() {
        return shop.resolve("out").resolve(AS_OF);
    }

    private static OneNight run(Shop written) {
        try {
            Path folder = Files.createTempDirectory("one-night");
            Runtime.getRuntime().addShutdownHook(new Thread(() -> delete(folder)));
            Path shop = folder.resolve("shop");
            written.write(shop);
            program("nightly", "--shop", shop.toString(), "--as-of", MONTH_BEFORE);
            OneNight said = program("nightly", "--shop", shop.toString(), "--as-of", AS_OF, "--verbose");
            return new OneNight(shop, said.out, said.err);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static OneNight program(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        Clock clock = Clock.fixed(Instant.parse("2026-11-01T02:00:00Z"), ZoneOffset.UTC);
        int exit = new Program(new PrintWriter(out), new PrintWriter(err), false, clock, Map.of()).run(arguments);
        assertThat(exit).as(err.toString()).isZero();
        return new OneNight(Path.of(""), out.toString(), err.toString());
    }

    private static void delete(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            List<Path> deepestFirst = files.sorted(Comparator.reverseOrder()).toList();
            for (Path file : deepestFirst) {
                Files.delete(file);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
