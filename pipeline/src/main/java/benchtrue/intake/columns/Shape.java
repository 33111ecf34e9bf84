package benchtrue.intake.columns;

import benchtrue.settings.FileRule;
import benchtrue.settings.FileShape;
import benchtrue.settings.Pair;
import benchtrue.settings.Unpivot;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * How the rows of a file lie otherwise than one entry a row, one value a cell.
 *
 * @param made columns that are made from others or from the place, by their names in the rule
 * @param fillDown headers whose cell holds for the rows below, by {@link Mapping#plain}
 * @param unpivot the columns that hold one entry a cell
 */
public record Shape(List<String> made, List<String> fillDown, Optional<Unpivot> unpivot) {
    public static final Shape PLAIN = new Shape(List.of(), List.of(), Optional.empty());

    public static Shape of(Optional<FileRule> rule) {
        return rule.map(Shape::of).orElse(PLAIN);
    }

    private static Shape of(FileRule rule) {
        FileShape shape = rule.shape();
        List<String> made = rule.columns().stream()
                .map(Pair::text)
                .filter(Made::isMade)
                .filter(name -> !Made.isWide(name))
                .distinct()
                .toList();
        return new Shape(made, shape.fillDown().stream().map(Mapping::plain).toList(), shape.unpivot());
    }

    public boolean isPlain() {
        return made.isEmpty() && fillDown.isEmpty() && unpivot.isEmpty();
    }

    /** Returns the places of a header's columns that hold one entry a cell. */
    public int[] wide(List<String> header) {
        return unpivot.map(said -> IntStream.range(0, header.size())
                        .filter(cell -> isWide(said, header.get(cell)))
                        .toArray())
                .orElse(new int[0]);
    }

    private static boolean isWide(Unpivot said, String name) {
        boolean named = said.columns().isEmpty()
                || said.columns().stream()
                        .anyMatch(pattern -> FileRule.fits(pattern, Mapping.plain(name)) && !name.isBlank());
        return named && WideNames.isOf(said.header(), name);
    }

    /** Returns the column from which, or up to which, the wide headers count. */
    public Optional<String> anchor() {
        return unpivot.flatMap(said ->
                Stream.of(said.after(), said.before()).flatMap(Optional::stream).findFirst());
    }
}
