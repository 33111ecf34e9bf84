package benchtrue.nightly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class JsonTest {
    @Test
    void valuesAreWrittenInTheOrderGiven() {
        Map<String, Object> value = new LinkedHashMap<>();
        value.put("z", 1L);
        value.put("a", List.of("x", true, 0.5));
        value.put("none", List.of());
        value.put("inner", Map.of("k", -3));
        assertThat(Json.text(value)).isEqualTo("""
                {
                  "z": 1,
                  "a": [
                    "x",
                    true,
                    0.5
                  ],
                  "none": [],
                  "inner": {
                    "k": -3
                  }
                }
                """);
    }

    @Test
    void textThatWouldBreakTheFormatIsEscaped() {
        assertThat(Json.text(Map.of("a\"b", "c\\d\n\u0001ä"))).isEqualTo("{\n  \"a\\\"b\": \"c\\\\d\\n\\u0001ä\"\n}\n");
    }

    @Test
    void whatHasNoJsonIsAFault() {
        assertThatThrownBy(() -> Json.text(Map.of("a", Double.NaN))).isInstanceOf(IllegalArgumentException.class);
    }
}
