package benchtrue.settings;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The README's table of settings says what the program does. */
class SettingsManualTest {
    private static final Path README = Path.of("..", "README.md");

    @ParameterizedTest
    @EnumSource(SettingsKey.class)
    void everyKeyIsDocumentedWithItsValuesItsDefaultAndItsUse(SettingsKey key) throws IOException {
        String[] cells = row(key.path());
        assertThat(cells).as(key.path()).hasSize(6);
        assertThat(cells[2]).isEqualTo(key.expected());
        assertThat(cells[3]).isEqualTo(written(key));
        assertThat(cells[4]).isEqualTo(key.meaning());
    }

    @ParameterizedTest
    @EnumSource(FileKey.class)
    void everyKeyOfARuleForFilesIsDocumentedWithItsValuesAndItsUse(FileKey key) throws IOException {
        String[] cells = row("files." + key.path());
        assertThat(cells).as(key.path()).hasSize(5);
        assertThat(cells[2]).isEqualTo(key.expected());
        assertThat(cells[3]).isEqualTo(key.meaning());
    }

    @ParameterizedTest
    @EnumSource(FamilyKey.class)
    void everyKeyOfAFamilyIsDocumentedWithItsValuesAndItsUse(FamilyKey key) throws IOException {
        String[] cells = row("policy.family.NAME." + key.path());
        assertThat(cells).as(key.path()).hasSize(5);
        assertThat(cells[2]).isEqualTo(key.expected());
        assertThat(cells[3]).isEqualTo(key.meaning());
    }

    @ParameterizedTest
    @EnumSource(BreakdownKey.class)
    void everyKeyOfAStandingQuestionIsDocumentedWithItsValuesAndItsUse(BreakdownKey key) throws IOException {
        String[] cells = row("breakdown." + key.path());
        assertThat(cells).as(key.path()).hasSize(5);
        assertThat(cells[2]).isEqualTo(key.expected());
        assertThat(cells[3]).isEqualTo(key.meaning());
    }

    private static String[] row(String path) throws IOException {
        return Files.readAllLines(README).stream()
                .filter(line -> line.startsWith("| `" + path + "` |"))
                .findFirst()
                .orElse("")
                .split(" *\\| *", -1);
    }

    private static String written(SettingsKey key) {
        Object value = Settings.DEFAULTS.byKey().getOrDefault(key.path(), "");
        boolean number = value instanceof Number || value.toString().matches("[0-9.]+");
        if (number) {
            return new BigDecimal(value.toString()).stripTrailingZeros().toPlainString();
        }
        return value instanceof String text && !text.isEmpty() ? "\"" + text + "\"" : value.toString();
    }
}
