package benchtrue.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpellingTest {
    private static final List<String> COLUMNS = List.of("ticket", "opened", "closed", "repair_type");

    @ParameterizedTest
    @CsvSource({"tiket,ticket", "Opened,opened", "close,closed", "repairtype,repair_type", "repair type,repair_type"})
    void theNearestKnownNameIsFound(String word, String expected) {
        assertThat(Spelling.nearest(word, COLUMNS)).contains(expected);
    }

    @Test
    void aWordUnlikeEveryNameHasNoNearestOne() {
        assertThat(Spelling.nearest("xyzzy", COLUMNS)).isEmpty();
        assertThat(Spelling.nearest("ticket", List.of())).isEmpty();
    }
}
