package benchtrue.nightly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchtrue.UnderQuotedShop;
import java.io.IOException;
import java.nio.file.Path;
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
        OwnerThroughTime owner = new OwnerThroughTime(UnderQuotedShop.write(folder, 1.1 + seed % 5 * 0.15), seed);
        owner.night();
        for (int step = 0; step < STEPS; step++) {
            owner.step();
            owner.holds();
        }
        assertThat(owner.adopted()).as("seed " + seed).isPositive();
    }

    /** The walk must be able to fail: a book that was changed behind the program's back is not explained by the decisions. */
    @Test
    void aRowThatNobodyDecidedIsFound() throws IOException {
        OwnerThroughTime owner = new OwnerThroughTime(UnderQuotedShop.write(folder, 1.3), 1);
        owner.night();
        owner.adopt();
        owner.holds();
        Path book = owner.newestBook();
        String text = java.nio.file.Files.readString(book);
        java.nio.file.Files.writeString(book, text.replaceFirst("(job-[0-9],Job [0-9],setup),[0-9.]+", "$1,77.0000"));
        assertThatThrownBy(owner::holds).isInstanceOf(AssertionError.class);
    }
}
