package benchtrue.charts;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.InventedShop;
import benchtrue.nightly.Review;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;

class NothingOverlapsTest {
    private static final List<String> NAMES = List.of(
            "Neck reset, dovetail joint steamed, shimmed and refitted cold",
            "Перекладка ладов на грифе с окантовкой, с полировкой и порогом",
            "指板を修正しフレットを全て打ち替えて縁取りを戻し弦を張り直して調整する作業一式で試奏と記録と清掃を含む二日がかりの修理である",
            "Glue",
            "Donaudampfschifffahrtsgesellschaftsgitarrenhalsrestaurierung");

    static Stream<Arguments> shops() {
        return Stream.of(
                Arguments.of(5, NAMES.get(0)),
                Arguments.of(5, NAMES.get(2)),
                Arguments.of(30, NAMES.get(1)),
                Arguments.of(30, NAMES.get(2)),
                Arguments.of(30, NAMES.get(4)),
                Arguments.of(120, NAMES.get(0)),
                Arguments.of(120, NAMES.get(1)));
    }

    private static List<String> pictures(Review review) {
        return Pictures.of(review).stream()
                .flatMap(picture -> Stream.of(
                        picture.svg(), picture.figure(Picture.Sheet.WIDE), picture.figure(Picture.Sheet.NARROW)))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("shops")
    void noWordsOverlapOrAreCut(int types, String name) throws Exception {
        List<String> titles = IntStream.range(0, types).mapToObj(type -> name).toList();
        Review review = InventedShop.review(titles, types * 7, InventedShop.settings("en", "EUR"));
        for (String svg : pictures(review)) {
            check(svg);
        }
    }

    private static void check(String svg) throws Exception {
        Element root = TextBoxes.root(svg);
        double width = Double.parseDouble(root.getAttribute("width"));
        double height = Double.parseDouble(root.getAttribute("height"));
        List<TextBoxes.Box> boxes = TextBoxes.of(svg);
        assertThat(boxes).isNotEmpty();
        for (int i = 0; i < boxes.size(); i++) {
            TextBoxes.Box box = boxes.get(i);
            assertThat(box.place().getMinX()).as(box.text()).isGreaterThanOrEqualTo(0);
            assertThat(box.place().getMaxX()).as(box.text()).isLessThanOrEqualTo(width + 0.5);
            assertThat(box.place().getMinY()).as(box.text()).isGreaterThanOrEqualTo(0);
            assertThat(box.place().getMaxY()).as(box.text()).isLessThanOrEqualTo(height);
            for (int j = i + 1; j < boxes.size(); j++) {
                assertThat(box.place().intersects(boxes.get(j).place()))
                        .as(box.text() + " over " + boxes.get(j).text())
                        .isFalse();
            }
        }
    }

    @Test
    void aNameOurLettersCannotWriteFallsBackToItsKey() {
        Review review =
                InventedShop.review(List.of(NAMES.get(2), NAMES.get(1)), 60, InventedShop.settings("en", "EUR"));
        String svg = Pictures.of(review).get(0).svg();
        assertThat(svg).contains(">type-000<").contains("Перекладка");
    }
}
