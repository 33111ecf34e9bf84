package benchtrue.settings;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The README's table of settings says what the program does. */
class SettingsManualTest {
    private static final Path README = Path.of("..", "README.md");

    @ParameterizedTest
    @EnumSource(SettingsKey.class)
    void everyKeyIsDocumentedWithItsValuesItsDefaultAndItsUse(SettingsKey key) throws IOException {
        List<String> cells = row(key.path());
        assertThat(cells).as(key.path()).hasSize(key.single() ? 6 : 5);
        assertThat(cells.get(2)).isEqualTo(key.expected());
        assertThat(cells.subList(3, cells.size() - 1))
                .isEqualTo(key.single() ? List.of(written(key), key.meaning()) : List.of(key.meaning()));
    }

    private static List<String> row(String path) throws IOException {
        String line = Files.readAllLines(README).stream()
                .filter(found -> found.startsWith("| `" + path + "` |"))
                .findFirst()
                .orElse("");
        return List.of(line.split(" *\\| *", -1));
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
