package benchtrue.nightly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchtrue.ShopFolder;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever an owner drafts, adopts, withdraws and drafts again: no decision undoes another, and none is asked twice. */
class BooksThroughTimeTest {
    private static final int STEPS = 14;
    static final int TYPES = 6;

    @TempDir
    Path folder;

    static Stream<Long> fewSeeds() {
        return IntStream.rangeClosed(1, 12).mapToObj(Long::valueOf);
    }

    static Stream<Long> manySeeds() {
        return IntStream.rangeClosed(13, 300).mapToObj(Long::valueOf);
    }

    @ParameterizedTest
    @MethodSource("fewSeeds")
    void aDecidedRowKeepsItsHoursUntilItIsDecidedAgain(long seed) throws IOException {
        walk(seed);
    }

    @Tag("proof")
    @ParameterizedTest
    @MethodSource("manySeeds")
    void aDecidedRowKeepsItsHoursInManyOtherShops(long seed) throws IOException {
        walk(seed);
    }

    private void walk(long seed) throws IOException {
        OwnerThroughTime owner = new OwnerThroughTime(shop(folder, 1.1 + seed % 5 * 0.15), seed);
        owner.night();
        for (int step = 0; step < STEPS; step++) {
            owner.step();
            owner.holds();
        }
        assertThat(owner.adopted()).as("seed " + seed).isPositive();
    }

    /** Six repairs of twelve jobs each, all of which take longer than the book. */
    static Path shop(Path folder, double load) {
        List<String> tickets = new ArrayList<>(List.of("ticket,opened,closed,status,instrument_class"));
        List<String> lines = new ArrayList<>(List.of("ticket,line,repair_type,quoted_hours,quoted_labour"));
        List<String> log = new ArrayList<>(List.of("entry,ticket,line,technician,work_date,hours"));
        List<String> book = new ArrayList<>(List.of("repair_type,title,family,book_hours,book_labour"));
        for (int type = 0; type < TYPES; type++) {
            int hours = 2 + 2 * type;
            book.add("job-" + type + ",Job " + type + ",setup," + hours + "," + 100 * hours);
            for (int job = 0; job < 12; job++) {
                String ticket = "T" + type + "-" + job;
                String day = String.format(Locale.ROOT, "2026-%02d-%02d", 1 + job % 5, 3 + 2 * type);
                tickets.add(ticket + "," + day + "," + day + ",closed,archtop");
                lines.add(ticket + ",1,job-" + type + "," + hours + "," + 100 * hours);
                double took = hours * (load + job % 4 * 0.05);
                log.add("E" + ticket + "," + ticket + ",1,ann," + day + "," + String.format(Locale.ROOT, "%.2f", took));
            }
        }
        ShopFolder shop = new ShopFolder(folder);
        shop.file("exports/tickets.csv", tickets.toArray(String[]::new));
        shop.file("exports/quoted-lines.csv", lines.toArray(String[]::new));
        shop.file("exports/time-log.csv", log.toArray(String[]::new));
        shop.file("price-book/2026-01-01.csv", book.toArray(String[]::new));
        return folder;
    }

    /** The walk must be able to fail: a book that was changed behind the program's back is not explained by the decisions. */
    @Test
    void aRowThatNobodyDecidedIsFound() throws IOException {
        OwnerThroughTime owner = new OwnerThroughTime(shop(folder, 1.3), 1);
        owner.night();
        owner.adopt();
        owner.holds();
        Path book = owner.newestBook();
        String text = java.nio.file.Files.readString(book);
        java.nio.file.Files.writeString(book, text.replaceFirst("(job-[0-9],Job [0-9],setup),[0-9.]+", "$1,77.0000"));
        assertThatThrownBy(owner::holds).isInstanceOf(AssertionError.class);
    }
}
